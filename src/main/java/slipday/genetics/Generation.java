package slipday.genetics;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.genetics.PlainGeneration.Backcross;
import slipday.genetics.PlainGeneration.Filial;
import slipday.genetics.PlainGeneration.Origin;
import slipday.genetics.PlainGeneration.Unknown;
import slipday.genetics.Purdy.Side;

/**
 * The generation on a label: of the seed in the packet and the plants grown from it. A plant's own
 * seed is one generation on: a selfed F4 plant bears F5 seed.
 *
 * <p>Common practice of the trade, for which there is no one standard; what a label means here:
 *
 * <ul>
 *   <li>F-numbers count selfings from an F1 only; sibs keep the number with {@code sib n}.
 *   <li>BC1F1 is the seed of a first backcross, BC1F2 its selfed seed.
 *   <li>S0 is a plant that was not selfed, whatever its descent; S1 its selfed seed.
 *   <li>OP is open-pollinated seed: the pollen parent is unknown, unless the block was isolated.
 * </ul>
 */
public sealed interface Generation
    permits PlainGeneration, Generation.Bulk, Generation.Probable, Generation.SelfOrCross {

  /** The seed of the plant's own pollen. */
  Generation selfed();

  /** The seed of two plants of one lot. */
  Generation sibbed();

  /**
   * The seed that bees made.
   *
   * @param isolatedAndOneLine whether no other pollen of the species could come
   */
  Generation openPollinated(boolean isolatedAndOneLine);

  /** Whether all plants of it are alike, but for less than one percent of what an F1 has. */
  boolean fixed();

  /**
   * Expected heterozygosity over that of the F1, of the S0 plant for S-numbers; empty where the
   * label doesn't tell. Sib matings are taken as of full sibs of one selfed plant; those before a
   * later selfing are no longer on the label, so that less may be left.
   */
  OptionalDouble heterozygosity();

  /** The label, as {@link #parse} reads it. */
  String print();

  /** Whether this label is true of seed of that generation, though it may say less. */
  boolean covers(Generation fact);

  /** Reads a label. */
  static Answer<Generation> parse(String label) {
    return GenerationText.parse(label);
  }

  /** The seed of a cross with a plant of another lot and descent. */
  default Generation crossed(Generation pollenParent) {
    if (fixed() && pollenParent.fixed()) {
      return new Filial(1, 0, Origin.INBRED_PARENTS);
    }
    Filial single = new Filial(1, 0, Origin.INBRED_PARENTS);
    boolean fourWay = equals(single) && pollenParent.equals(single);
    return new Filial(1, 0, fourWay ? Origin.FOUR_WAY : Origin.SEGREGATING);
  }

  /**
   * The seed of a cross back to a parent.
   *
   * @param recurrent which side that parent is now
   */
  default Answer<Generation> backcrossed(Side recurrent) {
    if (this instanceof Backcross back) {
      return Answer.of(new Backcross(back.backcrosses() + 1, 1, 0, Optional.of(recurrent)));
    }
    if (this instanceof Filial filial && filial.origin() != Origin.FOUR_WAY) {
      return Answer.of(new Backcross(1, 1, 0, Optional.of(recurrent)));
    }
    if (this instanceof Probable probable) {
      return probable.likely.backcrossed(recurrent).then(back -> Answer.of(new Probable(back)));
    }
    if (this instanceof Bulk bulk && bulk.of.size() == 1) {
      return bulk.of.get(0).backcrossed(recurrent);
    }
    return Answer.refused(
        "A backcross goes from the offspring of a cross to one of its two parents, and seed of"
            + " generation `"
            + print()
            + "` has no such parent on its label.");
  }

  /** Several lots or fruits put together. */
  static Answer<Generation> bulk(List<Generation> parts) {
    if (parts.isEmpty() || parts.stream().anyMatch(SelfOrCross.class::isInstance)) {
      return Answer.refused("Only seed whose crosses are proved is put into a bulk.");
    }
    boolean doubt = parts.stream().anyMatch(Probable.class::isInstance);
    List<PlainGeneration> plain = parts.stream().flatMap(part -> plain(part).stream()).toList();
    Bulk bulk = new Bulk(plain);
    return Answer.of(doubt ? new Probable(bulk) : bulk);
  }

  private static List<PlainGeneration> plain(Generation part) {
    if (part instanceof Bulk bulk) {
      return bulk.of;
    }
    return part instanceof PlainGeneration plain
        ? List.of(plain)
        : part instanceof Probable probable ? plain(probable.likely) : List.of();
  }

  /**
   * Seed of several plants or fruits put together.
   *
   * @param of the generations in it, each once
   */
  record Bulk(List<PlainGeneration> of) implements Generation {
    public Bulk {
      of = List.copyOf(new LinkedHashSet<>(of));
      if (of.isEmpty()) {
        throw new IllegalArgumentException("a bulk of nothing");
      }
    }

    @Override
    public Generation selfed() {
      return new Bulk(of.stream().map(PlainGeneration::selfed).toList());
    }

    @Override
    public Generation sibbed() {
      return new Bulk(of.stream().map(PlainGeneration::sibbed).toList());
    }

    @Override
    public Generation openPollinated(boolean isolatedAndOneLine) {
      return new Bulk(of.stream().map(one -> one.openPollinated(isolatedAndOneLine)).toList());
    }

    @Override
    public boolean fixed() {
      return false;
    }

    @Override
    public OptionalDouble heterozygosity() {
      Set<OptionalDouble> all =
          of.stream().map(Generation::heterozygosity).collect(Collectors.toSet());
      return all.size() == 1 ? all.iterator().next() : OptionalDouble.empty();
    }

    @Override
    public String print() {
      return "bulk of " + of.stream().map(Generation::print).collect(Collectors.joining(" and "));
    }

    @Override
    public boolean covers(Generation fact) {
      List<Generation> facts = fact instanceof Bulk all ? List.copyOf(all.of) : List.of(fact);
      return facts.stream().allMatch(one -> of.stream().anyMatch(label -> label.covers(one)))
          && of.stream().allMatch(label -> facts.stream().anyMatch(label::covers));
    }
  }

  /**
   * So it is likely to be, such as seed out of a bought hybrid's fruit.
   *
   * @param likely not in doubt itself
   */
  record Probable(Generation likely) implements Generation {
    public Probable {
      if (likely instanceof Probable || likely instanceof SelfOrCross) {
        throw new IllegalArgumentException("probable " + likely);
      }
    }

    @Override
    public Generation selfed() {
      return new Probable(likely.selfed());
    }

    @Override
    public Generation sibbed() {
      return new Probable(likely.sibbed());
    }

    @Override
    public Generation openPollinated(boolean isolatedAndOneLine) {
      return new Probable(likely.openPollinated(isolatedAndOneLine));
    }

    @Override
    public boolean fixed() {
      return false;
    }

    @Override
    public OptionalDouble heterozygosity() {
      return likely.heterozygosity();
    }

    @Override
    public String print() {
      return likely.print() + ", probable";
    }

    @Override
    public boolean covers(Generation fact) {
      return likely.covers(fact instanceof Probable other ? other.likely : fact);
    }
  }

  /**
   * A cross made on a perfect flower that kept its anthers: growing it out proves which.
   *
   * @param ifSelf not a self or cross itself
   * @param ifCross not a self or cross itself
   */
  record SelfOrCross(Generation ifSelf, Generation ifCross) implements Generation {
    public SelfOrCross {
      if (ifSelf instanceof SelfOrCross || ifCross instanceof SelfOrCross) {
        throw new IllegalArgumentException(ifSelf + " or " + ifCross);
      }
    }

    @Override
    public Generation selfed() {
      return new SelfOrCross(ifSelf.selfed(), ifCross.selfed());
    }

    @Override
    public Generation sibbed() {
      return new SelfOrCross(ifSelf.sibbed(), ifCross.sibbed());
    }

    @Override
    public Generation openPollinated(boolean isolatedAndOneLine) {
      return new SelfOrCross(
          ifSelf.openPollinated(isolatedAndOneLine), ifCross.openPollinated(isolatedAndOneLine));
    }

    @Override
    public boolean fixed() {
      return false;
    }

    @Override
    public OptionalDouble heterozygosity() {
      return OptionalDouble.empty();
    }

    @Override
    public String print() {
      boolean bare = ifSelf.equals(new Unknown()) && ifCross.equals(new Unknown());
      return bare
          ? "self or cross, to be proved"
          : "self (" + ifSelf.print() + ") or cross (" + ifCross.print() + "), to be proved";
    }

    @Override
    public boolean covers(Generation fact) {
      return fact instanceof SelfOrCross other
          && ifSelf.covers(other.ifSelf)
          && ifCross.covers(other.ifCross);
    }
  }
}
