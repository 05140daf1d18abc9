package slipday.rules.weather;

import slipday.finding.Level;
import slipday.garden.Planting;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.DateChoice;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** No day meets every condition of a planting whose date is free. */
public final class ImpossibleSeason implements Rule {
  private static final double AS_OFTEN_AS_NOT = 0.5;

  @Override
  public String id() {
    return "impossible-season";
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
    season.plantings().stream()
        .filter(p -> !p.choice().fixed() && !p.choice().possible())
        .forEach(p -> found(p, reporter));
  }

  private static void found(PlantingSeason season, Reporter reporter) {
    Planting planting = season.planting();
    DateChoice choice = season.choice();
    Condition fails = choice.earliest().isEmpty() ? choice.earlyBound() : choice.lateBound();
    Reporter.Report report =
        reporter.report(
            hopeless(choice),
            planting,
            planting.span(),
            "No day of the season suits "
                + Words.tick(planting.name())
                + ": on "
                + Words.day(choice.date())
                + ", the best there is, "
                + met(fails)
                + " in "
                + Words.percent(choice.chances().getOrDefault(fails, 0.0))
                + " of years.");
    choice.chances().forEach((c, chance) -> report.note(told(c, chance)));
    report
        .concerns(planting.lot())
        .because(choice.reason())
        .fact(season.modelReason())
        .help(Judged.mends(choice));
    planting.bed().ifPresent(report::concerns);
  }

  /** Whether frost or ripening fails in more years than not; a hot week is not the end of it. */
  private static boolean hopeless(DateChoice choice) {
    return choice.chances().entrySet().stream()
        .filter(e -> e.getKey() != Condition.HEAT)
        .filter(e -> e.getKey() != Condition.CHILL && e.getKey() != Condition.SOIL)
        .anyMatch(e -> e.getValue() < AS_OFTEN_AS_NOT);
  }

  private static String told(Condition condition, double chance) {
    return Words.sentence(met(condition) + " in " + Words.percent(chance) + " of years");
  }

  /** What it is for a condition to be met. */
  private static String met(Condition condition) {
    return switch (condition) {
      case FROST -> "no killing frost follows";
      case SOIL -> "the soil is warm enough";
      case CHILL -> "the nights are warm enough";
      case HEAT -> "the first flowers open in bearable heat";
      case RIPENING -> "a fruit ripens before frost";
      case SEED_RIPENING -> "seed ripens before frost";
      case BLOOM -> "it blooms with its partner";
      case CALENDAR -> "the season is long enough";
    };
  }
}
