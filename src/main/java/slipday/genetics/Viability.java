package slipday.genetics;

import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The viability equation: a lot's germination, as a probit, falls in a straight line with time, by
 * one probit in σ days, and log₁₀ σ = K_E − C_W·log₁₀ m − C_H·t − C_Q·t².
 *
 * <p>R. H. Ellis and T. D. Hong 2007, Seed Science and Technology 35:432; only the constants of its
 * abstract are here.
 *
 * @param speciesConstant K_E
 * @param moistureConstant C_W
 */
public record Viability(double speciesConstant, double moistureConstant) {
  private static final double LINEAR = 0.0322;
  private static final double QUADRATIC = 0.000454;

  /**
   * The equation for a crop, if its constants are known.
   *
   * @param crop as the gardener calls it
   */
  public static Answer<Viability> of(
      String crop, OptionalDouble speciesConstant, OptionalDouble moistureConstant) {
    return speciesConstant.isPresent() && moistureConstant.isPresent()
        ? Answer.of(new Viability(speciesConstant.getAsDouble(), moistureConstant.getAsDouble()))
        : Answer.refused(
            "The constants of the viability equation are not known for `"
                + crop
                + "`, so its seed is judged by its usual storage life and by germination tests.");
  }

  /**
   * σ: days in which the germination falls by one probit.
   *
   * @param moisture of the seed, percent of its fresh weight, above 0 and under 100
   * @param celsius the storage temperature
   */
  public double daysPerProbit(double moisture, double celsius) {
    if (!(moisture > 0 && moisture < 100)) {
      throw new IllegalArgumentException("a moisture of " + moisture);
    }
    return Math.pow(
        10,
        speciesConstant
            - moistureConstant * Math.log10(moisture)
            - LINEAR * celsius
            - QUADRATIC * celsius * celsius);
  }

  /** Germination after so many days of dry storage, from 0 to 1. */
  public double germination(double first, double days, double moisture, double celsius) {
    return decline(first, days / daysPerProbit(moisture, celsius));
  }

  /** Germination that has fallen by so many probits. */
  static double decline(double germination, double probits) {
    if (germination <= 0 || germination >= 1) {
      throw new IllegalArgumentException("a germination of " + germination);
    }
    NormalDistribution normal = NormalDistribution.of(0, 1);
    return normal.cumulativeProbability(normal.inverseCumulativeProbability(germination) - probits);
  }
}
