package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.output.Hostile;

class ReportCommandTest {
  private static final String PLAN = "plans/tern-hollow/plan.season";

  private static final String RECORDED = "plans/tern-hollow/recorded.season";

  /** When the recorded year is over. */
  private static final Map<String, String> YEAR_OVER = Map.of("SOURCE_DATE_EPOCH", "1798600000");

  @TempDir Path folder;

  private static String page(String plan) {
    Run run = Run.in(Path.of(""), "report", plan, "--date", "2026-07-08");
    assertThat(run.exit()).isNotEqualTo(Exit.UNUSABLE);
    return run.out();
  }

  @Test
  void theExampleGardenFitsIntoOneMegabyte() {
    String page = page(PLAN);
    assertThat(page.getBytes(StandardCharsets.UTF_8).length).isLessThan(1_000_000);
    assertThat(page).startsWith("<!DOCTYPE html>").contains("Tern Amber", "As of 8 Jul.");
    Run over = Run.in(Path.of(""), new byte[0], YEAR_OVER, false, "report", RECORDED);
    assertThat(over.out().getBytes(StandardCharsets.UTF_8).length).isLessThan(1_000_000);
  }

  @Test
  void descentIsDrawnAndListed() {
    Run run =
        Run.in(
            Path.of(""), new byte[0], YEAR_OVER, false, "report", RECORDED, "--date", "2026-10-30");
    String descent = StringUtils.substringBetween(run.out(), "id=\"descent\"", "</section>");
    assertThat(descent)
        .contains("class=\"mother\"", "class=\"father\"", ">seed parent<", ">pollen parent<")
        .contains("18 fruits, selfed", ">18 lots, F4<", "fruit 24B, crossed of ropewalk-2023 by ")
        .contains("neither parents nor offspring are recorded: tern-amber-f2, ");
    assertThat(StringUtils.countMatches(descent, "class=\"mother\""))
        .as("each fruit has both its parents")
        .isEqualTo(StringUtils.countMatches(descent, "class=\"father\""));
  }

  @Test
  void whatIsNotRecordedYetIsNotThere() {
    Run run =
        Run.in(
            Path.of(""), new byte[0], YEAR_OVER, false, "report", RECORDED, "--date", "2026-07-20");
    assertThat(run.out()).contains("27 fruits, selfed").doesNotContain("<bdi>tern-amber-f4-1A");
  }

  @Test
  void pollenThatNobodyKnowsIsSaid() throws IOException {
    Files.writeString(
        folder.resolve("plan.season"),
        """
        season 2026
        site hill
          place 44.21 N, 72.58 W
          time zone America/New_York
          last frost 18 May, 1 in 10 after 30 May
          first frost 27 September, 1 in 10 before 14 September
        line smooth
          is a muskmelon
        lot smooth-a
          of smooth
        2025-04-01 sowed smooth-a, 20 seeds
        2025-09-01 saved smooth-a plant 1, 50 seeds, into smooth-b
        """);
    Run run = Run.in(folder, "report", "plan.season", "--date", "2026-07-08");
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains(">pollen unknown<", "unmarked fruit, open of smooth-a by pollen nobody knows");
  }

  @Test
  void theSameIsWrittenTwice() {
    assertThat(page(PLAN)).isEqualTo(page(PLAN));
  }

  @Test
  void nothingOnItLeadsOutside() {
    assertThat(page(PLAN))
        .contains("default-src &#39;none&#39;;")
        .doesNotContainPattern("(?i)(src|href|action)=\"(?!#|data:,)")
        .doesNotContainPattern("(?i)url\\((?!#)|@import|fetch\\(|XMLHttpRequest|<base|<form");
  }

  @Test
  void everyLinkLeadsSomewhereOnIt() {
    String page = page(PLAN);
    Matcher link = Pattern.compile("href=\"#([^\"]+)\"").matcher(page);
    assertThat(link.results().map(r -> r.group(1)).distinct().toList())
        .hasSizeGreaterThan(10)
        .allSatisfy(id -> assertThat(page).contains(" id=\"" + id + "\""));
  }

  @Test
  void whatRulesFoundStandsWithItsPlace() {
    String page = page("plans/tern-hollow/muddle.season");
    assertThat(page)
        .contains("seed-open-to-crossing", "Seed in danger", "class=\"danger\"")
        .contains("muddle.season:");
    String shown = StringUtils.substringBetween(page, "<main>", "</main>");
    assertThat(shown).contains("<p class=\"note\"><code>").doesNotContain("&#x60;");
  }

  @Test
  void namesFullOfMarkupAreText() throws IOException {
    Path plan = folder.resolve("plan.season");
    Files.writeString(plan, Hostile.PLAN);
    Run run = Run.in(folder, "report", "plan.season", "--date", "2026-07-08");
    assertThat(run.exit()).as(run.err()).isNotEqualTo(Exit.UNUSABLE);
    assertThat(run.out()).contains("&lt;script&gt;").doesNotContain(Hostile.SCRIPT, "<img");
    List<String> scripts =
        Pattern.compile("<script").matcher(run.out()).results().map(r -> r.group()).toList();
    assertThat(scripts).hasSize(2);
  }

  @Test
  void itIsWrittenWhereItIsAskedFor() throws IOException {
    Files.writeString(folder.resolve("plan.season"), Hostile.PLAN);
    Run run = Run.in(folder, "report", "plan.season", "-o", "page.html");
    assertThat(run.out()).matches("page\\.html: \\d+ kB\\.\n");
    assertThat(folder.resolve("page.html")).content().endsWith("</html>\n");
  }

  @Test
  void withoutASeasonThereIsNoPage() throws IOException {
    Files.writeString(folder.resolve("plan.season"), "season 2026\nbed x\nbed x\n");
    Run run = Run.in(folder, "report", "plan.season", "-o", "page.html");
    assertThat(run.exit()).isEqualTo(Exit.FINDINGS);
    assertThat(run.err()).contains("name-twice");
    assertThat(folder.resolve("page.html")).doesNotExist();
  }

  @Test
  void aDayThatIsNoneIsSaid() {
    Run run = Run.in(Path.of(""), "report", PLAN, "--date", "8 July");
    assertThat(run.exit()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.err()).contains("--date takes a day");
  }
}
