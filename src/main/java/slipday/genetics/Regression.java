package slipday.genetics;

/**
 * A straight line through points, by least squares.
 *
 * <p>Of offspring on the mean of both parents, or of selfed offspring on their one parent, the
 * slope estimates h²; on one parent of a cross, half of it (D. S. Falconer and T. F. C. Mackay
 * 1996, Introduction to Quantitative Genetics, 4th edition, chapter 10, from memory).
 *
 * @param slope change of y for one of x
 * @param error standard error of the slope
 * @param points how many
 */
public record Regression(double slope, double error, int points) {
  private static final int FEWEST = 3;

  /** Squares less than this share of the mean's are roundings. */
  private static final double ALIKE = 1e-15;

  /** Refused for fewer than three points, or where x is always the same. */
  public static Answer<Regression> of(double[] x, double[] y) {
    if (x.length != y.length) {
      throw new IllegalArgumentException(x.length + " and " + y.length + " values");
    }
    if (x.length < FEWEST) {
      return Answer.refused("Fewer than three pairs of parent and offspring are known.");
    }
    double xMean = mean(x);
    double yMean = mean(y);
    double squares = 0;
    double products = 0;
    double total = 0;
    for (int i = 0; i < x.length; i++) {
      squares += (x[i] - xMean) * (x[i] - xMean);
      products += (x[i] - xMean) * (y[i] - yMean);
      total += (y[i] - yMean) * (y[i] - yMean);
    }
    if (squares <= ALIKE * x.length * xMean * xMean) {
      return Answer.refused("All parents are alike.");
    }
    double slope = products / squares;
    double left = Math.max(0, total - slope * products);
    return Answer.of(new Regression(slope, Math.sqrt(left / (x.length - 2) / squares), x.length));
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }
}
