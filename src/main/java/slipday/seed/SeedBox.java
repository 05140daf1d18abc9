package slipday.seed;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slipday.descent.Births;
import slipday.descent.Lineage;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Mating;
import slipday.garden.record.Subject;
import slipday.genetics.Generation;
import slipday.genetics.Odds;
import slipday.genetics.Purdy;
import slipday.measure.Reasoned;

/** Every lot of a garden as it stands at the end of the record. */
public final class SeedBox {
  private final Garden garden;
  private final Births births;
  private final OptionalInt plants;
  private final Set<String> sown = new HashSet<>();

  private SeedBox(Garden garden, OptionalInt plants) {
    this.garden = garden;
    this.births = new Births(garden.record());
    this.plants = plants;
    garden
        .record()
        .every(Fact.Sowed.class)
        .filter(s -> s.stand().year() == garden.season().year())
        .forEach(s -> sown.add(s.stand().name()));
  }

  /**
   * @param plants how many to have of each lot; empty for what this season's plantings want
   */
  public static List<SeedLot> lots(Garden garden, OptionalInt plants) {
    SeedBox box = new SeedBox(garden, plants);
    return garden.lots().stream().map(box::lot).toList();
  }

  private SeedLot lot(Lot lot) {
    int season = garden.season().year();
    Left left = left(lot);
    List<Planting> unsown = unsown(lot);
    Outlook outlook = Outlook.of(lot, season);
    int wanted =
        plants.orElse(
            unsown.stream().flatMap(p -> p.plants().stream()).mapToInt(n -> n.value()).sum());
    int toSow = plants.isPresent() ? SeedsToSow.of(lot, wanted, outlook) : toSow(unsown, outlook);
    return new SeedLot(
        lot,
        births.generation(lot).map(Generation::print),
        parents(lot),
        Lineage.of(garden, new Subject.OfLot(lot), Optional.empty()).notation().map(Purdy::print),
        left.seeds,
        left.atMost,
        lot.harvested().map(h -> Math.max(0, season - h.value())),
        outlook,
        wanted,
        toSow,
        left.seeds.filter(n -> toSow < Odds.MOST).map(n -> n - toSow),
        lot.bitterRisk(garden));
  }

  private List<Planting> unsown(Lot lot) {
    return garden.plantings().stream()
        .filter(p -> p.lot().name().equals(lot.name()) && !sown.contains(p.name()))
        .toList();
  }

  private static int toSow(List<Planting> plantings, Outlook outlook) {
    long sum = 0;
    for (Planting p : plantings) {
      int needed = p.plants().map(n -> SeedsToSow.of(p.lot(), n.value(), outlook)).orElse(0);
      sum += p.seedsToSow().map(Reasoned::value).orElse(needed);
    }
    return (int) Math.min(Odds.MOST, sum);
  }

  private List<String> parents(Lot lot) {
    List<String> parents = new ArrayList<>();
    for (Fact.Saved taking : births.of(lot)) {
      parents.add(taking.from() instanceof Fruit fruit ? parents(fruit) : taking.from() + ", open");
    }
    return parents;
  }

  private static String parents(Fruit fruit) {
    String tag = " (tag " + fruit.tag() + ", " + fruit.date() + ")";
    if (fruit.mating() == Mating.SELF) {
      return fruit.seedParent() + " selfed" + tag;
    }
    return fruit.seedParent() + " x " + fruit.pollenParent() + tag;
  }

  private record Left(Optional<Integer> seeds, boolean atMost) {}

  /** What was there when the season began, less what went since, or as it was last counted. */
  private Left left(Lot lot) {
    Optional<Integer> seeds = lot.seeds().map(Reasoned::value);
    boolean atMost = false;
    for (Fact fact : garden.record().facts()) {
      if (!garden.season().contains(fact.date())) {
        continue;
      }
      if (fact instanceof Fact.Counted counted && counted.lot().name().equals(lot.name())) {
        seeds = Optional.of(counted.seeds());
        atMost = false;
        continue;
      }
      Optional<Integer> taken = taken(fact, lot);
      seeds = seeds.map(n -> Math.max(0, n - taken.orElse(0)));
      atMost |= taken.isEmpty();
    }
    return new Left(seeds, atMost);
  }

  /** Seeds a fact took out of a lot, 0 where it has nothing to do with it; empty if not counted. */
  private static Optional<Integer> taken(Fact fact, Lot lot) {
    if (fact instanceof Fact.Sowed s && s.stand().lot().name().equals(lot.name())) {
      return s.seeds();
    }
    if (fact instanceof Fact.GivenAway g && g.lot().name().equals(lot.name())) {
      return Optional.of(g.seeds());
    }
    return Optional.of(
        fact instanceof Fact.Germinated g && g.lot().name().equals(lot.name()) ? g.of() : 0);
  }
}
