package slipday.finding;

import java.util.List;
import slipday.source.Span;

/**
 * What would mend a finding, as edits that belong together.
 *
 * @param label what it does, as an editor offers it: a short sentence without a full stop
 * @param edits at least one; none overlaps another
 * @param toFillIn whether it leaves something for the gardener to write, and mends nothing before
 */
public record Mend(String label, List<Edit> edits, boolean toFillIn) {
  /**
   * A text in the place of another.
   *
   * @param place what goes; empty where something is only put in
   */
  public record Edit(Span place, String text) {}

  public Mend {
    edits = List.copyOf(edits);
    if (edits.isEmpty()) {
      throw new IllegalArgumentException("a mend without edits");
    }
  }

  public static Mend of(String label, Span place, String text) {
    return new Mend(label, List.of(new Edit(place, text)), false);
  }

  /** The text in the place of another. */
  public static Mend writing(Span place, String text) {
    return of("Write `" + text + "`", place, text);
  }

  /** Whether a gardener can make it: what ships with the tool is not theirs to edit. */
  boolean isPossible() {
    return edits.stream().noneMatch(e -> e.place().source().isBuiltIn());
  }
}
