package slipday.seed;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import slipday.descent.Births;
import slipday.descent.Lineage;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Asides;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Mating;
import slipday.garden.record.Plants;
import slipday.garden.record.Stock;
import slipday.garden.record.Subject;
import slipday.genetics.Generation;
import slipday.genetics.Odds;
import slipday.genetics.Purdy;
import slipday.measure.Reasoned;

/** Every lot of a garden as it stands at the end of the record. */
public final class SeedBox {
  private static final Pattern FIGURES = Pattern.compile("\\d+");
  private static final int LONGEST = 12;

  private final Garden garden;
  private final Births births;
  private final Asides asides;
  private final OptionalInt plants;
  private final Set<String> sown = new HashSet<>();

  private SeedBox(Garden garden, OptionalInt plants) {
    this.garden = garden;
    this.births = new Births(garden.record());
    this.asides = new Asides(garden.record());
    this.plants = plants;
    garden
        .record()
        .every(Fact.Sowed.class)
        .filter(s -> s.stand().year() == garden.season().year())
        .forEach(s -> sown.add(s.stand().name()));
  }

  /**
   * By line, by harvest, and by name with figures in their order.
   *
   * @param plants how many to have of each lot; empty for what this season's plantings want
   */
  public static List<SeedLot> lots(Garden garden, OptionalInt plants) {
    SeedBox box = new SeedBox(garden, plants);
    List<String> lines = garden.lines().stream().map(Line::name).toList();
    return garden.lots().stream()
        .sorted(
            Comparator.<Lot>comparingInt(l -> lines.indexOf(l.line().name()))
                .thenComparing(l -> l.harvested().map(Reasoned::value).orElse(0))
                .thenComparing(l -> inOrder(l.name())))
        .map(box::lot)
        .toList();
  }

  /** So that 2A comes before 10A. */
  private static String inOrder(String name) {
    return FIGURES
        .matcher(name)
        .replaceAll(m -> "0".repeat(Math.max(0, LONGEST - m.group().length())) + m.group());
  }

  private SeedLot lot(Lot lot) {
    int season = garden.season().year();
    Stock left = Stock.of(garden.record(), lot);
    List<Planting> unsown = unsown(lot);
    Outlook outlook = Outlook.of(lot, season);
    int wanted =
        plants.orElse(
            unsown.stream().flatMap(p -> p.plants().stream()).mapToInt(n -> n.value()).sum());
    int toSow = plants.isPresent() ? SeedsToSow.of(lot, wanted, outlook) : toSow(unsown, outlook);
    Lineage descent = Lineage.of(garden, new Subject.OfLot(lot), Optional.empty());
    return new SeedLot(
        lot,
        births.generation(lot).map(Generation::print),
        parents(lot),
        descent.notation().map(Purdy::print),
        descent.inbreeding(),
        descent.assumed(),
        left.seeds(),
        left.atMost(),
        lot.harvested().map(h -> Math.max(0, season - h.value())),
        outlook,
        wanted,
        toSow,
        left.seeds().filter(n -> toSow < Odds.MOST).map(n -> n - toSow),
        lot.bitterRisk(garden),
        lot.bitterParent(garden),
        asides.of(new Subject.OfLot(lot)));
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
      parents.add(
          taking.from() instanceof Fruit fruit
              ? parents(fruit)
              : taking.from() + open((Plants) taking.from(), lot));
    }
    return parents;
  }

  private static String open(Plants plants, Lot lot) {
    return Births.isIsolated(plants, lot) ? ", open, among its own kind alone" : ", open";
  }

  private static String parents(Fruit fruit) {
    String tag = " (tag " + fruit.tag() + ", " + fruit.date() + ")";
    if (fruit.mating() == Mating.SELF) {
      return fruit.seedParent() + " selfed" + tag;
    }
    return fruit.seedParent() + " x " + fruit.pollenParent() + tag;
  }
}
