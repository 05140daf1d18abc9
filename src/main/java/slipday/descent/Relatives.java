package slipday.descent;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slipday.garden.Garden;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.genetics.Generation;
import slipday.genetics.Pedigree;

/** The pedigree of many plants and fruits at once, with all that is recorded of their ancestors. */
public final class Relatives {
  private final Pedigree pedigree;
  private final Map<Plants, Integer> plants;
  private final Map<Fruit.Key, Seed> seeds;
  private final List<String> assumed;
  private final Births births;

  /**
   * The seed of a fruit.
   *
   * @param number of one seed of it in the pedigree
   * @param parents their numbers, with the share of each: one of share 1 where it was selfed
   * @param doubtful whether a cross may be a self, the anthers having stayed on
   */
  public record Seed(
      int number, Map<Integer, Double> parents, boolean doubtful, Optional<Generation> generation) {
    public Seed {
      parents = Collections.unmodifiableMap(new TreeMap<>(parents));
    }
  }

  Relatives(
      Pedigree pedigree,
      Map<Plants, Integer> plants,
      Map<Fruit.Key, Seed> seeds,
      List<String> assumed,
      Births births) {
    this.pedigree = pedigree;
    this.plants = new HashMap<>(plants);
    this.seeds = new HashMap<>(seeds);
    this.assumed = List.copyOf(assumed);
    this.births = births;
  }

  /**
   * @param plants single plants; those that bore or fathered the fruits come of themselves
   */
  public static Relatives of(Garden garden, Collection<Plants> plants, Collection<Fruit> fruits) {
    return new LineageBuilder(garden).relatives(plants, fruits);
  }

  public Pedigree pedigree() {
    return pedigree;
  }

  /**
   * The number of a plant in the pedigree.
   *
   * @throws IllegalArgumentException for one that was not asked about
   */
  public int plant(Plants plant) {
    Integer number = plants.get(plant);
    if (number == null) {
      throw new IllegalArgumentException("not gathered: " + plant);
    }
    return number;
  }

  /**
   * The seed of a fruit.
   *
   * @throws IllegalArgumentException for one that was not asked about
   */
  public Seed seed(Fruit fruit) {
    Seed seed = seeds.get(fruit.key());
    if (seed == null) {
      throw new IllegalArgumentException("not gathered: " + fruit.tag());
    }
    return seed;
  }

  /** The generation of a plant, as far as its lot tells. */
  public Optional<Generation> generation(Plants plant) {
    return births.generation(plant.stand().lot());
  }

  /** What is unknown or taken for granted, a sentence each. */
  public List<String> assumed() {
    return assumed;
  }
}
