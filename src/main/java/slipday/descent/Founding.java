package slipday.descent;

import java.util.Optional;
import slipday.garden.Lot;
import slipday.genetics.Generation;
import slipday.genetics.PlainGeneration;
import slipday.language.Bound;
import slipday.measure.Reasoned;

/** What is to be taken of a lot that has no label and whose seed nobody recorded the taking of. */
final class Founding {
  private static final double FULLY = 1;

  private Founding() {}

  static boolean isFullyInbred(Lot lot) {
    return lot.inbred().filter(f -> f.value() == FULLY).isPresent();
  }

  /** Seed out of a bought hybrid's fruit, or of a line stated to be inbred. */
  static Optional<Generation> generation(Lot lot) {
    if (isFullyInbred(lot)) {
      return Optional.of(new PlainGeneration.Inbred());
    }
    return isOfBoughtHybrid(lot)
        ? Optional.of(
            new Generation.Probable(
                new PlainGeneration.Filial(2, 0, PlainGeneration.Origin.INBRED_PARENTS)))
        : Optional.empty();
  }

  /** In the year the line began its seed is what the hybrid's fruit held. */
  private static boolean isOfBoughtHybrid(Lot lot) {
    return lot.line()
        .began()
        .map(c -> c.bound())
        .filter(b -> b.has("how") && b.choice("how").startsWith("from a bought"))
        .filter(b -> harvestedIn(lot, b))
        .isPresent();
  }

  private static boolean harvestedIn(Lot lot, Bound began) {
    return lot.harvested().map(Reasoned::value).filter(y -> y != began.count("year")).isEmpty();
  }
}
