package slipday.garden.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.finding.Finding;
import slipday.garden.Goal;

class GoalsTest {
  private static List<Finding> findings(String... clauses) {
    return Recorded.outcome(
            Recorded.PLAN + "goal amber\n  " + String.join("\n  ", clauses) + "\n", List.of())
        .findings();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "raise sweetness to 13 brix, matters 5",
        "raise Sweetness to 13 brix",
        "lower days to ripe to 36 days",
        "lower days to ripe to 36",
        "keep fruit weight at 1.2 kg to 1.8 kg",
        "keep weight at 800 g to 1 kg",
        "keep fruits per plant at 3 or more",
        "raise flavour to 8",
        "raise net density to 5",
        "keep length at 20 cm to 9 inch"
      })
  void anAimThatFits(String clause) {
    assertThat(findings(clause)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "raise sweetnes to 13 brix|unknown-name|There is no trait `sweetnes`.|Did you mean"
            + " `sweetness`?",
        "raise wingspan to 3|unknown-name|There is no trait `wingspan`.|Declare it with a line such"
            + " as `trait wingspan`, and record it.",
        "raise sweetness to 13|unit-missing|`13` does not give `sweetness` its unit.|Write which:"
            + " brix.",
        "raise sweetness to 13 kg|unit-wrong|`sweetness` is not measured in `kg`.|It takes brix.",
        "raise flavour to 8 kg|unit-wrong|`flavour` is not measured in `kg`.|Give it a bare"
            + " number.",
        "raise net density to 7|off-scale|`7` is not on the scale of `net density`.|It goes from 0"
            + " to 5.",
        "keep weight at 1.2 kg to 900 g|range-backwards|The first figure of `1.2 kg to 900 g` is"
            + " larger than the second.|Write the smaller one first.",
        "keep weight at 1.2 kg to 5|unit-missing|`5` does not give `weight` its unit.|Write which:"
            + " kg, g, lb or oz."
      })
  void anAimThatDoesNot(String clause, String rule, String message, String help) {
    List<Finding> findings = findings(clause);
    assertThat(findings).hasSize(1);
    assertThat(findings.get(0).rule()).isEqualTo(rule);
    assertThat(findings.get(0).message()).isEqualTo(message);
    assertThat(findings.get(0).help()).isEqualTo(help);
  }

  @Test
  void aTraitIsAimedAtOnce() {
    List<Finding> findings =
        findings("raise sweetness to 13 brix", "keep Sweetness at 10 brix to 12 brix");
    assertThat(findings).extracting(Finding::rule).containsExactly("said-twice");
    assertThat(findings.get(0).others()).hasSize(1);
  }

  /** Weight is fruit weight by a shorter name. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "raise weight to 2 kg|keep fruit weight at 1 kg to 2 kg",
        "heritability weight 0.4 of a fruit, in melon, F2|heritability fruit weight 0.3 of a fruit,"
            + " in melon, F2",
        "refuse cracked in more than 1 in 3 fruits|refuse Cracked",
      })
  void nothingIsSaidTwice(String one, String again) {
    List<Finding> findings = findings("raise sweetness to 13 brix", one, again);
    assertThat(findings).extracting(Finding::rule).containsExactly("said-twice");
    assertThat(findings.get(0).place().orElseThrow().span().plainText()).isEqualTo(again);
    assertThat(findings.get(0).others()).hasSize(1);
  }

  /** A number of plants or fruits that what it was found of has none of. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a fruit of 6 plants|no number of plants|6",
        "a fruit of 3 fruits|no number of fruits|3",
        "plant means of 6 plants|no number of plants|6",
        "plot means of 6 plants|''|''",
        "plot means of 6 plants of 2 fruits|''|''",
        "plant means of 3 fruits|''|''",
      })
  void aHeritabilityIsOfWhatItSays(String of, String message, String where) {
    List<Finding> findings =
        findings(
            "raise sweetness to 13 brix", "heritability sweetness 0.4 of " + of + ", in melon, F3");
    if (message.isEmpty()) {
      assertThat(findings).isEmpty();
    } else {
      assertThat(findings).extracting(Finding::rule).containsExactly("figure-out-of-range");
      assertThat(findings.get(0).message()).contains(message);
      assertThat(findings.get(0).help()).contains("of plot means of 6 plants");
      assertThat(findings.get(0).place().orElseThrow().span().text()).startsWith(where);
    }
  }

  @Test
  void whatIsAimedAtIsRead() {
    Goal goal =
        Recorded.outcome(
                Recorded.PLAN
                    + "goal amber\n"
                    + "  keep fruit weight at 1.2 kg to 1.8 kg, matters 2\n"
                    + "  keep fruits per plant at 3 or more\n"
                    + "  refuse cracked in more than 1 in 3 fruits\n"
                    + "  refuse split in more than 2 of its fruits\n"
                    + "  refuse off-type\n"
                    + "  parents 4 or more\n",
                List.of())
            .value()
            .orElseThrow()
            .goals()
            .get(0);
    assertThat(goal.aims()).hasSize(2);
    assertThat(goal.aims().get(0).to().orElseThrow().quantity().orElseThrow().base())
        .isEqualTo(1.8);
    assertThat(goal.aims().get(0).weight()).isEqualTo(2);
    assertThat(goal.aims().get(1).orMore()).isTrue();
    assertThat(goal.refuse())
        .extracting(Goal.Refusal::fault)
        .containsExactly("cracked", "split", "off-type");
    assertThat(goal.refuse().get(0).share().orElseThrow()).isCloseTo(1.0 / 3, within(1e-12));
    assertThat(goal.refuse().get(1).count()).contains(2);
    assertThat(goal.refuse().get(2).share()).isEmpty();
    assertThat(goal.refuse().get(2).count()).isEmpty();
    assertThat(goal.parents()).contains(4);
  }

  @Test
  void traitsOfHeritabilitiesAndCorrelationsAreLookedUpToo() {
    List<Finding> findings =
        findings(
            "raise sweetness to 13 brix",
            "heritability sweetnes 0.4 of a fruit, in melon, F2",
            "genetic correlation 0.3 of sweetness, fruit weigth");
    assertThat(findings)
        .extracting(Finding::help)
        .containsExactly("Did you mean `sweetness`?", "Did you mean `fruit weight`?");
  }

  /** What a pair is and that all pairs can be so at once. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "genetic correlation 1 of sweetness, fruit weight | one and the same",
        "environmental correlation -1.2 of sweetness, fruit weight | It goes from -1",
        "genetic correlation 0.2 of fruit weight, weight | Name the other trait",
      })
  void impossibleCorrelationsAreRefused(String line, String help) {
    assertThat(findings("raise sweetness to 13 brix", line))
        .extracting(Finding::rule)
        .containsExactly("figure-out-of-range");
    assertThat(findings("raise sweetness to 13 brix", line).get(0).help()).contains(help);
  }

  @Test
  void aPairIsStatedOnce() {
    assertThat(
            findings(
                "raise sweetness to 13 brix",
                "genetic correlation 0.2 of sweetness, fruit weight",
                "environmental correlation 0.2 of sweetness, fruit weight",
                "genetic correlation 0.3 of fruit weight, sweetness"))
        .extracting(Finding::rule)
        .containsExactly("said-twice");
  }

  @Test
  void correlationsThatCannotAllBeSoAreRefusedWhereTheLastIs() {
    String[] lines = {
      "raise sweetness to 13 brix",
      "genetic correlation 0.9 of sweetness, fruit weight",
      "genetic correlation 0.9 of sweetness, days to ripe",
      "genetic correlation -0.9 of fruit weight, days to ripe"
    };
    Finding finding = findings(lines).get(0);
    assertThat(finding.rule()).isEqualTo("figure-out-of-range");
    assertThat(finding.message()).contains("can't all be so");
    assertThat(finding.place().orElseThrow().span().plainText()).isEqualTo(lines[3]);
    lines[3] = lines[3].replace("-0.9", "0.9");
    assertThat(findings(lines)).isEmpty();
    // Without the third line that pair counts as 0, which can't be either.
    lines[3] = "parents 4 or more";
    assertThat(findings(lines).get(0).help()).contains("not named count as 0");
  }

  @ParameterizedTest
  @CsvSource({"per standard deviation, DEVIATION", "per unit, UNIT", "by what is lacking, LACKING"})
  void weightsAreTold(String words, Goal.Weighing weighing) {
    String goal = "goal amber\n  raise flavour to 8\n  weights " + words + "\n";
    assertThat(
            Recorded.outcome(Recorded.PLAN + goal, List.of()).value().orElseThrow().goals().get(0))
        .extracting(Goal::weighing)
        .isEqualTo(weighing);
  }
}
