package slipday.app;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slipday.finding.Finding;
import slipday.finding.Label;
import slipday.finding.Level;
import slipday.format.Formatter;
import slipday.garden.Garden;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.language.Declaration;
import slipday.nextseason.Comments;
import slipday.nextseason.NextSeason;
import slipday.nextseason.PlanText;
import slipday.source.Source;
import slipday.source.Span;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;

/** The next season's plan, checked before it is written: what is open stands in it as comments. */
public final class NextPlan {
  private static final String IDLE = "idle-allow";

  private final FileTexts texts;
  private final Checked checked;
  private final Place plan;
  private final Place next;
  private final boolean includesOutside;
  private final LocalDate today;

  private NextPlan(
      FileTexts texts,
      Checked checked,
      Place plan,
      Place next,
      boolean includesOutside,
      LocalDate today) {
    this.texts = texts;
    this.checked = checked;
    this.plan = plan;
    this.next = next;
    this.includesOutside = includesOutside;
    this.today = today;
  }

  /**
   * A file, there or not.
   *
   * @param name as its user calls it
   */
  public record Place(Path path, String name) {
    public Place {
      path = path.toAbsolutePath().normalize();
    }

    String prefix() {
      return name.substring(0, name.lastIndexOf('/') + 1);
    }

    Path folder() {
      Path parent = path.getParent();
      return parent == null ? path : parent;
    }
  }

  /**
   * @param open what the checks hold against it, each told in a comment of the text
   */
  public record Draft(String text, NextSeason next, List<Finding> open) {
    public Draft {
      open = List.copyOf(open);
    }
  }

  /**
   * @param texts where this season's plan was read from
   * @param checked this season's plan, with its season reckoned
   * @param next where the new plan will stand; nothing is written
   */
  public static Draft draft(
      FileTexts texts,
      Checked checked,
      Place plan,
      Place next,
      boolean includesOutside,
      LocalDate today) {
    return new NextPlan(texts, checked, plan, next, includesOutside, today).draft();
  }

  private Draft draft() {
    Garden garden = checked.garden().orElseThrow();
    NextSeason season = NextSeason.of(garden);
    String text = text(season);
    List<Finding> found = found(text);
    List<Integer> idle =
        found.stream()
            .filter(f -> f.rule().equals(IDLE))
            .flatMap(f -> f.place().stream())
            .map(l -> l.span().line())
            .toList();
    if (!idle.isEmpty()) {
      text = without(text, idle);
      found = found(text);
    }
    return new Draft(annotated(text, found), season, found);
  }

  private boolean isHere(Source source) {
    return source.name().equals(next.name());
  }

  /** Without the things that these lines belong to, and what is remarked right above them. */
  private static String without(String text, List<Integer> places) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    List<Block> blocks = bound(text).blocks();
    Set<Integer> gone = new HashSet<>();
    for (int place : places) {
      int first = begin(text, place);
      int next =
          blocks.stream().mapToInt(b -> b.span().line()).filter(n -> n > first).min().orElse(0);
      int n = first;
      while (n <= lines.size() && n != next && !lines.get(n - 1).isBlank()) {
        gone.add(n++);
      }
      for (n = first - 1; n > 0 && lines.get(n - 1).startsWith("#"); n--) {
        gone.add(n);
      }
    }
    StringBuilder out = new StringBuilder();
    for (int n = 1; n <= lines.size(); n++) {
      out.append(gone.contains(n) ? "" : lines.get(n - 1) + "\n");
    }
    return Formatter.format(SeasonParser.parse(Source.of("next", out.toString())).value()).value();
  }

  private static BoundFile bound(String text) {
    return Binder.bind(SeasonParser.parse(Source.of("next", text)).value()).value();
  }

  private String text(NextSeason season) {
    List<String> includes = new ArrayList<>();
    Set<String> taken = new HashSet<>();
    includes(includes, taken);
    PlanText.Outer outer =
        new PlanText.Outer(plan.name(), includes, s -> taken.contains(s.name()), this::moved);
    return PlanText.of(season, checked.files(), outer);
  }

  /** Errors and warnings that stand. */
  private List<Finding> found(String text) {
    return new Pipeline(texts.and(next.path(), text), includesOutside, today)
        .check(next.path(), next.name()).findings().stream()
            .filter(f -> f.allowed().isEmpty() && f.level() != Level.NOTE)
            .filter(f -> !f.rule().equals("date-in-future"))
            .toList();
  }

  /** Files that hold nothing but lines of the record are taken in again, folders whole. */
  private void includes(List<String> includes, Set<String> taken) {
    for (SeasonFile file : checked.files()) {
      for (Block block : Binder.bind(file).value().blocks()) {
        if (block.declaration() == Declaration.INCLUDE && block.head().isPresent()) {
          String prefix = file.source().folder();
          include(prefix + block.head().get().text("path"), includes, taken);
        }
      }
    }
  }

  private void include(String target, List<String> includes, Set<String> taken) {
    String folder = target.endsWith("/") ? target : target + "/";
    List<SeasonFile> inside =
        checked.files().stream()
            .filter(f -> f.source().name().equals(target) || f.source().folder().equals(folder))
            .toList();
    if (inside.isEmpty() && !seenFromNext(target).equals("record")) {
      return;
    }
    boolean all = inside.stream().allMatch(NextPlan::isRecord);
    if (all) {
      includes.add(seenFromNext(target));
      inside.forEach(f -> taken.add(f.source().name()));
      return;
    }
    inside.stream()
        .filter(NextPlan::isRecord)
        .forEach(
            f -> {
              includes.add(seenFromNext(f.source().name()));
              taken.add(f.source().name());
            });
  }

  private static boolean isRecord(SeasonFile file) {
    BoundFile bound = Binder.bind(file).value();
    return bound.blocks().isEmpty();
  }

  /** A file called as the plan is, as a path to be written in the new plan. */
  private String seenFromNext(String name) {
    String below = name.startsWith(plan.prefix()) ? name.substring(plan.prefix().length()) : name;
    Path target = plan.folder().resolve(below).normalize();
    return next.folder().relativize(target).toString().replace('\\', '/');
  }

  /** The site's weather file; where the site stands in an included file, it lies beside that. */
  private String moved(String path) {
    return seenFromNext(checked.garden().orElseThrow().site().span().source().folder() + path);
  }

  /** With what has to be decided above each thing it is about; of other files, under the head. */
  private String annotated(String text, List<Finding> found) {
    int head = bound(text).blocks().get(0).span().line();
    Map<Integer, List<String>> above = new TreeMap<>();
    for (Finding finding : found) {
      Optional<Span> place = finding.place().map(Label::span);
      boolean here = place.filter(s -> isHere(s.source())).isPresent();
      int line = here ? begin(text, place.orElseThrow().line()) : head;
      String where = here ? "" : place.map(s -> " (" + s.lineLabel() + ")").orElse("");
      above
          .computeIfAbsent(line, n -> new ArrayList<>())
          .addAll(Comments.of("To decide: " + finding.message() + where + " " + finding.help()));
    }
    StringBuilder out = new StringBuilder();
    List<String> lines = text.lines().toList();
    for (int n = 1; n <= lines.size(); n++) {
      above.getOrDefault(n, List.of()).forEach(c -> out.append(c).append('\n'));
      out.append(lines.get(n - 1)).append('\n');
    }
    return out.toString();
  }

  /** The first line of the thing that a line belongs to. */
  private static int begin(String text, int line) {
    return bound(text).blocks().stream()
        .mapToInt(b -> b.span().line())
        .filter(n -> n <= line)
        .max()
        .orElse(line);
  }
}
