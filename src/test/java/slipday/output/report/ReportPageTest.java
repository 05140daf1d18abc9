package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import slipday.app.Checked;

/** What the page says where a garden is out of the common. */
class ReportPageTest {
  private static final String SITE =
      """
      season 2026
      site hill
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed strip
        size 300 m x 2 m
      """;

  private static String page(String plan) {
    Checked checked = Gardens.checked(SITE + plan);
    LocalDate day = LocalDate.of(2026, 10, 30);
    return ReportPage.html(
        new ReportPage.Subject(
            "plan.season",
            checked.season().orElseThrow(() -> new AssertionError(checked.findings())),
            checked.findings(),
            checked.files(),
            day,
            true,
            () -> Breeding.of(checked.garden().orElseThrow().asOf(day))));
  }

  private static String section(String page, String id) {
    return StringUtils.substringBetween(page, "id=\"" + id + "\"", "</section>");
  }

  private static String grown(String name, String... more) {
    return "line "
        + name
        + "\n  is a muskmelon\n  purpose to keep\nlot "
        + name
        + "-f3\n  of "
        + name
        + "\n  generation F3\n  seeds 200\n  harvested 2025\ngrow "
        + name
        + "-f3\n  in strip\n  plants 6\n"
        + String.join("", List.of(more).stream().map(m -> "  " + m + "\n").toList());
  }

  private static final String SELFED =
      "flowers cover the chosen\n  pollinate self by hand, for 6 fruits from 4 plants or more";

  private static final String MARKED =
      """

      2026-07-08 selfed one-f3 plant 1, tag 1A
      2026-07-18 took 1A
      """;

  @Test
  void whyIsToldOfTheFirstFindingsAndTheOthersAreCounted() {
    StringBuilder plan = new StringBuilder(grown("kept", "flowers open", "seed saved"));
    IntStream.range(0, 8).forEach(i -> plan.append(grown("kin-" + i, "flowers open")));
    assertThat(page(plan.toString())).contains("And 7 more like it; why is told of the first 6.");
    StringBuilder fewer = new StringBuilder(grown("kept", "flowers open", "seed saved"));
    IntStream.range(0, 3).forEach(i -> fewer.append(grown("kin-" + i, "flowers open")));
    assertThat(page(fewer.toString())).contains("And 2 more like it.\"");
  }

  @Test
  void ofMarkedFruitWithoutAGoalItSaysWhatToWrite() {
    String candidates = section(page(grown("one", SELFED, "seed saved") + MARKED), "candidates");
    assertThat(candidates)
        .contains("The plan sets no goal for <code>one</code>", "<code>goal one</code>")
        .doesNotContain("class=\"legend\"");
  }

  @Test
  void ofMarkedFruitThatIsNotMeasuredItSaysWhatToDo() {
    String goal = "goal one\n  raise sweetness to 13 brix\n";
    String page = page(grown("one", SELFED, "seed saved") + goal + MARKED);
    assertThat(section(page, "candidates")).contains("weigh, taste and write it down");
    assertThat(page).doesNotContain("id=\"generations\"", "<p></p>");
  }

  @Test
  void oneOfEachIsToldAsOne() {
    String self =
        "flowers cover the chosen\n  pollinate self by hand, for 1 fruit from 1 plant or more";
    String work = section(page(grown("one", self, "seed saved")), "pollination");
    assertThat(work)
        .contains(
            "1 fruit wanted from 1 plant or more, 0 set. ", "Stop when 1 marked fruit has set")
        .doesNotContain("1 fruits", "1 plants", "1 flowers", "1 marked fruits");
  }

  @Test
  void namesInNotesAreMarkedAsNames() {
    String page = page(grown("kept", "flowers open", "seed saved") + "bed nook\n");
    assertThat(section(page, "garden")).contains("<code>nook</code> is not drawn");
  }

  @Test
  void theSignsOfALineStandTogetherAndHaveNames() {
    String page =
        page(grown("kept", "flowers open", "seed saved", "pollinate self by hand, for 2 fruits"));
    String marks = StringUtils.substringBetween(page, "<span class=\"marks\">", "<code>");
    assertThat(marks)
        .containsPattern(
            "<span class=\"mark (\\w+)\" title=\"\\1: ([a-z-]+)\"><span aria-hidden=\"true\">[▲◆○]</span>"
                + "<span class=\"unseen\">\\1: \\2. </span></span>");
    assertThat(StringUtils.countMatches(page, "<span class=\"marks\">"))
        .isLessThanOrEqualTo(StringUtils.countMatches(page, "<span class=\"n\">"));
  }

  @Test
  void lotsWithoutADescentAreNamedUpToALimit() {
    StringBuilder plan = new StringBuilder(grown("one", SELFED, "seed saved"));
    IntStream.range(0, 25)
        .forEach(i -> plan.append("lot spare-" + (10 + i) + "\n  of one\n  seeds 9\n"));
    String descent = section(page(plan + MARKED), "descent");
    assertThat(descent)
        .contains("Of 25 lots neither parents", "spare-29, and 5 more among the seed in hand.")
        .doesNotContain("spare-30");
  }
}
