package slipday.genetics;

import java.util.Optional;
import java.util.OptionalDouble;
import slipday.genetics.Purdy.Side;

/** A generation of one kind and not in doubt. */
public sealed interface PlainGeneration extends Generation {
  /** Under one percent of the F1's heterozygosity is left: at F8. */
  int FIXED_FROM = 8;

  /** What made the F1 that F-numbers count from. */
  enum Origin {
    /** Two fully inbred parents: all plants of the F1 are alike. */
    INBRED_PARENTS,
    /** The F1s of two crosses. */
    FOUR_WAY,
    /** A parent that segregates, or may. */
    SEGREGATING
  }

  @Override
  PlainGeneration selfed();

  @Override
  PlainGeneration sibbed();

  @Override
  default PlainGeneration openPollinated(boolean isolatedAndOneLine) {
    return new OpenPollinated(1, isolatedAndOneLine, 0);
  }

  @Override
  default boolean fixed() {
    return false;
  }

  @Override
  default boolean covers(Generation fact) {
    return equals(fact) || (fact instanceof PlainGeneration plain && coversPlain(plain));
  }

  /** Whether this label, though another, is true of seed of that generation. */
  boolean coversPlain(PlainGeneration fact);

  /** A line that breeds true: its parents, its selfed seed and itself are alike. */
  record Inbred() implements PlainGeneration {
    @Override
    public PlainGeneration selfed() {
      return this;
    }

    @Override
    public PlainGeneration sibbed() {
      return this;
    }

    /** In an isolated block only its own pollen is about. */
    @Override
    public PlainGeneration openPollinated(boolean isolatedAndOneLine) {
      return isolatedAndOneLine ? this : new OpenPollinated(1, false, 0);
    }

    @Override
    public boolean fixed() {
      return true;
    }

    @Override
    public OptionalDouble heterozygosity() {
      return OptionalDouble.of(0);
    }

    @Override
    public String print() {
      return "inbred";
    }

    @Override
    public boolean coversPlain(PlainGeneration fact) {
      return false;
    }
  }

  /** Nothing is known; its plants are S0. */
  record Unknown() implements PlainGeneration {
    @Override
    public PlainGeneration selfed() {
      return new Selfed(1, 0);
    }

    @Override
    public PlainGeneration sibbed() {
      return this;
    }

    @Override
    public OptionalDouble heterozygosity() {
      return OptionalDouble.empty();
    }

    @Override
    public String print() {
      return "unknown";
    }

    /** It is true of all seed. */
    @Override
    public boolean covers(Generation fact) {
      return true;
    }

    @Override
    public boolean coversPlain(PlainGeneration fact) {
      return true;
    }
  }

  /**
   * F1, F2, F3 …
   *
   * @param number 1 or more
   * @param sib sib matings since the last selfing, 0 or more
   */
  record Filial(int number, int sib, Origin origin) implements PlainGeneration {
    public Filial {
      boolean alike = number == 1 && origin == Origin.INBRED_PARENTS;
      mustBe(number >= 1 && sib >= 0 && !(alike && sib > 0), number, sib);
    }

    @Override
    public PlainGeneration selfed() {
      return new Filial(number + 1, 0, origin);
    }

    /** F1 plants of inbred parents are one genotype: a cross of two is a selfing. */
    @Override
    public PlainGeneration sibbed() {
      return number == 1 && origin == Origin.INBRED_PARENTS
          ? selfed()
          : new Filial(number, sib + 1, origin);
    }

    @Override
    public boolean fixed() {
      return number >= FIXED_FROM;
    }

    @Override
    public OptionalDouble heterozygosity() {
      return number == 1 && sib > 0
          ? OptionalDouble.empty()
          : OptionalDouble.of(half(number - 1) * leftBySibs(sib));
    }

    @Override
    public String print() {
      String kind = origin == Origin.FOUR_WAY ? "four-way" : "segregating";
      String label = "F" + number + sibs(sib);
      if (origin == Origin.INBRED_PARENTS) {
        return label;
      }
      return number == 1 && sib == 0 ? label + ", " + kind : label + " of a " + kind + " F1";
    }

    /** From the F2 on all segregate, and few write what the F1 was made of. */
    @Override
    public boolean coversPlain(PlainGeneration fact) {
      return fact instanceof Filial other
          && number == other.number
          && sib == other.sib
          && number > 1
          && origin == Origin.INBRED_PARENTS;
    }
  }

