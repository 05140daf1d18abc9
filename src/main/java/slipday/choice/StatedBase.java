package slipday.choice;

import java.util.Optional;
import slipday.garden.Goal;
import slipday.genetics.Answer;
import slipday.genetics.Generation;
import slipday.genetics.Pedigree;
import slipday.genetics.PlainGeneration;
import slipday.genetics.StandIns;

/**
 * How much additive variance shows among plants of the generation that a heritability was found in,
 * over that of the pedigree's base: ½ for an F2 of inbred parents, ¾ for an F3 by single seeds.
 */
final class StatedBase {
  private StatedBase() {}

  /** Empty where the label doesn't tell, or where its plants have no such differences. */
  static Optional<Double> of(Generation generation) {
    Optional<Double> base = Optional.empty();
    if (generation instanceof PlainGeneration.Filial filial
        && filial.origin() == PlainGeneration.Origin.INBRED_PARENTS) {
      base = Optional.of(ofCross(filial));
    } else if (generation instanceof PlainGeneration.Backcross back) {
      base = Optional.of(ofCross(back));
    } else if (generation instanceof PlainGeneration.Selfed selfed) {
      base = Optional.of(2 - Math.pow(0.5, selfed.selfings()));
    } else if (generation instanceof PlainGeneration.OpenPollinated) {
      base = Optional.of(1.0);
    } else if (generation instanceof PlainGeneration.Inbred) {
      base = Optional.of(2.0);
    }
    return base.filter(b -> b > 1e-9);
  }

  /**
   * A heritability on the basis of plants' means: as stated, or for plots of k plants of one family
   * h·(b + w) ÷ (b·(h + k·(1 − h))), where b is the additive variance between families and w that
   * within. From h = b·σ² ÷ (b·σ² + (w·σ² + e) ÷ k), e being what else sets plants apart; so that
   * what sets plots apart is taken as if it did plants. Refused with what is lacking.
   */
  static Answer<Double> ofPlantMeans(Goal.Inheritance stated) {
    if (stated.unit() != Goal.Unit.PLOT) {
      return Answer.of(stated.share());
    }
    if (stated.plants().isEmpty()) {
      return Answer.refused(
          "The heritability in the plan is of plot means, and does not say of how many plants, so it"
              + " tells nothing of single plants and is left aside: write `of plot means of 6 plants`,"
              + " with their number.");
    }
    Optional<Double> all = of(stated.among());
    Optional<Double> between = betweenFamilies(stated.among());
    if (all.isEmpty() || between.isEmpty()) {
      return Answer.refused(
          "The heritability in the plan is of plot means among "
              + stated.among().print()
              + ", and plots of those are no families whose differences are known; it is left"
              + " aside.");
    }
    double plants = stated.plants().get();
    double share =
        stated.share()
            * all.get()
            / (between.get() * (stated.share() + plants * (1 - stated.share())));
    return share < 1
        ? Answer.of(share)
        : Answer.refused(
            "The heritability in the plan is of plot means, and is more than plots of "
                + (int) plants
                + " plants of "
                + stated.among().print()
                + " can have; it is left aside.");
  }

  /** A family comes from one selfed plant, so families differ as the plants before them did. */
  private static Optional<Double> betweenFamilies(Generation generation) {
    if (generation instanceof PlainGeneration.Inbred) {
      return of(generation);
    }
    if (generation instanceof PlainGeneration.Filial filial
        && filial.number() > 2
        && filial.sib() == 0) {
      return of(new PlainGeneration.Filial(filial.number() - 1, 0, filial.origin()));
    }
    return generation instanceof PlainGeneration.Selfed selfed
            && selfed.selfings() > 0
            && selfed.sib() == 0
        ? of(new PlainGeneration.Selfed(selfed.selfings() - 1, 0))
        : Optional.empty();
  }

  /** What sets two plants apart that have nothing in common since the cross. */
  private static double ofCross(PlainGeneration label) {
    Pedigree.Builder builder = Pedigree.begin(0);
    StandIns.Parents cross =
        new StandIns.Parents(
            builder.founder("seed parent", 1), builder.founder("pollen parent", 1));
    int one = StandIns.parents(builder, "one", label, cross).plant(builder, "one");
    int other = StandIns.parents(builder, "other", label, cross).plant(builder, "other");
    Pedigree pedigree = builder.build();
    return 1 + pedigree.inbreeding(one) - 2 * pedigree.coancestry(one, other);
  }
}
