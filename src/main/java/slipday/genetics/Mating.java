package slipday.genetics;

import java.util.Optional;
import slipday.genetics.Generation.Probable;
import slipday.genetics.Generation.SelfOrCross;
import slipday.genetics.PlainGeneration.Filial;
import slipday.genetics.PlainGeneration.Origin;
import slipday.genetics.Purdy.Side;

/** How a fruit's seed was made, and what generation follows. */
public sealed interface Mating {

  /** By hand, with the plant's own pollen. */
  record Selfing() implements Mating {}

  /** By hand, with pollen of another plant of the lot. */
  record Sibbing() implements Mating {}

  /**
   * By hand, with pollen of another line.
   *
   * @param certain false where a perfect flower kept its anthers
   */
  record Crossing(boolean certain) implements Mating {}

  /** By hand, with or onto one of the parents of the plant's own cross. */
  record Backcrossing(Side recurrent) implements Mating {}

  /** By bees. */
  record Open(boolean isolatedAndOneLine) implements Mating {}

  /** Seed out of the fruit of a bought hybrid, from a field that is likely to be all of it. */
  record HybridFruit() implements Mating {}

  /**
   * The generation of the seed.
   *
   * @param seedParent of the plant that bore the fruit
   * @param pollenParent of the other plant, if there was one
   */
  default Answer<Generation> seed(Generation seedParent, Optional<Generation> pollenParent) {
    if (this instanceof Selfing) {
      return Answer.of(seedParent.selfed());
    }
    if (this instanceof Sibbing) {
      return pollenParent.filter(other -> !other.equals(seedParent)).isPresent()
          ? Answer.refused("Sibs are plants of one lot, and these are of two generations.")
          : Answer.of(seedParent.sibbed());
    }
    if (this instanceof Open open) {
      return Answer.of(seedParent.openPollinated(open.isolatedAndOneLine));
    }
    if (this instanceof HybridFruit) {
      return seedParent.equals(new Filial(1, 0, Origin.INBRED_PARENTS))
          ? Answer.of(new Probable(seedParent.selfed()))
          : Answer.refused(
              "A bought hybrid is F1, and this plant is `" + seedParent.print() + "`.");
    }
    return pollenParent
        .map(pollen -> ofTwo(seedParent, pollen))
        .orElseGet(() -> Answer.refused("A cross has a pollen parent, and none is named."));
  }

  /**
   * Whether a label written on the seed follows.
   *
   * @return the generation that follows, where the label is true of it though it may say less;
   *     refused where it is not, with what it should be
   */
  default Answer<Generation> follows(
      Generation written, Generation seedParent, Optional<Generation> pollenParent) {
    return seed(seedParent, pollenParent)
        .then(
            seed ->
                written.covers(seed)
                    ? Answer.of(seed)
                    : Answer.refused(
                        sentence(seedParent, pollenParent)
                            + " is `"
                            + seed.print()
                            + "`, and the label says `"
                            + written.print()
                            + "`."));
  }

  private Answer<Generation> ofTwo(Generation seedParent, Generation pollenParent) {
    if (this instanceof Backcrossing back) {
      boolean ontoSeed = back.recurrent == Side.SEED_PARENT;
      return (ontoSeed ? pollenParent : seedParent).backcrossed(back.recurrent);
    }
    Generation made = seedParent.crossed(pollenParent);
    if (((Crossing) this).certain) {
      return Answer.of(made);
    }
    return seedParent instanceof SelfOrCross
        ? Answer.refused("The seed parent is itself to be proved; grow it out first.")
        : Answer.of(new SelfOrCross(seedParent.selfed(), made));
  }

  private String sentence(Generation seedParent, Optional<Generation> pollenParent) {
    String plant = "`" + seedParent.print() + "`";
    if (this instanceof Selfing) {
      return "The seed of a selfed " + plant + " plant";
    }
    if (this instanceof Sibbing) {
      return "The seed of two " + plant + " sibs";
    }
    return pollenParent
        .map(other -> "The seed of " + plant + " crossed by `" + other.print() + "`")
        .orElse("The seed of an open flower of " + plant);
  }
}
