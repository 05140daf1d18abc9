package slipday.genetics.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Breeding values predicted for given variances, of every plant of the pedigree, with how sure they
 * are.
 *
 * <p>Values are differences from the founders' mean. Where founders are few, that mean is known ill
 * and most of a value's uncertainty is shared with all others: compare plants by the difference of
 * their values, {@link #value(Map)} with shares that sum to 0.
 */
public final class BreedingValues {
  private static final int GENETIC = 0;
  private static final int PERMANENT = 1;

  private final BreedingModel model;
  private final Components components;
  private final Solution solution;

  BreedingValues(BreedingModel model, Components components) {
    this.model = model;
    this.components = components;
    this.solution =
        model.model.solve(components.additive(), components.permanent(), components.residual());
  }

  public Components components() {
    return components;
  }

  /** The breeding value of a plant, in the trait's unit. */
  public double value(int plant) {
    return value(Map.of(plant, 1.0));
  }

  /** A sum of breeding values: of a seed's parents, or a difference. */
  public double value(Map<Integer, Double> shares) {
    double sum = 0;
    for (Map.Entry<Integer, Double> term : terms(shares).entrySet()) {
      sum += term.getValue() * solution.random(GENETIC, term.getKey());
    }
    return sum;
  }

  /** PEV of a plant's value. */
  public double errorVariance(int plant) {
    Map<Integer, Double> terms = terms(Map.of(plant, 1.0));
    return terms.size() == 1 && terms.containsValue(1.0)
        ? solution.errorVariance(GENETIC, terms.keySet().iterator().next())
        : solution.errorVariance(GENETIC, terms);
  }

  /** PEV of a sum of values. */
  public double errorVariance(Map<Integer, Double> shares) {
    return solution.errorVariance(GENETIC, terms(shares));
  }

  /** The correlation of a predicted value with the true one, 0 to 1: √(1 − PEV ÷ ((1 + F)·σ²)). */
  public double accuracy(int plant) {
    double variance = (1 + model.pedigree.inbreeding(plant)) * components.additive();
    return accuracy(errorVariance(plant), variance);
  }

  /** The same of a sum of values; 0 where there is nothing to differ by. */
  public double accuracy(Map<Integer, Double> shares) {
    double variance = model.pedigree.relationship(shares, shares) * components.additive();
    return accuracy(errorVariance(shares), variance);
  }

  private static double accuracy(double error, double variance) {
    return variance > 0 ? Math.sqrt(Math.max(0, 1 - error / variance)) : 0;
  }

  /**
   * The covariance of the errors of two sums of values, for an interval of an index of them.
   *
   * @return by polarisation: (PEV(x + y) − PEV(x − y)) ÷ 4
   */
  public double errorCovariance(Map<Integer, Double> one, Map<Integer, Double> other) {
    Map<Integer, Double> sum = new HashMap<>(one);
    Map<Integer, Double> difference = new HashMap<>(one);
    other.forEach((plant, share) -> sum.merge(plant, share, Double::sum));
    other.forEach((plant, share) -> difference.merge(plant, -share, Double::sum));
    return (errorVariance(sum) - errorVariance(difference)) / 4;
  }

  /** What stays with a measured plant beyond its breeding value; 0 for others. */
  public double permanent(int plant) {
    Integer level = model.levels.get(plant);
    return level == null ? 0 : solution.random(PERMANENT, level);
  }

  /** The mean of all measurements once corrected: of the founders' breeding value, 0. */
  public double mean() {
    double sum = 0;
    for (int i = 0; i < model.measurements.size(); i++) {
      sum += solution.fitted(i);
    }
    return sum / model.measurements.size();
  }

  /** A measurement less what it is corrected for, on the scale of {@link #mean}. */
  public double corrected(int measurement) {
    return model.measurements.get(measurement).value() - solution.fitted(measurement) + mean();
  }

  /**
   * What was corrected for.
   *
   * @param factor its name
   * @param level which of a factor; empty for a covariate, then by one of it
   * @param beside the level that the estimate is a difference from; empty for a covariate
   * @param error standard error of the estimate
   * @param told whether it could be told from the others; if not the estimate is 0
   */
  public record Correction(
      String factor, String level, String beside, double estimate, double error, boolean told) {}

  /** Everything corrected for. */
  public List<Correction> corrections() {
    List<Correction> made = new ArrayList<>();
    List<FixedEffects.Column> columns = model.fixed.columns();
    for (int i = 1; i < columns.size(); i++) {
      FixedEffects.Column column = columns.get(i);
      made.add(
          new Correction(
              column.factor(),
              column.level(),
              model.fixed.first(column.factor()),
              solution.fixed(i),
              solution.fixedError(i),
              !model.model.isAliased(i)));
    }
    return made;
  }

  /** What is left of each measurement, in their order. */
  public List<Double> remainders() {
    return Arrays.stream(solution.remainders()).boxed().toList();
  }

  /** Among the free plants. */
  private Map<Integer, Double> terms(Map<Integer, Double> shares) {
    Map<Integer, Double> terms = new TreeMap<>();
    new TreeMap<>(shares)
        .forEach(
            (plant, share) ->
                model
                    .relationships
                    .stands(plant)
                    .forEach(t -> terms.merge(t.free(), share * t.share(), Double::sum)));
    return terms;
  }
}
