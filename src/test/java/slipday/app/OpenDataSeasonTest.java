package slipday.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.climate.FrostSide;
import slipday.climate.FrostThreshold;
import slipday.climate.RecordedFrost;
import slipday.output.calendar.CalendarOptions;
import slipday.output.calendar.CalendarWriter;
import slipday.season.Condition;
import slipday.season.DateChoice;
import slipday.season.Event;
import slipday.season.PlantingSeason;
import slipday.season.Season;
import slipday.season.chore.Chores;

/**
 * A whole plan from file to calendar on the two station records of the open data package
 * vega-datasets 3.2.1 (data/weather.csv; BSD-3-Clause, its weather rows US Government work). The
 * frost dates beside each station were worked out from the same rows by an independent script.
 */
class OpenDataSeasonTest {
  private static final String PLAN =
      """
      season 2026

      site station "At the station"
        place          %s
        time zone      %s
        weather        file "%s.csv", in C

      bed only
        size           12 m x 1.2 m

      line ours
        is a           muskmelon

      lot ours-1
        of             ours

      grow ours-1
        in             only
        plants         12, 60 cm apart
        start          indoors, 3 weeks before planting out
        flowers        cover the chosen
        pollinate      self by hand, for 6 fruits
        seed           saved
      """;

  private static Season season(Path folder, String station, String place, String zone)
      throws IOException {
    return season(folder, station, PLAN, place, zone);
  }

  private static Season season(Path folder, String station, String text, String place, String zone)
      throws IOException {
    Path plan = folder.resolve("plan.season");
    Files.writeString(plan, text.formatted(place, zone, station));
    try (InputStream in =
        OpenDataSeasonTest.class.getResourceAsStream("/weather/" + station + ".csv")) {
      Files.copy(
          java.util.Objects.requireNonNull(in),
          folder.resolve(station + ".csv"),
          StandardCopyOption.REPLACE_EXISTING);
    }
    Checked checked =
        new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2035, 12, 31))
            .check(plan, "plan.season");
    assertThat(checked.findings()).noneMatch(f -> f.rule().startsWith("weather"));
    return checked.season().orElseThrow();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = ';',
      value = {
        "new-york; 40.78 N, 73.97 W; America/New_York;"
            + "03-27 04-04 04-16 03-29; 11-06 11-12 11-15 11-24",
        "seattle; 47.61 N, 122.33 W; America/Los_Angeles;"
            + "03-19 03-04 02-09 03-04; 11-10 11-21 11-12 11-23",
      })
  void fromFileToCalendar(
      String station, String place, String zone, String last, String first, @TempDir Path folder)
      throws IOException, ParserException {
    Season season = season(folder, station, place, zone);
    assertThat(dates(season, FrostSide.SPRING)).containsExactly(last.split(" "));
    assertThat(dates(season, FrostSide.AUTUMN)).containsExactly(first.split(" "));

    PlantingSeason planting = season.plantings().get(0);
    DateChoice choice = planting.choice();
    // Melons go out after the last frost of every one of the four years, into soil of 65 F
    // (Mid-Atlantic Commercial Vegetable Production Recommendations, from memory).
    assertThat(choice.date()).isAfter("2026-04-16");
    assertThat(choice.chances().get(Condition.FROST)).isEqualTo(1);
    assertThat(choice.chances().get(Condition.SOIL)).isGreaterThanOrEqualTo(0.5);
    LocalDate flowers = usual(planting, Event.FIRST_FRUITING);
    assertThat(flowers).isBetween(choice.date().plusDays(14), choice.date().plusDays(50));
    assertThat(usual(planting, Event.RIPE)).isBetween(flowers.plusDays(30), flowers.plusDays(65));

    Calendar calendar = new CalendarBuilder().build(new StringReader(written(season)));
    assertThat(summaries(calendar)).anyMatch(s -> s.contains("ours-1"));
    assertThat(starts(calendar)).anyMatch(s -> s.startsWith(basic(choice.date())));
  }

  /**
   * How far calendar days are from walked ones, as it is told to gardeners without a record: too
   * late where July is hot (New York, 25 °C), too early where it is cool (Seattle, 20 °C).
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "new-york, '40.78 N, 73.97 W', America/New_York, -31, -9",
    "seattle, '47.61 N, 122.33 W', America/Los_Angeles, -3, 14",
  })
  void calendarDaysAreAsWideOfTheMarkAsIsSaid(
      String station, String place, String zone, int sooner, int later, @TempDir Path folder)
      throws IOException {
    for (String crop : List.of("muskmelon", "acorn-squash", "butternut", "tomato")) {
      String plan =
          PLAN.replace("muskmelon", crop).replace("  flowers", "  plant out on 1 June\n  flowers");
      LocalDate walked = usual(plan(folder, station, plan, place, zone), Event.RIPE);
      String told =
          plan.replace(
              "weather        file \"%s.csv\", in C",
              "last frost 1 May, 1 in 10 after 14 May\n"
                  + "  first frost 20 November, 1 in 10 before 10 November\n  # %s");
      LocalDate calendar = usual(plan(folder, station, told, place, zone), Event.RIPE);
      assertThat(calendar.until(walked, ChronoUnit.DAYS))
          .as(crop)
          .isBetween((long) sooner, (long) later);
    }
  }

  private static PlantingSeason plan(
      Path folder, String station, String plan, String place, String zone) throws IOException {
    return season(folder, station, plan, place, zone).plantings().get(0);
  }

  private static List<String> dates(Season season, FrostSide side) {
    RecordedFrost law =
        (RecordedFrost) season.climate().frost(side, FrostThreshold.TENDER).orElseThrow();
    return law.seasons().stream()
        .map(s -> season.climate().axis().dateOf(s.slot().orElseThrow()).toString().substring(5))
        .toList();
  }

  private static LocalDate usual(PlantingSeason planting, Event event) {
    return planting.date(event).orElseThrow().value().usual().orElseThrow();
  }

  private static String written(Season season) {
    Instant stamp = Instant.parse("2026-01-01T00:00:00Z");
    return CalendarWriter.write(
            Chores.of(season), Optional.empty(), new CalendarOptions(false, stamp))
        .value()
        .orElseThrow();
  }

  private static List<String> summaries(Calendar calendar) {
    return calendar.<VEvent>getComponents("VEVENT").stream()
        .map(e -> e.getSummary().getValue())
        .toList();
  }

  private static List<String> starts(Calendar calendar) {
    return calendar.<VEvent>getComponents("VEVENT").stream()
        .map(e -> e.getDateTimeStart().getValue())
        .toList();
  }

  private static String basic(LocalDate date) {
    return date.toString().replace("-", "");
  }
}
