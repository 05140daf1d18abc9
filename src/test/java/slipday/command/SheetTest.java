package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.finding.Finding;
import slipday.language.Binder;
import slipday.output.Hostile;
import slipday.outside.Browser;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** The clipboard page: every line of it is an entry of the record. */
class SheetTest {
  private static final String PLAN = "plans/tern-hollow/recorded.season";

  /** When the recorded year is over. */
  private static final Map<String, String> DECEMBER = Map.of("SOURCE_DATE_EPOCH", "1830000000");

  private static final Map<String, String> FILLED_IN =
      Map.of(
          "date", "2026-07-20 ",
          "plant", "3",
          "count", "12",
          "weight", "1.6 kg",
          "figure", "9",
          "words", "sunny-side");

  @TempDir Path folder;

  private static Run sheet(String plan, String... more) {
    List<String> words = new ArrayList<>(List.of("sheet", plan));
    words.addAll(List.of(more));
    Run run = Run.in(Path.of(""), new byte[0], DECEMBER, false, words.toArray(new String[0]));
    assertThat(run.exit()).as(run.err()).isNotEqualTo(Exit.UNUSABLE);
    return run;
  }

  private static JsonNode data(String plan, String week) throws IOException {
    return new ObjectMapper()
        .readTree(sheet(plan, "--week", week, "--format", "json").out())
        .get("parts");
  }

  @Test
  void theWeekOfTheHelpBeginsOnAMonday() {
    String help = Run.in(Path.of(""), "sheet", "--help").out();
    Matcher day = Pattern.compile("20\\d\\d-\\d\\d-\\d\\d").matcher(help);
    assertThat(day.results().map(d -> LocalDate.parse(d.group()).getDayOfWeek()))
        .isNotEmpty()
        .containsOnly(DayOfWeek.MONDAY);
  }

  /**
   * Every line with its boxes filled in, and with those left open that may be; each choice once.
   */
  private static List<String> lines(JsonNode parts) {
    List<String> lines = new ArrayList<>();
    for (JsonNode part : parts) {
      for (JsonNode entry : part.get("entries")) {
        JsonNode pieces = entry.get("pieces");
        int choices = 1;
        for (JsonNode piece : pieces) {
          choices = Math.max(choices, piece.get("choices").size());
        }
        for (int choice = 0; choice < choices; choice++) {
          lines.add(line(pieces, choice, true));
          lines.add(line(pieces, choice, false));
        }
      }
    }
    return lines;
  }

