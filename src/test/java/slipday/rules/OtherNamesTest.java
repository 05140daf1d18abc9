package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.app.Checked;
import slipday.finding.Finding;
import slipday.finding.Level;

/** What crops are called besides their names. */
class OtherNamesTest {
  private static Checked check(String... lines) {
    String plan =
        """
        season 2026
        site home
          place          44.21 N, 72.58 W
          time zone      America/New_York
          last frost     18 May, 1 in 10 after 30 May
          first frost    27 September, 1 in 10 before 14 September
        """;
    return Plans.check(plan + String.join("\n", lines) + "\n");
  }

  private static List<Finding> errors(String... lines) {
    return check(lines).findings().stream().filter(f -> f.level() == Level.ERROR).toList();
  }

  /** What a line called by a word is taken for. */
  private static String crop(String word, String... lines) {
    Checked checked = check(String.join("\n", lines), "line ember", "  is a " + word);
    assertThat(checked.findings()).noneMatch(f -> f.level() == Level.ERROR);
    return checked.garden().orElseThrow().lines().get(0).crop().name();
  }

  @Test
  void aWordThatMeansOneCropIsTakenForItsName() {
    assertThat(crop("zucchini")).isEqualTo("courgette");
    assertThat(crop("aubergine")).isEqualTo("eggplant");
  }

  @Test
  void soIsItWhereACropIsSaidToGrow() {
    Checked checked =
        check(
            "bed south",
            "  size 3 m x 1 m",
            "  grew aubergine in 2025",
            "neighbour north",
            "  grows ornamental-gourd, zucchini",
            "line ember",
            "  is a zucchini",
            "  began 2020, from ash by an unnamed pattypan",
            "lot ember-25",
            "  of ember",
            "  exposed to ornamental-gourd");
    assertThat(checked.findings()).noneMatch(f -> f.level() == Level.ERROR);
    assertThat(checked.garden().orElseThrow().outsiders().get(0).crops())
        .extracting(c -> c.value().name())
        .containsExactly("pepo-gourd", "courgette");
  }

  @Test
  void aPlansOwnCropHasWordsToo() {
    String[] own = {"crop ridge-melon", "  of melon", "  also called ridgey"};
    assertThat(crop("ridgey", own)).isEqualTo("ridge-melon");
    assertThat(crop("zuke", "crop courgette", "  also called zuke")).isEqualTo("courgette");
    assertThat(crop("zucchini", "crop courgette", "  also called zuke")).isEqualTo("courgette");
  }

  @Test
  void whatThePlanSaysComesFirst() {
    assertThat(crop("cantaloupe", "crop charentais", "  also called cantaloupe"))
        .isEqualTo("charentais");
    assertThat(crop("zucchini", "crop scallop", "  also called zucchini")).isEqualTo("scallop");
    assertThat(crop("zucchini", "crop zucchini", "  of pepo")).isEqualTo("zucchini");
  }

  @Test
  void twoCropsAreNotCalledByOneWordAlone() {
    List<Finding> found =
        errors(
            "crop ridge-melon",
            "  of melon",
            "  also called ridgey",
            "crop ridge-squash",
            "  of pepo",
            "  also called ridgey, in Europe");
    assertThat(found).extracting(Finding::rule).containsExactly("name-twice");
    assertThat(found.get(0).message())
        .isEqualTo("Two crops are called `ridgey`, and one of them alone.");
    assertThat(found.get(0).place().orElseThrow().span().line()).isEqualTo(12);
    assertThat(found.get(0).others().get(0).span().line()).isEqualTo(9);
  }

  @Test
  void twoMayBeWhereEachSaysWhere() {
    assertThat(
            errors(
                "crop ridge-melon",
                "  of melon",
                "  also called ridgey, in Asia",
                "crop ridge-squash",
                "  of pepo",
                "  also called ridgey, in Europe"))
        .isEmpty();
  }

  @Test
  void aCropsNameIsNoOtherWordForAnother() {
    assertThat(errors("crop ridge-melon", "  of melon", "  also called honeydew"))
        .extracting(Finding::message)
        .containsExactly("`honeydew` is the name of a crop already.");
  }

  @Test
  void aFactIsSaidUnderTheNameItself() {
    List<Finding> found = errors("crop zucchini", "  ripe 3 days after pollination");
    assertThat(found).extracting(Finding::rule).containsExactly("clause-missing");
    assertThat(found.get(0).help()).contains("write `crop courgette`");
  }
}
