package slipday.genetics;

import java.util.OptionalInt;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/**
 * How many to grow, sow or pollinate so that enough are there in most cases.
 *
 * <p>Plants needed for a genotype: J. R. Sedcole 1977, Crop Science 17:667 (from memory).
 */
public final class Odds {
  /** Counts beyond this are of no use in a garden: they are told as "not to be had". */
  public static final int MOST = 1_000_000;

  /** Half a count of either kind before anything was seen: Jeffreys' prior of a share. */
  private static final double JEFFREYS = 0.5;

  private static final double HAIR = 1e-9;

  private Odds() {}

  /**
   * The smallest n with P(Binomial(n, q) ≥ r) ≥ p.
   *
   * @param frequency q, the share of the plants wanted among all, above 0 up to 1
   * @param atLeast r, how many of them are wanted
   * @param probability p, how sure to be, between 0 and 1 without either
   * @return n; empty where it is more than {@link #MOST}
   */
  public static OptionalInt plantsNeeded(double frequency, int atLeast, double probability) {
    if (!(frequency >= 0 && frequency <= 1)) {
      throw new IllegalArgumentException("a share of " + frequency);
    }
    if (frequency == 0 && atLeast > 0) {
      mustBeSure(probability);
      return OptionalInt.empty();
    }
    return smallest(
        n -> BinomialDistribution.of(n, frequency).cumulativeProbability(atLeast - 1),
        atLeast,
        probability,
        MOST);
  }

  /**
   * The smallest n with P(BetaBinomial(n, a, b) ≥ r) ≥ p: trials whose rate of success is known
   * only as Beta(a, b).
   *
   * @return n; empty where it is more than {@code cap}
   */
  public static OptionalInt trialsNeeded(
      double a, double b, int atLeast, double probability, int cap) {
    return smallest(n -> new BetaBinomial(n, a, b).fewerThan(atLeast), atLeast, probability, cap);
  }

  /** Seeds to sow for so many plants at a germination that is taken as certain. */
  public static OptionalInt seedsToSow(int plants, double germination, double probability) {
    return plantsNeeded(germination, plants, probability);
  }

  /**
   * Seeds to sow for so many plants after a germination test. The test is a sample of the lot, so
   * its own uncertainty is counted in: the lot's germination is Beta(seedlings + ½, failures + ½),
   * Jeffreys' prior with the counts added (Brown, Cai and DasGupta 2001, Statistical Science
   * 16:101, from memory), and the plants of a sowing are beta-binomial.
   */
  public static OptionalInt seedsToSow(int plants, int seedlings, int of, double probability) {
    if (seedlings < 0 || seedlings > of) {
      throw new IllegalArgumentException(seedlings + " of " + of);
    }
    return trialsNeeded(seedlings + JEFFREYS, of - seedlings + JEFFREYS, plants, probability, MOST);
  }

  /** The chance that so many seeds give the plants wanted, at a germination taken as certain. */
  public static double chanceOfPlants(int seeds, int plants, double germination) {
    return plants <= 0
        ? 1
        : BinomialDistribution.of(seeds, germination).survivalProbability(plants - 1);
  }

  /** The chance that so many seeds of a tested lot give the plants wanted; see the method above. */
  public static double chanceOfPlants(int seeds, int plants, int seedlings, int of) {
    return new BetaBinomial(seeds, seedlings + JEFFREYS, of - seedlings + JEFFREYS).atLeast(plants);
  }

  /** The smallest n from r to the cap at which falling short is unlikely enough; by bisection. */
  private static OptionalInt smallest(
      IntToDoubleFunction fallsShort, int atLeast, double probability, int cap) {
    mustBeSure(probability);
    if (atLeast <= 0) {
      return OptionalInt.of(0);
    }
    // A chance that lies on the bound exactly counts as met whichever way its last digit rounds.
    double bearable = (1 - probability) * (1 + HAIR);
    int high = atLeast;
    while (fallsShort.applyAsDouble(high) > bearable) {
      if (high >= cap) {
        return OptionalInt.empty();
      }
      high = (int) Math.min(cap, 2L * high);
    }
    if (high > cap) {
      return OptionalInt.empty();
    }
    int low = atLeast - 1;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (fallsShort.applyAsDouble(middle) > bearable) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return OptionalInt.of(high);
  }

  private static void mustBeSure(double probability) {
    if (!(probability > 0 && probability < 1)) {
      throw new IllegalArgumentException("a probability of " + probability);
    }
  }
}
