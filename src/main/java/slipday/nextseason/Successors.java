package slipday.nextseason;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Cross;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.measure.Reasoned;
import slipday.nextseason.NextSeason.Made;
import slipday.nextseason.NextSeason.Resting;
import slipday.nextseason.NextSeason.Role;
import slipday.nextseason.NextSeason.Sown;

/**
 * Which lot follows which planting. Lines go on from the seed saved of them this season; where none
 * was, the lot is sown again. A line that is being fixed goes on in a few families, each of one
 * plant, with an older generation beside them. Seed of crosses made is grown.
 */
final class Successors {
  private final Garden garden;
  private final Offspring offspring;
  private final SeedStore stock;
  private final Sowings sowings;
  private final Families families;
  private final SownAgain again;
  private final Map<String, Fact.Dropped> dropped = new HashMap<>();

  Successors(Garden garden) {
    this.garden = garden;
    this.offspring = new Offspring(garden);
    this.stock = new SeedStore(garden, garden.season().year() + 1);
    this.sowings = new Sowings(stock, offspring);
    this.again = new SownAgain(garden, sowings);
    this.families = new Families(garden, offspring, stock, sowings, again);
    garden.record().every(Fact.Dropped.class).forEach(d -> dropped.put(d.line().name(), d));
    garden
        .record()
        .every(Fact.Sowed.class)
        .forEach(s -> resumed(s.stand().lot().line().name(), s.date()));
    garden.plantings().forEach(p -> resumed(p.line().name(), garden.season().first()));
  }

  /** A line that is sown again after it was dropped is not given up. */
  private void resumed(String line, LocalDate when) {
    Fact.Dropped end = dropped.get(line);
    if (end != null && end.date().isBefore(when)) {
      dropped.remove(line);
    }
  }

  NextSeason nextSeason() {
    Map<String, List<Planting>> byLine = new LinkedHashMap<>();
    garden
        .plantings()
        .forEach(p -> byLine.computeIfAbsent(p.line().name(), n -> new ArrayList<>()).add(p));
    byLine.values().forEach(this::follow);
    newCrosses();
    List<Made> crosses = crossesStillToMake();
    List<Sown> placed = new BedPlan(garden, sowings.all()).placed();
    return new NextSeason(
        garden,
        garden.season().year() + 1,
        placed,
        crosses,
        sowings.leftOut(),
        resting(placed),
        stock.left(),
        sowings.followers(),
        dropped);
  }

  /** All plantings of one line. */
  private void follow(List<Planting> plantings) {
    Line line = plantings.get(0).line();
    Fact.Dropped end = dropped.get(line.name());
    if (end != null) {
      String why = "the line was dropped on " + end.date() + ": " + end.why();
      plantings.forEach(p -> sowings.leaveOut(p.name(), why));
      return;
    }
    boolean keepsSeed = plantings.stream().anyMatch(Planting::seedSaved);
    List<Planting> checks = plantings.stream().filter(p -> keepsSeed && !p.seedSaved()).toList();
    List<Planting> kept = plantings.stream().filter(p -> !checks.contains(p)).toList();
    List<Planting> borne = kept.stream().filter(p -> !offspring.of(p).isEmpty()).toList();
    if (line.purpose() == Line.Purpose.FIX && !borne.isEmpty()) {
      families.fix(line, borne, checks);
    } else {
      kept.forEach(families::carryOn);
      checks.forEach(p -> again.sow(p, Role.CHECK, List.of()));
    }
  }

  /** Seed of a known father first, then of most seed parents, then the most. */
  private Comparator<Lot> best() {
    return Comparator.<Lot, Lot.Identity>comparing(Lot::identity)
        .thenComparing(l -> -offspring.seedParents(l))
        .thenComparing(l -> -stock.left(l).orElse(0))
        .thenComparing(Lot::name);
  }

  /** One lot of each cross made; one whose seed is surely crossed, if there is any. */
  private void newCrosses() {
    Map<String, Lot> byLine = new LinkedHashMap<>();
    offspring.crossed().keySet().stream()
        .filter(l -> !dropped.containsKey(l.line().name()) && stock.isThere(l))
        .sorted(best())
        .forEach(
            l ->
                l.bitterParent(garden)
                    .ifPresentOrElse(
                        b ->
                            sowings.leaveOut(
                                l.name(),
                                "it is of "
                                    + b.culprit().name()
                                    + ", which tasted bitter: destroy it"),
                        () -> byLine.putIfAbsent(l.line().name(), l)));
    for (Lot lot : byLine.values()) {
      Fruit fruit = Objects.requireNonNull(offspring.crossed().get(lot));
      Planting mother = fruit.seedParent().stand().planting().orElseThrow();
      List<String> why = new ArrayList<>();
      why.add(fruit.seedParent() + " crossed by " + fruit.pollenParent() + ".");
      if (lot.identity() != Lot.Identity.KNOWN) {
        why.add(
            "Its mother's anthers stayed on, so some may be selfed: look for what the pollen parent"
                + " gave before any seed is saved, and record `grown out`.");
      }
      sowings.sowCross(lot, mother, why);
    }
  }

  private List<Made> crossesStillToMake() {
    List<Made> wanted = new ArrayList<>();
    for (Cross cross : garden.crosses()) {
      boolean made =
          offspring.crossed().values().stream()
              .anyMatch(
                  f ->
                      f.seedParent().stand().name().equals(cross.seedParent().name())
                          && f.pollenParent().stand().name().equals(cross.pollenParent().name()));
      if (made) {
        continue;
      }
      Optional<String> mother = sowings.follower(cross.seedParent());
      Optional<String> father = sowings.follower(cross.pollenParent());
      if (mother.isPresent() && father.isPresent()) {
        wanted.add(new Made(cross, mother.get(), father.get()));
      } else {
        Planting missing = mother.isEmpty() ? cross.seedParent() : cross.pollenParent();
        sowings.leaveOut("cross " + cross.name(), "`" + missing.name() + "` is not grown again");
      }
    }
    return wanted;
  }

  /** The newest lot of each line that is not sown, and what of an age is best grown on. */
  private List<Resting> resting(List<Sown> sown) {
    Set<String> lines = new LinkedHashSet<>();
    sown.forEach(s -> lines.add(s.lot().line().name()));
    List<Resting> resting = new ArrayList<>();
    for (Line line : garden.lines()) {
      if (lines.contains(line.name()) || dropped.containsKey(line.name())) {
        continue;
      }
      garden.lots().stream()
          .filter(l -> l.line().name().equals(line.name()) && stock.isThere(l))
          .filter(l -> l.bitterParent(garden).isEmpty())
          .max(Comparator.comparing(l -> l.harvested().map(Reasoned::value).orElse(0)))
          .ifPresent(
              l -> resting.add(new Resting(l, line, stock.left(l), stock.outlook(l).growOnBy())));
    }
    return resting;
  }
}
