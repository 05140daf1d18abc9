package slipday.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.output.data.ChangesData;
import slipday.output.data.ChangesData.CauseData;
import slipday.output.data.ChangesData.ChoresData;
import slipday.output.data.ChangesData.DaysData;
import slipday.output.data.ChangesData.FigureData;
import slipday.output.data.ChangesData.MovedData;
import slipday.output.data.ChangesData.PairData;
import slipday.output.data.ChangesData.RecordedData;
import slipday.output.data.ChangesData.SpreadData;
import slipday.output.data.FindingData;

/** What a change of plan changes, for people, plain or as Markdown for a review. */
public final class ChangesText {
  private static final int CAUSES_AT_MOST = 3;
  private static final int LINES_AT_MOST = 5;

  /** Begins an item that belongs to the one above it. */
  private static final String UNDER = "\t";

  private final ChangesData data;
  private final Days days;
  private final boolean markdown;
  private final Ink ink;
  private final StringBuilder out = new StringBuilder();

  /**
   * @param first the season's first day
   * @param last its last
   */
  public ChangesText(ChangesData data, LocalDate first, LocalDate last, boolean markdown, Ink ink) {
    this.data = data;
    this.days = new Days(first, last);
    this.markdown = markdown;
    this.ink = ink;
  }

  public String text() {
    section("New findings", data.came().stream().map(this::finding).toList());
    section("Findings no longer there", data.gone().stream().map(this::finding).toList());
    section("Came or went", things());
    section("Dates", dates());
    section(
        "Counts",
        data.figures().stream().filter(f -> stays(f.subject())).map(this::figure).toList());
    section("Pollen into kept seed", data.pairs().stream().map(this::pair).toList());
    section("Chores", chores());
    section("Generations", generations());
    boolean same = out.isEmpty();
    section("Record", recorded());
    out.append(same ? (out.isEmpty() ? "" : "\n") + "The season is the same.\n" : "");
    String said = out.toString();
    String head = name(data.before()) + " -> " + name(data.after());
    return (markdown ? "# " + head + "\n\n" : ink.strong(head) + "\n\n") + unreckoned() + said;
  }

  private String unreckoned() {
    return data.compared()
        ? ""
        : "Mistakes in one of the two keep its season from being reckoned: dates, counts and chores"
            + " are not compared.\n\n";
  }

  private void section(String title, List<String> items) {
    if (items.isEmpty()) {
      return;
    }
    out.append(out.isEmpty() ? "" : "\n");
    out.append(markdown ? "## " + title + "\n\n" : ink.strong(title) + "\n");
    for (String item : items) {
      boolean under = item.startsWith(UNDER);
      String text = under ? item.substring(UNDER.length()) : item;
      String lead = (under ? "  " : "") + (markdown ? "- " : "  ");
      out.append(markdown ? lead + text + "\n" : Lines.hung(lead, text));
    }
  }

  /** A name of the user's; in Markdown as code, so that none of it is read as marks. */
  private String name(String name) {
    String clean = Lines.clean(name);
    return markdown ? "`" + clean.replace("`", "'") + "`" : clean;
  }

  private String words(String text) {
    String clean = Lines.clean(text);
    return markdown ? clean.replace("<", "&lt;").replace("*", "\\*") : clean;
  }

  private String finding(FindingData f) {
    String place = f.place().map(p -> " (" + name(p.file() + ":" + p.line()) + ")").orElse("");
    return f.level() + "[" + f.rule() + "]: " + words(f.message()) + place;
  }

  private List<String> things() {
    return data.things().stream()
        .map(t -> t.kind() + " " + name(t.name()) + (t.came() ? " is new" : " is there no more"))
        .toList();
  }

  /** A planting to an item; its events that moved by the same days are told together. */
  private List<String> dates() {
    Map<String, List<MovedData>> plantings = new LinkedHashMap<>();
    data.dates()
        .forEach(m -> plantings.computeIfAbsent(m.planting(), p -> new ArrayList<>()).add(m));
    List<String> items = new ArrayList<>();
    plantings.forEach(
        (planting, moves) -> {
          items.add(name(planting));
          causes("was", moves.stream().flatMap(m -> m.was().stream()).toList(), items);
          causes("now", moves.stream().flatMap(m -> m.is().stream()).toList(), items);
          runs(moves, items);
        });
    return items;
  }

  private void runs(List<MovedData> moves, List<String> items) {
    int from = 0;
    while (from < moves.size()) {
      int to = from + 1;
      while (to < moves.size() && together(moves.get(from), moves.get(to))) {
        to++;
      }
      items.add(UNDER + moved(moves.subList(from, to)));
      from = to;
    }
  }

  private static boolean together(MovedData a, MovedData b) {
    return a.days().isPresent() && a.days().equals(b.days()) && a.days().get() != 0;
  }

  private String moved(List<MovedData> run) {
    MovedData first = run.get(0);
    MovedData last = run.get(run.size() - 1);
    String events = first.words() + (run.size() > 1 ? " to " + last.words() : "");
    String shown = run.size() > 1 ? last.words() + " " : "";
    boolean range = first.days().filter(d -> d == 0).isPresent();
    String was = range ? range(last.before()) : usual(last.before());
    String is = range ? range(last.after()) : usual(last.after());
    return events + ": " + by(first) + " (" + shown + was + " -> " + is + ")";
  }

