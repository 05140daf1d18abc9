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

  /** Of a line stated to be inbred, or open-pollinated; or seed out of a bought hybrid's fruit. */
  static Optional<Generation> generation(Lot lot) {
    if (isFullyInbred(lot)) {
      return Optional.of(new PlainGeneration.Inbred());
    }
    if (began(lot, "open-pollinated").isPresent()) {
      return Optional.of(new PlainGeneration.OpenPollinated(0, false, 0));
    }
    return isOfBoughtHybrid(lot)
        ? Optional.of(
            new Generation.Probable(
                new PlainGeneration.Filial(2, 0, PlainGeneration.Origin.INBRED_PARENTS)))
        : Optional.empty();
  }

  /** In the year the line began its seed is what the hybrid's fruit held. */
  private static boolean isOfBoughtHybrid(Lot lot) {
    return began(lot, "from a bought hybrid").filter(b -> harvestedIn(lot, b)).isPresent();
  }

  private static Optional<Bound> began(Lot lot, String how) {
    return lot.line()
        .began()
        .map(c -> c.bound())
        .filter(b -> b.has("how") && b.choice("how").equals(how));
  }

  private static boolean harvestedIn(Lot lot, Bound began) {
    return lot.harvested().map(Reasoned::value).filter(y -> y != began.count("year")).isEmpty();
  }
}
