package slipday.genetics.mixed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import slipday.genetics.Answer;
import slipday.genetics.Pedigree;
import slipday.genetics.RelationshipInverse;

/**
 * Measurements of one trait as what they are corrected for, the plants' breeding values, what else
 * stays with each plant, and a remainder.
 *
 * <pre>
 * BreedingModel model = BreedingModel.of(pedigree, measurements);
 * Answer&lt;Heritability&gt; known = model.estimate();      // or model.stated(…), model.assumed(…)
 * BreedingValues values = model.values(known.value().orElseThrow().components());
 * values.value(plant); values.accuracy(plant); values.value(Map.of(mother, .5, father, .5));
 * </pre>
 *
 * <p>Plants of one genotype are one unknown, so that fully inbred parents do no harm; plants
 * without measurements, seed yet unsown among them, have values too. Breeding values are measured
 * from the founders' mean, which the fixed effects hold.
 */
public final class BreedingModel {
  /** A heritability less sure than this says nothing that a guess would not. */
  private static final double TOO_UNSURE = 0.3;

  final Pedigree pedigree;
  final RelationshipInverse relationships;
  final List<Measurement> measurements;
  final FixedEffects fixed;
  final List<Integer> plants = new ArrayList<>();
  final Map<Integer, Integer> levels = new HashMap<>();
  final MixedModel model;
  private final double spread;
  private @Nullable Answer<Total> total;

  private BreedingModel(Pedigree pedigree, List<Measurement> measurements) {
    this.pedigree = pedigree;
    this.relationships = pedigree.reducedInverse();
    this.measurements = List.copyOf(measurements);
    this.fixed = new FixedEffects(measurements);
    for (Measurement each : measurements) {
      levels.computeIfAbsent(
          each.plant(),
          plant -> {
            plants.add(plant);
            return plants.size() - 1;
          });
    }
    model = model(List.of(genetic(), permanent()), fixed.design());
    spread = spreadAmongPlants();
  }

  /**
   * @throws IllegalArgumentException where nothing was measured
   */
  public static BreedingModel of(Pedigree pedigree, List<Measurement> measurements) {
    if (measurements.isEmpty()) {
      throw new IllegalArgumentException("nothing measured");
    }
    return new BreedingModel(pedigree, measurements);
  }

  /**
   * Additive variance among the plants measured, within what they are corrected for, over that of
   * the founders' base: what a heritability among these plants speaks of. 0 where all are of one
   * genotype.
   */
  public double spread() {
    return spread;
  }

  /** The plants measured, in the order in which they came. */
  public List<Integer> plants() {
    return List.copyOf(plants);
  }

  /** What was measured, in the order in which it came. */
  public List<Measurement> measurements() {
    return measurements;
  }

  /** How many effects are corrected for, the mean among them. */
  public int corrections() {
    return model.rank();
  }

  public BreedingValues values(Components components) {
    return new BreedingValues(this, components);
  }

  /** What of the differences is whose, by REML; refused, with the reason, where none can tell. */
  public Answer<Heritability> estimate() {
    return new Families(this)
        .obstacle()
        .or(model::tooMuch)
        .<Answer<Heritability>>map(Answer::refused)
        .orElseGet(() -> Reml.estimate(model).then(this::heritability));
  }

  private Answer<Heritability> heritability(Reml.Estimate found) {
    Heritability known = Heritability.estimated(found, spread);
    boolean sure = known.atBoundary() || known.error().orElse(0.0) <= TOO_UNSURE;
    return sure
        ? Answer.of(known)
        : Answer.refused(
            "The measurements leave the heritability open by more than 0.3 to either side.");
  }

  /**
   * Variances that follow from a heritability stated for some plants, and from how alike fruits of
   * one plant are here; refused where the equations would be too many.
   *
   * @param heritability above 0 and below 1, of the mean of so many fruits of a plant
   * @param base the additive variance among the plants it was stated for, over that of the
   *     pedigree's base, above 0: 0.5 for an F2 out of founders of inbreeding 1
   */
  public Answer<Heritability> stated(double heritability, double fruits, double base) {
    return model
        .tooMuch()
        .<Answer<Heritability>>map(Answer::refused)
        .orElseGet(
            () ->
                total().then(total -> Answer.of(total.split(heritability, fruits, base, spread))));
  }

