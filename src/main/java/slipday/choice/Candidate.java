package slipday.choice;

import java.util.List;
import java.util.Optional;
import slipday.garden.record.Asides;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;

/**
 * A plant that may be a parent of the next generation.
 *
 * @param inbreeding F, 0 to 1
 * @param figures of every trait of the study, in its order
 * @param index what it is still worth less for being short of the aims, in standard deviations
 *     times weights: 0 where all aims are met, below 0 elsewhere; empty where nothing can be valued
 * @param rank among the candidates that are not refused, 1 the best; alike share one
 * @param refused why it may be no parent; empty where it may
 * @param speaksFor in words
 * @param speaksAgainst in words
 * @param fruits marked ones, the best for seed first
 * @param asides notes and photos of the plant and of fruits on it
 */
public record Candidate(
    Plants plant,
    Optional<String> generation,
    double inbreeding,
    List<Figure> figures,
    Optional<Double> index,
    Optional<Integer> rank,
    Optional<String> refused,
    List<String> speaksFor,
    List<String> speaksAgainst,
    List<SeedFruit> fruits,
    List<Asides.Aside> asides) {
  public Candidate {
    figures = List.copyOf(figures);
    speaksFor = List.copyOf(speaksFor);
    speaksAgainst = List.copyOf(speaksAgainst);
    fruits = List.copyOf(fruits);
    asides = List.copyOf(asides);
  }

  /**
   * One trait of a plant.
   *
   * @param fruits how many were measured
   * @param raw the mean as measured; empty where it was not
   * @param corrected the mean as it would have been beside the others
   * @param predicted its breeding value; empty where none can be told
   * @param alone what would be predicted of the trait by itself, where it was valued together with
   *     others
   * @param rank among the candidates, 1 the nearest to the aim; empty where there is no aim
   */
  public record Figure(
      Trait trait,
      int fruits,
      Optional<Double> raw,
      Optional<Double> corrected,
      Optional<Predicted> predicted,
      Optional<Predicted> alone,
      Optional<Integer> rank) {}

  /**
   * A marked fruit and its seed. Flesh is the mother's: fruits selfed on one plant differ in seed,
   * soundness and how sure their mark is, and not in what they pass on.
   *
   * @param ofLine whether its seed is of the line, and not a cross
   * @param refused why its seed may not go on though its plant may be a parent; empty where it may
   * @param generation of its seed
   * @param inbreeding of its seed, F
   * @param index as the plant's, at the mean of the seed's parents
   * @param seeds saved of it; empty where nobody counted
   * @param savedInto the lots
   * @param speaksAgainst faults, doubts, unripe seed
   * @param measured as measured, by trait
   */
  public record SeedFruit(
      Fruit fruit,
      boolean ofLine,
      Optional<String> refused,
      Optional<String> generation,
      double inbreeding,
      Optional<Double> index,
      Optional<Integer> seeds,
      List<String> savedInto,
      List<String> speaksAgainst,
      List<Measured> measured) {
    public SeedFruit {
      savedInto = List.copyOf(savedInto);
      speaksAgainst = List.copyOf(speaksAgainst);
      measured = List.copyOf(measured);
    }

    /** Whether its seed is of the line and may go on, as far as its own parents go. */
    public boolean mayGoOn() {
      return ofLine && refused.isEmpty();
    }
  }

  /** A figure as it was read. */
  public record Measured(Trait trait, double value) {}

  /** The name a gardener calls it by. */
  public String name() {
    return plant.toString();
  }
}
