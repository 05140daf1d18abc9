package slipday.genetics.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import slipday.genetics.Answer;

/**
 * Several traits valued together, each by its own measurements and by those of traits that go
 * together with it (C. R. Henderson and R. L. Quaas 1976, Journal of Animal Science 43:1188, from
 * memory). A plant lacks what was not measured, and is told by the rest.
 *
 * <pre>
 * Answer&lt;List&lt;BreedingValues&gt;&gt; values = JointModel.values(parts, correlations);
 * </pre>
 *
 * <p>Breeding values have the covariances G ⊗ A, plants' own effects P ⊗ I. Figures of several
 * traits of one fruit share its luck: they are multiplied by the inverse of the Cholesky factor of
 * their covariances, so that what is left has variance 1 and the equations are those of one trait.
 */
public final class JointModel {
  private static final int PERMANENT = 0;
  private static final int GENETIC = 1;
  private static final int FIXED = 2;

  private final List<Part> parts;
  private final Correlations correlations;
  private final int[] firstFixed;
  private final List<Integer> lasting;
  private final Map<Integer, Integer> plants = new LinkedHashMap<>();
  private final List<Row> rows = new ArrayList<>();

  /**
   * One trait.
   *
   * @param model with the pedigree of the others
   * @param units of each measurement what it was measured on: where another trait was measured on
   *     the same, both share its luck
   */
  public record Part(BreedingModel model, Components components, List<?> units) {
    public Part {
      units = List.copyOf(units);
      boolean fit = units.size() == model.measurements.size() && components.additive() > 0;
      if (!fit) {
        throw new IllegalArgumentException(units.size() + " units, " + components);
      }
    }
  }

  /** How traits go together. */
  public static final class Correlations {
    final double[][] genetic;
    final double[][] environmental;

    /**
     * Both −1 to 1, symmetric with 1 on the diagonal, in the order of the parts.
     *
     * @param genetic of breeding values
     * @param environmental of what is not inherited, of plants and of fruits alike
     */
    public Correlations(double[][] genetic, double[][] environmental) {
      this.genetic = genetic;
      this.environmental = environmental;
    }
  }

  /** A record with what it holds of each effect, its luck made 1 and nobody else's. */
  private static final class Row {
    private double record;
    private final List<Map<Integer, Double>> effects =
        List.of(new TreeMap<>(), new TreeMap<>(), new TreeMap<>());

    void less(Row other, double share) {
      record -= share * other.record;
      for (int k = 0; k < effects.size(); k++) {
        Map<Integer, Double> own = effects.get(k);
        other.effects.get(k).forEach((at, of) -> own.merge(at, -share * of, Double::sum));
      }
    }

    void over(double pivot) {
      record /= pivot;
      effects.forEach(own -> own.replaceAll((at, of) -> of / pivot));
    }
  }

  /** Traits of which something stays with the plant are {@link #lasting}. */
  private JointModel(List<Part> parts, Correlations correlations) {
    this.parts = List.copyOf(parts);
    this.correlations = correlations;
    this.lasting =
        IntStream.range(0, parts.size())
            .filter(t -> parts.get(t).components.permanent() > 0)
            .boxed()
            .toList();
    this.firstFixed = new int[parts.size()];
    for (int t = 1; t < firstFixed.length; t++) {
      firstFixed[t] = firstFixed[t - 1] + parts.get(t - 1).model.fixed.columns().size();
    }
    for (Part part : parts) {
      part.model.plants.forEach(plant -> plants.putIfAbsent(plant, plants.size()));
    }
  }

  /**
   * Breeding values of each trait, in the order of the parts; refused where the correlations can't
   * all be so, or the equations would be too many.
   */
  public static Answer<List<BreedingValues>> values(List<Part> parts, Correlations correlations) {
    if (!canBe(correlations.genetic)) {
      return Answer.refused("The genetic correlations stated can't all be so.");
    }
    if (!canBe(correlations.environmental)) {
      return Answer.refused("The environmental correlations stated can't all be so.");
    }
    JointModel joint = new JointModel(parts, correlations);
    MixedModel model = joint.equations();
    return model
        .tooMuch()
        .<Answer<List<BreedingValues>>>map(Answer::refused)
        .orElseGet(() -> Answer.of(joint.solve(model)));
  }

  /** Whether a matrix can be one of correlations, none of them whole: positive definite. */
  public static boolean canBe(double[][] correlations) {
    return SmallMatrix.cholesky(correlations).isPresent();
  }

  private MixedModel equations() {
    whiten();
    int columns =
        IntStream.range(0, parts.size()).map(t -> parts.get(t).model.fixed.columns().size()).sum();
    int free = parts.get(0).model.relationships.free().size();
    double[] ones = new double[rows.size()];
    Arrays.fill(ones, 1);
    List<Integer> all = IntStream.range(0, parts.size()).boxed().toList();
    return new MixedModel(
        rows.stream().mapToDouble(r -> r.record).toArray(),
        ones,
        design(FIXED, columns),
        List.of(
            new MixedModel.Random(
                design(PERMANENT, plants.size() * lasting.size()),
                product(
                    Covariance.independent(plants.size()),
                    covariances(lasting, correlations.environmental, false))),
            new MixedModel.Random(
                design(GENETIC, free * parts.size()),
                product(
                    Covariance.related(parts.get(0).model.relationships),
                    covariances(all, correlations.genetic, true)))));
  }

