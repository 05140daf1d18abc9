package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipday.choice.Progress;
import slipday.choice.Progress.Each;
import slipday.choice.Progress.Gain;
import slipday.choice.Progress.Grown;
import slipday.choice.Progress.Step;
import slipday.choice.Trait;
import slipday.garden.Lot;
import slipday.genetics.Aim;
import slipday.output.report.GenerationsDrawing.Column;

class GenerationsDrawingTest {
  private static final Optional<Aim> RAISE =
      Optional.of(new Aim(Optional.of(13.0), Optional.empty(), 1, 1, Optional.empty()));

  /** Three plants: the best one a parent. */
  private static final Lot LOT = Gardens.of("12 m x 1 m", "3").lots().get(0);

  private static Grown grown(String generation, int year, double mean) {
    List<Each> each =
        List.of(
            new Each("a plant 1", mean - 1, false, LOT, List.of()),
            new Each("a plant 2", mean, false, LOT, List.of()),
            new Each("a plant 3", mean + 1, true, LOT, List.of()));
    return new Grown(
        generation,
        year,
        3,
        6,
        mean,
        Optional.of(1.0),
        "a plant 3",
        mean + 1,
        0.5,
        1,
        Optional.of(1.0),
        each);
  }

  private static String drawn(Optional<Gain> gain, List<Grown> checks, Grown... stands) {
    Step step = new Step("F2", "F3", gain, "told", Optional.empty(), Optional.empty());
    Progress.Trend trend =
        new Progress.Trend(
            Trait.SWEETNESS,
            Optional.of("raise"),
            RAISE,
            List.of(stands),
            checks,
            List.of(step),
            Optional.empty());
    List<Column> columns = new ArrayList<>();
    for (Grown g : stands) {
      columns.add(new Column(g, "" + g.year(), "t" + columns.size(), "<" + g.generation() + ">"));
    }
    return new GenerationsDrawing(trend, columns).svg("label").toString();
  }

  /** Up 10 to 14 over 206 to 26 px, 45 px a brix; two columns with their middles at 112 and 256. */
  @Test
  void meansSpreadBestAndParentsLieAtTheirFigures() {
    String svg =
        drawn(
            Optional.of(new Gain(1, .2)), List.of(), grown("F2", 2026, 11), grown("F3", 2026, 12));
    assertThat(svg)
        .contains(">10</text>", ">14</text>", ">F2</text>", ">2026</text>", ">F 0.50</text>")
        .contains("data-thing=\"t0\" transform=\"translate(112 0)\"")
        .contains("data-thing=\"t1\" transform=\"translate(256 0)\"")
        .contains("class=\"sign\" d=\"M-14 161H14\"", "class=\"sign\" d=\"M-14 116H14\"")
        .contains("class=\"spread\" d=\"M-22 206h6m-3 0V116m-3 0h6\"")
        .contains("class=\"best\" cx=\"0\" cy=\"116\"")
        .contains("class=\"dot parent\" cx=\"0\" cy=\"116\"")
        .contains("class=\"parents\" d=\"M-18 116H18\"")
        .contains("class=\"aim\" x1=\"40\" x2=\"328\" y1=\"71\" y2=\"71\"")
        .contains("<title>&lt;F2&gt;</title>");
  }

  @Test
  void onlyGenerationsSideBySideAreJoinedByAFullLine() {
    Grown f2 = grown("F2", 2025, 11);
    Grown f3 = grown("F3", 2026, 12);
    Optional<Gain> gain = Optional.of(new Gain(1, .2));
    assertThat(drawn(gain, List.of(), grown("F2", 2026, 11), f3))
        .contains("class=\"gain\"", ">+1.0</text>");
    // A check tells the gain, and the means still differ by the weather too.
    assertThat(drawn(gain, List.of(), f2, f3)).contains("class=\"gain untold\"", ">+1.0</text>");
    assertThat(drawn(Optional.empty(), List.of(), f2, f3))
        .contains("class=\"gain untold\"", ">?</text>")
        .doesNotContain("class=\"gain\"");
  }

  @Test
  void checksStandInTheColumnsOfTheirSeason() {
    Grown f2 = grown("F2", 2025, 11);
    Grown f3 = grown("F3", 2026, 12);
    List<Grown> checks = List.of(grown("line old", 2025, 11.5), grown("line old", 2026, 12.5));
    String svg = drawn(Optional.empty(), checks, f2, f3);
    assertThat(svg.split("class=\"check\"", -1)).hasSize(3);
    assertThat(svg).contains("class=\"check\" d=\"M20 134.5l", "class=\"check\" d=\"M20 89.5l");
  }

  @Test
  void dotsThatAreAlikeStandAside() {
    assertThat(Swarm.aside(List.of(10.0, 10.0, 10.0, 30.0), 6))
        .containsExactly(0.0, 6.0, -6.0, 0.0);
  }
}
