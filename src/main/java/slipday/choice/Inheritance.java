package slipday.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.garden.Goal;
import slipday.genetics.Answer;
import slipday.genetics.mixed.BreedingModel;
import slipday.genetics.mixed.BreedingValues;
import slipday.genetics.mixed.Heritability;

/**
 * What of a trait's differences is taken as inherited: as the plan states it, or as the record
 * tells, or else at several figures beside each other. There is no figure of our own.
 *
 * @param levels the figures it is valued at, none for {@link Source#NONE}
 * @param says how that came about, a sentence each
 */
record Inheritance(Source source, List<Level> levels, List<String> says) {
  private static final double[] ASSUMED = {0.1, 0.3, 0.5};

  /** A heritability and the breeding values it gives. */
  record Level(Heritability heritability, BreedingValues values) {}

  Inheritance {
    levels = List.copyOf(levels);
    says = List.copyOf(says);
  }

  /** The level that is shown: the middle one where there are several. */
  Optional<Level> main() {
    return levels.isEmpty() ? Optional.empty() : Optional.of(levels.get(levels.size() / 2));
  }

  static Inheritance of(TraitModel trait, Optional<Goal.Inheritance> stated) {
    BreedingModel model = trait.model();
    List<String> says = new ArrayList<>();
    Optional<Inheritance> known = stated.flatMap(s -> stated(trait, s, says));
    if (known.isPresent()) {
      return known.get();
    }
    Answer<Heritability> estimate = model.estimate();
    Optional<Heritability> found = estimate.value().filter(h -> !h.atBoundary());
    if (found.isPresent()) {
      says.add(estimated(model, found.get()));
      return new Inheritance(Source.ESTIMATED, List.of(level(model, found.get())), says);
    }
    says.add(
        estimate
            .refusal()
            .orElse(
                "The estimate of the heritability is 0, which says that it is small and not that"
                    + " it is nothing."));
    return assumed(model, says);
  }

  private static Optional<Inheritance> stated(
      TraitModel trait, Goal.Inheritance stated, List<String> says) {
    BreedingModel model = trait.model();
    Answer<Double> ofPlants = StatedBase.ofPlantMeans(stated);
    if (ofPlants.refusal().isPresent()) {
      says.add(ofPlants.refusal().get());
      return Optional.empty();
    }
    double share = ofPlants.value().orElseThrow();
    Optional<Double> base = StatedBase.of(stated.among());
    if (base.isEmpty()) {
      says.add(
          "The heritability in the plan is of "
              + stated.among().print()
              + ", among which no differences to be inherited are known; it is left aside.");
      return Optional.empty();
    }
    Answer<Heritability> known =
        model.spread() > 0
            ? model.stated(share, stated.fruits().orElse(1), base.get())
            : Answer.refused("The plants measured are all of one genotype.");
    known.refusal().ifPresent(says::add);
    return Optional.of(
        known
            .value()
            .map(
                h ->
                    new Inheritance(
                        Source.STATED, List.of(level(model, h)), said(trait, h, stated, share)))
            .orElseGet(() -> new Inheritance(Source.NONE, List.of(), says)));
  }

  private static List<String> said(
      TraitModel trait, Heritability h, Goal.Inheritance stated, double share) {
    List<String> says = new ArrayList<>();
    says.add(
        String.format(
            Locale.ROOT,
            "The plan states a heritability of %.2f among %s; among the plants measured that is"
                + " %.2f of a %s.",
            stated.share(),
            stated.among().print(),
            h.ofFruit(),
            trait.trait().isOfPlant() ? "plant" : "fruit"));
    boolean ofMeans = stated.unit() == Goal.Unit.PLANT && !trait.trait().isOfPlant();
    if (ofMeans && stated.fruits().isEmpty()) {
      says.add(
          "Of how many fruits a plant's mean was is not said, so one is taken; of more the"
              + " heritability of one fruit is less. Write `of plant means of 3 fruits`, with their"
              + " number.");
    }
    if (stated.unit() == Goal.Unit.PLOT) {
      says.add(
          String.format(
              Locale.ROOT,
              "It is of means of plots of %d plants, each of one family: of means of single plants"
                  + " that is %.2f, at the low side, since what sets plots apart is counted with"
                  + " the plants' own.",
              stated.plants().orElse(1),
              share));
    }
    if (!h.fits()) {
      says.add(
          "Fruits of one plant are less alike here than that heritability needs, so it may be too"
              + " high.");
    }
    return says;
  }

  private static String estimated(BreedingModel model, Heritability h) {
    return String.format(
        Locale.ROOT,
        "Heritability of a fruit, estimated from %d plants of the record: %.2f, standard error"
            + " %.2f; repeatability %.2f.",
        model.plants().size(),
        h.ofFruit(),
        h.error().orElse(0.0),
        h.repeatability());
  }

  private static Inheritance assumed(BreedingModel model, List<String> says) {
    List<Level> levels = new ArrayList<>();
    for (double each : ASSUMED) {
      Answer<Heritability> answer = model.assumed(each);
      if (answer.refusal().isPresent()) {
        if (!says.contains(answer.refusal().get())) {
          says.add(answer.refusal().get());
        }
        return new Inheritance(Source.NONE, List.of(), says);
      }
      answer.value().ifPresent(h -> levels.add(level(model, h)));
    }
    says.add(
        "So it is valued at a heritability of 0.1, 0.3 and 0.5 of one figure, and shown at 0.3.");
    return new Inheritance(Source.ASSUMED, levels, says);
  }

  private static Level level(BreedingModel model, Heritability heritability) {
    return new Level(heritability, model.values(heritability.components()));
  }
}
