package slipday.output;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Label;
import slipday.finding.Level;
import slipday.source.Source;
import slipday.source.Span;

/**
 * Findings for people: the sentence, the line of the file with a mark under the place, the other
 * places that matter, the figures, and what would mend it.
 */
public final class FindingsText {
  /** Findings that a screen holds. */
  private static final int SEEN_AT_ONCE = 3;

  /** Of errors told again at the end. */
  private static final int MOST_ERRORS = 10;

  private final Ink ink;

  public FindingsText(Ink ink) {
    this.ink = ink;
  }

  /** Every finding given, each followed by an empty line; allowed ones are marked as such. */
  public String text(List<Finding> findings) {
    StringBuilder out = new StringBuilder();
    findings.forEach(f -> out.append(one(f)).append('\n'));
    return out.toString();
  }

  /** One finding, each line ended. */
  public String one(Finding finding) {
    StringBuilder out = new StringBuilder();
    String head = finding.level().word() + "[" + finding.rule() + "]";
    String allowed = finding.allowed().isPresent() ? " (allowed)" : "";
    String wrapped =
        String.join("\n", Lines.wrapped(head + allowed + ": ", "    ", finding.message())) + "\n";
    out.append(ink.of(finding.level(), head)).append(wrapped.substring(head.length()));
    int gutter = gutter(finding);
    finding.place().ifPresent(place -> place(place, '^', gutter, finding.level(), out));
    finding.others().forEach(place -> place(place, '-', gutter, finding.level(), out));
    String lead = " ".repeat(gutter) + " = ";
    finding.notes().forEach(note -> out.append(Lines.hung(lead + "note: ", note)));
    finding.allowed().ifPresent(why -> out.append(Lines.hung(lead + "allowed because: ", why)));
    if (!finding.help().isEmpty()) {
      out.append(Lines.hung(lead + "help: ", finding.help()));
    }
    return out.toString();
  }

  /** Digits of the longest line number shown. */
  private static int gutter(Finding finding) {
    return Stream.concat(finding.place().stream(), finding.others().stream())
        .mapToInt(label -> String.valueOf(label.span().line()).length())
        .max()
        .orElse(1);
  }

  private void place(Label label, char mark, int gutter, Level level, StringBuilder out) {
    Span span = label.span();
    out.append(" ".repeat(gutter))
        .append(ink.faint("--> "))
        .append(Lines.clean(span.label()))
        .append('\n');
    String bare = " ".repeat(gutter) + " |";
    Marked marked = Marked.of(span, Lines.WIDEST - gutter - 3);
    out.append(ink.faint(bare)).append('\n');
    String number = Lines.paddedLeft(String.valueOf(span.line()), gutter) + " | ";
    out.append(ink.faint(number)).append(marked.line).append('\n');
    String run = String.valueOf(mark).repeat(marked.width);
    out.append(ink.faint(bare)).append(' ').append(" ".repeat(marked.indent));
    out.append(mark == '^' ? ink.of(level, run) : run);
    String words = Lines.clean(label.text());
    boolean fits = gutter + 4 + marked.indent + marked.width + Lines.width(words) <= Lines.WIDEST;
    if (words.isEmpty() || fits) {
      out.append(words.isEmpty() ? "" : " " + words).append('\n');
    } else {
      out.append('\n').append(Lines.hung(bare + " ", words));
    }
  }

  /**
   * A line of a file as shown, and where its mark goes.
   *
   * @param indent columns before the mark
   * @param width columns of the mark, at least one
   */
  private record Marked(String line, int indent, int width) {
    private static final String CUT = "...";
    private static final int SHOWN_BEFORE = 30;

    static Marked of(Span span, int room) {
      Source source = span.source();
      int start = source.lineStart(span.line());
      String line = source.line(span.line());
      int from = Math.min(span.start() - start, line.length());
      int to = Math.min(Math.max(from, span.end() - start), line.length());
      // A far longer line than any page is cut before it is cleaned.
      int left = Math.max(0, from - 4 * room);
      int right = Math.min(line.length(), from + 4 * room);
      String before = Lines.clean(line.substring(left, from));
      String under = Lines.clean(line.substring(from, Math.min(to, right)));
      String after = Lines.clean(line.substring(Math.min(to, right), right)).stripTrailing();
      return cut(before, under, after, room);
    }

    private static Marked cut(String before, String under, String after, int room) {
      int indent = Lines.width(before);
      String shown = before;
      boolean long_ = indent + Lines.width(under) + Lines.width(after) > room;
      if (long_ && indent > SHOWN_BEFORE) {
        shown = CUT + before.substring(before.offsetByCodePoints(before.length(), -SHOWN_BEFORE));
        indent = Lines.width(shown);
      }
      String whole = shown + under + after;
      int width = Math.max(1, Lines.width(under));
      if (whole.codePointCount(0, whole.length()) > room) {
        int end = whole.offsetByCodePoints(0, room - CUT.length());
        whole = whole.substring(0, end) + CUT;
        width = Math.max(1, Math.min(width, room - indent));
      }
      return new Marked(whole, indent, width);
    }
  }

  /** The last line: how many there are of each level, and how many are allowed. */
  public static String count(List<Finding> findings) {
    StringBuilder out = new StringBuilder();
    for (Level level : List.of(Level.ERROR, Level.WARNING, Level.NOTE)) {
      long n = standing(findings, Optional.of(level));
      if (n > 0) {
        out.append(out.isEmpty() ? "" : ", ").append(Lines.count(n, level.word()));
      }
    }
    long allowed = findings.size() - standing(findings, Optional.empty());
    String said = out.isEmpty() ? "Nothing found" : out.toString();
    return said + (allowed == 0 ? "" : "; " + allowed + " allowed") + ".\n";
  }

  /**
   * Where the errors are, before the count at the end of a text in which they stand among other
   * findings by their places; empty where nothing else is shown, or all of it is seen at once.
   */
  public static String errorsAmong(List<Finding> shown) {
    List<Finding> errors = new ArrayList<>();
    for (Finding finding : shown) {
      if (finding.level() == Level.ERROR && finding.allowed().isEmpty()) {
        errors.add(finding);
      }
    }
    if (shown.size() <= SEEN_AT_ONCE || errors.isEmpty() || errors.size() == shown.size()) {
      return "";
    }
    Set<String> places = new LinkedHashSet<>();
    for (Finding error : errors) {
      String place = error.place().map(p -> Lines.clean(p.span().label()) + " ").orElse("");
      places.add("  " + place + error.rule() + "\n");
    }
    StringBuilder out =
        new StringBuilder(
            errors.size() == 1 ? "Mend the error first:\n" : "Mend the errors first:\n");
    places.stream().limit(MOST_ERRORS).forEach(out::append);
    int more = places.size() - MOST_ERRORS;
    return out.append(more > 0 ? "  and " + more + " more\n\n" : "\n").toString();
  }

  private static long standing(List<Finding> findings, Optional<Level> level) {
    return findings.stream()
        .filter(f -> f.allowed().isEmpty())
        .filter(f -> level.isEmpty() || f.level() == level.get())
        .count();
  }
}
