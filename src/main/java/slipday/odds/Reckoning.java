package slipday.odds;

import java.util.List;
import java.util.OptionalInt;

/**
 * How many, and how that was reckoned.
 *
 * @param question {@code find}, {@code sow}, {@code pollinate}, {@code keep}, {@code fix} or {@code
 *     store}
 * @param answer the number; empty where none in reach is enough
 * @param unit what it counts: plants, seeds, flowers, or the F-number of a generation, times
 * @param says the answer as a sentence
 * @param sure how sure to be, between 0 and 1; 0 for a rule of thumb
 * @param rows the answer under other demands
 * @param generations what selfing fixes by generation; empty for other questions
 * @param steps the reckoning, a sentence each
 * @param sources publications
 * @param next what to do with it, a sentence each
 */
public record Reckoning(
    String question,
    OptionalInt answer,
    String unit,
    String says,
    double sure,
    List<Row> rows,
    List<Generation> generations,
    List<String> steps,
    List<String> sources,
    List<String> next) {
  public Reckoning {
    rows = List.copyOf(rows);
    generations = List.copyOf(generations);
    steps = List.copyOf(steps);
    sources = List.copyOf(sources);
    next = List.copyOf(next);
  }

  /**
   * @param demand what is asked in this row
   * @param number empty where none in reach is enough
   * @param remark more about it; may be empty
   */
  public record Row(String demand, OptionalInt number, String remark) {}

  /**
   * @param number its F-number
   * @param genes the share of genes fixed in a plant
   * @param plants the share of plants fixed at all the genes asked about
   */
  public record Generation(int number, double genes, double plants) {}
}
