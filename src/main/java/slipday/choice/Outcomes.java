package slipday.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.genetics.Aim;
import slipday.genetics.Pedigree;
import slipday.genetics.Selection;

/** What the next generation of a choice will be like, and what selfing can still bring. */
final class Outcomes {
  private static final int LINES = 100;

  private final CandidateFinder finder;
  private final Map<Integer, Double> shares;
  private final Optional<Map<Integer, Double>> free;

  /**
   * @param shares what each plant of the pedigree gives, 1 in all
   * @param free the same of the best choice without limits
   */
  Outcomes(
      CandidateFinder finder, Map<Integer, Double> shares, Optional<Map<Integer, Double>> free) {
    this.finder = finder;
    this.shares = shares;
    this.free = free;
  }

  /** Of every trait that can be valued; those aimed at first. */
  List<Chosen.Promise> promises() {
    List<Chosen.Promise> promises = new ArrayList<>();
    for (TraitValues trait : finder.traits()) {
      promise(trait).ifPresent(promises::add);
    }
    return promises;
  }

  /** What is to be expected in the traits aimed at, in words; empty where nothing is. */
  String expected(Map<Integer, Double> given) {
    List<String> words = new ArrayList<>();
    for (TraitValues trait : finder.traits()) {
      if (finder.aims().isAimedAt(trait.trait())) {
        predicted(trait, given)
            .ifPresent(p -> words.add(trait.trait().name() + " " + trait.trait().words(p.value())));
      }
    }
    return String.join(", ", words);
  }

  private static Optional<Predicted> predicted(TraitValues trait, Map<Integer, Double> shares) {
    return trait.predicted(shares, trait.inheritance().levels().size() / 2);
  }

  private Optional<Aim> aim(TraitValues trait) {
    return finder.aims().aim(trait.trait(), trait.deviation());
  }

  private Optional<Chosen.Promise> promise(TraitValues trait) {
    return predicted(trait, shares)
        .map(
            next ->
                new Chosen.Promise(
                    trait.trait(),
                    finder.aims().of(trait.trait()).map(Aims::words),
                    trait.mean(),
                    next,
                    free.flatMap(f -> predicted(trait, f)).map(Predicted::value),
                    aim(trait).map(a -> a.isMetBy(next.value()))));
  }

  /**
   * Within the family of parents of mean inbreeding F their draw of genes sets (1 − F) ÷ 2 of the
   * base's additive variance free, selfed or not; selfing the seed then sets 1 − F of the seed free
   * in all, half of what is left each time (D. S. Falconer and T. F. C. Mackay 1996, chapter 15,
   * from memory).
   *
   * @param pool all that may be parents: how much they differ is what can be chosen among
   */
  Optional<Chosen.Release> release(List<Chosen.Part> parts, List<Candidate> pool) {
    double all = parts.stream().mapToDouble(Chosen.Part::plants).sum();
    double within = 0;
    double hidden = 0;
    for (Chosen.Part part : parts) {
      double now = Selection.varianceWithinFamily(inbreedingOfParents(part.fruit()));
      within += part.plants() / all * now;
      hidden += part.plants() / all * (now + 1 - part.fruit().inbreeding());
    }
    double between = between(pool.stream().map(c -> finder.relatives().plant(c.plant())).toList());
    if (within + between <= 0) {
      return Optional.empty();
    }
    List<Chosen.TraitRelease> traits = new ArrayList<>();
    for (TraitValues trait : finder.traits()) {
      release(trait, within, hidden).ifPresent(traits::add);
    }
    return Optional.of(
        new Chosen.Release(within / (within + between), between / (between + hidden), traits));
  }

  private double inbreedingOfParents(Candidate.SeedFruit fruit) {
    double sum = 0;
    for (Map.Entry<Integer, Double> parent :
        finder.relatives().seed(fruit.fruit()).parents().entrySet()) {
      sum += parent.getValue() * finder.relatives().pedigree().inbreeding(parent.getKey());
    }
    return Math.min(1, sum);
  }

  /**
   * Variance among plants over that of the base: what each has of its own beyond what two share.
   */
  private double between(List<Integer> plants) {
    int n = plants.size();
    Pedigree pedigree = finder.relatives().pedigree();
    double own = plants.stream().mapToDouble(p -> 1 + pedigree.inbreeding(p)).average().orElse(1);
    double all = 2 * pedigree.meanCoancestry(plants);
    return n < 2 ? 0 : Math.max(0, own - (n * all - own) / (n - 1));
  }

  private Optional<Chosen.TraitRelease> release(TraitValues trait, double within, double hidden) {
    Optional<Inheritance.Level> level = trait.inheritance().main();
    Optional<Predicted> next = predicted(trait, shares);
    if (level.isEmpty() || next.isEmpty() || !finder.aims().isAimedAt(trait.trait())) {
      return Optional.empty();
    }
    double additive = level.get().heritability().components().additive();
    double ceiling = Math.sqrt(hidden * additive);
    double best = Selection.intensity(1, LINES) * ceiling;
    return Optional.of(
        new Chosen.TraitRelease(
            trait.trait(),
            Math.sqrt(within * additive),
            ceiling,
            best,
            aim(trait).map(a -> a.distance(next.get().value()) <= best)));
  }
}
