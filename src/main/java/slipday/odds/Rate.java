package slipday.odds;

import java.util.OptionalInt;
import slipday.genetics.Odds;
import slipday.measure.Quantity;

/** How often something comes out: a share that is certain, or counts with their own doubt. */
public sealed interface Rate {
  /** Nothing finer is shown, in percent. */
  double TRACE = 0.001;

  /**
   * A share taken as certain.
   *
   * @param share above 0 to 1
   * @param words as it was asked: {@code 1 in 16}
   */
  record Certain(double share, String words) implements Rate {
    public Certain {
      if (!(share > 0 && share <= 1)) {
        throw new IllegalArgumentException("a share of " + share);
      }
    }

    @Override
    public OptionalInt needed(int atLeast, double sure) {
      return Odds.plantsNeeded(share, atLeast, sure);
    }

    @Override
    public double enough(int trials, int atLeast) {
      return Odds.chanceOfPlants(trials, atLeast, share);
    }

    @Override
    public double middle() {
      return share;
    }

    @Override
    public String law() {
      return "binomial law";
    }
  }

  /** So many hits of so many tried. */
  record Counted(int hits, int of) implements Rate {
    public Counted {
      if (hits < 0 || of < 1 || hits > of) {
        throw new IllegalArgumentException(hits + " of " + of);
      }
    }

    @Override
    public OptionalInt needed(int atLeast, double sure) {
      // Of none that came the half count of the prior would tell the number, and nothing seen.
      return hits == 0 ? OptionalInt.empty() : Odds.seedsToSow(atLeast, hits, of, sure);
    }

    @Override
    public double enough(int trials, int atLeast) {
      return Odds.chanceOfPlants(trials, atLeast, hits, of);
    }

    @Override
    public double middle() {
      return (hits + 0.5) / (of + 1);
    }

    @Override
    public String words() {
      return hits + " of " + of;
    }

    @Override
    public String law() {
      return "beta-binomial law";
    }
  }

  /** The least number of trials; empty where no number in reach is enough. */
  OptionalInt needed(int atLeast, double sure);

  /** The chance that so many trials bring enough. */
  double enough(int trials, int atLeast);

  /** The share to reckon with on average. */
  double middle();

  /** As it was asked. */
  String words();

  /** The law that counts follow. */
  String law();

  /** In percent, as fine as it takes. */
  static String percent(double share) {
    double percent = share * 100;
    if (percent > 0 && percent < TRACE) {
      return "less than " + Quantity.plain(TRACE) + " %";
    }
    if (percent < 100 && percent > 100 - TRACE) {
      return "more than " + Quantity.plain(100 - TRACE) + " %";
    }
    double step = percent < 1 || percent > 99 ? 1 / TRACE : 100;
    return Quantity.plain(Math.round(percent * step) / step) + " %";
  }
}