  private static String by(MovedData m) {
    if (m.days().isEmpty()) {
      return m.before().isEmpty() ? "new" : m.after().isEmpty() ? "no longer" : "changed";
    }
    int n = m.days().get();
    if (n == 0) {
      return "as usual, the range changed";
    }
    return Lines.count(Math.abs(n), "day") + (n > 0 ? " later" : " earlier");
  }

  private String usual(Optional<SpreadData> spread) {
    return days.day(spread.flatMap(SpreadData::usual));
  }

  private String range(Optional<SpreadData> spread) {
    return days.day(spread.flatMap(SpreadData::early))
        + " to "
        + days.day(spread.flatMap(SpreadData::late));
  }

  private void causes(String when, List<CauseData> causes, List<String> items) {
    Set<String> each = new LinkedHashSet<>();
    causes.forEach(c -> each.add(cause(c)));
    each.stream().limit(CAUSES_AT_MOST).forEach(c -> items.add(UNDER + when + ": " + c));
    if (each.size() > CAUSES_AT_MOST) {
      items.add(UNDER + when + ": " + Lines.count(each.size() - CAUSES_AT_MOST, "more fact"));
    }
  }

  private String cause(CauseData c) {
    String place = c.place().map(p -> " (" + name(p.file() + ":" + p.line()) + ")").orElse("");
    return words(c.says()) + place;
  }

  /** What came or went itself is told once. */
  private boolean stays(String subject) {
    return data.things().stream().noneMatch(t -> t.name().equals(subject));
  }

  private String figure(FigureData f) {
    return name(f.subject())
        + ", "
        + f.count()
        + ": "
        + f.before().map(String::valueOf).orElse("-")
        + " -> "
        + f.after().map(String::valueOf).orElse("-");
  }

  private String pair(PairData p) {
    String both = name(p.source()) + " into the seed of " + name(p.receiver());
    if (!p.reaches()) {
      return both + ": no longer";
    }
    String chance =
        p.after().map(c -> ", in flower together in " + Lines.percent(c) + " of years").orElse("");
    if (!p.reached()) {
      return both + ": new" + chance;
    }
    return both + chance + p.before().map(c -> ", before " + Lines.percent(c)).orElse("");
  }

  /** Those that only move go with the dates above: their number is enough. */
  private List<String> chores() {
    List<String> items = new ArrayList<>();
    int moved = 0;
    Map<String, Integer> whole = new LinkedHashMap<>();
    for (ChoresData c : data.chores()) {
      if (!stays(c.subject())) {
        whole.merge(c.subject(), c.added() - c.withdrawn(), Integer::sum);
      } else if (c.added() + c.withdrawn() > 0) {
        items.add(chores(c));
      } else {
        moved += c.moved();
      }
    }
    whole.forEach(
        (subject, n) ->
            items.add(
                name(subject)
                    + ": "
                    + Lines.count(Math.abs(n), "chore")
                    + (n < 0 ? " withdrawn" : " added")));
    if (moved > 0) {
      items.add(Lines.count(moved, items.isEmpty() ? "chore" : "other chore") + " on other days");
    }
    return items;
  }

  private String chores(ChoresData c) {
    List<String> counts = new ArrayList<>();
    if (c.added() > 0) {
      counts.add(c.added() + " added");
    }
    if (c.withdrawn() > 0) {
      counts.add(c.withdrawn() + " withdrawn");
    }
    String head = c.chore().replace('-', ' ') + ", " + name(c.subject()) + ": ";
    String spans = " (" + span(c.before()) + " -> " + span(c.after()) + ")";
    return head + String.join(", ", counts) + spans;
  }

  private String span(Optional<DaysData> span) {
    if (span.isEmpty()) {
      return "-";
    }
    String first = days.day(span.get().first());
    String last = days.day(span.get().last());
    return first.equals(last) ? first : first + " to " + last;
  }

  /** The first few of a long list: the whole of it is for a comparison of the texts. */
  private List<String> recorded() {
    List<String> items = new ArrayList<>();
    for (boolean came : List.of(true, false)) {
      List<RecordedData> lines = data.recorded().stream().filter(r -> r.came() == came).toList();
      lines.stream()
          .limit(LINES_AT_MOST)
          .forEach(r -> items.add((came ? "new: " : "gone: ") + line(r)));
      if (lines.size() > LINES_AT_MOST) {
        items.add(Lines.count(lines.size() - LINES_AT_MOST, "more line") + (came ? "" : " gone"));
      }
    }
    return items;
  }

  private String line(RecordedData r) {
    return words(r.says()) + " (" + name(r.place().file() + ":" + r.place().line()) + ")";
  }

  private List<String> generations() {
    return data.generations().stream()
        .map(g -> name(g.lot()) + ": " + g.before().orElse("-") + " -> " + g.after().orElse("-"))
        .toList();
  }
}
