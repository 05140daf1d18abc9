package slipday.rules.weather;

import java.util.List;
import slipday.climate.Climate;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Site;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** Neither frost dates nor weather years tell when it freezes, so dates are blind to frost. */
public final class FrostNotKnown implements Rule {
  @Override
  public String id() {
    return "frost-not-known";
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
    Climate climate = season.climate();
    boolean spring = climate.lastSpringFrost().isEmpty();
    boolean autumn = climate.firstAutumnFrost().isEmpty();
    boolean tender = season.plantings().stream().anyMatch(FrostNotKnown::dies);
    if (tender && climate.usableYears().isEmpty() && (spring || autumn)) {
      found(season, spring, autumn, reporter);
    }
  }

  /** A day chosen out of the blue: nothing but the calendar keeps it from being earlier. */
  private static boolean blind(PlantingSeason season) {
    return dies(season)
        && !season.choice().fixed()
        && season.choice().earlyBound() == Condition.CALENDAR;
  }

  private static boolean dies(PlantingSeason season) {
    return season.planting().facts().get(CropFacts.KILLED_AT).isPresent();
  }

  private static void found(Season season, boolean spring, boolean autumn, Reporter reporter) {
    Site site = season.garden().site();
    List<PlantingSeason> blind =
        spring ? season.plantings().stream().filter(FrostNotKnown::blind).toList() : List.of();
    String which =
        spring && autumn
            ? "When the last frost of spring and the first of autumn come"
            : spring
                ? "When the last frost of spring comes"
                : "When the first frost of autumn comes";
    Reporter.Report report =
        reporter
            .report(
                !blind.isEmpty(),
                site,
                site.span(),
                which
                    + " at "
                    + Words.tick(site.name())
                    + " is not known, so no date keeps clear of it.")
            .help(
                "Add `last frost 18 May, 1 in 10 after 30 May` and `first frost 27 September, 1 in"
                    + " 10 before 14 September` with your own days, or name a weather record with"
                    + " whole seasons.");
    blind.stream().limit(1).forEach(p -> report.also(p.planting().span(), setOut(p)));
    site.weather().ifPresent(w -> report.also(w.span(), "no season of this record can be used"));
  }

  private static String setOut(PlantingSeason season) {
    return (season.indoors() ? "planted out on " : "sown on ")
        + Words.day(season.choice().date())
        + ", as if it never froze";
  }
}
