package slipday.choice;

import static java.util.Comparator.comparingDouble;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.choice.Progress.Step;
import slipday.garden.Garden;

class ProgressTest {
  private static final String GOAL = "goal gold\n  raise sweetness to 14 brix\n";
  private static final String F2 = "lot gold-f2\n  of gold\n  generation F2\n";

  private final List<String> record = new ArrayList<>();

  private void measured(int year, String stand, double... brix) {
    for (int i = 0; i < brix.length; i++) {
      record.add(
          year + "-09-01 sweetness " + stand + " plant " + (i + 1) + ", " + brix[i] + " brix");
    }
  }

  /** Six F2 plants of 2025, of which the two sweetest were selfed into the F3. */
  private void chosenIn2025() {
    record.add("2025-05-12 sowed gold-f2 as old-gold, 10 seeds");
    measured(2025, "old-gold", 8, 9, 10, 11, 12, 13);
    for (int plant : new int[] {5, 6}) {
      record.add("2025-07-08 selfed old-gold plant " + plant + ", tag " + plant + "A");
      record.add("2025-09-20 picked " + plant + "A");
      record.add("2025-09-20 saved " + plant + "A, 90 seeds, into gold-f3-new");
    }
  }

  private Progress progress(String more) {
    boolean born = record.stream().anyMatch(line -> line.contains("into gold-f3-new"));
    String grown = born ? "grow gold-f3-new as new-gold\n  in south\n" : "";
    Garden garden = Gardens.garden(GOAL + F2 + grown + more, record);
    return Progress.of(
        garden,
        garden.lines().stream().filter(l -> l.name().equals("gold")).findFirst().orElseThrow());
  }

  private static Step step(Progress found) {
    return found.traits().get(0).steps().get(0);
  }

  @Test
  void withoutACheckGainAndWeatherAreOne() {
    chosenIn2025();
    measured(2026, "new-gold", 13, 12, 14, 13, 12, 14);
    Progress found = progress("");
    Progress.Trend trend = found.traits().get(0);
    assertThat(trend.stands()).extracting(Progress.Grown::generation).containsExactly("F2", "F3");
    Progress.Grown f2 = trend.stands().get(0);
    assertThat(f2.mean()).isCloseTo(10.5, within(1e-9));
    assertThat(f2.deviation().orElseThrow()).isCloseTo(Math.sqrt(3.5), within(1e-9));
    assertThat(f2.best()).isEqualTo("old-gold plant 6");
    assertThat(f2.inbreeding()).isEqualTo(.5);
    assertThat(f2.parents()).isEqualTo(2);
    assertThat(f2.differential().orElseThrow()).isCloseTo(2, within(1e-9));
    assertThat(f2.each().stream().filter(Progress.Each::parent))
        .extracting(Progress.Each::plant, Progress.Each::mean)
        .containsExactly(tuple("old-gold plant 5", 12.0), tuple("old-gold plant 6", 13.0));
    assertThat(f2.each()).hasSize(6).isSortedAccordingTo(comparingDouble(Progress.Each::mean));
    assertThat(trend.checks()).isEmpty();
    assertThat(step(found).gain()).isEmpty();
    assertThat(step(found).by()).startsWith("gain and weather can't be told apart");
    assertThat(step(found).realised()).isEmpty();
    assertThat(found.notes()).anyMatch(n -> n.contains("remnant seed"));
  }

