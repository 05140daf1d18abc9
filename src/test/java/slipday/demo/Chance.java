package slipday.demo;

import java.util.SplittableRandom;

/** Luck that is the same on every Java and every day. */
final class Chance {
  private final SplittableRandom random;

  Chance(long seed) {
    random = new SplittableRandom(seed);
  }

  double uniform() {
    return (random.nextLong() >>> 11) * 0x1.0p-53;
  }

  /** The sum of twelve uniform numbers less six, which is near a standard normal. */
  double normal() {
    double sum = 0;
    for (int i = 0; i < 12; i++) {
      sum += uniform();
    }
    return sum - 6;
  }

  boolean in(double share) {
    return uniform() < share;
  }

  /** A whole number from low to high, both included. */
  int from(int low, int high) {
    return low + (int) (uniform() * (high - low + 1));
  }
}
