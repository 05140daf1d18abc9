package slipday.climate;

/**
 * The cells of one line, as offsets into the text, for a finding has to point at its cell. In a
 * weather file a line is a row: a stray quote therefore costs its own line and swallows no other.
 */
final class CsvRow {
  /** No weather table is wider; what follows stays in the last cell. */
  private static final int MOST_CELLS = 400;

  private final String text;
  private final char separator;
  private final int[] starts = new int[MOST_CELLS];
  private final int[] ends = new int[MOST_CELLS];
  private int count;

  CsvRow(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  /** Comma, semicolon or tab: whichever the line has most of; comma on a tie. */
  static char separatorOf(String line) {
    char best = ',';
    long most = line.chars().filter(c -> c == ',').count();
    for (char candidate : new char[] {';', '\t'}) {
      long found = line.chars().filter(c -> c == candidate).count();
      if (found > most) {
        best = candidate;
        most = found;
      }
    }
    return best;
  }

  void split(int from, int to) {
    count = 0;
    int at = from;
    while (at <= to && count < MOST_CELLS) {
      int end = count == MOST_CELLS - 1 ? to : endOfCell(at, to);
      keep(at, end);
      at = end + 1;
    }
  }

  private int endOfCell(int from, int to) {
    boolean quoted = false;
    for (int i = from; i < to; i++) {
      char c = text.charAt(i);
      if (c == '"') {
        quoted = !quoted;
      } else if (c == separator && !quoted) {
        return i;
      }
    }
    return to;
  }

  private void keep(int from, int to) {
    int start = from;
    int end = to;
    while (start < end && isPadding(text.charAt(start))) {
      start++;
    }
    while (end > start && isPadding(text.charAt(end - 1))) {
      end--;
    }
    starts[count] = start;
    ends[count++] = end;
  }

  private static boolean isPadding(char c) {
    return c == '"' || c == '\u00a0' || Character.isWhitespace(c);
  }

  int size() {
    return count;
  }

  /** A column past the end of a short row is an empty cell at the row's end. */
  int start(int column) {
    return column < count ? starts[column] : ends[count - 1];
  }

  int end(int column) {
    return column < count ? ends[column] : ends[count - 1];
  }

  String cell(int column) {
    return text.substring(start(column), end(column));
  }
}
