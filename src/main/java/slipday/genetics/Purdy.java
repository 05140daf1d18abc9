package slipday.genetics;

import java.util.Optional;

/**
 * Who was crossed with whom, as one line of text: seed parent first, {@code /} the first cross,
 * {@code //} the second, {@code /3/} the third and so on, the highest the latest. A parent crossed
 * to again and again is written once, with a star and its doses on the side of the cross: {@code
 * A/3*B} is {@code A/B//B/3/B}, the second backcross to B, and {@code B*3/A} is {@code B/3/B//B/A}.
 *
 * <p>L. H. Purdy, W. Q. Loegering, C. F. Konzak, C. J. Peterson and R. E. Allan 1968, A proposed
 * standard method for illustrating pedigrees of small grain varieties, Crop Science 8:405 (from
 * memory).
 */
public sealed interface Purdy {

  /** Which parent of a cross. */
  enum Side {
    SEED_PARENT,
    POLLEN_PARENT
  }

  /**
   * A parent that is not taken apart further.
   *
   * @param name on one line, without {@code /}, {@code *} and spaces at its ends, and not all
   *     digits: those could be the number of a cross
   */
  record Parent(String name) implements Purdy {
    public Parent {
      if (!PurdyText.isName(name)) {
        throw new IllegalArgumentException("a parent called " + name);
      }
    }
  }

  /** A cross. */
  record Cross(Purdy seedParent, Purdy pollenParent) implements Purdy {}

  /**
   * Crosses to the same parent on the same side, one after the other.
   *
   * @param donor what it began with
   * @param recurrent the parent crossed to each time
   * @param doses how often, 2 or more
   * @param side the recurrent parent's
   */
  record Backcross(Purdy donor, Parent recurrent, int doses, Side side) implements Purdy {
    public Backcross {
      if (doses < 2) {
        throw new IllegalArgumentException(doses + " doses");
      }
    }

    /** The n of BCn: the first dose made the F1. */
    public int backcrosses() {
      return doses - 1;
    }
  }

  /** The cross of two, written as a backcross where it is one. */
  static Purdy cross(Purdy seedParent, Purdy pollenParent) {
    return again(seedParent, pollenParent, Side.POLLEN_PARENT)
        .or(() -> again(pollenParent, seedParent, Side.SEED_PARENT))
        .orElseGet(() -> new Cross(seedParent, pollenParent));
  }

  /** Reads a line of the notation. */
  static Answer<Purdy> parse(String text) {
    return PurdyText.parse(text);
  }

  /** How many crosses lie one upon the other; crosses to one recurrent parent count as one. */
  default int order() {
    if (this instanceof Cross cross) {
      return 1 + Math.max(cross.seedParent.order(), cross.pollenParent.order());
    }
    return this instanceof Backcross back ? 1 + back.donor.order() : 0;
  }

  /** With each backcross written out as the crosses it stands for. */
  default Purdy inFull() {
    if (this instanceof Cross cross) {
      return new Cross(cross.seedParent.inFull(), cross.pollenParent.inFull());
    }
    if (this instanceof Backcross back) {
      Purdy made = back.donor.inFull();
      for (int dose = 0; dose < back.doses; dose++) {
        made =
            back.side == Side.SEED_PARENT
                ? new Cross(back.recurrent, made)
                : new Cross(made, back.recurrent);
      }
      return made;
    }
    return this;
  }

  /** The line of text. */
  default String print() {
    return PurdyText.print(this);
  }

  private static Optional<Purdy> again(Purdy made, Purdy parent, Side side) {
    if (!(parent instanceof Parent recurrent)) {
      return Optional.empty();
    }
    if (made instanceof Backcross back && back.side == side && back.recurrent.equals(recurrent)) {
      return Optional.of(new Backcross(back.donor, recurrent, back.doses + 1, side));
    }
    if (made instanceof Cross cross) {
      boolean seed = side == Side.SEED_PARENT;
      Purdy before = seed ? cross.seedParent : cross.pollenParent;
      Purdy donor = seed ? cross.pollenParent : cross.seedParent;
      return before.equals(recurrent)
          ? Optional.of(new Backcross(donor, recurrent, 2, side))
          : Optional.empty();
    }
    return Optional.empty();
  }
}
