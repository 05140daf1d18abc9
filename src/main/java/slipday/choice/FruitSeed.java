package slipday.choice;

import java.util.Optional;
import slipday.choice.Candidate.SeedFruit;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.seed.Outlook;
import slipday.seed.SeedsToSow;

/**
 * How far the seed of a fruit goes, by the germination of the lot it was saved into: as {@code
 * slipday lots} reckons in this season.
 */
final class FruitSeed {
  private final Garden garden;

  FruitSeed(Garden garden) {
    this.garden = garden;
  }

  /** Plants it is sure to give, up to those wanted: all of them where its seeds are not counted. */
  int sure(SeedFruit fruit, int wanted) {
    int seeds = fruit.seeds().orElse(Integer.MAX_VALUE);
    return lot(fruit)
        .map(l -> SeedsToSow.plants(l, seeds, wanted, outlook(l)))
        .orElse(Math.min(seeds, wanted));
  }

  /** Seeds to sow for so many plants. */
  int toSow(SeedFruit fruit, int plants) {
    return lot(fruit).map(l -> SeedsToSow.of(l, plants, outlook(l))).orElse(plants);
  }

  private Outlook outlook(Lot lot) {
    return Outlook.of(lot, garden.season().year());
  }

  private Optional<Lot> lot(SeedFruit fruit) {
    return garden.lots().stream().filter(l -> fruit.savedInto().contains(l.name())).findFirst();
  }
}
