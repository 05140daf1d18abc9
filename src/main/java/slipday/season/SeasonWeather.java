package slipday.season;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slipday.climate.Climate;
import slipday.climate.FrostLaw;
import slipday.climate.SeasonAxis;
import slipday.climate.WeatherYear;
import slipday.climate.WeatherYears;
import slipday.measure.Reason;
import slipday.measure.Units;

/** A climate as plantings are walked through it. */
final class SeasonWeather {
  /** Without a record, the first autumn frost stands for a year at each of these even steps. */
  private static final int STEPS = 20;

  private final Climate climate;
  private final Optional<Weather> weather;
  private final Walk walk;
  private final Reason reason;

  private SeasonWeather(Climate climate) {
    this.climate = climate;
    List<WeatherYear> years = climate.usableYears();
    this.weather = years.isEmpty() ? Optional.empty() : Optional.of(weather(climate, years));
    SeasonAxis axis = climate.axis();
    this.walk =
        new Walk(weather, SeasonAxis.SLOTS, axis.midsummer(), statedFrosts(), climate.readSoil());
    this.reason = reason(climate, weather.isPresent());
  }

  static SeasonWeather of(Climate climate) {
    return new SeasonWeather(climate);
  }

  private static Weather weather(Climate climate, List<WeatherYear> years) {
    return new Weather(
        years.stream().map(WeatherYear::label).toList(),
        years.stream().map(WeatherYear::lows).toArray(double[][]::new),
        years.stream().map(WeatherYear::highs).toArray(double[][]::new),
        years.stream().map(climate::soil).toArray(double[][]::new));
  }

  /** Weather years have frosts of their own, or none. */
  private int[] statedFrosts() {
    Optional<FrostLaw> autumn = weather.isPresent() ? Optional.empty() : climate.firstAutumnFrost();
    return IntStream.range(0, STEPS)
        .map(
            i ->
                autumn
                    .map(law -> (int) Math.round(law.quantile((i + 0.5) / STEPS)))
                    .orElse(SeasonAxis.SLOTS))
        .toArray();
  }

  private static Reason reason(Climate climate, boolean byYears) {
    String says =
        byYears
            ? "Walked day by day through "
                + climate.usableYears().size()
                + " weather years, each at three paces of the crop"
            : told(climate)
                ? "Reckoned in calendar days from the gardener's own frost dates: no weather year"
                : "Reckoned in calendar days, as if it never froze: no weather year, and no frost"
                    + " dates";
    return Reason.derived(says, climate.walkReasons());
  }

  private static boolean told(Climate climate) {
    return climate.lastSpringFrost().isPresent() || climate.firstAutumnFrost().isPresent();
  }

  /** The units the gardener is answered in. */
  Units units() {
    return climate.units();
  }

  Optional<Weather> weather() {
    return weather;
  }

  Walk walk() {
    return walk;
  }

  SeasonAxis axis() {
    return climate.axis();
  }

  /** The seasons of the weather record, at the garden; empty without a record. */
  Optional<WeatherYears> years() {
    return climate.years();
  }

  /** What stands in for the years, for gardens without a weather record. */
  Told told() {
    return new Told(climate.lastSpringFrost(), climate.readSoil());
  }

  Reason reason() {
    return reason;
  }
}
