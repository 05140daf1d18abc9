package slipday.descent;

import java.util.List;
import java.util.Optional;
import slipday.garden.Garden;
import slipday.garden.record.Subject;
import slipday.genetics.Purdy;

/**
 * What is known of a subject's descent.
 *
 * @param subject the first of the ancestors
 * @param ancestors the subject and all before it, each once, the subject first
 * @param inbreeding F, 0 to 1
 * @param heterozygosity expected, over that of the founders' base: 1 − F
 * @param sibs the coancestry of two plants of the lot, or of two seeds of the fruit; empty for a
 *     plant
 * @param notation the cross; empty where several crosses are mixed
 * @param other the one compared with
 * @param assumed what is unknown or taken for granted, a sentence each
 */
public record Lineage(
    Ancestor subject,
    List<Ancestor> ancestors,
    double inbreeding,
    double heterozygosity,
    Optional<Double> sibs,
    Optional<Purdy> notation,
    Optional<Other> other,
    List<String> assumed) {
  public Lineage {
    ancestors = List.copyOf(ancestors);
    assumed = List.copyOf(assumed);
  }

  /**
   * The one compared with.
   *
   * @param coancestry with the subject: the inbreeding of their seed
   * @param cross whether the two can have seed together
   */
  public record Other(
      Ancestor ancestor,
      double inbreeding,
      Optional<Purdy> notation,
      double coancestry,
      boolean cross) {}

  /** The descent of a lot's plants, of a fruit's seed, or of a plant. */
  public static Lineage of(Garden garden, Subject subject, Optional<Subject> with) {
    return new LineageBuilder(garden).lineage(subject, with);
  }
}
