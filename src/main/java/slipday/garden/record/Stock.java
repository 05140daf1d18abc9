package slipday.garden.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.garden.Lot;
import slipday.measure.Reasoned;

/**
 * The seeds left of a lot at the end of the record.
 *
 * @param seeds empty where they were never counted
 * @param atMost whether some were taken without being counted since the last count, so that less
 *     may be left
 */
public record Stock(Optional<Integer> seeds, boolean atMost) {

  /**
   * What was there when the plan's season began, less what went since, or as it was last counted.
   */
  public static Stock of(GardenRecord record, Lot lot) {
    Optional<Integer> seeds = lot.seeds().map(Reasoned::value);
    boolean atMost = false;
    for (Fact fact : told(record, lot)) {
      if (fact instanceof Fact.Counted counted) {
        seeds = Optional.of(counted.seeds());
        atMost = false;
        continue;
      }
      Optional<Integer> used = used(fact);
      seeds = seeds.map(n -> Math.max(0, n - used.orElse(0)));
      atMost |= used.isEmpty();
    }
    return new Stock(seeds, atMost);
  }

  /** What is recorded of its seeds that {@link Lot#seeds} does not tell yet, by date. */
  public static List<Fact> told(GardenRecord record, Lot lot) {
    List<Fact> facts =
        record.facts().stream()
            .filter(f -> lot(f).filter(l -> l.name().equals(lot.name())).isPresent())
            .toList();
    return since(record, facts);
  }

  /** The lot whose seeds a fact counts or takes from. */
  static Optional<Lot> lot(Fact fact) {
    if (fact instanceof Fact.Sowed s) {
      return Optional.of(s.stand().lot());
    }
    if (fact instanceof Fact.GivenAway g) {
      return Optional.of(g.lot());
    }
    if (fact instanceof Fact.Germinated g) {
      return Optional.of(g.lot());
    }
    return fact instanceof Fact.Counted c ? Optional.of(c.lot()) : Optional.empty();
  }

  /** The seeds it took; empty where they were not counted. */
  static Optional<Integer> used(Fact fact) {
    if (fact instanceof Fact.Sowed s) {
      return s.seeds();
    }
    if (fact instanceof Fact.GivenAway g) {
      return Optional.of(g.seeds());
    }
    return Optional.of(fact instanceof Fact.Germinated g ? g.of() : 0);
  }

  /**
   * Of a lot's facts, by date, those that {@link Lot#seeds} does not tell yet. Seed sown shortly
   * ahead of the season is the season's, unless the lot was counted between.
   */
  static List<Fact> since(GardenRecord record, List<Fact> ofLot) {
    LocalDate first = record.seasonYear().first();
    LocalDate counted =
        ofLot.stream()
            .filter(f -> f instanceof Fact.Counted && f.date().isBefore(first))
            .map(Fact::date)
            .reduce(LocalDate.MIN, (one, other) -> other);
    return ofLot.stream()
        .filter(
            f ->
                !f.date().isBefore(first)
                    || (f instanceof Fact.Sowed s
                        && s.stand().year() == record.season()
                        && f.date().isAfter(counted)))
        .toList();
  }
}