  private static String line(JsonNode pieces, int choice, boolean optional) {
    StringBuilder line = new StringBuilder();
    for (JsonNode piece : pieces) {
      String box = piece.get("box").asText();
      String before = piece.get("before").asText();
      line.append(piece.get("text").asText());
      if (!piece.get("choices").isEmpty()) {
        line.append(before).append(piece.get("choices").get(choice).asText());
      } else if (!box.isEmpty() && (optional || before.isBlank() || before.equals("\""))) {
        line.append(before).append(FILLED_IN.get(box)).append(piece.get("after").asText());
      }
    }
    return line.toString();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "2026-05-10",
        "2026-05-31",
        "2026-06-21",
        "2026-07-12",
        "2026-08-16",
        "2026-09-20"
      })
  void filledInEveryLineIsAnEntryOfTheRecord(String week) throws IOException {
    for (String line : lines(data(PLAN, week))) {
      var parsed = SeasonParser.parse(Source.of("record.season", line + "\n"));
      List<Finding> findings = new ArrayList<>(parsed.findings());
      findings.addAll(Binder.bind(parsed.value()).findings());
      assertThat(findings.stream().map(Finding::message)).as(line).isEmpty();
    }
  }

  @Test
  void theYearAsksForEveryKindOfEntry() throws IOException {
    Set<String> verbs = new TreeSet<>();
    for (String week :
        List.of("2026-05-10", "2026-05-31", "2026-06-14", "2026-07-12", "2026-08-16")) {
      lines(data(PLAN, week)).forEach(line -> verbs.add(line.split(" ")[1]));
    }
    lines(data("plans/tern-hollow/plan.season", "2026-06-21"))
        .forEach(line -> verbs.add(line.split(" ")[1]));
    assertThat(verbs)
        .contains(
            "sowed",
            "planted",
            "first",
            "covered",
            "emasculated",
            "selfed",
            "sibbed",
            "crossed",
            "took",
            "failed",
            "picked",
            "saved",
            "note");
  }

  @Test
  void noTagIsGivenOutTwice() throws IOException {
    List<String> tags =
        lines(data("plans/tern-hollow/plan.season", "2026-07-05")).stream()
            .filter(l -> l.contains(", tag "))
            .map(l -> l.substring(l.indexOf(", tag ")))
            .distinct()
            .toList();
    long rows = 0;
    for (JsonNode part : data("plans/tern-hollow/plan.season", "2026-07-05")) {
      for (JsonNode entry : part.get("entries")) {
        rows += entry.toString().contains(", tag ") ? 1 : 0;
      }
    }
    assertThat(tags).hasSizeGreaterThan(10).hasSize((int) rows);
  }

  /** A self that takes all the lines one plan may have, and a cross on the same mother. */
  @ParameterizedTest
  @ValueSource(strings = {"seed saved", "seed not saved"})
  void everyPlanOfASeedParentHasLinesOfItsOwn(String seed) throws IOException {
    Files.writeString(
        folder.resolve("plan.season"),
        """
        season 2026
        site hill
          place 44.21 N, 72.58 W
          time zone America/New_York
          last frost 18 May, 1 in 10 after 30 May
          first frost 27 September, 1 in 10 before 14 September
        bed strip
          size 60 m x 1.2 m
        line amber
          is a muskmelon
        line rope
          is a muskmelon
        lot amber-2024
          of amber
        lot rope-2024
          of rope
        grow rope-2024
          in strip
          plants 6, 60 cm apart
        grow amber-2024
          in strip
          plants 40, 60 cm apart
          flowers cover the chosen
        """
            + (seed.equals("seed saved") ? "  pollinate self by hand, for 40 fruits\n" : "")
            + "  "
            + seed
            + "\ncross amber-rope\n  seed parent amber-2024\n  pollen parent rope-2024\n"
            + "  fruits 4\n");
    Run run = Run.in(folder, "sheet", "plan.season", "--week", "2026-07-12", "--format", "json");
    List<String> lines = lines(new ObjectMapper().readTree(run.out()).get("parts"));
    assertThat(lines)
        .as(run.err())
        .anyMatch(l -> l.contains(" crossed amber-2024 plant 3 by rope-2024"));
    if (seed.equals("seed saved")) {
      assertThat(lines.stream().filter(l -> l.contains(" selfed amber-2024 plant 3"))).hasSize(12);
    }
  }

  @ParameterizedTest
  @CsvSource({"2026-07-12, 21, 29.7", "2026-07-12, 21.59, 27.94", "2026-12-06, 21, 29.7"})
  void itPrintsOnBothPapersInBlackLinesAlone(String week, double width, double height)
      throws IOException {
    try (Browser browser = Browser.start()) {
      Path page = folder.resolve("sheet.html");
      browser.open(Files.writeString(page, sheet(PLAN, "--week", week).out()));
      int pages = Browser.pages(browser.print(width, height));
      if (week.startsWith("2026-12")) {
        assertThat(pages).isEqualTo(1);
      } else {
        assertThat(pages).isBetween(2, 5);
      }
      JsonNode filled =
          browser.run(
              """
              return Array.from(document.querySelectorAll('body *'))
                .filter(e => getComputedStyle(e).backgroundColor !== 'rgba(0, 0, 0, 0)'
                  || getComputedStyle(e).backgroundImage !== 'none'
                  || getComputedStyle(e).color !== 'rgb(0, 0, 0)')
                .map(e => e.outerHTML.slice(0, 100))
              """);
      assertThat(filled).isEmpty();
      browser.resize(360, 740);
      assertThat(browser.run("return document.documentElement.scrollWidth").asInt())
          .isLessThanOrEqualTo(360);
      assertThat(browser.complaints()).isEmpty();
      assertThat(browser.requests()).isNotEmpty().allMatch(url -> url.matches("(file|data):.*"));
    }
  }

  @Test
  void aHostilePlanIsText() throws IOException {
    Path plan = Files.writeString(folder.resolve("plan.season"), Hostile.PLAN);
    assertThat(sheet(plan.toString(), "--week", "2026-07-12").out())
        .contains("&lt;/title&gt;&lt;script&gt;")
        .doesNotContain(Hostile.SCRIPT, "<script", "<img");
  }
}
