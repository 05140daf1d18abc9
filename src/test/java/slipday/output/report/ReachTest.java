package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slipday.app.Checked;
import slipday.measure.Units;
import slipday.season.Exposure;
import slipday.season.Season;

/** Whose pollen is told by name, and what is said of the others. */
class ReachTest {
  /** A kept courgette in the midst of bitter gourds and of kin that is not bitter. */
  private static Season among(int gourds, int kin) {
    StringBuilder plan =
        new StringBuilder(
            """
            season 2026
            site hill
              place 44.21 N, 72.58 W
              time zone America/New_York
              last frost 18 May, 1 in 10 after 30 May
              first frost 27 September, 1 in 10 before 14 September
            bed strip
              size 300 m x 2 m
            """);
    plant(plan, "kept", "courgette", "seed saved");
    IntStream.range(0, gourds).forEach(i -> plant(plan, "gourd-" + i, "pepo-gourd", ""));
    IntStream.range(0, kin).forEach(i -> plant(plan, "kin-" + i, "acorn-squash", ""));
    Checked checked = Gardens.checked(plan.toString());
    return checked.season().orElseThrow(() -> new AssertionError(checked.findings()));
  }

  private static void plant(StringBuilder plan, String name, String crop, String more) {
    plan.append("line " + name + "-line\n  is a " + crop + "\n  purpose to keep\n");
    plan.append("lot " + name + "\n  of " + name + "-line\n  seeds 99\n  harvested 2025\n");
    plan.append("grow " + name + "\n  in strip\n  plants 4\n  flowers open\n");
    plan.append(more.isEmpty() ? "" : "  " + more + "\n");
  }

  private static Reach.Told told(Season season) {
    return Reach.told(new Reach(season.exposures()).of("kept"));
  }

  private static Set<String> names(List<Exposure> exposures) {
    return exposures.stream().map(e -> e.source().name()).collect(Collectors.toSet());
  }

  @Test
  void noBitterSourceThatGetsIntoKeptSeedIsCutAway() {
    Reach.Told told = told(among(9, 4));
    assertThat(names(told.each())).hasSize(9).allMatch(n -> n.startsWith("gourd-"));
    assertThat(told.each()).allMatch(Exposure::intoSeed);
    assertThat(told.more(Units.METRIC))
        .startsWith("4 more")
        .doesNotContain("bitter", "less of a danger");
  }

  @Test
  void whatIsCountedIsSaidToBeBitterWhereItIs() {
    Season season = among(9, 0);
    List<Exposure> onAnother = new Reach(season.exposures()).of("gourd-0");
    assertThat(onAnother).hasSize(9).noneMatch(Exposure::intoSeed);
    assertThat(Reach.told(onAnother).more(Units.METRIC))
        .startsWith("3 more, 2 of them bitter, the nearest 0 m");
  }

  @Test
  void oneMoreThanAreToldIsToldToo() {
    assertThat(told(among(0, 7)).more(Units.METRIC)).isEmpty();
    assertThat(told(among(0, 8)).each()).hasSize(6);
    assertThat(told(among(0, 8)).more(Units.METRIC)).startsWith("2 more");
  }

  /** The season's list and the book of reasons name the same sources. */
  @Test
  void listAndBookAreCutAlike() {
    Season season = among(9, 4);
    Reach reach = new Reach(season.exposures());
    Ids ids = new Ids();
    Map<String, Set<String>> listed =
        Sheds.of(season.plantings(), reach, ids, Units.METRIC).list().stream()
            .collect(
                Collectors.toMap(
                    s -> s.receiver() + s.danger(),
                    s -> s.sources().stream().map(Sheds.Source::name).collect(Collectors.toSet())));
    assertThat(listed).containsEntry("kepttrue", names(told(season).each()));
  }
}
