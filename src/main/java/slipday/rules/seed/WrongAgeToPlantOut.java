package slipday.rules.seed;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.PlantingSeason;
import slipday.season.Season;
import slipday.source.Span;

/**
 * Plants raised indoors go out before they are up, or far younger or older than their kind does; or
 * an age is told of seed that is sown in place.
 */
public final class WrongAgeToPlantOut implements Rule {
  /** How far from the usual range an age is out of all use: half its least, twice its most. */
  private static final double FAR = 2;

  private static final double WEEK = 7;

  @Override
  public String id() {
    return "wrong-age-to-plant-out";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    for (PlantingSeason each : season.plantings()) {
      if (!each.indoors()) {
        inPlace(each.planting(), reporter);
      } else if (!each.choice().recorded()) {
        Optional<LocalDate> sown = usual(each, Event.SOW);
        Optional<LocalDate> out = usual(each, Event.PLANT_OUT);
        if (sown.isPresent() && out.isPresent()) {
          indoors(each, sown.get(), out.get(), reporter);
        }
      }
    }
  }

  private static Optional<LocalDate> usual(PlantingSeason season, Event event) {
    return season.date(event).flatMap(d -> d.value().usual());
  }

  private static void inPlace(Planting planting, Reporter reporter) {
    boolean told =
        planting
            .start()
            .filter(s -> s.age().isPresent() || s.temperature().isPresent())
            .isPresent();
    if (told) {
      reporter
          .mild(
              planting,
              place(planting),
              Words.tick(planting.name())
                  + " is sown in place, so an age at planting out or a warmth indoors means"
                  + " nothing.")
          .concerns(planting.lot())
          .help("Write `start indoors` if it is raised in pots, or leave off what follows.");
    }
  }

  private static void indoors(
      PlantingSeason season, LocalDate sown, LocalDate out, Reporter reporter) {
    Optional<Reasoned<DateSpread>> up = season.date(Event.EMERGED);
    Optional<LocalDate> usuallyUp = up.flatMap(d -> d.value().usual());
    Optional<Reasoned<Range>> usual = season.planting().facts().get(CropFacts.SEEDLING_AGE);
    long days = ChronoUnit.DAYS.between(sown, out);
    if (usuallyUp.isPresent() && !out.isAfter(usuallyUp.get())) {
      String says =
          name(season)
              + goesOut(out)
              + "and is not up before about "
              + Words.day(usuallyUp.get())
              + ".";
      told(reporter.report(season.planting(), place(season.planting()), says), season, usual);
    } else if (usual.isPresent() && isFar(days, usual.get().value())) {
      String says =
          name(season)
              + goesOut(out)
              + Words.count((int) days, "day", "days")
              + " after sowing, far too "
              + (days < usual.get().value().low() ? "young." : "old.");
      told(reporter.mild(season.planting(), place(season.planting()), says), season, usual);
    }
  }

  private static boolean isFar(double days, Range usual) {
    return days < usual.low() / FAR || days > usual.high() * FAR;
  }

  private static String name(PlantingSeason season) {
    return Words.tick(season.name());
  }

  private static String goesOut(LocalDate out) {
    return " goes out on " + Words.day(out) + ", ";
  }

  private static Span place(Planting planting) {
    return planting
        .places()
        .find(PlanClauses.START)
        .or(() -> planting.places().find(PlanClauses.PLANT_OUT_ON))
        .or(() -> planting.places().find(PlanClauses.SOW_ON))
        .orElseGet(planting::span);
  }

  private static void told(
      Reporter.Report report, PlantingSeason season, Optional<Reasoned<Range>> usual) {
    Planting planting = season.planting();
    report.concerns(planting.lot());
    planting.bed().ifPresent(report::concerns);
    usual.ifPresent(u -> report.fact(u.reason()));
    boolean sown = planting.places().find(PlanClauses.SOW_ON).isPresent();
    boolean out = planting.places().find(PlanClauses.PLANT_OUT_ON).isPresent();
    String weeks = usual.map(u -> Quantity.plain(weeks(u.value()))).orElse("3");
    report.help(
        sown && out
            ? "Fix one of the two days and leave the other to be worked out."
            : "Write `start indoors, " + weeks + " weeks before planting out`.");
  }

  private static double weeks(Range usual) {
    return Math.max(1, Math.rint(usual.middle() / WEEK));
  }
}
