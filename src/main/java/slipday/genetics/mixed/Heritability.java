package slipday.genetics.mixed;

import java.util.Optional;

/**
 * What of the differences among the plants measured is breeding value, and how that is known.
 *
 * @param components the variances behind it
 * @param spread additive variance among the plants measured over that of the pedigree's base
 * @param error standard error of {@link #ofFruit}; empty where it was stated or taken for granted
 * @param repeatabilityError standard error of {@link #repeatability}; empty likewise
 * @param atBoundary whether the estimate of the additive variance is 0, which says that it is small
 *     and not that it is nothing
 * @param fits whether fruits of one plant are as alike as a stated heritability needs them to be
 */
public record Heritability(
    Components components,
    double spread,
    Optional<Double> error,
    Optional<Double> repeatabilityError,
    boolean atBoundary,
    boolean fits) {

  static Heritability estimated(Reml.Estimate found, double spread) {
    double[] v = found.variances();
    return new Heritability(
        new Components(v[0], v[1], v[2]),
        spread,
        Optional.of(found.ratioError(new double[] {spread, 0, 0}, new double[] {spread, 1, 1})),
        Optional.of(found.ratioError(new double[] {spread, 1, 0}, new double[] {spread, 1, 1})),
        found.atBoundary()[0],
        true);
  }

  static Heritability stated(Components components, double spread, boolean fits) {
    return new Heritability(
        components, spread, Optional.empty(), Optional.empty(), components.additive() == 0, fits);
  }

  /** h² of one fruit among the plants measured. */
  public double ofFruit() {
    return components.heritability(spread, 1);
  }

  /** h² of a plant's mean of so many fruits, among the plants measured. */
  public double ofMean(double fruits) {
    return components.heritability(spread, fruits);
  }

  public double repeatability() {
    return components.repeatability(spread);
  }
}
