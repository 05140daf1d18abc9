package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.finding.Finding;

/** What is said of a name that nothing has. */
class UnknownNamesTest {
  private static List<Finding> unknown(String... lines) {
    String plan =
        """
        season 2026
        site home
          place          44.21 N, 72.58 W
          time zone      America/New_York
          last frost     18 May, 1 in 10 after 30 May
          first frost    27 September, 1 in 10 before 14 September
        """;
    return Plans.of(Plans.check(plan + String.join("\n", lines) + "\n"), "unknown-name");
  }

  private static String help(String crop) {
    List<Finding> found = unknown("line ember", "  is a " + crop);
    assertThat(found).hasSize(1);
    return found.get(0).help();
  }

  @Test
  void aSpeciesIsToldFromItsCrops() {
    assertThat(help("cucumber"))
        .isEqualTo(
            "`cucumber` is a species; its crops are `slicing-cucumber`, `pickling-cucumber`,"
                + " `lemon-cucumber`, `beit-alpha`, `wild-cucumber`.");
  }

  @Test
  void namesThatHoldTheWordAreOffered() {
    assertThat(help("acorn")).isEqualTo("Did you mean `acorn-squash`?");
    assertThat(help("pumpkin"))
        .isEqualTo(
            "Did you mean `carving-pumpkin`, `cheese-pumpkin`, `giant-pumpkin`,"
                + " `hull-less-pumpkin` or `tropical-pumpkin`?");
    assertThat(
            unknown(
                "bed south",
                "  size 3 m x 1 m",
                "allow same-family",
                "  in south",
                "  because \"of water\""))
        .extracting(Finding::help)
        .containsExactly("Did you mean `same-family-again`?");
  }

  @Test
  void theCommandThatListsThemIsNamedWhereNothingIsNear() {
    assertThat(help("quagga")).startsWith("Known: ").endsWith(" `slipday crops` lists them all.");
    assertThat(unknown("bed south", "  size 3 m x 1 m", "allow quagga", "  in south"))
        .extracting(Finding::help)
        .singleElement()
        .asString()
        .endsWith(" `slipday explain` lists them all.");
  }

  @Test
  void aLotMisspeltByACapitalIsToldOnce() {
    assertThat(
            unknown(
                "line ember",
                "  is a muskmelon",
                "lot ember-24",
                "  of ember",
                "lot ash-24",
                "  of ember",
                "grow Ember-24",
                "  plants 4",
                "grow ash-24",
                "  plants 4",
                "cross one",
                "  seed parent ember-24",
                "  pollen parent ash-24"))
        .extracting(f -> f.place().orElseThrow().span().text())
        .containsExactly("Ember-24");
  }
}
