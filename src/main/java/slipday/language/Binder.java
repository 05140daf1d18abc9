package slipday.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.finding.Outcome;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** Binds the lines of a file to the table of clauses. One wrong line costs one message. */
public final class Binder {
  private final SeasonFile file;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Block> blocks = new ArrayList<>();
  private @Nullable Open open;
  private boolean strayToldOf;

  private Binder(SeasonFile file) {
    this.file = file;
  }

  /** A block whose lines are still coming. */
  private static final class Open {
    final Declaration declaration;
    final Optional<Bound> head;
    final Line line;
    final List<BoundClause> clauses = new ArrayList<>();

    /** Those that may not come again: no more than the table has, however long the block. */
    final List<BoundClause> once = new ArrayList<>();

    Open(Declaration declaration, Optional<Bound> head, Line line) {
      this.declaration = declaration;
      this.head = head;
      this.line = line;
    }

    Block closed() {
      return new Block(declaration, head, line, List.copyOf(clauses));
    }
  }

  public static Outcome<List<Block>> bind(SeasonFile file) {
    return new Binder(file).run();
  }

  private Outcome<List<Block>> run() {
    file.lines().forEach(this::line);
    close();
    return new Outcome<>(List.copyOf(blocks), findings);
  }

  private void close() {
    if (open != null) {
      blocks.add(open.closed());
      open = null;
    }
  }

  private void line(Line line) {
    Optional<Finding> trap = LineTraps.check(line);
    trap.ifPresent(findings::add);
    Word first = line.first();
    Optional<Declaration> declaration =
        first.is(WordKind.WORD) ? Declaration.named(first.text()) : Optional.empty();
    if (declaration.isPresent()) {
      open(declaration.get(), line, trap.isPresent());
    } else if (trap.isEmpty()) {
      clauseOrMistake(line);
    }
  }

  private void open(Declaration declaration, Line line, boolean mistaken) {
    close();
    Optional<Bound> head = Optional.empty();
    if (!mistaken) {
      head = values(declaration.head(), line, 1, declaration.word(), declaration.example());
    }
    open = new Open(declaration, head, line);
  }

  private Optional<Bound> values(Shape shape, Line line, int from, String what, String example) {
    Shape.Match match = shape.match(line.words(), from);
    match.failure().ifPresent(f -> findings.add(misfit(line, f, what, example)));
    return match.bound();
  }

  private void clauseOrMistake(Line line) {
    Open block = open;
    if (block == null) {
      outside(line);
      return;
    }
    Optional<Clause> clause = Clauses.of(block.declaration, line.words());
    if (clause.isPresent()) {
      clause(block, clause.get(), line);
    } else {
      unknown(block.declaration, line);
    }
  }

  private void clause(Open block, Clause clause, Line line) {
    SaysReader.Split split = SaysReader.split(clause, line);
    split.mistake().ifPresent(findings::add);
    Optional<Bound> bound =
        values(
            clause.shape(), split.value(), clause.words().size(), clause.name(), clause.example());
    if (bound.isEmpty()) {
      return;
    }
    Optional<BoundClause> earlier =
        clause.many()
            ? Optional.empty()
            : block.once.stream().filter(c -> c.clause().equals(clause)).findFirst();
    if (earlier.isPresent()) {
      findings.add(
          Finding.error("said-twice", line.span(), "`" + clause.name() + "` is said twice here.")
              .labelled("said again")
              .also(earlier.get().span(), "said first")
              .withHelp("Keep one of the two lines."));
      return;
    }
    BoundClause kept = new BoundClause(clause, bound.get(), line, split.says());
    block.clauses.add(kept);
    if (!clause.many()) {
      block.once.add(kept);
    }
  }

  private void outside(Line line) {
    if (guessed(line, List.of())) {
      return;
    }
    if (strayToldOf) {
      return;
    }
    strayToldOf = true;
    findings.add(
        Finding.error(
                "nothing-begun",
                line.span(),
                "`" + line.first().text() + "` stands before anything has begun.")
            .withHelp(
                "A plan begins with a line such as `season 2027`, then `site`, `bed`, `grow` and so on."));
  }

