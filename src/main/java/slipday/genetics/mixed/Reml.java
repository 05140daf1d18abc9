package slipday.genetics.mixed;

import java.util.Arrays;
import slipday.genetics.Answer;

/**
 * Variances by restricted maximum likelihood: steps by average information (A. R. Gilmour, R.
 * Thompson and B. R. Cullis 1995, Biometrics 51:1440; D. L. Johnson and R. Thompson 1995, Journal
 * of Dairy Science 78:449; from memory), shortened until the likelihood rises; where none does, one
 * step of expectation and maximisation. A variance that the likelihood pulls below 0 is 0, and the
 * others are then estimated without it.
 */
public final class Reml {
  private static final int STEPS = 200;
  private static final int HALVINGS = 12;
  private static final double SETTLED = 1e-8;

  /** A variance less than this share of all is taken for a boundary at 0. */
  private static final double LEAST = 1e-6;

  private static final double FLAT = 1e-12;

  private final MixedModel model;
  private final int count;
  private final double whole;
  private final boolean[] out;

  private Reml(MixedModel model, double whole) {
    this.model = model;
    this.count = model.random.size() + 1;
    this.whole = whole;
    this.out = new boolean[count];
  }

  /** What was estimated, in the model's order, the remainder's last. */
  public static final class Estimate {
    private final double[] variances;
    private final double[][] covariances;
    private final boolean[] atBoundary;
    private final double logLikelihood;

    private Estimate(
        double[] variances, double[][] covariances, boolean[] atBoundary, double logLikelihood) {
      this.variances = variances;
      this.covariances = covariances;
      this.atBoundary = atBoundary;
      this.logLikelihood = logLikelihood;
    }

    public double[] variances() {
      return variances.clone();
    }

    /** Which came out as 0. */
    public boolean[] atBoundary() {
      return atBoundary.clone();
    }

    /** Restricted, at the estimate. */
    public double logLikelihood() {
      return logLikelihood;
    }

    /** Standard error of a variance; 0 at the boundary. */
    public double error(int variance) {
      return Math.sqrt(covariances[variance][variance]);
    }

    /**
     * Standard error of a ratio of two sums of variances, by the first terms of its series.
     *
     * @param above the shares of each variance above the line
     * @param below those below it
     */
    public double ratioError(double[] above, double[] below) {
      double top = 0;
      double bottom = 0;
      for (int i = 0; i < variances.length; i++) {
        top += above[i] * variances[i];
        bottom += below[i] * variances[i];
      }
      double sum = 0;
      for (int i = 0; i < variances.length; i++) {
        for (int j = 0; j < variances.length; j++) {
          double one = (above[i] - below[i] * top / bottom) / bottom;
          double other = (above[j] - below[j] * top / bottom) / bottom;
          sum += one * other * covariances[i][j];
        }
      }
      return Math.sqrt(Math.max(0, sum));
    }
  }

  /** Refused where there are no more records than fixed effects, or all records are alike. */
  public static Answer<Estimate> estimate(MixedModel model) {
    if (model.size() - model.rank() <= model.random.size()) {
      return Answer.refused("There are too few records for what they are to be corrected for.");
    }
    double[] none = new double[model.random.size() + 1];
    none[none.length - 1] = 1;
    double sum = 0;
    double[] remainders = model.solve(none).remainders();
    double size = 0;
    for (int i = 0; i < remainders.length; i++) {
      sum += model.weights[i] * remainders[i] * remainders[i];
      size = Math.max(size, Math.abs(model.records[i]));
    }
    double whole = sum / (model.size() - model.rank());
    if (whole <= FLAT * size * size) {
      return Answer.refused("All records are alike, so there is nothing to choose by.");
    }
    return new Reml(model, whole).search();
  }

  private Answer<Estimate> search() {
    double[] at = new double[count];
    Arrays.fill(at, whole / count);
    while (true) {
      Slope slope = climb(at);
      if (slope.steps >= STEPS) {
        return Answer.refused("The variances could not be told apart from these records.");
      }
      at = slope.at;
      boolean more = false;
      for (int k = 0; k < count - 1; k++) {
        if (!out[k] && at[k] <= 2 * LEAST * whole) {
          out[k] = true;
          at[k] = 0;
          more = true;
        }
      }
      if (!more) {
        return at[count - 1] <= 2 * LEAST * whole
            ? Answer.refused("Fruits of one plant are all alike, so no error can be told.")
            : Answer.of(estimate(slope));
      }
    }
  }

  private Estimate estimate(Slope slope) {
    double[][] covariances = SmallMatrix.inverse(slope.information, free(slope.at, slope.gradient));
    return new Estimate(slope.at.clone(), covariances, out.clone(), slope.likelihood);
  }

  /** Where the search stands, and which way is up. */
  private static final class Slope {
    private final double[] at;
    private final double likelihood;
    private final double[] gradient;
    private final double[][] information;
    private final double[] expected;
    private int steps;

    Slope(Solution solution, boolean[] out) {
      at = solution.variances;
      likelihood = solution.logLikelihood();
      Information found = new Information(solution, out);
      gradient = found.gradient();
      information = found.matrix();
      expected = found.expected();
    }
  }

  private Slope climb(double[] from) {
    Slope slope = new Slope(model.solve(from), out);
    for (int step = 0; step < STEPS; step++) {
      double[] direction =
          SmallMatrix.solve(slope.information, slope.gradient, free(slope.at, slope.gradient));
      Slope next = along(slope, direction);
      double change = 0;
      for (int k = 0; k < count; k++) {
        change = Math.max(change, Math.abs(next.at[k] - slope.at[k]) / whole);
      }
      slope = next;
      slope.steps = step;
      if (change < SETTLED) {
        return slope;
      }
    }
    slope.steps = STEPS;
    return slope;
  }

  private Slope along(Slope slope, double[] direction) {
    double length = 1;
    for (int half = 0; half < HALVINGS; half++) {
      double[] to = new double[count];
      for (int k = 0; k < count; k++) {
        to[k] = out[k] ? 0 : Math.max(LEAST * whole, slope.at[k] + length * direction[k]);
      }
      Solution solution = model.solve(to);
      if (solution.logLikelihood() >= slope.likelihood - FLAT * Math.abs(slope.likelihood)) {
        return new Slope(solution, out);
      }
      length /= 2;
    }
    double[] to = slope.expected.clone();
    for (int k = 0; k < count; k++) {
      to[k] = out[k] ? 0 : Math.max(LEAST * whole, to[k]);
    }
    return new Slope(model.solve(to), out);
  }

  /** Which variances may move: not those out, nor those at the boundary and pulled below it. */
  private boolean[] free(double[] at, double[] gradient) {
    boolean[] free = new boolean[count];
    for (int k = 0; k < count; k++) {
      boolean held = at[k] <= LEAST * whole * (1 + SETTLED) && gradient[k] <= 0;
      free[k] = !out[k] && !held;
    }
    return free;
  }
}
