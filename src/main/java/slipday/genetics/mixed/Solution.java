package slipday.genetics.mixed;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;

/** Effects estimated and predicted for given variances, with how sure they are. */
public final class Solution {
  final MixedModel model;
  final double[] variances;
  final Layout layout;
  final Factor factor;
  final double[] effects;
  private final double[] remainders;
  private Optional<Factor.Inverse> inverse = Optional.empty();

  Solution(MixedModel model, double[] variances) {
    this.model = model;
    this.variances = variances.clone();
    int count = model.random.size();
    if (variances.length != count + 1
        || Arrays.stream(variances).anyMatch(v -> !(v >= 0) || Double.isInfinite(v))
        || variances[count] == 0) {
      throw new IllegalArgumentException("variances " + Arrays.toString(variances));
    }
    boolean[] taken = new boolean[count];
    double[] ratios = new double[count];
    for (int k = 0; k < count; k++) {
      taken[k] = variances[k] > 0;
      ratios[k] = variances[count] / variances[k];
    }
    layout = new Layout(model, taken);
    factor =
        Factor.of(layout.equations(ratios))
            .orElseThrow(() -> new IllegalStateException("equations without a solution"));
    effects = factor.solve(layout.right(model.records));
    remainders = layout.remainder(model.records, effects);
  }

  double residual() {
    return variances[variances.length - 1];
  }

  /** A fixed effect; 0 for one that follows from others. */
  public double fixed(int column) {
    int place = layout.fixedPlace(column);
    return place < 0 ? 0 : effects[place];
  }

  /** The standard error of a fixed effect; 0 for one that follows from others. */
  public double fixedError(int column) {
    int place = layout.fixedPlace(column);
    return place < 0 ? 0 : Math.sqrt(residual() * inverse().at(place, place));
  }

  /**
   * A contrast of fixed effects with its standard error; the contrast has to follow from the
   * records.
   */
  PopulationMeans.Difference contrast(double[] shares) {
    double sum = 0;
    double[] places = new double[layout.size()];
    for (int column = 0; column < shares.length; column++) {
      int place = layout.fixedPlace(column);
      if (place >= 0) {
        sum += shares[column] * effects[place];
        places[place] = shares[column];
      }
    }
    return new PopulationMeans.Difference(
        sum, Math.sqrt(residual() * factor.inverseSquare(places)));
  }

  /** A level of a random effect; 0 where its variance is. */
  public double random(int effect, int level) {
    return layout.isIn(effect) ? effects[layout.place(effect, level)] : 0;
  }

  /** PEV: the variance of what a prediction misses the true level by. */
  public double errorVariance(int effect, int level) {
    if (!layout.isIn(effect)) {
      return 0;
    }
    int place = layout.place(effect, level);
    return residual() * inverse().at(place, place);
  }

  /** PEV of a sum of levels of one effect. */
  public double errorVariance(int effect, Map<Integer, Double> shares) {
    if (!layout.isIn(effect)) {
      return 0;
    }
    double[] sum = new double[layout.size()];
    shares.forEach((level, share) -> sum[layout.place(effect, level)] += share);
    return residual() * factor.inverseSquare(sum);
  }

  /** What is left of each record. */
  public double[] remainders() {
    return remainders.clone();
  }

  /** The fixed part of a record. */
  public double fitted(int record) {
    double[] fixed = new double[model.fixed.columns()];
    Arrays.setAll(fixed, this::fixed);
    return model.fixed.times(record, fixed);
  }

  /**
   * The logarithm of the restricted likelihood of the variances: of all contrasts of the records
   * free of fixed effects (H. D. Patterson and R. Thompson 1971, Biometrika 58:545; by the
   * equations' determinant as K. Meyer 1989, Genetics Selection Evolution 21:317; from memory).
   */
  public double logLikelihood() {
    int records = model.size();
    int free = records - model.rank();
    double sum = free * Math.log(2 * Math.PI) + (records - layout.size()) * Math.log(residual());
    for (double weight : model.weights) {
      sum -= Math.log(weight);
    }
    for (int k = 0; k < model.random.size(); k++) {
      if (layout.isIn(k)) {
        Covariance covariance = model.random.get(k).covariance();
        sum += covariance.size() * Math.log(variances[k]) + covariance.logDeterminant();
      }
    }
    sum += factor.logDeterminant();
    for (int i = 0; i < records; i++) {
      // y′·P·y
      sum += model.records[i] * model.weights[i] * remainders[i] / residual();
    }
    return -sum / 2;
  }

  /** How many numbers the factor of the equations holds. */
  public int filled() {
    return factor.filled();
  }

  /** How many equations there are. */
  public int equations() {
    return layout.size();
  }

  double[] levels(int effect) {
    double[] levels = new double[model.random.get(effect).covariance().size()];
    Arrays.setAll(levels, level -> random(effect, level));
    return levels;
  }

  Factor.Inverse inverse() {
    if (inverse.isEmpty()) {
      inverse = Optional.of(factor.inverse());
    }
    return inverse.get();
  }
}
