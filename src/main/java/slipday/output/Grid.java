package slipday.output;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells in aligned columns, two spaces apart. */
final class Grid {
  private final String alignment;
  private final List<List<String>> rows = new ArrayList<>();

  /**
   * @param alignment one letter a column: {@code l} left, {@code r} right
   */
  Grid(String alignment) {
    this.alignment = alignment;
  }

  Grid row(String... cells) {
    rows.add(List.of(cells));
    return this;
  }

  boolean isEmpty() {
    return rows.isEmpty();
  }

  /** Every row as a line; what goes beyond the page in the last column hangs under it. */
  String text(String indent) {
    int[] widths = new int[alignment.length()];
    for (List<String> row : rows) {
      for (int i = 0; i < row.size() - 1; i++) {
        widths[i] = Math.max(widths[i], Lines.width(row.get(i)));
      }
      if (row.size() == widths.length && alignment.charAt(row.size() - 1) == 'r') {
        int last = row.size() - 1;
        widths[last] = Math.max(widths[last], Lines.width(row.get(last)));
      }
    }
    StringBuilder out = new StringBuilder();
    rows.forEach(row -> out.append(line(row, widths, indent)));
    return out.toString();
  }

  private String line(List<String> row, int[] widths, String indent) {
    StringBuilder lead = new StringBuilder(indent);
    int last = row.size() - 1;
    for (int i = 0; i < last; i++) {
      lead.append(cell(row.get(i), widths[i], i)).append("  ");
    }
    boolean right = alignment.charAt(last) == 'r';
    return right
        ? (lead + cell(row.get(last), widths[last], last)).stripTrailing() + "\n"
        : Lines.hung(lead.toString(), row.get(last));
  }

  private String cell(String text, int width, int column) {
    return alignment.charAt(column) == 'r'
        ? Lines.paddedLeft(text, width)
        : Lines.padded(text, width);
  }
}
