package slipday.season;

import java.util.Arrays;

/** The order of values from the least on. */
final class Ascending {
  private Ascending() {}

  /** The indices of some keys, those of the least keys first; of equal ones in their order. */
  static int[] order(int[] keys) {
    // A key and its index in one number: sorting those needs no comparator and no boxes.
    long[] both = new long[keys.length];
    for (int i = 0; i < both.length; i++) {
      both[i] = (long) keys[i] << Integer.SIZE | i;
    }
    Arrays.sort(both);
    int[] order = new int[keys.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = (int) both[i];
    }
    return order;
  }
}
