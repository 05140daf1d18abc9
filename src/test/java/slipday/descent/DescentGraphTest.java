package slipday.descent;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.descent.DescentGraph.Grain;
import slipday.descent.DescentGraph.Seed;
import slipday.descent.DescentGraph.Taking;
import slipday.descent.DescentGraph.Way;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.record.Fruit;

/** What a drawing of descent has to draw. */
class DescentGraphTest {
  private static final int ROOM = 100;

  /** R. A. Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, table 2.1. */
  private static final Garden PRINTED =
      Pedigrees.garden(
          "",
          "2020-02-01 crossed p-0 plant 1 by q-0 plant 1, tag 3",
          "2020-04-01 saved 3, 50 seeds, into three, of mix",
          "2020-04-01 saved p-0 plant 1, 50 seeds, into four",
          "2020-06-01 crossed four plant 1 by three plant 1, tag 5",
          "2020-08-01 saved 5, 50 seeds, into five, of mix",
          "2020-10-01 crossed five plant 1 by q-0 plant 1, tag 6",
          "2020-12-01 saved 6, 50 seeds, into six, of mix");

  /** {@code four = p-0 x ?}, for each taking in its order. */
  private static List<String> takings(DescentGraph graph) {
    List<String> told = new ArrayList<>();
    for (Taking t : graph.takings()) {
      String father = t.pollenParent().isPresent() ? name(graph, t.pollenParent().getAsInt()) : "?";
      String seed = t.seed().isPresent() ? name(graph, t.seed().getAsInt()) : "-";
      told.add(seed + " = " + name(graph, t.seedParent()) + " x " + father);
    }
    return told;
  }

  private static String name(DescentGraph graph, int seed) {
    Seed of = graph.seeds().get(seed);
    return of.lots().size() == 1 ? of.lots().get(0).name() : of.lots().size() + " lots";
  }

  @Test
  void everyParentOfAPrintedPedigreeIsThere() {
    DescentGraph graph = DescentGraph.of(PRINTED, ROOM);
    assertThat(takings(graph))
        .containsExactlyInAnyOrder(
            "three = p-0 x q-0", "four = p-0 x ?", "five = four x three", "six = five x q-0");
    assertThat(graph.grain()).isEqualTo(Grain.LOTS);
    assertThat(graph.leftOut()).isZero();
    assertThat(graph.seeds()).hasSize(6);
  }

  @Test
  void lotsOfOneDescentAreDrawnAsOne() {
    List<String> record = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      record.add("2020-06-0" + i + " selfed p-0 plant 1, tag " + i + "A");
      record.add("2020-08-0" + i + " saved " + i + "A, 50 seeds, into p-" + i);
    }
    Garden garden = Pedigrees.garden("", record.toArray(String[]::new));
    DescentGraph graph = DescentGraph.of(garden, ROOM);
    assertThat(takings(graph)).containsExactly("4 lots = p-0 x p-0");
    assertThat(graph.takings().get(0).of()).hasSize(4);
    assertThat(graph.takings().get(0).way()).isEqualTo(Way.SELFED);
    assertThat(graph.apart()).extracting(Lot::name).contains("q-0").doesNotContain("p-0", "p-1");
  }

  @Test
  void aLotThatWasGrownStandsAlone() {
    List<String> record = new ArrayList<>();
    for (int i = 1; i <= 4; i++) {
      record.add("2020-03-0" + i + " selfed p-0 plant 1, tag " + i + "A");
      record.add("2020-05-0" + i + " saved " + i + "A, 50 seeds, into p-" + i);
    }
    record.add("2020-07-01 selfed p-2 plant 1, tag 9A");
    record.add("2020-09-01 saved 9A, 50 seeds, into p-9");
    Garden garden = Pedigrees.garden("", record.toArray(String[]::new));
    assertThat(takings(DescentGraph.of(garden, ROOM)))
        .containsExactlyInAnyOrder("3 lots = p-0 x p-0", "p-2 = p-0 x p-0", "p-9 = p-2 x p-2");
  }

  @Test
  void whereThereIsNoRoomEarlierSeasonsAreLeftOutFirst() {
    Garden garden =
        Pedigrees.garden(
            "",
            "2018-06-01 selfed p-0 plant 1, tag 1A",
            "2018-08-01 saved 1A, 50 seeds, into p-1",
            "2019-06-01 selfed p-1 plant 1, tag 2A",
            "2019-08-01 saved 2A, 50 seeds, into p-2",
            "2020-06-01 selfed p-2 plant 1, tag 3A",
            "2020-08-01 saved 3A, 50 seeds, into p-3");
    DescentGraph graph = DescentGraph.of(garden, 5);
    assertThat(takings(graph)).containsExactlyInAnyOrder("p-2 = p-1 x p-1", "p-3 = p-2 x p-2");
    assertThat(graph.since()).isEqualTo(OptionalInt.of(2019));
    assertThat(graph.leftOut()).isEqualTo(1);
  }

  @Test
  void whereOneSeasonIsTooMuchLinesAreDrawn() {
    DescentGraph graph = DescentGraph.of(PRINTED, 8);
    assertThat(graph.grain()).isEqualTo(Grain.LINES);
    assertThat(graph.seeds())
        .extracting(seed -> seed.lots().get(0).line().name())
        .containsExactlyInAnyOrder("p", "q", "mix");
    assertThat(graph.takings()).allMatch(t -> t.way() != Way.SELFED).isNotEmpty();
  }

  /** In a season of crosses of lines that were crossed with no other, four nodes for each. */
  @ParameterizedTest
  @ValueSource(ints = {22, 23, 29, 30, 60})
  void crossesOfDistinctLinesKeepToTheLimit(int crosses) {
    StringBuilder lines = new StringBuilder();
    List<String> record = new ArrayList<>();
    for (int i = 0; i < crosses; i++) {
      for (String line : List.of("a" + i, "b" + i)) {
        lines.append(
            "line " + line + "\n  is a butternut\nlot " + line + "-0\n  of " + line + "\n");
      }
      String child = "c" + i;
      lines.append(
          "line " + child + "\n  is a butternut\n  began 2020, from a" + i + " by b" + i + "\n");
      String day = "%02d".formatted(1 + i % 28);
      String month = "%02d".formatted(6 + i / 28);
      record.add(
          "2020-"
              + month
              + "-"
              + day
              + " crossed a"
              + i
              + "-0 plant 1 by b"
              + i
              + "-0 plant 1, tag T"
              + i);
      record.add("2020-10-" + day + " saved T" + i + ", 50 seeds, into c" + i + "-1, of c" + i);
    }
    DescentGraph graph = DescentGraph.of(Pedigrees.garden(lines.toString(), record), 90);
    assertThat(graph.seeds().size() + graph.takings().size()).isBetween(86, 90);
    assertThat(graph.takings().size() + graph.leftOut()).isEqualTo(crosses);
    assertThat(graph.takings())
        .as("the latest")
        .extracting(t -> ((Fruit) t.of().get(0)).tag())
        .allMatch(tag -> Integer.parseInt(tag.substring(1)) >= graph.leftOut());
  }

  @Test
  void andOfLinesTheLastCrossesIfEvenTheyAreTooMany() {
    DescentGraph graph = DescentGraph.of(PRINTED, 3);
    assertThat(graph.takings()).hasSize(1);
    assertThat(graph.leftOut()).isPositive();
    assertThat(graph.seeds()).hasSizeBetween(1, 3);
  }
}
