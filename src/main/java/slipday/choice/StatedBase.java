package slipday.choice;

import java.util.Optional;
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
