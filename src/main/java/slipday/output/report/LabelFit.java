package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import slipday.output.Lines;

/**
 * How words have room on a label: all of them, smaller where need be; where the smallest is not
 * small enough the line's title is shortened, and lines that tell least are left off. Name and
 * caution never give way.
 *
 * @param size a class of the style
 * @param title as much of it as has room
 * @param lines those that have room, the last perhaps not to its end
 * @param whole whether name and caution have room for certain
 */
record LabelFit(String size, String title, List<String> lines, boolean whole) {
  private static final List<String> CLASSES = List.of("", "fit-2", "fit-3", "fit-4");

  /** The share of its usual size that a label's text has in each. */
  private static final double[] SIZES = {1, 0.88, 0.76, 0.64};

  /** The height of a field to be filled in, in sizes of the text. */
  private static final double FIELD = 1.67;

  /** What a letter takes up of its text's size, with room for how lines break. */
  private static final double LETTER = 0.68;

  /**
   * What stands on a label, from its top.
   *
   * @param name with its check character
   * @param packet whether the name is written smaller
   * @param lines most telling first
   * @param fields to be filled in by hand
   */
  record Content(
      String name,
      boolean packet,
      String caution,
      String title,
      List<String> lines,
      List<String> fields) {}

  static LabelFit of(LabelSheet sheet, Content content) {
    for (int i = 0; i < SIZES.length; i++) {
      if (new Measure(sheet, SIZES[i]).left(content) >= 0) {
        return new LabelFit(CLASSES.get(i), content.title(), content.lines(), true);
      }
    }
    int size = 0;
    while (size < SIZES.length - 1 && !new Measure(sheet, SIZES[size]).leftForTitle(content)) {
      size++;
    }
    return new Measure(sheet, SIZES[size]).squeezed(content, CLASSES.get(size));
  }

  /** Heights and lengths in mm, of text of one size. */
  private static final class Measure {
    private final double width;
    private final double height;
    private final double text;

    Measure(LabelSheet sheet, double size) {
      width = sheet.wordsWidth();
      height = sheet.wordsHeight();
      text = sheet.text() * size;
    }

    /** Of what can't give way. */
    private double fixed(Content content) {
      double nameText = text * (content.packet() ? 1.3 : 1.75);
      double name = rows(content.name(), nameText, width) * nameText * 1.05 + 0.12 * nameText;
      double frame = 0.6; // of the caution
      double caution =
          content.caution().isEmpty()
              ? 0
              : paragraph(rows(content.caution(), text, width - frame - 0.6 * text)) + frame;
      return name + caution + content.fields().size() * FIELD * text;
    }

    private double lines(Content content) {
      return content.lines().stream().mapToDouble(this::words).sum();
    }

    double left(Content content) {
      return height - fixed(content) - words(content.title()) - lines(content);
    }

    /** Whether all but the title leaves two rows for that. */
    boolean leftForTitle(Content content) {
      return height - fixed(content) - lines(content) >= paragraph(2);
    }

    private double words(String words) {
      return words.isEmpty() ? 0 : paragraph(rows(words, text, width));
    }

    private double paragraph(int rows) {
      return rows * text * 1.18 + 0.12 * text;
    }

    /** Wrapped between words, so that a row is rarely full. */
    private static int rows(String words, double text, double width) {
      return (int) Math.ceil(words.codePointCount(0, words.length()) * text * LETTER / width);
    }

    LabelFit squeezed(Content content, String size) {
      double left = height - fixed(content);
      boolean whole = left >= 0;
      String title = shortened(content.title(), left, left - lines(content));
      left -= words(title);
      List<String> kept = new ArrayList<>();
      for (String line : content.lines()) {
        if (left > 0) { // reckoned with room to spare
          kept.add(line);
        }
        left -= words(line);
      }
      return new LabelFit(size, title, kept, whole);
    }

    /** To what the lines leave it, a row at least; nothing where there is none. */
    private String shortened(String title, double left, double leftByLines) {
      if (left < paragraph(1)) {
        return "";
      }
      int rows = 1;
      while (paragraph(rows + 1) <= leftByLines) {
        rows++;
      }
      int letters = rows * (int) (width / (text * LETTER));
      return Lines.shortened(title, Math.max(2, letters));
    }
  }
}