  @Test
  void aCheckLineTellsThemApart() {
    chosenIn2025();
    measured(2026, "new-gold", 13, 12, 14, 13, 12, 14);
    String check = "grow grey-1\n  in south\n  plants 9, 60 cm apart\n";
    record.add("2025-05-12 sowed grey-1 as old-grey, 5 seeds");
    measured(2025, "old-grey", 7, 8);
    measured(2026, "grey-1", 8, 9, 8.5);
    // Two plants of a check tell a gain, and not yet what share of the choice it is.
    assertThat(step(progress(check)).gain()).isPresent();
    assertThat(step(progress(check)).realised()).isEmpty();
    record.removeIf(line -> line.contains("grey plant") || line.contains("grey-1 plant"));
    measured(2025, "old-grey", 7, 8, 7, 8, 7, 8, 7, 8);
    measured(2026, "grey-1", 8, 9, 8, 9, 8, 9, 8, 9);
    Progress found = progress(check);
    // Up by 2.5, of which the season gave 1.
    assertThat(step(found).gain().orElseThrow().value()).isCloseTo(1.5, within(1e-6));
    assertThat(step(found).by()).isEqualTo("told by a check grown beside both");
    assertThat(found.traits().get(0).checks())
        .extracting(Progress.Grown::generation, Progress.Grown::year, Progress.Grown::mean)
        .containsExactly(tuple("line grey", 2025, 7.5), tuple("line grey", 2026, 8.5));
    Progress.Gain realised = step(found).realised().orElseThrow();
    assertThat(realised.value()).isCloseTo(.75, within(1e-6));
    assertThat(realised.error())
        .isCloseTo(step(found).gain().orElseThrow().error() / 2, within(1e-9));
  }

  @Test
  void remnantSeedBesideItTellsThemApart() {
    chosenIn2025();
    measured(2026, "new-gold", 13, 12, 14, 13, 12, 14);
    measured(2026, "gold-f2", 11, 12, 11);
    Progress found = progress("grow gold-f2\n  in south\n  plants 4, 60 cm apart\n");
    assertThat(step(found).by()).isEqualTo("told by F2 and F3 side by side");
    assertThat(step(found).gain().orElseThrow().value()).isBetween(1.0, 2.0);
    assertThat(found.notes()).anyMatch(n -> n.contains("inbreeding"));
  }

  /** In beds of their own the bed may be the whole difference, and that is said. */
  @Test
  void bedsOfTheirOwnAreSaid() {
    measured(2026, "gold-f3", 13, 12, 14, 13);
    measured(2026, "gold-f2", 11, 12, 11, 12);
    Progress found = progress("grow gold-f2\n  in north\n  plants 4, 60 cm apart\n");
    assertThat(step(found).by()).endsWith("though they stood in different beds");
    assertThat(step(found).gain().orElseThrow().value()).isCloseTo(1.5, within(1e-6));
  }

  @Test
  void oneGenerationIsNoProgressYet() {
    measured(2026, "gold-f3", 13, 12, 14, 13);
    Progress found = progress("");
    assertThat(found.traits().get(0).steps()).isEmpty();
    assertThat(found.notes()).anyMatch(n -> n.startsWith("One generation"));
    assertThat(progressOfNothing().traits()).isEmpty();
  }

  private Progress progressOfNothing() {
    record.clear();
    return progress("");
  }

  /** A trait nobody aims at, measured on no check, is no reason to advise one. */
  @Test
  void noCheckIsAdvisedWhereTheGainAimedAtIsTold() {
    chosenIn2025();
    record.add("2025-05-12 sowed grey-1 as old-grey, 8 seeds");
    measured(2025, "old-grey", 7, 8, 7, 8, 7, 8, 7, 8);
    measured(2026, "grey-1", 8, 9, 8, 9, 8, 9, 8, 9);
    measured(2026, "new-gold", 9, 8, 9.4, 9.2, 8.6, 9.8);
    for (String plant : List.of("2025-09-01 picked old-gold", "2026-09-01 picked new-gold")) {
      record.add(plant + " plant 1, 1.2 kg");
      record.add(plant + " plant 2, 1.4 kg");
    }
    Progress found = progress("grow grey-1\n  in south\n  plants 9, 60 cm apart\n");
    assertThat(step(found).gain()).isPresent();
    assertThat(found.traits()).hasSizeGreaterThan(1);
    assertThat(found.notes()).noneMatch(n -> n.startsWith("Beside the next generation"));
    double realised = step(found).realised().orElseThrow().value();
    assertThat(realised).isNegative();
  }
}
