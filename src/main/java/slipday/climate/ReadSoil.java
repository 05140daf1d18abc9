package slipday.climate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;
import slipday.measure.Basis;
import slipday.measure.Quantity;
import slipday.measure.Reason;
import slipday.measure.Units;

/**
 * The soil of a spring without a weather record, from the gardener's own readings: even between
 * two, and before and after them warming by {@link #RISE} a day. Common practice, no source; the
 * air warmed by 0.18 °C a day from April to June in New York's record of 2012 to 2015, and by 0.11
 * in Seattle's.
 */
public final class ReadSoil {
  /** °C a day. */
  public static final double RISE = 0.15;

  private static final int NEAR = 10;

  private final List<SoilReading> readings;
  private final int end;

  /** Of the readings of spring alone; it may be none of them. */
  ReadSoil(List<SoilReading> all, SeasonAxis axis) {
    this.end = axis.midsummer();
    this.readings =
        all.stream()
            .filter(r -> isOfSpring(r, axis))
            .sorted((a, b) -> Integer.compare(a.slot(), b.slot()))
            .toList();
  }

  /** Whether a reading says anything of the soil at planting time. */
  public static boolean isOfSpring(SoilReading reading, SeasonAxis axis) {
    return reading.slot() >= axis.springWatchFrom() && reading.slot() < axis.midsummer();
  }

  public boolean isKnown() {
    return !readings.isEmpty();
  }

  /** °C at sowing depth on a slot, without any mulch; empty without readings or after midsummer. */
  public OptionalDouble at(double slot) {
    if (readings.isEmpty() || slot >= end) {
      return OptionalDouble.empty();
    }
    SoilReading before = readings.get(0);
    if (slot <= before.slot()) {
      return OptionalDouble.of(before.celsius() - RISE * (before.slot() - slot));
    }
    for (SoilReading reading : readings) {
      if (reading.slot() >= slot) {
        double share = (slot - before.slot()) / (reading.slot() - before.slot());
        return OptionalDouble.of(before.celsius() + share * (reading.celsius() - before.celsius()));
      }
      before = reading;
    }
    return OptionalDouble.of(before.celsius() + RISE * (slot - before.slot()));
  }

  /** Give or take on a slot, °C; for the years differ, and more the further from a reading. */
  public double width(double slot) {
    boolean near = readings.stream().anyMatch(r -> Math.abs(r.slot() - slot) <= NEAR);
    return near ? SoilTemperature.WIDTH_WITH_READINGS : SoilTemperature.WIDTH;
  }

  /**
   * The chance that soil is at least so warm on a slot.
   *
   * @param celsius what is asked of it, less what a mulch adds
   */
  public OptionalDouble chance(double slot, double celsius) {
    OptionalDouble at = at(slot);
    return at.isEmpty()
        ? at
        : OptionalDouble.of(
            NormalDistribution.of(at.getAsDouble(), width(slot)).survivalProbability(celsius));
  }

  /** To the hundredth, since a tenth is much of it. */
  private static String rise(Units units) {
    return Quantity.plain(Math.rint(units.inDegrees(RISE) * 100) / 100) + " " + units.degree();
  }

  public Reason reason(Units units) {
    String says =
        String.format(
            Locale.ROOT,
            "Soil is reckoned from your own %s, warming by %s a day before and after, give or take"
                + " %s, more than %d days from one %s.",
            readings.size() == 1 ? "reading" : readings.size() + " readings",
            rise(units),
            units.difference(SoilTemperature.WIDTH_WITH_READINGS),
            NEAR,
            units.difference(SoilTemperature.WIDTH));
    return new Reason(says, Basis.RECORD, Optional.empty(), List.of());
  }
}
