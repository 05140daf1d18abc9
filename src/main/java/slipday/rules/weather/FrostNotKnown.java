package slipday.rules.weather;

import slipday.climate.Climate;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Site;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
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
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Climate climate = season.climate();
    boolean spring = climate.lastSpringFrost().isEmpty();
    boolean autumn = climate.firstAutumnFrost().isEmpty();
    boolean tender = season.plantings().stream().anyMatch(FrostNotKnown::dies);
    if (tender && climate.usableYears().isEmpty() && (spring || autumn)) {
      found(season.garden().site(), spring, autumn, reporter);
    }
  }

  private static boolean dies(PlantingSeason season) {
    return season.planting().facts().get(CropFacts.KILLED_AT).isPresent();
  }

  private static void found(Site site, boolean spring, boolean autumn, Reporter reporter) {
    String which =
        spring && autumn
            ? "When the last frost of spring and the first of autumn come"
            : spring
                ? "When the last frost of spring comes"
                : "When the first frost of autumn comes";
    Reporter.Report report =
        reporter
            .report(
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
    site.weather().ifPresent(w -> report.also(w.span(), "no season of this record can be used"));
  }
}
