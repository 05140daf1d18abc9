package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.output.Hostile;
import slipday.outside.Browser;
import slipday.outside.OutsideTools;

/** Labels as printed, and their codes as another library reads them. */
class LabelsInBrowserTest {
  private static final String PLAN = "plans/tern-hollow/recorded.season";

  /** When the recorded year is over. */
  private static final Map<String, String> DECEMBER = Map.of("SOURCE_DATE_EPOCH", "1830000000");

  private static final String BITTER =
      """
      season 2026
      site hill
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      line squash "Found by the fence beside the old barn after the long wet summer, striped, and grown again"
        is a acorn-squash
        purpose to keep
      lot squash-from-the-fence-by-the-barn-x
        of squash
        seeds 40
        harvested 2024
        identity unknown
      """;

  @TempDir static Path folder;
  private static Browser browser;

  @BeforeAll
  static void start() {
    browser = Browser.start();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
  }

  private static Run labels(String plan, String options) {
    List<String> words = new ArrayList<>(List.of("labels", plan));
    words.addAll(List.of(options.split(" ")));
    Run run = Run.in(Path.of(""), new byte[0], DECEMBER, false, words.toArray(new String[0]));
    assertThat(run.exit()).as(run.err()).isNotEqualTo(Exit.UNUSABLE);
    return run;
  }

  private static List<String> codes(String options) {
    return labels(PLAN, options + " --format csv")
        .out()
        .lines()
        .skip(1)
        .map(line -> line.split(",")[2])
        .toList();
  }

  private static Path page(String plan, String options) throws IOException {
    return Files.writeString(folder.resolve("labels.html"), labels(plan, options).out());
  }

  @ParameterizedTest
  @CsvSource({
    "a4-21, --sheet a4-21, 21, 21, 29.7",
    "a4-65, --sheet a4-65, 65, 21, 29.7",
    "letter-30, --sheet letter-30, 30, 21.59, 27.94",
    "cut, --sheet letter-cut --size 30x15, 102, 21.59, 27.94",
  })
  void everyCodeIsReadBackFromThePrintedSheets(
      String name, String options, int aSheet, double width, double height) throws IOException {
    String what = options + " --free 3";
    List<String> codes = codes(what);
    assertThat(codes).hasSizeGreaterThan(60).contains("55DN");
    browser.open(page(PLAN, what));
    assertThat(Browser.pages(browser.print(width, height)))
        .isEqualTo((codes.size() + aSheet - 1) / aSheet);
    assertThat(readBack()).containsExactlyElementsOf(codes);
    assertThat(browser.complaints()).isEmpty();
    assertThat(browser.requests()).isNotEmpty().allMatch(url -> url.matches("(file|data):.*"));
  }

  /** On the smallest ones there is room for the first of it alone. */
  @ParameterizedTest
  @CsvSource({"a4-21", "letter-30"})
  void allThatALabelSaysHasRoomOnIt(String sheet) throws IOException {
    browser.open(page(PLAN, "--sheet " + sheet + " --free 3"));
    browser.command("Emulation.setEmulatedMedia", Map.of("media", "print"));
    JsonNode cut =
        browser.run(
            """
            return Array.from(document.querySelectorAll('.words'))
              .filter(e => e.scrollHeight > e.clientHeight + 1).map(e => e.innerText)
            """);
    browser.command("Emulation.setEmulatedMedia", Map.of("media", ""));
    assertThat(cut).isEmpty();
  }

  /** With the longest of names and titles, as far as name and caution are said to have room. */
  @ParameterizedTest
  @CsvSource({
    "--sheet a4-21, true",
    "--sheet a4-65, true",
    "--sheet letter-30, true",
    "--sheet a4-cut --size 30x15, false"
  })
  void aCautionIsNeverCutOffUnsaid(String sheet, boolean whole) throws IOException {
    Path plan = Files.writeString(folder.resolve("bitter.season"), BITTER);
    Run run = labels(plan.toString(), sheet);
    assertThat(run.err().isEmpty()).as(run.err()).isEqualTo(whole);
    browser.open(Files.writeString(folder.resolve("labels.html"), run.out()));
    browser.command("Emulation.setEmulatedMedia", Map.of("media", "print"));
    JsonNode cut =
        browser.run(
            """
            return Array.from(document.querySelectorAll('.caution')).map(e =>
              e.getBoundingClientRect().bottom > e.parentNode.getBoundingClientRect().bottom + 1)
            """);
    browser.command("Emulation.setEmulatedMedia", Map.of("media", ""));
    assertThat(cut).hasSize(1);
    assertThat(cut.get(0).asBoolean() && whole).as("cut off").isFalse();
  }

  /** What the labels say as they are printed, at 384 dots an inch, one by one. */
  private static List<String> readBack() throws IOException {
    browser.command("Emulation.setEmulatedMedia", Map.of("media", "print"));
    browser.resize(816, 1100);
    JsonNode labels =
        browser.run(
            """
            return Array.from(document.querySelectorAll('.label')).map(label => {
              const box = label.getBoundingClientRect();
              return [box.left + scrollX, box.top + scrollY, box.width, box.height];
            })
            """);
    List<Path> pictures = new ArrayList<>();
    for (JsonNode at : labels) {
      byte[] picture =
          browser.picture(
              at.get(0).asDouble(),
              at.get(1).asDouble(),
              at.get(2).asDouble(),
              at.get(3).asDouble(),
              4);
      pictures.add(Files.write(folder.resolve("label" + pictures.size() + ".png"), picture));
    }
    browser.command("Emulation.setEmulatedMedia", Map.of("media", ""));
    return OutsideTools.barcodes(pictures);
  }

  @Test
  void labelsAlreadyGoneAreLeftOut() throws IOException {
    browser.open(page(PLAN, "--only free --free 1 --used 20"));
    assertThat(Browser.pages(browser.print(21, 29.7))).isEqualTo(2);
    assertThat(browser.run("return document.querySelectorAll('.used').length").asInt())
        .isEqualTo(20);
  }

  @Test
  void aHostilePlanShowsItsTextAndRunsNothing() throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.season"), Hostile.PLAN);
    browser.open(page(plan.toString(), "--free 2"));
    assertThat(browser.run("return document.title").asText()).contains(Hostile.SCRIPT);
    assertThat(browser.run("return document.querySelectorAll('script, img').length").asInt())
        .isZero();
    assertThat(browser.run("return document.body.innerText").asText())
        .contains("</script>" + Hostile.SCRIPT);
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void nothingOverflowsATelephone() throws IOException {
    browser.resize(360, 740);
    browser.open(page(PLAN, "--sheet letter-30 --free 1"));
    assertThat(browser.run("return document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(360);
  }
}
