package slipday.descent;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import slipday.genetics.Purdy;

/** The cross that each individual is of, in the notation of Purdy and others (1968). */
final class Notation {
  /** A cross of more parents than this is no longer read; a lot's name stands for it then. */
  private static final int MOST_PARENTS = 32;

  private static final String UNKNOWN = "unknown";

  private final Map<Integer, Optional<Purdy>> crosses = new HashMap<>();

  Optional<Purdy> of(int individual) {
    return crosses.getOrDefault(individual, Optional.empty());
  }

  void named(int individual, String name) {
    crosses.put(individual, Optional.of(parent(name)));
  }

  /**
   * @param otherwise the name where the cross is too long to be read
   */
  void crossed(int individual, int seedParent, int pollenParent, String otherwise) {
    crosses.put(
        individual,
        of(seedParent)
            .flatMap(
                seed ->
                    of(pollenParent)
                        .map(
                            pollen ->
                                seed.equals(pollen)
                                    ? seed
                                    : short_(Purdy.cross(seed, pollen), otherwise))));
  }

  void open(int individual, int seedParent, String otherwise) {
    crosses.put(
        individual,
        of(seedParent)
            .map(seed -> short_(new Purdy.Cross(seed, new Purdy.Parent(UNKNOWN)), otherwise)));
  }

  /** Known where all agree. */
  void mixed(int individual, Iterable<Integer> parts) {
    Optional<Purdy> all = Optional.empty();
    for (int part : parts) {
      Optional<Purdy> one = of(part);
      if (one.isEmpty() || (all.isPresent() && !all.equals(one))) {
        return;
      }
      all = one;
    }
    crosses.put(individual, all);
  }

  /** As another of the same seed. */
  void like(int individual, int twin) {
    crosses.put(individual, of(twin));
  }

  void unclear(int individual) {
    crosses.put(individual, Optional.empty());
  }

  private static Purdy short_(Purdy cross, String otherwise) {
    return parents(cross) > MOST_PARENTS ? parent(otherwise) : cross;
  }

  private static int parents(Purdy cross) {
    if (cross instanceof Purdy.Cross two) {
      return parents(two.seedParent()) + parents(two.pollenParent());
    }
    return cross instanceof Purdy.Backcross back ? parents(back.donor()) + 1 : 1;
  }

  /** A name of digits alone would be read as the number of a cross. */
  private static Purdy.Parent parent(String name) {
    boolean bare =
        Purdy.parse(name).value().filter(p -> p.equals(new Purdy.Parent(name))).isEmpty();
    return new Purdy.Parent(bare ? "line " + name.replaceAll("[/*\\s]+", " ").strip() : name);
  }
}
