package slipday.genetics.mixed;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * What one fruit was, or several weighed together, or a plant as a whole.
 *
 * @param plant its number in the pedigree
 * @param weight how many fruits the value is the mean of
 * @param factors what it is corrected for by kinds, such as its season: the name of the factor and
 *     which it was
 * @param covariates what it is corrected for by amount, such as its inbreeding
 */
public record Measurement(
    int plant,
    double value,
    double weight,
    Map<String, String> factors,
    Map<String, Double> covariates) {
  public Measurement {
    // In an order of their own, so that sums come out alike to the last digit.
    factors = Collections.unmodifiableMap(new TreeMap<>(factors));
    covariates = Collections.unmodifiableMap(new TreeMap<>(covariates));
  }

  public static Measurement of(int plant, double value) {
    return new Measurement(plant, value, 1, Map.of(), Map.of());
  }
}
