package slipday.seed;

import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Lot;
import slipday.genetics.Odds;
import slipday.measure.Reasoned;

/** How many seeds of a lot give the plants wanted. */
public final class SeedsToSow {
  /** In 19 of 20 cases. */
  public static final double SURE = 0.95;

  private SeedsToSow() {}

  /**
   * With the lot's own test and its uncertainty; else at its kind's least germination for sale;
   * else as if every seed came up.
   *
   * @return {@link Odds#MOST} where no number of seeds is enough
   */
  public static int of(Lot lot, int plants) {
    Optional<Lot.GerminationTest> test = lot.tested().map(Reasoned::value);
    if (test.isPresent()) {
      int seedlings = test.get().seedlings();
      return Odds.seedsToSow(plants, seedlings, test.get().of(), SURE).orElse(Odds.MOST);
    }
    return lot.line()
        .facts()
        .get(CropFacts.LEAST_GERMINATION)
        .map(least -> Odds.seedsToSow(plants, least.value(), SURE).orElse(Odds.MOST))
        .orElse(plants);
  }

  /**
   * As many as that, or more where its seed is by now expected to come up worse than was reckoned.
   */
  public static int of(Lot lot, int plants, Outlook outlook) {
    int fresh = of(lot, plants);
    return outlook
        .germination()
        .map(g -> Odds.seedsToSow(plants, g.usual(), SURE).orElse(Odds.MOST))
        .map(aged -> Math.max(fresh, aged))
        .orElse(fresh);
  }

  /**
   * How many plants so many seeds are sure to give: the other way round.
   *
   * @param most it is not asked beyond so many
   */
  public static int plants(Lot lot, int seeds, int most, Outlook outlook) {
    int low = 0;
    int high = Math.min(seeds, most);
    while (low < high) {
      int middle = (low + high + 1) >>> 1;
      if (of(lot, middle, outlook) <= seeds) {
        low = middle;
      } else {
        high = middle - 1;
      }
    }
    return low;
  }
}
