package slipday.descent;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.genetics.Answer;
import slipday.genetics.Generation;
import slipday.genetics.Mating;
import slipday.genetics.PlainGeneration;
import slipday.genetics.Purdy;

/** Which seed each lot was born of, and what generation that makes it. */
public final class Births {
  /** A flower emasculated so many days before it was crossed had not yet opened. */
  private static final int DAYS_AHEAD = 2;

  private final Map<String, List<Fact.Saved>> saved = new LinkedHashMap<>();
  private final Map<String, Fact.Verdict> verdicts = new HashMap<>();
  private final Map<String, Optional<Generation>> generations = new HashMap<>();
  private final List<Fact.Emasculated> emasculated;

  public Births(GardenRecord record) {
    emasculated = record.every(Fact.Emasculated.class).toList();
    record
        .every(Fact.Saved.class)
        .forEach(s -> saved.computeIfAbsent(s.lot().name(), n -> new ArrayList<>()).add(s));
    record.every(Fact.GrownOut.class).forEach(g -> verdicts.put(g.lot().name(), g.verdict()));
  }

  /** The takings of seed it was born from, by date; none for a lot that was declared. */
  public List<Fact.Saved> of(Lot lot) {
    return saved.getOrDefault(lot.name(), List.of());
  }

  /** What its plants proved to be, when they were grown out. */
  public Optional<Fact.Verdict> verdict(Lot lot) {
    return Optional.ofNullable(verdicts.get(lot.name()));
  }

  /** What its label says, or else what follows from the record; empty where nothing is known. */
  public Optional<Generation> generation(Lot lot) {
    Optional<Generation> known = generations.get(lot.name());
    if (known == null) {
      known = lot.generation().flatMap(g -> Generation.parse(g.value()).value());
      known = known.isPresent() ? known : born(lot);
      generations.put(lot.name(), known);
    }
    return known;
  }

  private Optional<Generation> born(Lot lot) {
    List<Generation> parts = new ArrayList<>();
    for (Fact.Saved taking : of(lot)) {
      Optional<Generation> part =
          taking.from() instanceof Fruit fruit
              ? seedOf(fruit, !isDoubtful(lot))
              : taking.from() instanceof Plants plants ? openSeedOf(plants) : Optional.empty();
      if (part.isEmpty()) {
        return part;
      }
      parts.add(part.get());
    }
    return parts.size() < 2 ? parts.stream().findFirst() : bulk(parts);
  }

  private static Optional<Generation> bulk(List<Generation> parts) {
    return parts.stream().distinct().count() == 1
        ? Optional.of(parts.get(0))
        : Generation.bulk(parts).value();
  }

  boolean isDoubtful(Lot lot) {
    return lot.identity() == Lot.Identity.DOUBTFUL && verdict(lot).isEmpty();
  }

  /** Whether a perfect flower kept its anthers when it was crossed. */
  public boolean mayBeSelf(Fruit fruit) {
    return fruit.mating().isCross()
        && fruit.seedParent().stand().lot().line().sex().fruitingFlowersArePerfect()
        && emasculated.stream().noneMatch(e -> emasculates(e, fruit));
  }

  private static boolean emasculates(Fact.Emasculated fact, Fruit fruit) {
    Plants mother = fruit.seedParent();
    boolean onIt =
        fact.plants().plant().isEmpty()
            || mother.plant().isEmpty()
            || fact.plants().plant().equals(mother.plant());
    return onIt
        && fact.plants().stand().equals(mother.stand())
        && !fact.date().isAfter(fruit.date())
        && !fact.date().isBefore(fruit.date().minusDays(DAYS_AHEAD));
  }

  private Optional<Generation> openSeedOf(Plants plants) {
    return Optional.of(known(plants.stand().lot()).openPollinated(false));
  }

  /**
   * The generation of a tagged fruit's seed.
   *
   * @param certain false where a perfect flower kept its anthers when it was crossed
   */
  Optional<Generation> seedOf(Fruit fruit, boolean certain) {
    Generation mother = known(fruit.seedParent().stand().lot());
    Generation father = known(fruit.pollenParent().stand().lot());
    return switch (fruit.mating()) {
      case SELF -> Optional.of(mother.selfed());
      case SIB -> Optional.of(mother.sibbed());
      case CROSS -> made(new Mating.Crossing(certain), mother, father).value();
      case BACKCROSS ->
          made(new Mating.Backcrossing(Purdy.Side.POLLEN_PARENT), mother, father)
              .value()
              .or(
                  () ->
                      made(new Mating.Backcrossing(Purdy.Side.SEED_PARENT), mother, father)
                          .value());
    };
  }

  private static Answer<Generation> made(Mating mating, Generation mother, Generation father) {
    return mating.seed(mother, Optional.of(father));
  }

  private Generation known(Lot lot) {
    return generation(lot).orElse(new PlainGeneration.Unknown());
  }
}