  /** Variances for a heritability of one fruit among the plants measured. */
  public Answer<Heritability> assumed(double heritability) {
    return spread > 0
        ? stated(heritability, 1, spread)
        : Answer.refused("The plants measured are all of one genotype.");
  }

  /** How alike fruits of one plant are among all, with nothing asked of their descent. */
  public Answer<Repeatability> repeatability() {
    if (measurements.size() == plants.size()) {
      return Answer.refused("No plant has two fruits measured.");
    }
    return total().then(total -> Answer.of(new Repeatability(total.repeatability(), total.error)));
  }

  /**
   * @param error standard error of the value
   */
  public record Repeatability(double value, double error) {}

  /** Searched for once: it rests on no heritability. */
  private Answer<Total> total() {
    Answer<Total> known = total;
    if (known == null) {
      boolean repeated = measurements.size() > plants.size();
      List<MixedModel.Random> random = repeated ? List.of(permanent()) : List.of();
      known =
          Reml.estimate(model(random, fixed.design()))
              .then(found -> Answer.of(Total.of(found, repeated)));
      total = known;
    }
    return known;
  }

  /** Variance among plants and among fruits of one; all of it with the fruits if none has two. */
  private record Total(double plant, double fruit, double error, boolean repeated) {
    static Total of(Reml.Estimate found, boolean repeated) {
      return repeated
          ? new Total(
              found.variances()[0],
              found.variances()[1],
              found.ratioError(new double[] {1, 0}, new double[] {1, 1}),
              true)
          : new Total(0, found.variances()[0], 0, false);
    }

    double repeatability() {
      return plant / (plant + fruit);
    }

    /**
     * From h² = g·a ÷ (g·a + p + e÷n), and s·a + p the variance among plants here. Where that would
     * leave p below 0, it is 0 and the remainder gives way.
     */
    Heritability split(double heritability, double fruits, double base, double spread) {
      double one = repeated ? fruit / fruits : fruit;
      double additive =
          heritability * (plant + one) / (base * (1 - heritability) + heritability * spread);
      double permanent = Math.max(0, plant - spread * additive);
      double residual = plant + fruit - spread * additive - permanent;
      boolean fits = !repeated || plant - spread * additive >= -1e-9 * plant;
      double least = Math.min(fruit, (plant + fruit) / 1e6);
      return Heritability.stated(
          new Components(additive, permanent, Math.max(residual, least)), spread, fits);
    }
  }

  private MixedModel model(List<MixedModel.Random> random, Design fixedEffects) {
    return new MixedModel(
        measurements.stream().mapToDouble(Measurement::value).toArray(),
        measurements.stream().mapToDouble(Measurement::weight).toArray(),
        fixedEffects,
        random);
  }

  private MixedModel.Random genetic() {
    Design.Builder rows = Design.of(relationships.free().size());
    for (Measurement each : measurements) {
      relationships.stands(each.plant()).forEach(term -> rows.add(term.free(), term.share()));
      rows.row();
    }
    return new MixedModel.Random(rows.build(), Covariance.related(relationships));
  }

  private MixedModel.Random permanent() {
    Design.Builder rows = Design.of(plants.size());
    for (Measurement each : measurements) {
      rows.add(levels.getOrDefault(each.plant(), 0), 1).row();
    }
    return new MixedModel.Random(rows.build(), Covariance.independent(plants.size()));
  }

  /**
   * tr(M·A) over the rank of M, which takes the fixed effects out of one record for each plant: its
   * first.
   */
  private double spreadAmongPlants() {
    List<Measurement> first = new ArrayList<>();
    boolean[] seen = new boolean[plants.size()];
    for (Measurement each : measurements) {
      int level = levels.getOrDefault(each.plant(), 0);
      if (!seen[level]) {
        seen[level] = true;
        first.add(each);
      }
    }
    return new Spread(pedigree, first).value();
  }
}
