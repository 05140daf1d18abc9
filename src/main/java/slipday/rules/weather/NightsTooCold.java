package slipday.rules.weather;

import java.util.List;
import java.util.Optional;
import slipday.climate.WeatherYear;
import slipday.finding.Level;
import slipday.garden.Bed;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** Young plants are chilled in their first nights outdoors; or find them colder than they want. */
public final class NightsTooCold implements Rule {
  private static final double USUALLY = 0.5;
  private static final int FIRST_NIGHTS = 7;

  @Override
  public String id() {
    return "nights-too-cold";
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
    Judged.by(Condition.CHILL, season).forEach(j -> judge(season, j, reporter));
  }

  private static void judge(Season season, Judged judged, Reporter reporter) {
    Optional<Reasoned<Double>> harmed = judged.planting().facts().get(CropFacts.CHILLED_BELOW);
    Optional<Reasoned<Double>> wanted = judged.planting().facts().get(CropFacts.NIGHTS);
    if (judged.fails(USUALLY)) {
      harmed.ifPresent(h -> found(true, judged, h, judged.chance(), reporter));
    } else if (wanted.isPresent() && judged.choice().fixed()) {
      double chance = shareOfYears(season, judged.season(), wanted.get().value());
      if (chance < USUALLY) {
        found(false, judged, wanted.get(), chance, reporter);
      }
    }
  }

  private static void found(
      boolean harmed, Judged judged, Reasoned<Double> bound, double chance, Reporter reporter) {
    Reporter.Report report =
        reporter.report(
            harmed,
            judged.planting(),
            judged.place(),
            judged.name()
                + ", "
                + judged.when()
                + ", has nights of "
                + reporter.units().written(bound.value())
                + " or warmer in its first week in "
                + Words.percent(chance)
                + " of years.");
    judged
        .told(report)
        .fact(bound.reason())
        .help(
            harmed
                ? judged.later() + " A tunnel or fleece keeps its nights warmer."
                : "It will stand still rather than suffer; a tunnel or fleece helps it on.");
  }

  /** The share of weather years whose mean low of the first week is at least so many °C. */
  private static double shareOfYears(Season season, PlantingSeason planting, double celsius) {
    List<WeatherYear> years = season.climate().usableYears();
    int from = season.climate().axis().slotOf(planting.choice().date());
    double warmer = warmer(planting.planting());
    long warm = years.stream().filter(y -> mean(y.lows(), from) + warmer >= celsius).count();
    return years.isEmpty() ? 1 : warm / (double) years.size();
  }

  private static double warmer(Planting planting) {
    double cover = planting.cover().map(c -> c.value().warmer()).orElse(0.0);
    return cover - planting.bed().map(Bed::colder).orElse(0.0);
  }

  private static double mean(double[] lows, int from) {
    int first = Math.max(0, Math.min(lows.length - FIRST_NIGHTS, from));
    double sum = 0;
    for (int i = first; i < first + FIRST_NIGHTS; i++) {
      sum += lows[i];
    }
    return sum / FIRST_NIGHTS;
  }
}
