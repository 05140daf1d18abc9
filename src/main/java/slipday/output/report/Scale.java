package slipday.output.report;

/**
 * Where the figures of an axis lie in a drawing.
 *
 * @param ticks the axis
 * @param start of its first tick, px
 * @param end of its last, px; before the start where figures grow upwards
 */
record Scale(Ticks ticks, double start, double end) {
  double at(double figure) {
    return start + (end - start) * (figure - ticks.low()) / (ticks.high() - ticks.low());
  }

  boolean holds(double figure) {
    return figure >= ticks.low() && figure <= ticks.high();
  }

  double held(double figure) {
    return Math.max(ticks.low(), Math.min(ticks.high(), figure));
  }
}
