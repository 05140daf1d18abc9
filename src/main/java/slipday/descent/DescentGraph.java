package slipday.descent;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Mating;

/**
 * The descent of all seed of a garden, in a grain that can be looked at: seed as nodes, takings of
 * seed between them.
 *
 * @param seeds what takings lead from and to; lots alike in descent may be one
 * @param apart lots of which the record has neither parents nor offspring
 * @param since the first season drawn, where earlier ones are left out
 * @param leftOut takings left out with them, or for want of room
 */
public record DescentGraph(
    List<Seed> seeds,
    List<Taking> takings,
    List<Lot> apart,
    Grain grain,
    OptionalInt since,
    int leftOut) {
  public DescentGraph {
    seeds = List.copyOf(seeds);
    takings = List.copyOf(takings);
    apart = List.copyOf(apart);
  }

  /** What a node of seed stands for. */
  public enum Grain {
    /** A lot, or several of one line and one descent that nothing was grown of. */
    LOTS,
    /** All lots of a line; what was taken within it is left out. */
    LINES
  }

  /**
   * Seed.
   *
   * @param lots at least one, all of one line
   */
  public record Seed(List<Lot> lots) {
    public Seed {
      lots = List.copyOf(lots);
    }
  }

  /** How the flowers were pollinated. */
  public enum Way {
    SELFED(Mating.SELF.words()),
    SIBBED(Mating.SIB.words()),
    CROSSED(Mating.CROSS.words()),
    BACKCROSSED(Mating.BACKCROSS.words()),
    /** A cross whose seed parent kept its anthers, not yet proved. */
    CROSSED_OR_SELFED("crossed or selfed"),
    PROVED_SELF("proved a self"),
    ISOLATED("in isolation"),
    OPEN("open");

    private final String words;

    Way(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  /**
   * Fruits of one kind of pollination, with parents and seed alike.
   *
   * @param seedParent its place in the list of seeds
   * @param pollenParent empty where nobody knows it
   * @param seed what was taken; empty while it was not
   * @param of the fruits, or for unmarked fruit the takings
   */
  public record Taking(
      int seedParent, OptionalInt pollenParent, OptionalInt seed, Way way, List<Fact> of) {
    public Taking {
      of = List.copyOf(of);
    }

    /** The places of its parents and of what was taken. */
    List<Integer> seeds() {
      return IntStream.concat(
              IntStream.of(seedParent), IntStream.concat(pollenParent.stream(), seed.stream()))
          .boxed()
          .toList();
    }

    /** How many of its fruits were tagged. */
    public int tagged() {
      return (int) of.stream().filter(Fruit.class::isInstance).count();
    }
  }

  /**
   * @param most nodes there may be, pollen that nobody knows counted; one taking is there always
   */
  public static DescentGraph of(Garden garden, int most) {
    return new DescentGrouping(garden, most).graph();
  }

  /** Whether there is nothing to draw. */
  public boolean isEmpty() {
    return takings.isEmpty();
  }
}
