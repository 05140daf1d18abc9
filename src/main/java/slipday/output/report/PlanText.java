package slipday.output.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.language.Declaration;
import slipday.output.Lines;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;

/** The texts of plan and record, line by line. */
final class PlanText {
  private PlanText() {}

  record FileView(String name, List<LineView> lines) {}

  /**
   * @param id {@code 0-12}: file and line
   * @param kind {@code head} for a declaration, {@code note} for a comment, or empty
   * @param cited whether something shown rests on it, so that it can be followed
   * @param marks the signs of the findings on it
   */
  record LineView(
      String id, int number, String kind, boolean cited, String text, List<MarkView> marks) {
    boolean hasMarks() {
      return !marks.isEmpty();
    }
  }

  record MarkView(String level, String sign, String rule) {}

  static List<FileView> of(List<SeasonFile> files, List<Finding> findings, WhyBook book) {
    Map<String, Set<MarkView>> marks = new HashMap<>();
    for (Finding f : findings) {
      if (f.place().isPresent() && f.allowed().isEmpty()) {
        Span span = f.place().get().span();
        marks
            .computeIfAbsent(book.line(span), k -> new LinkedHashSet<>())
            .add(new MarkView(f.level().word(), sign(f.level()), f.rule()));
      }
    }
    List<FileView> views = new ArrayList<>();
    for (int i = 0; i < files.size(); i++) {
      views.add(file(files.get(i), i, marks, book));
    }
    return views;
  }

  static String sign(Level level) {
    return switch (level) {
      case ERROR -> "▲";
      case WARNING -> "◆";
      case NOTE -> "○";
    };
  }

  private static FileView file(
      SeasonFile file, int number, Map<String, Set<MarkView>> marks, WhyBook book) {
    Set<Integer> heads = new HashSet<>();
    for (Line line : file.lines()) {
      if (Declaration.named(line.first().text()).isPresent()) {
        heads.add(line.span().line());
      }
    }
    List<LineView> lines = new ArrayList<>();
    int count = file.source().lineCount();
    for (int n = 1; n <= count; n++) {
      String text = file.source().line(n);
      if (n < count || !text.isEmpty()) {
        String id = number + "-" + n;
        String kind =
            text.stripLeading().startsWith("#") ? "note" : heads.contains(n) ? "head" : "";
        lines.add(
            new LineView(
                id,
                n,
                kind,
                book.isCited(id),
                text,
                List.copyOf(marks.getOrDefault(id, Set.of()))));
      }
    }
    return new FileView(Lines.clean(file.source().name()), lines);
  }
}
