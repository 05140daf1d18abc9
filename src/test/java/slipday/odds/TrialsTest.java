package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.genetics.InheritedRatio;
import slipday.genetics.InheritedRatio.Grown;
import slipday.genetics.Segregation;
import slipday.odds.Trial.Verdict;

class TrialsTest {
  private static Trials all(Integer... counts) {
    return Trials.againstAll(List.of(counts), Optional.empty()).value().orElseThrow();
  }

  private static Trial trial(Trials trials, String ratio, Grown grown) {
    return trials.tried().stream()
        .filter(t -> InheritedRatio.text(t.parts()).equals(ratio))
        .filter(t -> t.ratio().orElseThrow().grown() == grown)
        .findFirst()
        .orElseThrow();
  }

  /** G. Mendel 1866, the seven traits of his peas (counts from memory; worked out again). */
  @ParameterizedTest
  @CsvSource({
    "5474, 1850, 0.2629",
    "6022, 2001, 0.0150",
    "705, 224, 0.3907",
    "882, 299, 0.0635",
    "428, 152, 0.4506",
    "651, 207, 0.3497",
    "787, 277, 0.6065"
  })
  void peasAgainstOneGene(int dominant, int recessive, double chiSquare) {
    Trial best = trial(all(dominant, recessive), "3:1", Grown.SELFED);
    assertThat(best.fit().chiSquare()).isCloseTo(chiSquare, within(5e-5));
    assertThat(best.fit().degreesOfFreedom()).isEqualTo(1);
    assertThat(best.verdict()).isEqualTo(Verdict.NOT_CONTRADICTED);
    assertThat(trial(all(dominant, recessive), "1:3", Grown.SELFED).verdict())
        .isEqualTo(Verdict.CONTRADICTED);
  }

  /** G. Mendel 1866, two traits together (from memory): of all ways round only his own stands. */
  @Test
  void peasAgainstTwoGenes() {
    Trials trials = all(315, 101, 108, 32);
    Trial best = trials.tried().get(0);
    assertThat(best.fit().chiSquare()).isCloseTo(0.4700, within(5e-5));
    assertThat(best.fit().degreesOfFreedom()).isEqualTo(3);
    assertThat(best.expected()).containsExactly(312.75, 104.25, 104.25, 34.75);
    assertThat(trials.tried().stream().filter(Trial::stands)).hasSize(1);
    assertThat(trials.partings()).isEmpty();
  }

  /**
   * Purple and white sweet peas, W. Bateson, E. R. Saunders and R. C. Punnett 1905 (counts from
   * memory): 9:7, where one gene is contradicted.
   */
  @Test
  void sweetPeasAgainstTwoGenesBothNeeded() {
    Trials trials = all(382, 269);
    assertThat(trial(trials, "9:7", Grown.SELFED).fit().chiSquare())
        .isCloseTo(1.5607, within(5e-5));
    assertThat(trial(trials, "9:7", Grown.SELFED).verdict()).isEqualTo(Verdict.NOT_CONTRADICTED);
    assertThat(trial(trials, "3:1", Grown.SELFED).verdict()).isEqualTo(Verdict.CONTRADICTED);
  }

  /** Linked genes, W. Bateson and others 1906, sweet peas (counts from memory): none stands. */
  @Test
  void linkedGenesLeaveNoneStanding() {
    Trials trials = all(284, 21, 21, 55);
    assertThat(trials.tried()).noneMatch(Trial::stands);
    assertThat(trials.remarks()).anyMatch(r -> r.startsWith("None stands") && r.contains("linked"));
  }

  @Test
  void whatStandsIsPartedByMorePlantsOrABackcross() {
    Trials trials =
        Trials.againstAll(List.of(23, 9), Optional.of(Grown.SELFED)).value().orElseThrow();
    assertThat(trials.tried()).allMatch(t -> t.ratio().orElseThrow().grown() == Grown.SELFED);
    assertThat(trials.partings())
        .anySatisfy(
            f -> {
              assertThat(InheritedRatio.text(f.one())).isEqualTo("3:1");
              assertThat(InheritedRatio.text(f.other())).isEqualTo("9:7");
              assertThat(f.again()).hasValue(67);
              assertThat(f.backcrossed()).hasValue(38);
            })
        .anySatisfy(
            f -> {
              assertThat(InheritedRatio.text(f.other())).isEqualTo("2:1");
              assertThat(f.backcrossed()).isEmpty();
            });
    assertThat(trials.remarks())
        .anyMatch(r -> r.contains("not proved"))
        .anyMatch(r -> r.contains("1 of 20 cases, however many are tried"));
  }

  /** All of four alike has a chance of 1 in 16 each way: nothing contradicts halves. */
  @Test
  void soFewPlantsContradictNothing() {
    Trial halves = trial(all(4, 0), "1:1", Grown.BACKCROSS);
    assertThat(halves.fit().probability()).isCloseTo(0.125, within(1e-9));
    assertThat(halves.verdict()).isEqualTo(Verdict.TOO_FEW);
    assertThat(all(4, 0).remarks()).anyMatch(r -> r.contains("so few plants"));
    assertThat(trial(all(6, 0), "1:1", Grown.BACKCROSS).verdict()).isEqualTo(Verdict.CONTRADICTED);
  }

  @Test
  void smallClassesAreDoneExactlyOrNotAtAll() {
    assertThat(all(12, 1, 3, 0).tried())
        .allMatch(
            t ->
                t.fit().method() == Segregation.Method.EXACT
                    || t.expected().stream().allMatch(e -> e >= 5));
    Trials rough = all(40, 2, 1, 0, 3, 4, 0, 1, 2);
    assertThat(rough.tried()).extracting(Trial::verdict).containsOnly(Verdict.NOT_JUDGED);
    assertThat(rough.remarks()).anyMatch(r -> r.contains("put classes together"));
  }

  @Test
  void oneRatioClassByClass() {
    Trials trials = Trials.against(List.of(30, 10), List.of(5, 3)).value().orElseThrow();
    assertThat(trials.tried()).singleElement().matches(t -> t.ratio().isEmpty());
    assertThat(trials.tried().get(0).expected()).containsExactly(25.0, 15.0);
  }

  @Test
  void whatCannotBeTriedIsSaid() {
    assertThat(Trials.against(List.of(1, 2), List.of(1, 2, 1)).refusal())
        .contains("1:2 has 2 classes and 1:2:1 has 3.");
    assertThat(Trials.against(List.of(1, 2), List.of(3, 0)).refusal()).isPresent();
    assertThat(Trials.againstAll(List.of(7), Optional.empty()).refusal()).isPresent();
    assertThat(Trials.againstAll(List.of(0, 0), Optional.empty()).refusal()).isPresent();
    assertThat(Trials.againstAll(List.of(1, 1, 1, 1, 1, 1, 1), Optional.empty()).refusal())
        .isPresent();
    assertThat(Trials.againstAll(List.of(9_999_999, 1), Optional.empty()).refusal()).isPresent();
  }
}
