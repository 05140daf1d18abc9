package slipday.genetics.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import slipday.genetics.Answer;

/**
 * How populations differ in the mean once all else is taken off: seasons, beds, and whatever other
 * factors measurements name.
 *
 * <p>A population is the same whenever it is grown. So two that were never grown side by side can
 * be told apart from their seasons only through a third that was grown beside both, and where none
 * was the difference is refused. Plants are random, so that several fruits of one don't count as
 * several plants.
 */
public final class PopulationMeans {
  private final List<String> populations;
  private final List<Measurement> measurements;
  private final Design fixed;
  private final int others;
  private final Answer<Solution> solution;

  /**
   * A difference of two means.
   *
   * @param error its standard error
   */
  public record Difference(double value, double error) {}

  private PopulationMeans(List<Measurement> measurements, List<String> population) {
    this.measurements = measurements;
    SortedSet<String> names = new TreeSet<>(population);
    this.populations = List.copyOf(names);
    Design around = new FixedEffects(measurements).design();
    int[] levels = population.stream().mapToInt(populations::indexOf).toArray();
    this.fixed = FixedEffects.with(around, levels, populations.size());
    this.others = around.columns();
    this.solution = solved();
  }

  /**
   * @param measurements not empty; factors that are to be taken off among them
   * @param population which each belongs to
   */
  public static PopulationMeans of(List<Measurement> measurements, List<String> population) {
    if (measurements.isEmpty() || measurements.size() != population.size()) {
      throw new IllegalArgumentException(
          measurements.size() + " measurements, " + population.size() + " populations");
    }
    return new PopulationMeans(List.copyOf(measurements), population);
  }

  /**
   * What the mean of one population lies above that of another.
   *
   * @return refused where they can't be compared, or where plants leave no error to judge it by
   */
  public Answer<Difference> difference(String one, String other) {
    double[] contrast = new double[fixed.columns()];
    contrast[others + place(one)] += 1;
    contrast[others + place(other)] -= 1;
    if (!isEstimable(contrast)) {
      return Answer.refused(
          "`" + other + "` and `" + one + "` were not grown beside each other or beside a third.");
    }
    return solution.then(s -> Answer.of(s.contrast(contrast)));
  }

  private int place(String population) {
    int place = populations.indexOf(population);
    if (place < 0) {
      throw new IllegalArgumentException("no population " + population);
    }
    return place;
  }

  /** A contrast follows from the records if it is no new row to them. */
  private boolean isEstimable(double[] contrast) {
    Design.Builder rows = Design.of(fixed.columns());
    for (int row = 0; row < fixed.rows(); row++) {
      for (int i = fixed.start(row); i < fixed.end(row); i++) {
        rows.add(fixed.column(i), fixed.share(i));
      }
      rows.row();
    }
    for (int column = 0; column < contrast.length; column++) {
      if (contrast[column] != 0) {
        rows.add(column, contrast[column]);
      }
    }
    return rank(rows.row().build()) == rank(fixed);
  }

  private static int rank(Design design) {
    double[] ones = new double[design.rows()];
    Arrays.fill(ones, 1);
    return new MixedModel(ones, ones, design, List.of()).rank();
  }

  private Answer<Solution> solved() {
    Map<Integer, Integer> plants = new HashMap<>();
    List<Integer> levels = new ArrayList<>();
    for (Measurement each : measurements) {
      levels.add(plants.computeIfAbsent(each.plant(), p -> plants.size()));
    }
    boolean repeated = measurements.size() > plants.size();
    List<MixedModel.Random> random = new ArrayList<>();
    if (repeated) {
      Design.Builder rows = Design.of(plants.size());
      levels.forEach(level -> rows.add(level, 1).row());
      random.add(new MixedModel.Random(rows.build(), Covariance.independent(plants.size())));
    }
    MixedModel model =
        new MixedModel(
            measurements.stream().mapToDouble(Measurement::value).toArray(),
            measurements.stream().mapToDouble(Measurement::weight).toArray(),
            fixed,
            random);
    return Reml.estimate(model).then(found -> Answer.of(model.solve(found.variances())));
  }
}
