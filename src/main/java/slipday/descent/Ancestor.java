package slipday.descent;

import java.util.List;
import java.util.Optional;
import slipday.measure.Reason;

/**
 * One plant, or the seed asked about, and whose offspring it is.
 *
 * @param number what sets it apart in its {@link Lineage}
 * @param name as a gardener would call it
 * @param lot the lot it is of; empty for a stand-in and for the seed of a fruit
 * @param generation its label, or what follows from the record; empty where nothing is known
 * @param origin how its seed came to be, in words; empty for a founder
 * @param reason the line that says so
 * @param parents none for a founder
 */
public record Ancestor(
    int number,
    Kind kind,
    String name,
    Optional<String> lot,
    Optional<String> line,
    Optional<String> generation,
    String origin,
    Optional<Reason> reason,
    List<Parent> parents) {
  public Ancestor {
    parents = List.copyOf(parents);
  }

  /** What an ancestor is. */
  public enum Kind {
    /** Seed of a lot or of a fruit. */
    SEED,
    PLANT,
    /** A parent nobody recorded. */
    STAND_IN
  }

  /** Which parent. */
  public enum Role {
    SEED_PARENT,
    POLLEN_PARENT,
    /** Selfed. */
    BOTH
  }

  /**
   * @param number of another ancestor; empty where nobody knows the plant
   */
  public record Parent(Role role, Optional<Integer> number) {}
}
