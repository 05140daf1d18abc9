package slipday.season;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * What one planting asks of its season, in plain numbers, read once from its plan lines and crop
 * facts. Temperatures °C, times in days.
 *
 * @param fromEvent what {@code flowers} counts from: sowing, emergence or planting out
 * @param flowers to the first fruiting flower; empty for a biennial's first year, or if unknown
 * @param malesEarlier days, quick to slow, before the first fruiting flower
 * @param blooms days of flowering
 * @param seedRipe from pollination to full seed; empty if unknown
 * @param soilAtLeast soil wanted for sowing or planting out
 * @param soilLeast soil in which seed comes up at all
 * @param reasons for each event, what its reckoning rests on
 * @param ownDays days from pollination out of the line's own record, by what they lead to
 */
@SuppressWarnings("ArrayRecordComponent") // read by pace in the inner loop, never compared
record Needs(
    boolean indoors,
    int age,
    double indoorCelsius,
    EmergenceTable emergence,
    double soilWarmer,
    double coverDays,
    double coverWarmer,
    Optional<Double> guardsTo,
    double standsStill,
    String fromEvent,
    Optional<Stage> flowers,
    boolean hasMales,
    double[] malesEarlier,
    double[] blooms,
    Optional<Stage> ripe,
    Optional<Stage> seedRipe,
    boolean seedSaved,
    double killedAt,
    double bedColder,
    Optional<Double> soilAtLeast,
    double soilLeast,
    Optional<Double> nightsAtLeast,
    Optional<Double> heatEnds,
    Map<Event, List<Reason>> reasons,
    Map<Event, Reasoned<Range>> ownDays) {

  /** The same with figures out of the line's own record. */
  Needs taught(
      Optional<Stage> toFlowers,
      double[] malesBefore,
      Optional<Stage> toRipe,
      Optional<Stage> toSeed,
      Map<Event, List<Reason>> because,
      Map<Event, Reasoned<Range>> days) {
    return new Needs(
        indoors,
        age,
        indoorCelsius,
        emergence,
        soilWarmer,
        coverDays,
        coverWarmer,
        guardsTo,
        standsStill,
        fromEvent,
        toFlowers,
        hasMales,
        malesBefore,
        blooms,
        toRipe,
        toSeed,
        seedSaved,
        killedAt,
        bedColder,
        soilAtLeast,
        soilLeast,
        nightsAtLeast,
        heatEnds,
        because,
        days);
  }

  Needs withSoilAtLeast(double celsius) {
    return with(
        indoors,
        age,
        soilWarmer,
        coverDays,
        coverWarmer,
        guardsTo,
        ripe,
        seedRipe,
        Optional.of(celsius));
  }

  /** The same with a share of the time from pollination to ripe. */
  Needs withRipening(double factor) {
    return with(
        indoors,
        age,
        soilWarmer,
        coverDays,
        coverWarmer,
        guardsTo,
        ripe.map(s -> s.times(factor)),
        seedRipe.map(s -> s.times(factor)),
        soilAtLeast);
  }

  Needs startedIndoors(int days) {
    return with(
        true, days, soilWarmer, coverDays, coverWarmer, guardsTo, ripe, seedRipe, soilAtLeast);
  }

  Needs mulched(double warmer) {
    return with(
        indoors,
        age,
        soilWarmer + warmer,
        coverDays,
        coverWarmer,
        guardsTo,
        ripe,
        seedRipe,
        soilAtLeast);
  }

  /** Under a tunnel, as a plan line would tell it: of the soil it says nothing. */
  Needs tunnelled(double days, double warmer, double guards) {
    return with(
        indoors,
        age,
        soilWarmer,
        days,
        Math.max(coverWarmer, warmer),
        Optional.of(guards),
        ripe,
        seedRipe,
        soilAtLeast);
  }

  private Needs with(
      boolean startedIndoors,
      int days,
      double warmerSoil,
      double covered,
      double warmerAir,
      Optional<Double> guards,
      Optional<Stage> toRipe,
      Optional<Stage> toSeed,
      Optional<Double> soil) {
    return new Needs(
        startedIndoors,
        days,
        indoorCelsius,
        emergence,
        warmerSoil,
        covered,
        warmerAir,
        guards,
        standsStill,
        fromEvent,
        flowers,
        hasMales,
        malesEarlier,
        blooms,
        toRipe,
        toSeed,
        seedSaved,
        killedAt,
        bedColder,
        soil,
        soilLeast,
        nightsAtLeast,
        heatEnds,
        reasons,
        ownDays);
  }
}
