package slipday.season;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.measure.Reason;

/**
 * What one planting asks of its season, in plain numbers, read once from its plan lines and crop
 * facts. Temperatures °C, times in days.
 *
 * @param fromEvent what {@code flowers} counts from: sowing, emergence or planting out
 * @param flowers to the first fruiting flower; empty for a biennial's first year, or if unknown
 * @param malesEarlier days, quick to slow, before the first fruiting flower
 * @param blooms days of flowering
 * @param seedRipe from pollination to full seed; empty if unknown
 * @param reasons for each event, what its reckoning rests on
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
    Optional<Double> nightsAtLeast,
    Optional<Double> heatEnds,
    Map<Event, List<Reason>> reasons) {}
