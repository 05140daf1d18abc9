package slipday.storage;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Line;
import slipday.garden.record.Fact;

/**
 * A fruit, or fruit of a planting, that was laid in store.
 *
 * @param name its tag, or the planting's name
 * @param since the day it was picked, or else the first it was seen in store
 * @param where it lies, as last told
 * @param looks how it was, by date
 * @param first as it was weighed first
 * @param last as it was weighed last, where that was another day
 * @param flavour its score, a share of the points to be had, by its age in days
 * @param emptied whether its seed was taken since
 * @param bitter whether it, or its plant, tasted bitter
 */
public record KeptFruit(
    String name,
    Line line,
    LocalDate since,
    Optional<String> where,
    List<Fact.LookedAt> looks,
    Optional<Weighed> first,
    Optional<Weighed> last,
    Map<Integer, Double> flavour,
    boolean emptied,
    boolean bitter) {
  private static final String SOUND = "sound";
  private static final String SOFT = "soft";
  private static final String ROTTEN = "rotten";

  /** The weight of one fruit, in kg, on a day. */
  public record Weighed(LocalDate date, double kilograms) {}

  public KeptFruit {
    looks = List.copyOf(looks);
    flavour = Map.copyOf(flavour);
  }

  public Optional<Fact.LookedAt> lastLook() {
    return looks.isEmpty() ? Optional.empty() : Optional.of(looks.get(looks.size() - 1));
  }

  /** Whether it still lies there: neither rotten nor opened for its seed. */
  public boolean isThere() {
    return !emptied && lastLook().filter(l -> l.state().equals(ROTTEN)).isEmpty();
  }

  /** Whether it lies there soft: it is thrown away, and not eaten. */
  public boolean isSoft() {
    return lastLook().filter(l -> l.state().equals(SOFT)).isPresent();
  }

  /** Whether nothing of it is to be eaten. */
  public boolean isWaste() {
    return isSoft() || bitter;
  }

  /** Whether it was weighed heavier later than first: a fruit in store takes up no water. */
  boolean gained() {
    return lostADay().filter(lost -> lost < 0).isPresent();
  }

  static boolean isSound(Fact.LookedAt look) {
    return look.state().equals(SOUND);
  }

  /** The share of its weight that it lost in a day. */
  Optional<Double> lostADay() {
    return first.flatMap(
        f -> last.map(l -> (f.kilograms - l.kilograms) / f.kilograms / days(f, l)));
  }

  private static long days(Weighed first, Weighed last) {
    return ChronoUnit.DAYS.between(first.date, last.date);
  }
}
