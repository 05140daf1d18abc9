package slipday.descent;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;
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
  private final Map<Fruit.Key, Fact.SetChecked> sets;

  public Births(GardenRecord record) {
    sets = record.sets();
    emasculated = record.every(Fact.Emasculated.class).toList();
    record
        .every(Fact.Saved.class)
        .forEach(s -> saved.computeIfAbsent(s.lot().name(), n -> new ArrayList<>()).add(s));
    record.every(Fact.GrownOut.class).forEach(g -> verdicts.put(g.lot().name(), g.verdict()));
  }

  /** The last that was seen of a fruit's set, where it dropped. */
  Optional<Fact.SetChecked> failed(Subject subject) {
    return subject instanceof Fruit fruit
        ? Optional.ofNullable(sets.get(fruit.key())).filter(s -> !s.took())
        : Optional.empty();
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
      known = label(lot).or(() -> of(lot).isEmpty() ? Founding.generation(lot) : recorded(lot));
      generations.put(lot.name(), known);
    }
    return known;
  }

  /** What its label says. */
  public static Optional<Generation> label(Lot lot) {
    return lot.generation().flatMap(g -> Generation.parse(g.value()).value());
  }

  /** What follows from the record, whatever its label says; empty where that is not known. */
  public Optional<Generation> recorded(Lot lot) {
    List<Generation> parts = new ArrayList<>();
    for (Fact.Saved taking : of(lot)) {
      Optional<Generation> part =
          taking.from() instanceof Fruit fruit
              ? seedOf(fruit, verdict(lot))
              : openSeedOf((Plants) taking.from(), lot);
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

  private Optional<Generation> openSeedOf(Plants plants, Lot lot) {
    return Optional.of(known(plants.stand().lot()).openPollinated(isIsolated(plants, lot)));
  }

  /**
   * Whether bees could bring no pollen but the block's own: it is caged alone, all kin stood too
   * far off, or the label of the seed says so.
   */
  public static boolean isIsolated(Plants plants, Lot lot) {
    boolean caged =
        plants
            .stand()
            .planting()
            .filter(p -> p.flowers().caged() && p.flowers().cagedWith().isEmpty())
            .isPresent();
    return caged
        || lot.isolated().isPresent()
        || label(lot)
            .filter(g -> g instanceof PlainGeneration.OpenPollinated open && open.isolated())
            .isPresent();
  }

  /** The generation of a tagged fruit's seed, as far as it was pollinated as recorded. */
  public Optional<Generation> seedOf(Fruit fruit) {
    return seedOf(fruit, Optional.empty());
  }

  /**
   * The generation of a tagged fruit's seed.
   *
   * @param proved what it proved to be when it was grown out
   */
  Optional<Generation> seedOf(Fruit fruit, Optional<Fact.Verdict> proved) {
    Generation mother = known(fruit.seedParent().stand().lot());
    return switch (fruit.mating()) {
      case SELF -> Optional.of(mother.selfed());
      case SIB -> Optional.of(mother.sibbed());
      default -> crossed(fruit, mother, proved);
    };
  }

  private Optional<Generation> crossed(
      Fruit fruit, Generation mother, Optional<Fact.Verdict> proved) {
    Optional<Generation> cross = crossed(fruit, mother);
    if (proved.isEmpty() && mayBeSelf(fruit)) {
      return cross.flatMap(c -> selfOrCross(mother.selfed(), c));
    }
    Fact.Verdict verdict = proved.orElse(Fact.Verdict.A_CROSS);
    if (verdict == Fact.Verdict.A_SELF) {
      return Optional.of(mother.selfed());
    }
    return verdict == Fact.Verdict.MIXED
        ? cross.flatMap(c -> Generation.bulk(List.of(mother.selfed(), c)).value())
        : cross;
  }

  /** Where a parent is itself to be proved, no more can be said than that. */
  private static Optional<Generation> selfOrCross(Generation self, Generation cross) {
    boolean unproved =
        self instanceof Generation.SelfOrCross || cross instanceof Generation.SelfOrCross;
    return Optional.of(
        unproved
            ? new Generation.SelfOrCross(
                new PlainGeneration.Unknown(), new PlainGeneration.Unknown())
            : new Generation.SelfOrCross(self, cross));
  }

  private Optional<Generation> crossed(Fruit fruit, Generation mother) {
    Generation father = known(fruit.pollenParent().stand().lot());
    if (fruit.mating() == slipday.garden.record.Mating.CROSS) {
      // An F1 or a backcross by a line it comes from is a backcross, whatever it is called.
      return recurrent(fruit)
          .filter(side -> isFirst(side == Purdy.Side.SEED_PARENT ? father : mother))
          .flatMap(side -> made(new Mating.Backcrossing(side), mother, father).value())
          .or(() -> made(new Mating.Crossing(true), mother, father).value());
    }
    Purdy.Side recurrent = recurrent(fruit).orElse(Purdy.Side.POLLEN_PARENT);
    Purdy.Side other =
        recurrent == Purdy.Side.SEED_PARENT ? Purdy.Side.POLLEN_PARENT : Purdy.Side.SEED_PARENT;
    return made(new Mating.Backcrossing(recurrent), mother, father)
        .value()
        .or(() -> made(new Mating.Backcrossing(other), mother, father).value());
  }

  /** Whether it is of a cross itself and was not selfed since. */
  private static boolean isFirst(Generation generation) {
    return generation instanceof PlainGeneration.Backcross back
        ? back.filial() == 1 && back.sib() == 0
        : generation.equals(
            new PlainGeneration.Filial(1, 0, PlainGeneration.Origin.INBRED_PARENTS));
  }

  /**
   * Which side of a backcross is one of the lines that the other comes from, where that is known.
   */
  private Optional<Purdy.Side> recurrent(Fruit fruit) {
    Lot mother = fruit.seedParent().stand().lot();
    Lot father = fruit.pollenParent().stand().lot();
    if (comesFrom(mother, father.line().name())) {
      return Optional.of(Purdy.Side.POLLEN_PARENT);
    }
    return comesFrom(father, mother.line().name())
        ? Optional.of(Purdy.Side.SEED_PARENT)
        : Optional.empty();
  }

  private boolean comesFrom(Lot lot, String line) {
    boolean began =
        lot.line().began().stream()
            .flatMap(c -> Stream.of("mother", "father").flatMap(n -> c.bound().names(n).stream()))
            .anyMatch(n -> n.text().equals(line));
    return began
        || of(lot).stream()
            .filter(t -> t.from() instanceof Fruit)
            .flatMap(t -> parents((Fruit) t.from()))
            .filter(p -> !p.name().equals(lot.name()))
            .anyMatch(
                p ->
                    p.line().name().equals(lot.line().name())
                        ? comesFrom(p, line)
                        : p.line().name().equals(line));
  }

  private static Stream<Lot> parents(Fruit fruit) {
    return Stream.of(fruit.seedParent().stand().lot(), fruit.pollenParent().stand().lot());
  }

  private static Answer<Generation> made(Mating mating, Generation mother, Generation father) {
    return mating.seed(mother, Optional.of(father));
  }

  private Generation known(Lot lot) {
    return generation(lot).orElse(new PlainGeneration.Unknown());
  }
}
