package slipday.output.data;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.odds.Reckoning;

/**
 * How many to grow, sow, pollinate or keep.
 *
 * @param question {@code find}, {@code sow}, {@code pollinate}, {@code keep}, {@code fix} or {@code
 *     store}
 * @param answer null where no number in reach is enough
 * @param unit what the answer counts; such as plants, or the F-number
 * @param says the answer as people read it
 * @param sure how sure to be; for {@code fix} the share to be fixed; 0 for the rule of thumb of
 *     {@code store}
 * @param demands the answer under other demands
 * @param generations what selfing fixes by generation
 * @param reckoning how it was reckoned, a sentence each
 * @param sources publications and crop facts
 * @param next what to do with it, a sentence each
 */
public record OddsData(
    Head slipday,
    String question,
    Optional<Integer> answer,
    String unit,
    String says,
    double sure,
    List<DemandData> demands,
    List<FixedData> generations,
    List<String> reckoning,
    List<String> sources,
    List<String> next) {
  /**
   * @param demand what is asked
   * @param number null where no number in reach is enough
   * @param remark more about it; may be empty
   */
  public record DemandData(String demand, Optional<Integer> number, String remark) {}

  /**
   * @param generation F-number
   * @param genes the share of genes fixed in a plant
   * @param plants the share of plants fixed at all the genes asked about
   */
  public record FixedData(int generation, double genes, double plants) {}

  public static OddsData of(Reckoning r) {
    return new OddsData(
        Head.of("odds"),
        r.question(),
        number(r.answer()),
        r.unit(),
        r.says(),
        r.sure(),
        r.rows().stream()
            .map(d -> new DemandData(d.demand(), number(d.number()), d.remark()))
            .toList(),
        r.generations().stream()
            .map(g -> new FixedData(g.number(), g.genes(), g.plants()))
            .toList(),
        r.steps(),
        r.sources(),
        r.next());
  }

  private static Optional<Integer> number(OptionalInt number) {
    return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
  }
}
