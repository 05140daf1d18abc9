package slipday.nextseason;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Stock;
import slipday.genetics.Odds;
import slipday.measure.Reasoned;
import slipday.seed.Outlook;
import slipday.seed.SeedsToSow;

/** Seeds that are left of each lot, less what the next season's plantings take as they are made. */
final class SeedStore {
  private final int season;
  private final Map<String, Integer> left = new HashMap<>();
  private final Map<String, Integer> taken = new HashMap<>();

  SeedStore(Garden garden, int season) {
    this.season = season;
    GardenRecord untilThen = untilThen(garden);
    garden
        .lots()
        .forEach(l -> Stock.of(untilThen, l).seeds().ifPresent(n -> left.put(l.name(), n)));
  }

  /** Without what is recorded of the next season already: its own plan takes that off. */
  private static GardenRecord untilThen(Garden garden) {
    List<Fact> facts =
        garden.record().facts().stream()
            .filter(f -> !f.date().isAfter(garden.season().last()))
            .filter(f -> !(f instanceof Fact.Sowed s && s.stand().year() > garden.season().year()))
            .toList();
    return new GardenRecord(facts, garden.season());
  }

  Map<String, Integer> left() {
    return left;
  }

  /** After this season and what is already to be sown in the next. */
  Optional<Integer> left(Lot lot) {
    return Optional.ofNullable(left.get(lot.name()))
        .map(n -> Math.max(0, n - taken.getOrDefault(lot.name(), 0)));
  }

  /** Whether there is a seed of it, for all that is known. */
  boolean isThere(Lot lot) {
    return left(lot).filter(n -> n == 0).isEmpty();
  }

  Outlook outlook(Lot lot) {
    return Outlook.of(lot, season);
  }

  /** When it is best grown on, in words. */
  Optional<String> growOn(Lot lot) {
    return outlook(lot)
        .growOnBy()
        .map(y -> y <= season ? "best grown on now" : "best grown on by " + y);
  }

  /** Whether it would still be good for sale after lying for one season more. */
  boolean mayRest(Lot lot) {
    return outlook(lot).growOnBy().filter(y -> y > season).isPresent();
  }

  int toSow(Lot lot, int plants) {
    return SeedsToSow.of(lot, plants, outlook(lot));
  }

  /** How many plants the lot is good for, up to those wanted, if a remnant is kept back. */
  int most(Lot lot, int wanted, int keepBack) {
    Optional<Integer> seeds = left(lot);
    int plants = wanted;
    while (plants > 0 && seeds.isPresent() && toSow(lot, plants) > seeds.get() - keepBack) {
      plants--;
    }
    return plants;
  }

  /** What the plan wants kept back of it. */
  static int keepBack(Lot lot) {
    return lot.keepBack().map(Reasoned::value).orElse(0);
  }

  /** Takes the seeds for so many plants; what is left then. */
  Optional<Integer> take(Lot lot, int plants) {
    int seeds = toSow(lot, plants);
    if (seeds < Odds.MOST) {
      taken.merge(lot.name(), seeds, Integer::sum);
    }
    return left(lot);
  }
}
