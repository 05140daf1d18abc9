package slipday.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which windows of days meet, found in one sweep over them in the order they open: no comparison of
 * all with all. Windows that have closed are dropped as the sweep goes on.
 */
public final class BloomSweep {
  private BloomSweep() {}

  /** Both ends belong to the window. */
  public record Window(int from, int to) {}

  /** Told of two windows, by index, that have a day in common; each pair once. */
  @FunctionalInterface
  public interface Meets {
    void meet(int first, int second);
  }

  public static void sweep(List<Window> windows, Meets meets) {
    int[] opening = new int[windows.size()];
    Arrays.setAll(opening, i -> windows.get(i).from());
    List<Integer> open = new ArrayList<>();
    for (int next : Ascending.order(opening)) {
      int from = windows.get(next).from();
      if (from > windows.get(next).to()) {
        continue;
      }
      int kept = 0;
      for (int i = 0; i < open.size(); i++) {
        int other = open.get(i);
        if (windows.get(other).to() >= from) {
          open.set(kept++, other);
          meets.meet(other, next);
        }
      }
      open.subList(kept, open.size()).clear();
      open.add(next);
    }
  }
}
