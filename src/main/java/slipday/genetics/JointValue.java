package slipday.genetics;

/**
 * A breeding value told by the values of other traits too, where breeding values go together: the
 * index of the single values that goes best with the true one (L. N. Hazel 1943, Genetics 28:476,
 * from memory). What plants' places and luck do to one trait is taken as saying nothing of another.
 *
 * @param difference from the mean, in the unit of the trait
 * @param accuracy correlation with the true difference, 0 to 1
 */
public record JointValue(double difference, double accuracy) {
  private static final double LEAST = 1e-6;

  /**
   * @param differences predicted trait by trait, the one that is told first
   * @param accuracies of each, 0 to 1
   * @param deviations standard deviation of each true difference, above 0
   * @param correlations of the true values, symmetric, 1 on the diagonal
   * @return refused where the correlations can't all be so
   */
  public static Answer<JointValue> of(
      double[] differences, double[] accuracies, double[] deviations, double[][] correlations) {
    if (!SelectionIndex.canBeCorrelations(correlations)) {
      return Answer.refused("The genetic correlations stated can't all be so.");
    }
    int n = differences.length;
    double[][] predicted = new double[n][n];
    double[][] told = new double[n][n];
    for (int t = 0; t < n; t++) {
      double reliability = Math.max(LEAST, accuracies[t] * accuracies[t]);
      for (int s = 0; s < n; s++) {
        double other = Math.max(LEAST, accuracies[s] * accuracies[s]);
        double genetic = correlations[t][s] * deviations[t] * deviations[s];
        told[t][s] = reliability * genetic;
        predicted[t][s] = t == s ? reliability * genetic : reliability * other * genetic;
      }
    }
    double[] first = new double[n];
    first[0] = 1;
    return SelectionIndex.smithHazel(predicted, told, first)
        .then(
            index ->
                Answer.of(
                    new JointValue(
                        index.of(differences), Math.min(1, index.deviation() / deviations[0]))));
  }
}
