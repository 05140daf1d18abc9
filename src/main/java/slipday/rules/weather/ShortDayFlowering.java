package slipday.rules.weather;

import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** A planting waits for short days to flower, so that its dates can't be told. */
public final class ShortDayFlowering implements Rule {
  @Override
  public String id() {
    return "flowering-not-told";
  }

  @Override
  public Level level() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.plantings().stream()
        .filter(p -> p.flowers() && !p.sureOfFlowers())
        .forEach(p -> found(p, reporter));
  }

  private static void found(PlantingSeason season, Reporter reporter) {
    Reporter.Report report =
        reporter
            .report(
                season.planting(),
                season.planting().span(),
                Words.tick(season.name())
                    + " flowers as the days shorten, so its flowers, fruit and seed can't be dated"
                    + " with confidence.")
            .help(
                "Write down when its flowers open this year; far from the tropics they may come"
                    + " too late to ripen.");
    season.planting().facts().get(CropFacts.SHORT_DAYS).ifPresent(f -> report.fact(f.reason()));
  }
}
