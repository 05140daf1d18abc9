package slipday.genetics;

import java.util.List;

/**
 * A figure of a line, such as its days to ripe, out of a few of its own records, shrunk towards the
 * figure of its kind by how few they are.
 *
 * <p>A record is the kind's mean + the line's difference + the season's + what is the fruit's own,
 * each normal. The kind's own spread is parted among them beforehand: half between lines, a quarter
 * between seasons, a quarter between fruits. The line's difference is then predicted by best linear
 * unbiased prediction, in which the mean of a season of n fruits weighs 1 / (σ²season + σ²fruit /
 * n) and the kind's mean 1 / σ²line (Robinson 1991, Statistical Science 6:15; the same shrinkage as
 * Efron and Morris 1975, Journal of the American Statistical Association 70:311; both from memory).
 * The fruits' own variance is corrected by what is seen within seasons, the variance beforehand
 * counting as four degrees of freedom (scaled inverse chi-squared; Gelman and others, Bayesian Data
 * Analysis, section 2.6, from memory).
 *
 * @param mean of the line
 * @param doubt the standard deviation of that mean
 * @param spread the standard deviation of a fruit of it in a season to come
 * @param weight what its own records count for in the mean, from 0 to 1
 */
public record Shrunken(double mean, double doubt, double spread, double weight) {
  static final double BETWEEN_LINES = 0.5;
  static final double BETWEEN_SEASONS = 0.25;
  static final double BETWEEN_FRUITS = 0.25;
  private static final double WORTH_BEFOREHAND = 4;

  /**
   * @param kind the mean of the kind
   * @param spread the standard deviation of its fruits, of all its lines and in all seasons, above
   *     0
   * @param seasons each season's records; none is empty
   */
  public static Shrunken of(double kind, double spread, List<List<Double>> seasons) {
    if (!(spread > 0)) {
      throw new IllegalArgumentException("a spread of " + spread);
    }
    double all = spread * spread;
    double betweenSeasons = BETWEEN_SEASONS * all;
    double ofFruit = ofFruit(BETWEEN_FRUITS * all, seasons);
    double precision = 1 / (BETWEEN_LINES * all);
    double sum = kind * precision;
    double own = 0;
    for (List<Double> season : seasons) {
      double weight = 1 / (betweenSeasons + ofFruit / season.size());
      own += weight;
      sum += weight * mean(season);
    }
    double variance = 1 / (precision + own);
    return new Shrunken(
        sum * variance,
        Math.sqrt(variance),
        Math.sqrt(variance + betweenSeasons + ofFruit),
        own * variance);
  }

  private static double ofFruit(double beforehand, List<List<Double>> seasons) {
    double squares = 0;
    int freedom = 0;
    for (List<Double> season : seasons) {
      double mean = mean(season);
      squares += season.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
      freedom += season.size() - 1;
    }
    return (WORTH_BEFOREHAND * beforehand + squares) / (WORTH_BEFOREHAND + freedom);
  }

  private static double mean(List<Double> season) {
    return season.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }
}
