package slipday.season;

/**
 * How long a stage of growth takes at the three paces of a crop: in degree-days, or in days where
 * no heat sum can be had.
 *
 * @param need °C-days or days, quick to slow
 * @param base °C; used where {@code heat}
 * @param limit °C, +∞ for none
 */
@SuppressWarnings("ArrayRecordComponent") // read day by day in the inner loop, never compared
record Stage(boolean heat, double[] need, double base, double limit) {
  static Stage days(double quick, double usual, double slow) {
    return new Stage(false, new double[] {quick, usual, slow}, 0, Double.POSITIVE_INFINITY);
  }

  Stage times(double factor) {
    double[] scaled = need.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return new Stage(heat, scaled, base, limit);
  }
}
