package slipday.season;

import slipday.garden.Sex;

/** How two plantings' flowers meet over the weather years. */
final class Overlap {
  private Overlap() {}

  /**
   * @param chance that pollen is shed while receptive flowers are open, on at least one morning
   */
  record Meeting(double chance, Exposure.Mornings mornings) {}

  /** The event with which a planting of this sex begins to shed pollen. */
  static Event sheds(Sex sex) {
    return sex.hasMaleFlowers() ? Event.FIRST_MALE : Event.FIRST_FRUITING;
  }

  /**
   * The mornings on which the donor sheds and the receiver has fruiting flowers up to an end event,
   * in each weather year, at every pair of paces.
   */
  static Meeting of(Traces donor, Event donorSheds, Traces receiver, Event receiverEnds) {
    int n = donor.years() * Traces.PACES * Traces.PACES;
    int[] mornings = new int[n];
    double[] weights = new double[n];
    int at = 0;
    for (int year = 0; year < donor.years(); year++) {
      for (int d = 0; d < Traces.PACES; d++) {
        for (int r = 0; r < Traces.PACES; r++) {
          int ds = year * Traces.PACES + d;
          int rs = year * Traces.PACES + r;
          mornings[at] = mornings(donor, donorSheds, ds, receiver, receiverEnds, rs);
          weights[at++] = Traces.paceWeight(d) * Traces.paceWeight(r) / donor.years();
        }
      }
    }
    return summed(mornings, weights);
  }

  private static int mornings(
      Traces donor, Event donorSheds, int ds, Traces receiver, Event receiverEnds, int rs) {
    int from = Math.max(donor.slot(donorSheds, ds), receiver.slot(Event.FIRST_FRUITING, rs));
    int receiverEnd = receiver.slot(receiverEnds, rs);
    int to = Math.min(donor.slot(Event.BLOOM_ENDS, ds), receiverEnd);
    boolean never = from == Traces.NEVER || to == Traces.NEVER || receiverEnd == Traces.NEVER;
    return never ? 0 : Math.max(0, to - from + 1);
  }

  private static Meeting summed(int[] mornings, double[] weights) {
    double chance = 0;
    double sum = 0;
    int[] points = new int[3];
    double[] shares = {0.1, 0.5, 0.9};
    int next = 0;
    for (int i : Ascending.order(mornings)) {
      chance += mornings[i] > 0 ? weights[i] : 0;
      sum += weights[i];
      while (next < 3 && sum >= shares[next] - 1e-9) {
        points[next++] = mornings[i];
      }
    }
    return new Meeting(Math.min(1, chance), new Exposure.Mornings(points[0], points[1], points[2]));
  }
}