  /**
   * BC1F1, BC1F2, BC2F1 …
   *
   * @param backcrosses 1 or more
   * @param filial 1 for the seed of the backcross, one more for each selfing since
   * @param sib sib matings since, 0 or more
   * @param recurrent which side the recurrent parent was at the last backcross; the seed parent
   *     gives the cytoplasm; empty where it was not written
   */
  record Backcross(int backcrosses, int filial, int sib, Optional<Side> recurrent)
      implements PlainGeneration {
    public Backcross {
      mustBe(backcrosses >= 1 && filial >= 1 && sib >= 0, backcrosses, sib);
    }

    @Override
    public PlainGeneration selfed() {
      return new Backcross(backcrosses, filial + 1, 0, recurrent);
    }

    @Override
    public PlainGeneration sibbed() {
      return new Backcross(backcrosses, filial, sib + 1, recurrent);
    }

    @Override
    public boolean fixed() {
      return backcrosses + filial > FIXED_FROM;
    }

    @Override
    public OptionalDouble heterozygosity() {
      return filial == 1 && sib > 0
          ? OptionalDouble.empty()
          : OptionalDouble.of(half(backcrosses + filial - 1) * leftBySibs(sib));
    }

    @Override
    public String print() {
      String side =
          recurrent
              .map(s -> s == Side.SEED_PARENT ? "seed" : "pollen")
              .map(s -> ", recurrent " + s + " parent")
              .orElse("");
      return "BC" + backcrosses + "F" + filial + sibs(sib) + side;
    }

    @Override
    public boolean coversPlain(PlainGeneration fact) {
      return fact instanceof Backcross other
          && recurrent.isEmpty()
          && equals(new Backcross(other.backcrosses, other.filial, other.sib, recurrent));
    }
  }

  /**
   * S0, S1, S2 …
   *
   * @param selfings 0 or more
   * @param sib sib matings since the last selfing, 0 or more
   */
  record Selfed(int selfings, int sib) implements PlainGeneration {
    public Selfed {
      mustBe(selfings >= 0 && sib >= 0, selfings, sib);
    }

    @Override
    public PlainGeneration selfed() {
      return new Selfed(selfings + 1, 0);
    }

    @Override
    public PlainGeneration sibbed() {
      return new Selfed(selfings, sib + 1);
    }

    @Override
    public boolean fixed() {
      return selfings >= FIXED_FROM - 1;
    }

    @Override
    public OptionalDouble heterozygosity() {
      return selfings == 0 && sib > 0
          ? OptionalDouble.empty()
          : OptionalDouble.of(half(selfings) * leftBySibs(sib));
    }

    @Override
    public String print() {
      return "S" + selfings + sibs(sib);
    }

    @Override
    public boolean coversPlain(PlainGeneration fact) {
      return false;
    }
  }

  /**
   * OP1, OP2 …
   *
   * @param times open-pollinated so often; 0 where nobody counted
   * @param isolated whether the block was isolated and of one line, at the last time
   * @param sib hand-made sib matings since, 0 or more
   */
  record OpenPollinated(int times, boolean isolated, int sib) implements PlainGeneration {
    public OpenPollinated {
      mustBe(times >= 0 && sib >= 0, times, sib);
    }

    @Override
    public PlainGeneration selfed() {
      return new Selfed(1, 0);
    }

    @Override
    public PlainGeneration sibbed() {
      return new OpenPollinated(times, isolated, sib + 1);
    }

    @Override
    public PlainGeneration openPollinated(boolean isolatedAndOneLine) {
      return new OpenPollinated(times == 0 ? 0 : times + 1, isolatedAndOneLine, 0);
    }

    @Override
    public OptionalDouble heterozygosity() {
      return OptionalDouble.empty();
    }

    @Override
    public String print() {
      return "OP" + (times == 0 ? "" : times) + sibs(sib) + (isolated ? ", isolated" : "");
    }

    @Override
    public boolean coversPlain(PlainGeneration fact) {
      return fact instanceof OpenPollinated other
          && sib == other.sib
          && (times == 0 || times == other.times)
          && (!isolated || other.isolated);
    }
  }

  private static void mustBe(boolean sound, int number, int sib) {
    if (!sound) {
      throw new IllegalArgumentException(number + ", sib " + sib);
    }
  }

  private static String sibs(int sib) {
    return sib == 0 ? "" : " sib " + sib;
  }

  private static double half(int times) {
    return Math.scalb(1.0, -times);
  }

  /**
   * What sib matings leave of the heterozygosity of a selfed plant's seed: nothing is lost by the
   * first; then half of one generation and a quarter of that before it (S. Wright 1921, Genetics
   * 6:124, from memory).
   */
  private static double leftBySibs(int sib) {
    double before = 1;
    double now = 1;
    for (int i = 1; i < sib; i++) {
      double next = now / 2 + before / 4;
      before = now;
      now = next;
    }
    return now;
  }
}
