package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.finding.Finding;

/** What is said of a name that nothing has. */
class UnknownNamesTest {
  private static List<Finding> unknown(String... lines) {
    return check(List.of(lines)).stream().filter(f -> f.rule().equals("unknown-name")).toList();
  }

  private static List<Finding> check(List<String> lines) {
    String plan =
        """
        season 2026
        site home
          place          44.21 N, 72.58 W
          time zone      America/New_York
          last frost     18 May, 1 in 10 after 30 May
          first frost    27 September, 1 in 10 before 14 September
        """;
    return Plans.check(plan + String.join("\n", lines) + "\n").findings();
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
  void aWordForSeveralCropsIsAskedAbout() {
    assertThat(help("cantaloupe"))
        .isEqualTo(
            "`cantaloupe` may be `muskmelon` (in North America) or `charentais` (in Europe): write"
                + " which.");
    assertThat(help("cantalope")).isEqualTo(help("cantaloupe"));
    assertThat(help("summer-squash"))
        .isEqualTo(
            "`summer-squash` may be `courgette`, `straightneck`, `crookneck` or `scallop`: write"
                + " which.");
    assertThat(help("marrow"))
        .isEqualTo("`marrow` may be `courgette` (in Britain): if it is, write that.");
    assertThat(unknown("line ember", "  is a maize").get(0).mends())
        .extracting(m -> m.edits().get(0).text())
        .containsExactly("sweet-corn", "dent-corn", "flint-corn", "popcorn");
  }

  @Test
  void aNameLongerThanTheCropsIsUnderstood() {
    assertThat(help("butternut-squash")).isEqualTo("Did you mean `butternut`?");
    assertThat(help("cherry-tomato"))
        .startsWith("If it is a kind of `tomato` (Solanum lycopersicum), write that.");
    assertThat(help("broad-bean"))
        .startsWith("If it is of Phaseolus vulgaris, write which: `snap-bean` or `dry-bean`.");
  }

  @Test
  void theNameOfAClockLeadsToItsZone() {
    String plan = "season 2026\nsite home\n  place 44.21 N, 72.58 W\n  time zone %s\n";
    for (String zone :
        List.of("EST:America/New_York", "CEST:Europe/Berlin", "nzdt:Pacific/Auckland")) {
      String[] pair = zone.split(":");
      assertThat(Plans.of(Plans.check(plan.formatted(pair[0])), "unknown-name"))
          .extracting(Finding::help)
          .containsExactly("Did you mean `" + pair[1] + "`?");
    }
    assertThat(Plans.of(Plans.check(plan.formatted("Europe/Berln")), "unknown-name"))
        .extracting(Finding::help)
        .containsExactly("Did you mean `Europe/Berlin`?");
  }

  @Test
  void anAllowanceIsJudgedBesideOtherMistakes() {
    assertThat(
            unknown(
                "line ember", "  is a quagga", "allow quagga", "  in ember", "  because \"so\""))
        .extracting(Finding::message)
        .contains("There is no rule `quagga`.");
  }

  @Test
  void aNameInTwoWordsIsToldOnceAndNotWhereItIsMeant() {
    assertThat(
            unknown(
                "line ember", "  is a muskmelon", "lot ember 24", "  of ember", "grow ember-24"))
        .isEmpty();
    assertThat(unknown("line sea ember", "  is a muskmelon", "lot ember-24", "  of sea-ember"))
        .isEmpty();
  }

  @Test
  void aMistakenThingIsStillOneThatCanBeMeant() {
    assertThat(unknown("line ember", "  is a quagga", "lot ember-24", "  of embr"))
        .extracting(Finding::help)
        .contains("Did you mean `ember`?");
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

  /** The words that are told of as unknown, in their order. */
  private static List<String> told(String... lines) {
    String[] garden = {
      "line ember",
      "  is a muskmelon",
      "lot ember-25",
      "  of ember",
      "grow ember-25",
      "2026-07-08 sibbed ember-25 plant 3 by plant 5, tag 3A"
    };
    List<String> all = new ArrayList<>(List.of(garden));
    all.addAll(List.of(lines));
    return check(all).stream()
        .filter(f -> f.rule().startsWith("unknown-"))
        .map(f -> f.place().orElseThrow().span().text())
        .toList();
  }

  @Test
  void everyWrongNameOfALineIsTold() {
    assertThat(told("2026-08-20 scored 9Z, tecture 3 of 5, colur 2 of 5"))
        .containsExactly("9Z", "tecture", "colur");
    assertThat(told("2026-06-10 moved embr-25 plant 3, to norrh"))
        .containsExactly("embr-25", "norrh");
    assertThat(told("2026-08-22 saved 9Z, 30 seeds, into ember-26, of embr"))
        .containsExactly("9Z", "embr");
    assertThat(told("2026-07-08 crossed emb-25 by emc-25, tag 4A"))
        .containsExactly("emb-25", "emc-25");
    assertThat(told("goal ember", "  heritability swetness 0.4 of plant means, in mellon, F2"))
        .containsExactly("swetness", "mellon");
  }

  @Test
  void whatHasALineOfItsOwnIsNoTrait() {
    List<String> lines =
        List.of(
            "line ember",
            "  is a muskmelon",
            "lot ember-25",
            "  of ember",
            "grow ember-25",
            "2026-08-20 measured ember-25 plant 3, weight 1.2 kg, sweetness 12 brix");
    assertThat(check(lines))
        .filteredOn(f -> f.rule().equals("unknown-name"))
        .extracting(Finding::help)
        .satisfiesExactly(
            help -> assertThat(help).contains(" weighed ").doesNotContain("height"),
            help -> assertThat(help).contains(" sweetness 3A, 12.4 brix`"));
  }

  @Test
  void aWrongNameHidesNoneOnTheLinesUnderIt() {
    assertThat(told("goal embr", "  raise swetness to 13 brix", "  keep colur at 3 to 4"))
        .containsExactly("embr", "swetness", "colur");
    assertThat(
            told("line ash", "  is a muskmellon", "  ripe 40 days after pollination, says noone"))
        .containsExactly("muskmellon", "noone");
    assertThat(told("lot ash-25", "  of ash", "  exposed to pepo-gurd"))
        .containsExactly("ash", "pepo-gurd");
    assertThat(told("grow ash-25", "  in norrh", "  flowers caged with oak-25 and elm-25"))
        .containsExactly("ash-25", "norrh", "oak-25", "elm-25");
    assertThat(told("crop own", "  of mellon", "  ripe 40 days after pollination, says noone"))
        .containsExactly("mellon", "noone");
    assertThat(told("allow same-familly", "  in nowhere"))
        .containsExactly("same-familly", "nowhere");
  }
}
