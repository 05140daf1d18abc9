package slipday.output.report;

import java.util.ArrayList;
import java.util.List;

/** Puts dots that would lie on one another beside one another. */
final class Swarm {
  private Swarm() {}

  /**
   * How far each dot stands aside from its line.
   *
   * @param along where each lies on the line, px
   * @param size a dot's diameter, px
   */
  static List<Double> aside(List<Double> along, double size) {
    List<Double> aside = new ArrayList<>();
    for (int i = 0; i < along.size(); i++) {
      double off = 0;
      for (int step = 1; collides(along, aside, i, off, size); step++) {
        off = (step % 2 == 1 ? 1 : -1) * ((step + 1) / 2) * size;
      }
      aside.add(off);
    }
    return aside;
  }

  private static boolean collides(
      List<Double> along, List<Double> aside, int i, double off, double size) {
    for (int j = 0; j < i; j++) {
      if (Math.hypot(along.get(i) - along.get(j), off - aside.get(j)) < size - 1e-9) {
        return true;
      }
    }
    return false;
  }
}
