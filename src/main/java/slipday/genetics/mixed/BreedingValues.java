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
  private final BreedingModel model;
  private final Components components;
  private final Solution solution;
  private final Slot slot;
  private final double[] fixed;

  BreedingValues(BreedingModel model, Components components) {
    this(
        model,
        components,
        model.model.solve(components.additive(), components.permanent(), components.residual()),
        Slot.ALONE);
  }

  /**
   * @param solution that holds the trait's effects, alone or with those of others
   */
  BreedingValues(BreedingModel model, Components components, Solution solution, Slot slot) {
    this.model = model;
    this.components = components;
    this.solution = solution;
    this.slot = slot;
    this.fixed = new double[model.fixed.columns().size()];
    Arrays.setAll(fixed, column -> solution.fixed(slot.firstFixed() + column));
  }

  /**
   * Where the effects of a trait stand in a solution: every plant has one level for each trait.
   *
   * @param genetic which random effect breeding values are
   * @param firstFixed the column of the trait's mean
   */
  record Slot(int genetic, int trait, int traits, int firstFixed) {
    static final Slot ALONE = new Slot(0, 0, 1, 0);

    int level(int free) {
      return free * traits + trait;
    }
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
      sum += term.getValue() * solution.random(slot.genetic(), term.getKey());
    }
    return sum;
  }

  /** PEV of a plant's value. */
  public double errorVariance(int plant) {
    Map<Integer, Double> terms = terms(Map.of(plant, 1.0));
    return terms.size() == 1 && terms.containsValue(1.0)
        ? solution.errorVariance(slot.genetic(), terms.keySet().iterator().next())
        : solution.errorVariance(slot.genetic(), terms);
  }

  /** PEV of a sum of values. */
  public double errorVariance(Map<Integer, Double> shares) {
    return solution.errorVariance(slot.genetic(), terms(shares));
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

  /** The mean of all measurements once corrected: of the founders' breeding value, 0. */
  public double mean() {
    double sum = 0;
    for (int i = 0; i < model.measurements.size(); i++) {
      sum += fitted(i);
    }
    return sum / model.measurements.size();
  }

  private double fitted(int measurement) {
    return model.fixed.design().times(measurement, fixed);
  }

  /** A measurement less what it is corrected for, on the scale of {@link #mean}. */
  public double corrected(int measurement) {
    return model.measurements.get(measurement).value() - fitted(measurement) + mean();
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
              fixed[i],
              solution.fixedError(slot.firstFixed() + i),
              !solution.model.isAliased(slot.firstFixed() + i)));
    }
    return made;
  }

  /** Among the levels of the solution. */
  private Map<Integer, Double> terms(Map<Integer, Double> shares) {
    Map<Integer, Double> terms = new TreeMap<>();
    new TreeMap<>(shares)
        .forEach(
            (plant, share) ->
                model
                    .relationships
                    .stands(plant)
                    .forEach(
                        t -> terms.merge(slot.level(t.free()), share * t.share(), Double::sum)));
    return terms;
  }
}
