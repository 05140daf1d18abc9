package slipday.output;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slipday.measure.Reason;
import slipday.output.data.WhyData;

/** The chain of facts behind a value, each beneath the one that rests on it. */
public final class WhyText {
  private final Ink ink;
  private final Days days;

  public WhyText(Days days, Ink ink) {
    this.days = days;
    this.ink = ink;
  }

  public static WhyText of(slipday.garden.SeasonYear season, Ink ink) {
    return new WhyText(new Days(season.first(), season.last()), ink);
  }

  /** The answer in full. */
  public String text(Question question) {
    StringBuilder out = new StringBuilder();
    String name = question.subject().isEmpty() ? "" : question.subject() + ", ";
    String head = Lines.clean(name + question.topic());
    String answer = saysMore(question) ? ": " + question.answer() : "";
    String line = String.join("\n", Lines.wrapped("", "  ", head + answer));
    out.append(ink.strong(head)).append(line.substring(head.length())).append('\n');
    FindingsText findings = new FindingsText(ink);
    question.findings().forEach(f -> out.append(findings.one(f)));
    Set<Reason> told = Collections.newSetFromMap(new IdentityHashMap<>());
    distinct(question.because()).forEach(reason -> tree(reason, 1, told, out));
    if (!question.years().isEmpty()) {
      List<String> each = new ArrayList<>();
      question.years().forEach(y -> each.add(y.year() + " " + days.day(y.day())));
      out.append("In each weather year, at the usual pace:\n");
      out.append(Lines.hung("  ", String.join(", ", each)));
    }
    return out.toString();
  }

  /** Whether the answer says more than what is told beneath it. */
  private static boolean saysMore(Question question) {
    return !question.answer().isEmpty()
        && question.findings().isEmpty()
        && question.because().stream().noneMatch(r -> r.says().equals(question.answer()));
  }

  /** The same reason read twice off the same facts is told once. */
  private static Set<Reason> distinct(List<Reason> reasons) {
    return new LinkedHashSet<>(reasons);
  }

  /** What was told once, with all beneath it, is not told again. */
  private void tree(Reason reason, int depth, Set<Reason> told, StringBuilder out) {
    if (!told.add(reason) && !reason.from().isEmpty()) {
      return;
    }
    out.append(Lines.hung("  ".repeat(depth) + "- ", reason.says() + mark(reason)));
    distinct(reason.from()).forEach(from -> tree(from, depth + 1, told, out));
  }

  /** Where a reason is from, unless its words say so. */
  private static String mark(Reason reason) {
    if (reason.place().isPresent()) {
      return " [" + reason.place().get().lineLabel() + "]";
    }
    return switch (reason.basis()) {
      case DEFAULT -> " [assumed]";
      case METHOD -> " [method]";
      default -> "";
    };
  }

  /** What can be asked of a thing, with the answers in short. */
  public String list(String plan, String subject, List<Question> questions) {
    if (questions.isEmpty()) {
      return "Nothing is worked out about "
          + Lines.clean(subject)
          + " by itself; ask about what is grown of it or in it.\n";
    }
    Grid grid = new Grid("ll");
    questions.forEach(q -> grid.row(q.topic(), q.answer()));
    return ink.strong(Lines.clean(subject) + ": what can be asked")
        + "\n"
        + grid.text("  ")
        + "\n"
        + "For instance: "
        + Shell.command("why", plan, subject + " " + questions.get(0).topic())
        + "\n";
  }

  /** The answers as data. */
  public static WhyData data(String plan, List<Question> questions, boolean inFull) {
    return WhyData.of(
        plan,
        questions.stream()
            .map(
                q ->
                    WhyData.Answer.of(
                        q.subject(),
                        q.topic(),
                        q.answer(),
                        inFull ? q.because() : List.of(),
                        inFull ? years(q) : List.of(),
                        inFull ? q.findings() : List.of()))
            .toList());
  }

  private static List<WhyData.YearData> years(Question q) {
    return q.years().stream().map(y -> new WhyData.YearData(y.year(), y.day())).toList();
  }
}
