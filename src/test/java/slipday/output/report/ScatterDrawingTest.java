package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slipday.choice.Predicted;
import slipday.genetics.Aim;
import slipday.output.report.Mark.Kind;
import slipday.output.report.ScatterDrawing.Side;

class ScatterDrawingTest {
  private static final Optional<Aim> RAISE =
      Optional.of(new Aim(Optional.of(13.0), Optional.empty(), 5, 1, Optional.empty()));
  private static final Optional<Aim> LOWER =
      Optional.of(new Aim(Optional.empty(), Optional.of(36.0), 3, 1, Optional.empty()));
  private static final List<Side> SIDES =
      List.of(new Side("sweetness, brix", RAISE), new Side("days", LOWER));

  private static Mark.Figure figure(double at, double reach) {
    return new Mark.Figure(at, Optional.of(new Predicted(at, at - reach, at + reach, .5)));
  }

  private static Mark mark(Kind kind, double x, double y, String tags) {
    return new Mark("t" + x, kind, List.of(figure(x, .5), figure(y, 1)), tags, "plant <" + x + ">");
  }

  private static String drawn(List<Side> sides, Mark... marks) {
    return new ScatterDrawing(sides, List.of(marks), true).svg("two traits").toString();
  }

  /** Across 11 to 14 over 40 to 328 px, up 35 to 40 over 236 to 26 px. */
  @Test
  void aPlantLiesAtItsFiguresAndItsBarsReachAsFarAsItIsUnsure() {
    String svg = drawn(SIDES, mark(Kind.CHOSEN, 11.5, 38, "3A"), mark(Kind.REFUSED, 12.5, 39, ""));
    assertThat(svg)
        .contains(">11</text>", ">14</text>", ">35</text>", ">40</text>")
        .contains("data-thing=\"t11.5\" transform=\"translate(88 110)\"")
        .contains("data-thing=\"t12.5\" transform=\"translate(184 68)\"")
        .contains("d=\"M-48 0H48M0 42V-42\"");
  }

  @Test
  void aimsAreDrawnWithTheSideThatIsWanted() {
    String svg = drawn(SIDES, mark(Kind.SEED, 11.5, 38, ""), mark(Kind.SEED, 12.5, 39, ""));
    assertThat(svg)
        .contains("<line class=\"aim\" x1=\"232\" x2=\"232\" y1=\"26\" y2=\"236\"/>")
        .contains("<rect class=\"wanted\" x=\"232\" y=\"231\" width=\"96\"")
        .contains("<line class=\"aim\" x1=\"40\" x2=\"328\" y1=\"194\" y2=\"194\"/>")
        .contains("<rect class=\"wanted\" x=\"40\" y=\"194\" width=\"5\" height=\"42\"");
  }

  /** Worth 5 a unit across and 3 a unit down: a line rises by 5/3 units up for one across. */
  @Test
  void linesOfEqualWorthRiseByTheWeights() {
    Mark[] marks = {mark(Kind.SEED, 11.5, 38, ""), mark(Kind.SEED, 12.5, 39, "")};
    ScatterDrawing drawing = new ScatterDrawing(SIDES, List.of(marks), true);
    Contours contours = drawing.drawn().orElseThrow();
    assertThat(contours.levels()).hasSizeGreaterThan(3);
    List<Double> slopes = new ArrayList<>();
    contours.levels().stream()
        .flatMap(l -> l.segments().stream())
        .filter(s -> Math.max(s.from().x(), s.to().x()) <= 13)
        .filter(s -> Math.min(s.from().y(), s.to().y()) >= 36)
        .forEach(s -> slopes.add((s.to().y() - s.from().y()) / (s.to().x() - s.from().x())));
    assertThat(slopes)
        .isNotEmpty()
        .allSatisfy(
            s -> assertThat(s).isCloseTo(5 / 3.0, org.assertj.core.data.Offset.offset(1e-9)));
  }

  @Test
  void whatIsNotTheIndexHasNoLinesOfIt() {
    List<Mark> marks = List.of(mark(Kind.SEED, 11.5, 38, ""));
    assertThat(new ScatterDrawing(SIDES, marks, false).drawn()).isEmpty();
    Optional<Aim> idle =
        Optional.of(new Aim(Optional.of(13.0), Optional.empty(), 0, 1, Optional.empty()));
    List<Side> sides = List.of(new Side("a", idle), SIDES.get(1));
    assertThat(new ScatterDrawing(sides, marks, true).drawn()).isEmpty();
    assertThat(new ScatterDrawing(sides, marks, true).svg("").toString()).doesNotContain("equal");
  }

  @Test
  void anAimFarOffIsNotDrawn() {
    Optional<Aim> far =
        Optional.of(new Aim(Optional.of(30.0), Optional.empty(), 5, 1, Optional.empty()));
    ScatterDrawing drawing =
        new ScatterDrawing(
            List.of(new Side("a", far), SIDES.get(1)),
            List.of(mark(Kind.SEED, 11.5, 38, "")),
            true);
    assertThat(drawing.reaches(0)).isFalse();
    assertThat(drawing.reaches(1)).isTrue();
  }

  @Test
  void everyKindHasAShapeOfItsOwn() {
    assertThat(List.of(Kind.values()).stream().map(Kind::shape)).doesNotHaveDuplicates();
  }

  @Test
  void namesOnItAreText() {
    assertThat(drawn(SIDES, mark(Kind.CHOSEN, 11.5, 38, "<b>")))
        .contains("<title>plant &lt;11.5&gt;</title>", "&lt;b&gt;</text>")
        .doesNotContain("<b>");
  }

  @Test
  void alongOneTraitPlantsThatAreAlikeStandBesideOneAnother() {
    Mark one = new Mark("a", Kind.SEED, List.of(figure(11.5, .5)), "", "one");
    Mark two = new Mark("b", Kind.SEED, List.of(figure(11.5, .5)), "", "two");
    String svg =
        new ScatterDrawing(SIDES.subList(0, 1), List.of(one, two), true).svg("one").toString();
    assertThat(svg).contains("translate(").doesNotContain("equal");
    assertThat(svg.split("translate\\(", -1)[1].split("\\)")[0])
        .isNotEqualTo(svg.split("translate\\(", -1)[2].split("\\)")[0]);
  }
}
