package slipday.climate;

import java.time.LocalDate;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** A climate in the figures people ask for: year by year, month by month. */
public final class ClimateFigures {
  /** The base most tables of growing degree-days are made with, °C. */
  private static final double BASE = 10;

  private final Climate climate;

  public ClimateFigures(Climate climate) {
    this.climate = climate;
  }

  /**
   * One season of the record at the garden.
   *
   * @param lastSpring the last spring frost that takes tender leaves; empty where there was none
   * @param firstAutumn the first such autumn frost
   */
  public record Year(
      String season,
      Optional<LocalDate> lastSpring,
      Optional<LocalDate> firstAutumn,
      DegreeDayTotal<HeatSpan.DayToDay> heat) {}

  /** What the heat of each year is a sum of. */
  public DegreeDayKind<HeatSpan.DayToDay> heatKind() {
    SeasonAxis axis = climate.axis();
    HeatSpan.DayToDay season =
        new HeatSpan.DayToDay(axis.dayText(0), axis.dayText(SeasonAxis.SLOTS - 1));
    return new DegreeDayKind<>(season, DegreeDayMethod.SINGLE_SINE, BASE, DegreeDays.NO_LIMIT);
  }

  /** Every usable season, in order. */
  public List<Year> years() {
    DegreeDayKind<HeatSpan.DayToDay> kind = heatKind();
    return climate.usableYears().stream()
        .map(
            y ->
                new Year(
                    y.label(),
                    date(y, FrostDates.lastSpring(y, FrostThreshold.TENDER)),
                    date(y, FrostDates.firstAutumn(y, FrostThreshold.TENDER)),
                    kind.over(y.lows(), y.highs(), 0, SeasonAxis.SLOTS)))
        .toList();
  }

  private static Optional<LocalDate> date(WeatherYear year, OptionalInt slot) {
    return slot.isPresent() ? Optional.of(year.axis().dateOf(slot.getAsInt())) : Optional.empty();
  }

  /** The mean soil temperature of each month over the usable seasons, °C; empty without any. */
  public Map<Month, Double> soil() {
    Map<Month, double[]> sums = new EnumMap<>(Month.class);
    for (WeatherYear year : climate.usableYears()) {
      double[] soil = climate.soil(year);
      for (int slot = 0; slot < soil.length; slot++) {
        Month month = climate.axis().dateOf(slot).getMonth();
        double[] sum = sums.computeIfAbsent(month, m -> new double[2]);
        sum[0] += soil[slot];
        sum[1]++;
      }
    }
    Map<Month, Double> means = new EnumMap<>(Month.class);
    sums.forEach((month, sum) -> means.put(month, sum[0] / sum[1]));
    return means;
  }

  /** The sun of the longest day, as the calendar has it. */
  public SunTimes midsummerSun() {
    int year = climate.axis().year();
    boolean north = climate.place().hemisphere() == Hemisphere.NORTH;
    return climate.sun(LocalDate.of(year, north ? 6 : 12, 21));
  }
}
