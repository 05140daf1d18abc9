package slipday.season;

import java.util.List;
import slipday.garden.CropFacts.EmergenceRow;

/**
 * Days from sowing to seedlings by soil temperature, read as rates (1/days). Between the rows the
 * rate runs straight; it falls to zero at the coldest and the warmest soil in which seed comes up.
 */
final class EmergenceTable {
  private final double[] soil;
  private final double[] rates;
  private final double coldest;
  private final double warmest;

  /**
   * @param coldest °C below which none comes up
   * @param warmest °C above which none comes up
   */
  EmergenceTable(List<EmergenceRow> rows, double coldest, double warmest) {
    List<EmergenceRow> sorted =
        rows.stream().sorted((a, b) -> Double.compare(a.soil(), b.soil())).toList();
    this.soil = sorted.stream().mapToDouble(EmergenceRow::soil).toArray();
    this.rates = sorted.stream().mapToDouble(r -> 1 / r.days()).toArray();
    this.coldest = coldest;
    this.warmest = warmest;
  }

  boolean isEmpty() {
    return soil.length == 0;
  }

  /** The share of the way to emergence done in a day, at a soil temperature in °C. */
  double rate(double celsius) {
    if (isEmpty() || celsius > warmest) {
      return 0;
    }
    int last = soil.length - 1;
    if (celsius <= soil[0]) {
      double foot = Math.min(coldest, soil[0] - 1);
      return celsius <= foot ? 0 : rates[0] * (celsius - foot) / (soil[0] - foot);
    }
    if (celsius >= soil[last]) {
      return rates[last];
    }
    int above = 1;
    while (soil[above] < celsius) {
      above++;
    }
    double way = (celsius - soil[above - 1]) / (soil[above] - soil[above - 1]);
    return rates[above - 1] + way * (rates[above] - rates[above - 1]);
  }

  /** Days at a steady temperature; infinite where none comes up. */
  double days(double celsius) {
    double rate = rate(celsius);
    return rate > 0 ? 1 / rate : Double.POSITIVE_INFINITY;
  }
}
