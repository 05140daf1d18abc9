package slipday.output.report;

import java.util.Optional;
import slipday.choice.Predicted;
import slipday.output.report.Template.Raw;

/**
 * A plant on a plot of candidates.
 *
 * @param thing its id in the book of reasons
 * @param figures by axis: one or two
 * @param tags of its fruits that are chosen; empty for any other plant
 * @param told what it is, in words
 */
record Mark(String thing, Kind kind, java.util.List<Figure> figures, String tags, String told) {
  /** What became of a plant, each with a shape of its own. */
  enum Kind {
    CHOSEN("M0 -6.5 6.5 0 0 6.5 -6.5 0Z", "its seed goes on"),
    SEED("M-4.2 0A4.2 4.2 0 1 0 4.2 0A4.2 4.2 0 1 0 -4.2 0Z", "has seed of the line, not chosen"),
    BARE("M-1.8 0A1.8 1.8 0 1 0 1.8 0A1.8 1.8 0 1 0 -1.8 0Z", "no seed of the line"),
    REFUSED("M-4 -4 4 4M4 -4 -4 4", "refused");

    private final String shape;
    private final String words;

    Kind(String shape, String words) {
      this.shape = shape;
      this.words = words;
    }

    String shape() {
      return shape;
    }

    String words() {
      return words;
    }

    /** The shape by itself. */
    Raw sign() {
      Svg svg = new Svg();
      svg.open("svg", "viewBox", "-8 -8 16 16", "width", 16, "height", 16, "aria-hidden", "true");
      return new Raw(svg.leaf("path", "class", "sign", "d", shape).close().toString());
    }

    /** As the style calls it. */
    String id() {
      return name().toLowerCase(java.util.Locale.ROOT);
    }
  }

  /**
   * Where it lies on an axis.
   *
   * @param at its figure
   * @param sure between what its true value lies in 4 cases of 5; empty where nobody knows
   */
  record Figure(double at, Optional<Predicted> sure) {
    double low() {
      return sure.map(Predicted::low).orElse(at);
    }

    double high() {
      return sure.map(Predicted::high).orElse(at);
    }
  }
}