  private List<BreedingValues> solve(MixedModel model) {
    Solution solution = model.solve(lasting.isEmpty() ? 0 : 1, 1, 1);
    List<BreedingValues> values = new ArrayList<>();
    for (int t = 0; t < parts.size(); t++) {
      values.add(
          new BreedingValues(
              parts.get(t).model,
              parts.get(t).components,
              solution,
              new BreedingValues.Slot(GENETIC, t, parts.size(), firstFixed[t])));
    }
    return values;
  }

  private double[][] covariances(List<Integer> traits, double[][] correlations, boolean genetic) {
    double[][] made = new double[traits.size()][traits.size()];
    for (int i = 0; i < made.length; i++) {
      for (int j = 0; j < made.length; j++) {
        Components one = parts.get(traits.get(i)).components;
        Components other = parts.get(traits.get(j)).components;
        made[i][j] =
            correlations[traits.get(i)][traits.get(j)]
                * (genetic
                    ? Math.sqrt(one.additive() * other.additive())
                    : Math.sqrt(one.permanent() * other.permanent()));
      }
    }
    return made;
  }

  private static Covariance product(Covariance levels, double[][] traits) {
    boolean[] in = new boolean[traits.length];
    Arrays.fill(in, true);
    double logDeterminant = 0;
    double[][] lower = SmallMatrix.cholesky(traits).orElseThrow();
    for (int t = 0; t < lower.length; t++) {
      logDeterminant += 2 * Math.log(lower[t][t]);
    }
    return levels.ofTraits(SmallMatrix.inverse(traits, in), logDeterminant);
  }

  private Design design(int effect, int columns) {
    Design.Builder made = Design.of(columns);
    for (Row row : rows) {
      row.effects.get(effect).forEach(made::add);
      made.row();
    }
    return made.build();
  }

  /** Figures of one fruit or plant together; a second one of a trait stands by itself. */
  private void whiten() {
    Map<Object, Map<Integer, Integer>> units = new LinkedHashMap<>();
    for (int t = 0; t < parts.size(); t++) {
      List<?> of = parts.get(t).units;
      for (int i = 0; i < of.size(); i++) {
        Map<Integer, Integer> unit = units.computeIfAbsent(of.get(i), u -> new TreeMap<>());
        if (unit.putIfAbsent(t, i) != null) {
          whiten(Map.of(t, i));
        }
      }
    }
    units.values().forEach(this::whiten);
  }

  private void whiten(Map<Integer, Integer> unit) {
    List<Integer> traits = List.copyOf(unit.keySet());
    double[][] lower =
        SmallMatrix.cholesky(luck(traits, unit)).orElseThrow(IllegalStateException::new);
    List<Row> made = new ArrayList<>();
    for (int i = 0; i < traits.size(); i++) {
      Row row = row(traits.get(i), unit.getOrDefault(traits.get(i), 0));
      for (int k = 0; k < i; k++) {
        row.less(made.get(k), lower[i][k]);
      }
      row.over(lower[i][i]);
      made.add(row);
    }
    rows.addAll(made);
  }

  /** Of means of several fruits, those of the smaller heap are among those of the larger. */
  private double[][] luck(List<Integer> traits, Map<Integer, Integer> unit) {
    double[][] made = new double[traits.size()][traits.size()];
    for (int i = 0; i < made.length; i++) {
      for (int j = 0; j < made.length; j++) {
        int t = traits.get(i);
        int s = traits.get(j);
        double fruits =
            Math.max(
                parts.get(t).model.measurements.get(unit.getOrDefault(t, 0)).weight(),
                parts.get(s).model.measurements.get(unit.getOrDefault(s, 0)).weight());
        made[i][j] =
            correlations.environmental[t][s]
                * Math.sqrt(parts.get(t).components.residual() * parts.get(s).components.residual())
                / fruits;
      }
    }
    return made;
  }

  private Row row(int trait, int measurement) {
    BreedingModel model = parts.get(trait).model;
    Measurement each = model.measurements.get(measurement);
    Row row = new Row();
    row.record = each.value();
    model
        .relationships
        .stands(each.plant())
        .forEach(s -> row.effects.get(GENETIC).put(s.free() * parts.size() + trait, s.share()));
    if (lasting.contains(trait)) {
      int level = plants.getOrDefault(each.plant(), 0);
      row.effects.get(PERMANENT).put(level * lasting.size() + lasting.indexOf(trait), 1.0);
    }
    Design fixed = model.fixed.design();
    for (int i = fixed.start(measurement); i < fixed.end(measurement); i++) {
      row.effects
          .get(FIXED)
          .merge(firstFixed[trait] + fixed.column(i), fixed.share(i), Double::sum);
    }
    return row;
  }
}
