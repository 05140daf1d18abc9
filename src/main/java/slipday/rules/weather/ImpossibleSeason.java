package slipday.rules.weather;

import java.util.Locale;
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
        .forEach(p -> found(p, season.garden().site().frostRisk().value(), reporter));
  }

  private static void found(PlantingSeason season, double risk, Reporter reporter) {
    Planting planting = season.planting();
    DateChoice choice = season.choice();
    Condition fails = choice.earliest().isEmpty() ? choice.earlyBound() : choice.lateBound();
    double wanted = fails.wanted(risk);
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
                + fails.met()
                + " in "
                + share(choice.chances().getOrDefault(fails, 0.0), wanted)
                + " of years, and it should in "
                + Words.percent(wanted)
                + ".");
    choice.chances().forEach((c, chance) -> report.note(told(c, chance)));
    report
        .concerns(planting.lot())
        .because(choice.reason())
        .fact(season.modelReason())
        .help(Judged.mends(choice));
    planting.bed().ifPresent(report::concerns);
  }

  /** With a decimal where it would else look like the share that is wanted. */
  private static String share(double chance, double wanted) {
    return Words.percent(chance).equals(Words.percent(wanted))
        ? String.format(Locale.ROOT, "%.1f %%", Math.floor(1000 * chance) / 10)
        : Words.percent(chance);
  }

  /** Whether frost or ripening fails in more years than not; a hot week is not the end of it. */
  private static boolean hopeless(DateChoice choice) {
    return choice.chances().entrySet().stream()
        .filter(e -> e.getKey() != Condition.HEAT)
        .filter(e -> e.getKey() != Condition.CHILL && e.getKey() != Condition.SOIL)
        .anyMatch(e -> e.getValue() < AS_OFTEN_AS_NOT);
  }

  private static String told(Condition condition, double chance) {
    return Words.sentence(condition.met() + " in " + Words.percent(chance) + " of years");
  }
}
