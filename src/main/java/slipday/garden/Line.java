package slipday.garden;

import java.util.Optional;
import slipday.language.BoundClause;
import slipday.measure.Reasoned;
import slipday.source.Span;

/**
 * A line: plants of one descent. Its facts are its crop's where it says nothing of its own.
 *
 * @param generation of its lots that say none of their own
 * @param inbred of its plants whose ancestors nobody recorded, 0 to 1; empty where unknown
 */
public record Line(
    String name,
    String title,
    Crop crop,
    Facts facts,
    Purpose purpose,
    Optional<BoundClause> began,
    Optional<String> looks,
    Optional<Reasoned<String>> generation,
    Optional<Reasoned<Double>> inbred,
    Places places)
    implements Named {

  /** Whether the line is being fixed, kept true, or only tried. */
  public enum Purpose {
    FIX,
    KEEP,
    TRIAL
  }

  @Override
  public Span span() {
    return places.block().span();
  }

  public Sex sex() {
    return facts.valueOr(CropFacts.SEX, Sex.PERFECT);
  }
}
