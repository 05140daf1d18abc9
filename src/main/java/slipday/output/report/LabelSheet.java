package slipday.output.report;

import java.util.List;
import java.util.Optional;

/**
 * A sheet of labels; lengths in mm. The labels stand in the middle of the page. The layouts of
 * ready-cut sheets are common practice, without a source.
 *
 * @param gap between columns; rows touch
 * @param cut whether it is plain paper to be cut along lines
 */
public record LabelSheet(
    String id,
    double pageWidth,
    double pageHeight,
    int columns,
    int rows,
    double width,
    double height,
    double gap,
    boolean cut) {
  private static final double MARGIN = 8;

  /** The smallest label that a tag, its code and two lines of words fit on, mm. */
  public static final double LEAST_WIDTH = 30;

  public static final double LEAST_HEIGHT = 15;

  /** Sheets that come cut. */
  public static final List<LabelSheet> READY =
      List.of(
          new LabelSheet("a4-21", 210, 297, 3, 7, 63.5, 38.1, 2.54, false),
          new LabelSheet("a4-65", 210, 297, 5, 13, 38.1, 21.2, 2.5, false),
          new LabelSheet("letter-30", 215.9, 279.4, 3, 10, 66.675, 25.4, 3.175, false));

  public static Optional<LabelSheet> named(String id) {
    return READY.stream().filter(s -> s.id.equals(id)).findFirst();
  }

  /**
   * Plain paper with as many labels of a size as fit.
   *
   * @return empty where none fits
   */
  public static Optional<LabelSheet> plain(boolean letter, double width, double height) {
    double pageWidth = letter ? 215.9 : 210;
    double pageHeight = letter ? 279.4 : 297;
    int columns = (int) ((pageWidth - 2 * MARGIN) / width);
    int rows = (int) ((pageHeight - 2 * MARGIN) / height);
    return columns < 1 || rows < 1
        ? Optional.empty()
        : Optional.of(
            new LabelSheet("cut", pageWidth, pageHeight, columns, rows, width, height, 0, true));
  }

  public int labels() {
    return columns * rows;
  }

  double left() {
    return (pageWidth - columns * width - (columns - 1) * gap) / 2;
  }

  double top() {
    return (pageHeight - rows * height) / 2;
  }

  /** What words have of the width beside the code. */
  double wordsWidth() {
    return width - 4 - code();
  }

  double wordsHeight() {
    return height - 3;
  }

  private double code() {
    return Math.min(height - 3, Math.min(20, width * 0.38));
  }

  /** The usual size of text. */
  double text() {
    return Math.max(1.9, Math.min(3.1, height / 10));
  }

  /** The geometry as style rules. */
  String style() {
    return "@page { size: "
        + mm(pageWidth)
        + " "
        + mm(pageHeight)
        + "; margin: 0; }\n:root { --label-width: "
        + mm(width)
        + "; --label-height: "
        + mm(height)
        + "; --code: "
        + mm(code())
        + "; --text: "
        + mm(text())
        + "; }\n@media print { .sheet { width: "
        + mm(pageWidth)
        + "; height: "
        + mm(pageHeight - 0.2)
        + "; padding: "
        + mm(top())
        + " 0 0 "
        + mm(left())
        + "; grid-template-columns: repeat("
        + columns
        + ", "
        + mm(width)
        + "); grid-auto-rows: "
        + mm(height)
        + "; column-gap: "
        + mm(gap)
        + "; } }\n";
  }

  private static String mm(double length) {
    return Svg.number(length) + "mm";
  }
}
