package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalInt;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.caution.Caution;
import slipday.output.data.LabelsData;
import slipday.season.Season;
import slipday.seed.SeedBox;

/** What gives way on a label, and that a caution never does. */
class LabelPageTest {
  private static final String LONG_NAME = "squash-from-the-fence-by-the-barn-x";
  private static final String LONG_TITLE =
      "Found by the fence beside the old barn after the long wet summer, striped, and grown again"
          + " from what the birds left";

  static Stream<LabelSheet> sheets() {
    return Stream.concat(LabelSheet.READY.stream(), Stream.of(small()));
  }

  private static LabelSheet small() {
    return LabelSheet.plain(false, LabelSheet.LEAST_WIDTH, LabelSheet.LEAST_HEIGHT).orElseThrow();
  }

  /** A packet whose seed nobody knows the father of. */
  private static LabelsData packet(String name, String title) {
    String plan =
        """
        season 2026
        site hill
          place 44.21 N, 72.58 W
          time zone America/New_York
          last frost 18 May, 1 in 10 after 30 May
          first frost 27 September, 1 in 10 before 14 September
        line squash "%s"
          is a acorn-squash
          purpose to keep
        lot %s
          of squash
          seeds 40
          harvested 2024
          identity unknown
        """;
    Season season =
        Gardens.checked(String.format(plan, title, name))
            .season()
            .orElseThrow(() -> new AssertionError("no season"));
    return LabelsData.of(
        "plan.season", season, SeedBox.lots(season.garden(), OptionalInt.empty()), false, 0);
  }

  private static String label(LabelsData data, LabelSheet sheet) {
    String page = LabelPage.html(data, sheet, 0);
    return StringUtils.substringBetween(page, "<div class=\"words\">", "</div>");
  }

  @ParameterizedTest
  @MethodSource("sheets")
  void theCautionStandsRightAfterTheName(LabelSheet sheet) {
    assertThat(label(packet(LONG_NAME, LONG_TITLE), sheet))
        .startsWith(
            "\n<p class=\"name\"><bdi>"
                + LONG_NAME
                + "</bdi></p>\n<p class=\"caution\">"
                + Caution.ON_A_LABEL.words()
                + "</p>\n");
  }

  @Test
  void whereNotAllHasRoomTheTitleGivesWayAndTheFactsStay() {
    LabelSheet sheet = LabelSheet.named("a4-65").orElseThrow();
    LabelsData data = packet(LONG_NAME, LONG_TITLE);
    assertThat(label(data, sheet))
        .contains("<bdi>Found by the fence", "…</bdi>", "identity in doubt", "40 seeds")
        .doesNotContain("what the birds left");
    assertThat(LabelPage.tooLong(data, sheet)).isEmpty();
    assertThat(label(data, LabelSheet.named("a4-21").orElseThrow())).contains(LONG_TITLE);
  }

  @Test
  void whereNameAndCautionFillTheLabelNothingElseIsOnIt() {
    LabelsData data = packet(LONG_NAME, LONG_TITLE);
    assertThat(label(data, small())).doesNotContain("Found", "identity", "40 seeds");
    assertThat(LabelPage.tooLong(data, small())).containsExactly(LONG_NAME);
    assertThat(LabelPage.tooLong(packet("barn-x", LONG_TITLE), small())).isEmpty();
  }

  @Test
  void aTitleThatIsShortStaysWhole() {
    for (LabelSheet sheet : LabelSheet.READY) {
      assertThat(label(packet("barn-x", "Barn Cross"), sheet)).contains("<bdi>Barn Cross</bdi>");
    }
  }
}
