package slipday.genetics;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How seed ages.
 *
 * <p>What is left of a lot is guessed from two things only: its crop's usual storage life and a
 * germination test. Printed lives don't say what they are the age of, so a stated default is taken:
 * seed that began at {@value #NEW_SEED} is at one half when as old as its crop's life, and falls in
 * a straight line of probits, as in the viability equation. Published lives of one crop differ up
 * to threefold, so the range given takes the life from half to twice; that is a width by judgement,
 * not a confidence interval, and no substitute for a test.
 */
public final class SeedLife {
  /** The germination that new, sound, dry seed is taken to have where no test says otherwise. */
  public static final double NEW_SEED = 0.95;

  private static final double NEW_SEED_LOW = 0.80;
  private static final double NEW_SEED_HIGH = 0.99;
  private static final double LIFE_FACTOR = 2;
  private static final double TEST_TAIL = 0.1;
  private static final double JEFFREYS = 0.5;

  private static final double ALL_BUT_NOTHING = 1e-12;

  private static final double LEAST_MOISTURE = 5;
  private static final double MOST_MOISTURE = 14;
  private static final double LEAST_CELSIUS = 0;
  private static final double MOST_CELSIUS = 50;
  private static final double CELSIUS_STEP = 5;
  private static final double HARRINGTON_SUM = 100;

  private SeedLife() {}

  /** A share of seeds with its range, each from 0 to 1. */
  public record Germination(double low, double usual, double high) {
    public Germination {
      if (!(0 < low && low <= usual && usual <= high && high < 1)) {
        throw new IllegalArgumentException(low + " to " + usual + " to " + high);
      }
    }
  }

  /** What new seed is taken to be where nothing was tested. */
  public static Germination untested() {
    return new Germination(NEW_SEED_LOW, NEW_SEED, NEW_SEED_HIGH);
  }

  /**
   * What a germination test says of its lot: Beta(seedlings + ½, failures + ½), its median between
   * its tenth and ninetieth percentiles.
   *
   * @param seedlings 0 to {@code of}
   * @param of seeds in the test, 1 or more
   */
  public static Germination tested(int seedlings, int of) {
    if (of < 1 || seedlings < 0 || seedlings > of) {
      throw new IllegalArgumentException(seedlings + " of " + of);
    }
    BetaDistribution lot = BetaDistribution.of(seedlings + JEFFREYS, of - seedlings + JEFFREYS);
    return new Germination(
        lot.inverseCumulativeProbability(TEST_TAIL),
        lot.inverseCumulativeProbability(0.5),
        lot.inverseSurvivalProbability(TEST_TAIL));
  }

  /**
   * Germination to expect after some years more of ordinary dry storage; see the class for the
   * method.
   *
   * @param start what the seed was: tested, or new and untested
   * @param years since the test, or since harvest where there was none; 0 or more
   * @param life the crop's usual storage life in years, above 0
   */
  public static Germination after(Germination start, double years, double life) {
    if (!(years >= 0) || !(life > 0) || Double.isInfinite(years) || Double.isInfinite(life)) {
      throw new IllegalArgumentException(years + " years of a life of " + life);
    }
    return new Germination(
        decline(start.low, years, life / LIFE_FACTOR),
        decline(start.usual, years, life),
        decline(start.high, years, life * LIFE_FACTOR));
  }

  /**
   * Years until the usual germination has fallen to a floor, under which the lot should be grown
   * on.
   *
   * @param floor above 0 and under 1
   * @return 0 where it is there already
   */
  public static double yearsUntil(double floor, Germination start, double life) {
    if (!(floor > 0 && floor < 1) || !(life > 0)) {
      throw new IllegalArgumentException("a floor of " + floor + ", a life of " + life);
    }
    return Math.max(0, (probit(start.usual) - probit(floor)) * yearsPerProbit(life));
  }

  /**
   * How many times longer seed lives in the second storage than in the first, by Harrington's rules
   * of thumb: twice for each percent less moisture (5 to 14 %) and twice for each 5 °C less (0 to
   * 50 °C; a rounding of 10 °F).
   *
   * <p>J. F. Harrington 1972, in T. T. Kozlowski (editor), Seed Biology, volume 3 (from memory).
   */
  public static Answer<Double> timesLonger(
      double firstMoisture, double firstCelsius, double secondMoisture, double secondCelsius) {
    if (outside(firstMoisture, secondMoisture, LEAST_MOISTURE, MOST_MOISTURE)) {
      return Answer.refused(
          "The rule of thumb for seed moisture holds from 5 % to 14 % only; drier seed may be"
              + " harmed and damper seed moulds.");
    }
    if (outside(firstCelsius, secondCelsius, LEAST_CELSIUS, MOST_CELSIUS)) {
      return Answer.refused("The rule of thumb for storage temperature holds from 0 to 50 C only.");
    }
    double doublings =
        firstMoisture - secondMoisture + (firstCelsius - secondCelsius) / CELSIUS_STEP;
    return Answer.of(Math.pow(2, doublings));
  }

  /**
   * Whether a place is cool and dry enough: degrees Fahrenheit and percent of relative humidity
   * together under 100 (Harrington, as above).
   */
  public static boolean coolAndDry(double celsius, double relativeHumidity) {
    return celsius * 9 / 5 + 32 + relativeHumidity < HARRINGTON_SUM;
  }

  private static boolean outside(double first, double second, double least, double most) {
    return !(Math.min(first, second) >= least && Math.max(first, second) <= most);
  }

  /** Never quite 0 or 1, so that a decline can go on from it. */
  private static double decline(double germination, double years, double life) {
    double left = Viability.decline(germination, years / yearsPerProbit(life));
    return Math.max(left, ALL_BUT_NOTHING);
  }

  private static double yearsPerProbit(double life) {
    return life / probit(NEW_SEED);
  }

  private static double probit(double share) {
    return NormalDistribution.of(0, 1).inverseCumulativeProbability(share);
  }
}
