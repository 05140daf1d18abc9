package slipday.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.genetics.Aim;
import slipday.genetics.Answer;
import slipday.genetics.SelectionIndex;
import slipday.genetics.mixed.Heritability;

/**
 * Weights with which every trait gains in proportion to what it lacks, out of what its breeding
 * values vary: desired gains.
 */
final class Lacking {
  private final Aims aims;
  private final Correlations correlations;

  Lacking(Aims aims, Correlations correlations) {
    this.aims = aims;
    this.correlations = correlations;
  }

  /** What one trait lacks, and how it varies. */
  private record Gap(TraitValues trait, double wanted, double additive, double rest) {}

  /**
   * By trait, a unit of it; a trait that its fellows carry along by themselves weighs nothing.
   * Refused where nothing lacks, or the traits can't be told apart.
   */
  Answer<Map<String, Double>> weights(List<TraitValues> traits) {
    List<Gap> gaps = new ArrayList<>();
    traits.forEach(t -> gap(t).ifPresent(gaps::add));
    int n = gaps.size();
    double[][] genetic = new double[n][n];
    double[][] phenotypic = new double[n][n];
    double[] wanted = new double[n];
    for (int i = 0; i < n; i++) {
      Gap one = gaps.get(i);
      wanted[i] = one.wanted();
      for (int j = 0; j < n; j++) {
        Gap other = gaps.get(j);
        genetic[i][j] =
            correlations.genetic(one.trait().trait(), other.trait().trait())
                * Math.sqrt(one.additive() * other.additive());
        double rest =
            correlations.environmental(one.trait().trait(), other.trait().trait())
                * Math.sqrt(one.rest() * other.rest());
        phenotypic[i][j] = genetic[i][j] + rest;
      }
    }
    if (n == 0) {
      return Answer.refused("No trait that is aimed at lacks anything that can be valued.");
    }
    return SelectionIndex.desiredGains(phenotypic, genetic, wanted)
        .then(index -> Answer.of(named(gaps, index)));
  }

  private static Map<String, Double> named(List<Gap> gaps, SelectionIndex index) {
    Map<String, Double> weights = new HashMap<>();
    for (int i = 0; i < gaps.size(); i++) {
      double towards = index.weights().get(i) * Math.signum(gaps.get(i).wanted());
      weights.put(gaps.get(i).trait().trait().name(), Math.max(0, towards));
    }
    return weights;
  }

  private Optional<Gap> gap(TraitValues trait) {
    Optional<Aim> aim = aims.aim(trait.trait(), trait.deviation());
    Optional<Heritability> known = trait.inheritance().main().map(Inheritance.Level::heritability);
    if (aim.isEmpty() || known.isEmpty() || aim.get().isMetBy(trait.mean())) {
      return Optional.empty();
    }
    double distance = aim.get().distance(trait.mean());
    boolean under = aim.get().low().filter(low -> trait.mean() < low).isPresent();
    double additive = known.get().components().additive() * known.get().spread();
    double rest = known.get().components().permanent() + known.get().components().residual();
    return additive > 0
        ? Optional.of(new Gap(trait, under ? distance : -distance, additive, rest))
        : Optional.empty();
  }
}
