package slipday.genetics.mixed;

/**
 * Where the differences of a trait come from, as variances in the trait's unit squared.
 *
 * @param additive of breeding values in a base that is not inbred
 * @param permanent what a plant has of its own beyond its breeding value: its place, its start,
 *     what genes do together
 * @param residual of one fruit about its plant
 */
public record Components(double additive, double permanent, double residual) {
  public Components {
    boolean fit =
        additive >= 0 && permanent >= 0 && residual > 0 && additive < 1 / 0.0 && residual < 1 / 0.0;
    if (!fit) {
      throw new IllegalArgumentException(additive + ", " + permanent + ", " + residual);
    }
  }

  /**
   * h²: what part of the differences among means of some fruits is breeding value.
   *
   * @param spread the additive variance among the plants meant, over that of the base: 1 for the
   *     base itself
   * @param fruits of each plant
   */
  public double heritability(double spread, double fruits) {
    double genetic = spread * additive;
    return genetic / (genetic + permanent + residual / fruits);
  }

  /** How alike two fruits of a plant are among all: the bound that h² of a fruit can't pass. */
  public double repeatability(double spread) {
    double plant = spread * additive + permanent;
    return plant / (plant + residual);
  }
}