  /** Takes a misspelt declaration for what was meant, so that the lines under it are checked. */
  private boolean guessed(Line line, List<String> clauseWords) {
    Word first = line.first();
    if (!first.is(WordKind.WORD)) {
      return false;
    }
    Optional<String> near =
        Nearest.to(
            first.text(),
            Stream.concat(Declaration.words().stream(), clauseWords.stream()).toList());
    Optional<Declaration> meant = near.flatMap(Declaration::named);
    if (meant.isEmpty() || meant.get().head().match(line.words(), 1).bound().isEmpty()) {
      return false;
    }
    findings.add(
        Finding.error(
                "unknown-declaration",
                first.span(),
                "`" + first.text() + "` does not begin anything.")
            .labelled("read as `" + meant.get().word() + "`")
            .withHelp("Did you mean `" + meant.get().word() + "`?"));
    close();
    open = new Open(meant.get(), meant.get().head().match(line.words(), 1).bound(), line);
    return true;
  }

  private void unknown(Declaration declaration, Line line) {
    List<Clause> here = Clauses.under(declaration);
    if (guessed(line, here.stream().map(c -> c.words().get(0)).toList())) {
      return;
    }
    Word first = line.first();
    Span place = first.span();
    String under = "`" + declaration.word() + "`";
    List<Declaration> elsewhere =
        Stream.of(Declaration.values())
            .filter(d -> Clauses.of(d, line.words()).isPresent())
            .toList();
    String message = "`" + first.text() + "` says nothing known under " + under + ".";
    String help;
    if (here.isEmpty()) {
      help = "Nothing stands under " + under + ".";
    } else if (!elsewhere.isEmpty()) {
      String belongs =
          elsewhere.stream().map(d -> "`" + d.word() + "`").collect(Collectors.joining(" or "));
      message = "`" + first.text() + "` does not belong under " + under + ".";
      help = "It belongs under " + belongs + ".";
    } else {
      help = nearestClause(here, line);
    }
    findings.add(
        Finding.error("unknown-clause", place, message)
            .withHelp(help)
            .also(openLine().span(), "the " + under + " it stands under"));
  }

  private Line openLine() {
    return open == null ? file.lines().get(0) : open.line;
  }

  /** Compares as many words of the line as each clause has, so that two-word clauses are found. */
  private static String nearestClause(List<Clause> here, Line line) {
    List<String> names = here.stream().map(Clause::name).toList();
    return here.stream()
        .map(c -> c.words().size())
        .distinct()
        .sorted((a, b) -> b - a)
        .map(n -> Nearest.to(begin(line, n), sized(here, n)))
        .flatMap(Optional::stream)
        .findFirst()
        .map(n -> "Did you mean `" + n + "`?")
        .orElseGet(() -> Nearest.help(line.first().text(), names, "clause"));
  }

  private static List<String> sized(List<Clause> clauses, int words) {
    return clauses.stream().filter(c -> c.words().size() == words).map(Clause::name).toList();
  }

  private static String begin(Line line, int words) {
    return line.words().stream().limit(words).map(Word::text).collect(Collectors.joining(" "));
  }

  private static Finding misfit(Line line, Shape.Failure failure, String what, String example) {
    List<Word> words = line.words();
    boolean atEnd = failure.at() >= words.size();
    Span last = words.get(words.size() - 1).span();
    Span place =
        atEnd ? new Span(last.source(), last.end(), last.end()) : words.get(failure.at()).span();
    if (failure.mistake().isPresent()) {
      Shape.Mistake mistake = failure.mistake().get();
      return Finding.error(mistake.rule(), place, mistake.message())
          .labelled(mistake.help().length() < 40 ? "" : "here")
          .withHelp(mistake.help());
    }
    String expected = String.join(", or ", failure.expected());
    String message =
        atEnd
            ? "`" + what + "` wants more: " + expected + "."
            : "`"
                + what
                + "` wants "
                + expected
                + " where `"
                + words.get(failure.at()).text()
                + "` stands.";
    return Finding.error("clause-shape", place, message)
        .labelled("expected " + expected)
        .withHelp("For example: `" + example + "`.");
  }
}
