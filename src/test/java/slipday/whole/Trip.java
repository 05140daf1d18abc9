package slipday.whole;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.NextPlan;
import slipday.app.Pipeline;
import slipday.descent.Lineage;
import slipday.descent.Subjects;
import slipday.finding.Finding;
import slipday.format.Formatter;
import slipday.garden.Lot;
import slipday.measure.Units;
import slipday.output.BloomText;
import slipday.output.ClimateText;
import slipday.output.DescentText;
import slipday.output.FindingsText;
import slipday.output.Ink;
import slipday.output.Json;
import slipday.output.LotsText;
import slipday.output.NextSeasonText;
import slipday.output.Question;
import slipday.output.Questions;
import slipday.output.Sarif;
import slipday.output.ScheduleText;
import slipday.output.Tables;
import slipday.output.WhyText;
import slipday.output.calendar.CalendarOptions;
import slipday.output.calendar.CalendarWriter;
import slipday.output.data.BloomData;
import slipday.output.data.CalendarData;
import slipday.output.data.CheckData;
import slipday.output.data.ClimateData;
import slipday.output.data.DescentData;
import slipday.output.data.LotsData;
import slipday.output.data.NextSeasonData;
import slipday.output.data.ScheduleData;
import slipday.rules.RuleCatalog;
import slipday.season.Season;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.Chores;
import slipday.season.chore.Gathering;
import slipday.seed.SeedBox;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** A plan taken through everything that can be made of it. */
final class Trip {
  private static final Path FOLDER = Path.of("/nowhere/garden");
  private static final String PLAN = "plan.season";
  private static final Ink PLAIN = Ink.of(false);

  private Trip() {}

  /**
   * @param plan the name of the plan's first file
   * @param texts by name within the garden's folder
   * @return whether the plan was sound enough to have a season
   */
  static boolean whole(String plan, Map<String, String> texts) {
    Map<Path, String> overlays = new TreeMap<>();
    texts.forEach((name, text) -> overlays.put(FOLDER.resolve(name), text));
    Pipeline pipeline =
        new Pipeline(FileTexts.withOverlays(overlays), false, LocalDate.of(2026, 12, 31));
    Checked checked = pipeline.check(FOLDER.resolve(plan), plan);
    findings(checked);
    texts.forEach((name, text) -> formatted(name, text));
    checked
        .garden()
        .ifPresent(
            g -> {
              Questions questions = Questions.of(g, checked.season(), checked.findings());
              WhyText why = WhyText.of(g.season(), PLAIN);
              for (String subject : questions.subjects()) {
                var asked = questions.about(subject);
                why.list(PLAN, subject, asked);
                asked.stream().limit(2).forEach(why::text);
                for (Question q : asked.stream().skip(Math.max(0, asked.size() - 1)).toList()) {
                  Json.text(WhyText.data(PLAN, java.util.List.of(q), true));
                }
              }
            });
    checked.season().ifPresent(Trip::season);
    if (checked.season().isPresent()) {
      next(plan, checked, FileTexts.withOverlays(overlays));
    }
    return checked.season().isPresent();
  }

  /** What follows a sound plan is laid out, and makes no mistake that was not there. */
  private static void next(String plan, Checked checked, FileTexts texts) {
    NextPlan.Draft draft =
        NextPlan.draft(
            texts,
            checked,
            new NextPlan.Place(FOLDER.resolve(plan), plan),
            new NextPlan.Place(FOLDER.resolve("the-next.season"), "the-next.season"),
            false,
            LocalDate.of(2026, 12, 31));
    sound(draft.text());
    List<String> before = checked.findings().stream().map(Finding::rule).toList();
    assertThat(draft.open())
        .filteredOn(f -> RuleCatalog.mistakes().contains(f.rule()))
        .filteredOn(f -> !before.contains(f.rule()))
        .as(draft.text())
        .isEmpty();
    String again =
        Formatter.format(SeasonParser.parse(Source.of("next", draft.text())).value()).value();
    assertThat(again).isEqualTo(draft.text());
    NextSeasonData data =
        NextSeasonData.of(plan, draft.next(), Optional.of("the-next.season"), draft.open());
    sound(NextSeasonText.of(data, PLAIN));
    sound(Json.text(data));
  }

  private static void findings(Checked checked) {
    for (Finding f : checked.findings()) {
      assertThat(f.message()).isNotBlank().doesNotContain("NaN", "Infinity", "null", "Optional");
      assertThat(f.notes()).noneMatch(n -> n.contains("NaN") || n.contains("Infinity"));
      assertThat(f.help()).doesNotContain("NaN", "Infinity");
    }
    CheckData data = CheckData.of(PLAN, checked.findings());
    new FindingsText(PLAIN).text(checked.findings());
    Json.text(data);
    Tables.of(data);
    Sarif.text(checked.findings(), "0");
  }

  private static void formatted(String name, String text) {
    if (name.endsWith(".season")) {
      SeasonParser.parse(Source.of(name, text)).then(Formatter::format);
    }
  }

  private static void season(Season season) {
    ScheduleData schedule = ScheduleData.of(PLAN, season, java.util.Set.of());
    sound(new ScheduleText(schedule, PLAIN).text());
    sound(Json.text(schedule));
    sound(Tables.of(schedule));
    BloomData bloom = BloomData.of(PLAN, season);
    sound(new BloomText(bloom, PLAIN, Units.METRIC).text());
    sound(Json.text(bloom));
    sound(Tables.of(bloom));
    ClimateData climate = ClimateData.of(PLAN, season);
    sound(new ClimateText(climate, PLAIN, Units.METRIC).text());
    sound(Json.text(climate));
    LotsData lots = LotsData.of(PLAN, season, SeedBox.lots(season.garden(), OptionalInt.empty()));
    sound(new LotsText(lots, true, true, PLAIN).text());
    sound(new LotsText(lots, true, true, PLAIN).labels());
    sound(Json.text(lots));
    sound(Tables.of(lots));
    for (Lot lot : season.garden().lots()) {
      new Subjects(season.garden())
          .find(lot.name())
          .map(
              s ->
                  DescentData.of(PLAN, season, s, Lineage.of(season.garden(), s, Optional.empty())))
          .ifPresent(d -> sound(new DescentText(d, PLAIN).text()));
    }
    calendar(season);
  }

  private static void calendar(Season season) {
    ChoreBook book = Chores.of(season);
    Json.text(CalendarData.of(PLAN, book));
    Instant stamp = Instant.parse("2026-01-01T00:00:00Z");
    ChoreBook rounds = Gathering.of(book);
    String events = written(rounds, Optional.empty(), new CalendarOptions(false, stamp));
    written(book, Optional.empty(), new CalendarOptions(true, stamp));
    String again =
        written(
            rounds,
            Optional.of(Source.of("season.ics", events)),
            new CalendarOptions(false, stamp.plusSeconds(1)));
    assertThat(again).isEqualTo(events);
    sound(events);
  }

  private static String written(ChoreBook book, Optional<Source> earlier, CalendarOptions options) {
    var outcome = CalendarWriter.write(book, earlier, options);
    assertThat(outcome.findings()).isEmpty();
    return outcome.value().orElseThrow();
  }

  /** No figure that is none, and no name of a class, gets out to people. */
  private static void sound(String shown) {
    assertThat(shown).doesNotContain("NaN", "Infinity", "Optional[", "java.", "∞");
  }
}
