package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan is answered in the units it is written in; data for programs stay metric. */
class UnitsOfAnswersTest {
  private static final Path FEET =
      Path.of("src/test/resources/cases/command/in-feet").toAbsolutePath();

  /** A figure with a metric unit. */
  private static final Pattern METRIC =
      Pattern.compile("(?<![\\d.])-?\\d[\\d.]* ?(°?C|C-days|k?m|cm|kg|sqm|m²)(?![\\w²])");

  @TempDir Path folder;

  /** Crop facts are quoted as they stand in their files, and so is what shows how a line reads. */
  private static String withoutQuotes(String text) {
    return text.replaceAll("(?i)(species|crop) [a-z-]+: [^\\n]*", "").replaceAll("`[^`\\n]*`", "");
  }

  @Test
  void nothingMetricIsLeftInChecksDatesAndBloom() {
    assertThat("frost (0 C), 4.5 m off, 2 m², 60 cm, 10 °C: 540 C-days, 2.5 ft, 1 May")
        .matches(text -> METRIC.matcher(text).results().count() == 6);
    for (String command : new String[] {"check", "climate", "schedule", "bloom"}) {
      String said = withoutQuotes(Run.in(FEET, command, "plan.season").out());
      assertThat(METRIC.matcher(said).results().map(MatchResult::group))
          .as("%s:%n%s", command, said)
          .isEmpty();
    }
  }

  @Test
  void theCalendarHasTheGardenersDegreesFirst() {
    String unfolded = Run.in(FEET, "calendar", "plan.season").out().replaceAll("\r?\n ", "");
    assertThat(unfolded)
        .contains("The soil wants 65 °F (18.3 °C) or more")
        .contains("3 plants in trough\\, 20 inch apart.");
  }

  @Test
  void theReportMeasuresInFeet() throws IOException {
    Path page = folder.resolve("report.html");
    Run.in(FEET, "report", "plan.season", "-o", page.toString());
    assertThat(Files.readString(page))
        .contains("20 inch apart", "2640 ft for certain", ">3 ft or less<", ", 450 ft")
        .doesNotContain(" m off", " m for certain", ">1 km<");
  }

  @Test
  void dataForProgramsAreMetric() throws IOException {
    JsonNode climate =
        new ObjectMapper()
            .readTree(Run.in(FEET, "climate", "plan.season", "--format", "json").out());
    assertThat(climate.get("warmerThanStation").asDouble()).isCloseTo(-2 * 5 / 9.0, within(1e-3));
    assertThat(climate.get("frost").get(0).get("celsius").asDouble()).isEqualTo(2);
  }

  /** Each sort by what is written more; what is not written goes with the rest, a tie to metres. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "size 10 m x 1 m             | m  |            | C",
        "size 30 ft x 4 ft           | ft | 2 C colder | C",
        "size 30 ft x 4 ft           | ft | 2 F colder | F",
        "size 10 m x 1 m             | m  | 2 F colder | F",
        "size 30 ft x 4 m            | m  | 2 C colder | C",
        "vines may trail 6 ft beyond | ft |            | F",
      })
  void eachSortOfUnitGoesByWhatIsWrittenMore(
      String clause, String length, String colder, String degrees) throws IOException {
    String plan =
        """
        season 2026
        site home
          place          45 N, 73 W, 100 %s
          time zone      America/New_York
          last frost     18 May, 1 in 10 after 30 May
          first frost    27 September, 1 in 10 before 14 September
        bed south
          %s
        %s
        """
            .formatted(length, clause, colder == null ? "" : "  frost pocket " + colder);
    Files.writeString(folder.resolve("plan.season"), plan);
    assertThat(Run.in(folder, "climate", "plan.season").out())
        .contains("45 N, 73 W, 100 " + length)
        .contains(degrees.equals("F") ? "frost (32 F)" : "frost (0 C)");
  }
}
