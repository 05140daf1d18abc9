package slipday.rules.weather;

import java.util.HashSet;
import java.util.Set;
import java.util.stream.Stream;
import slipday.climate.Climate;
import slipday.climate.FrostDepth;
import slipday.climate.ReadSoil;
import slipday.climate.SoilReading;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.FactKey;
import slipday.garden.Planting;
import slipday.garden.Site;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/**
 * Something the plan tells of its weather, or does about it, that the dates can't be made to feel.
 */
public final class ToldInVain implements Rule {
  static final String RECORD = "Name a weather record, and it counts.";

  @Override
  public String id() {
    return "told-in-vain";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public Level milderLevel() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Site site = season.garden().site();
    season.plantings().forEach(p -> CoverInVain.fromSowing(p, reporter));
    if (!season.climate().usableYears().isEmpty()) {
      Stream.of(PlanClauses.LAST_FROST, PlanClauses.FIRST_FROST)
          .flatMap(c -> site.places().find(c).stream())
          .forEach(span -> frostBesideRecord(site, span, reporter));
      return;
    }
    site.weather().ifPresent(w -> noWholeSeason(season.climate(), site, w.span(), reporter));
    season.climate().offset().ifPresent(o -> offset(site, o, reporter));
    readings(season.climate(), site, reporter);
    boolean soilKnown = season.climate().readSoil().isKnown();
    Set<Span> told = new HashSet<>();
    for (Planting planting : season.garden().plantings()) {
      if (!soilKnown) {
        planting.places().find(PlanClauses.MULCH).ifPresent(s -> mulch(planting, s, reporter));
      }
      planting.cover().ifPresent(c -> CoverInVain.withoutRecord(planting, c.value(), reporter));
      own(planting, soilKnown).filter(told::add).forEach(span -> ownFact(planting, span, reporter));
    }
  }

  private static void frostBesideRecord(Site site, Span span, Reporter reporter) {
    reporter
        .report(
            site,
            span,
            "This frost date moves no date of a planting: each is walked through the frosts of the"
                + " weather record.")
        .help(
            "Take this line out; where the garden is colder than the station, tell by how much, as"
                + " in `"
                + PlanClauses.COLDER.example()
                + "`. Or take the record out, and go by your own frost dates.");
  }

  private static void noWholeSeason(Climate climate, Site site, Span span, Reporter reporter) {
    if (climate.lastSpringFrost().isEmpty() || climate.firstAutumnFrost().isEmpty()) {
      return; // frost-not-known tells it
    }
    Reporter.Report report =
        reporter.report(
            site,
            span,
            "No season of this record is whole enough to be used, so that dates are in calendar"
                + " days, from your own frost dates.");
    climate.years().stream()
        .flatMap(y -> y.leftOut().stream())
        .flatMap(y -> y.leftOut().stream())
        .limit(3)
        .forEach(report::note);
    report.help("A season counts with no more than 10 days missing near its frosts.");
  }

  private static void offset(Site site, Reasoned<Double> offset, Reporter reporter) {
    double by = offset.value();
    long days = Math.round(Math.abs(by) * FrostDepth.DAYS_PER_DEGREE);
    Span place = offset.reason().place().orElse(site.span());
    reporter
        .report(
            site,
            place,
            "How much "
                + (by < 0 ? "colder" : "warmer")
                + " the garden is than a station moves nothing, for there is no weather record; the"
                + " frost dates told are taken as the garden's own.")
        .fact(FrostDepth.reason(reporter.units()))
        .help(
            "If they are the station's, write the last frost about "
                + Words.count((int) days, "day", "days")
                + (by < 0
                    ? " later and the first as much sooner"
                    : " sooner and the first as much later")
                + ", and take this line out.");
  }

  private static void readings(Climate climate, Site site, Reporter reporter) {
    var clauses = site.places().block().every(PlanClauses.SOIL_READING).toList();
    var readings = climate.soilReadings();
    for (int i = 0; i < Math.min(clauses.size(), readings.size()); i++) {
      SoilReading reading = readings.get(i);
      if (!ReadSoil.isOfSpring(reading, climate.axis())) {
        reporter
            .mild(
                site, clauses.get(i).span(), "A soil reading of this day tells nothing of spring.")
            .help("Read it in spring, about when you sow or plant out.");
      }
    }
  }

  private static void mulch(Planting planting, Span span, Reporter reporter) {
    reporter
        .mild(
            planting,
            span,
            "How warm the soil is under "
                + Words.tick(planting.name())
                + " is not known, so this mulch moves no date.")
        .help(
            "Tell the site what soil you read, such as `"
                + PlanClauses.SOIL_READING.example()
                + "`. "
                + RECORD);
  }

  /** Lines of the plan that tell a crop's own limits, which nothing here can be held against. */
  private static Stream<Span> own(Planting planting, boolean soilKnown) {
    Stream<FactKey<?>> soil =
        soilKnown ? Stream.empty() : Stream.of(CropFacts.SET_OUT_AT, CropFacts.SOW_AT);
    return Stream.concat(Stream.of(CropFacts.CHILLED_BELOW, CropFacts.NIGHTS), soil)
        .flatMap(key -> planting.facts().get(key).stream())
        .flatMap(fact -> fact.reason().place().stream())
        .filter(span -> !span.source().isBuiltIn());
  }

  private static void ownFact(Planting planting, Span span, Reporter reporter) {
    reporter
        .mild(
            planting,
            span,
            "Without a weather record "
                + "this is not held against any date: how warm nights and soil are is not known.")
        .help(RECORD);
  }
}
