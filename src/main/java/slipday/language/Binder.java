package slipday.language;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;

/** Binds the lines of a file to the table of clauses. One wrong line costs one message. */
public final class Binder {
  private final List<Line> lines;
  private final List<Finding> findings = new ArrayList<>();

  /** Of lines that say well what can't be: these damage no block. */
  private final List<Finding> implausible = new ArrayList<>();

  private final List<Block> blocks = new ArrayList<>();
  private final List<Entry> entries = new ArrayList<>();
  private final List<Line> unread = new ArrayList<>();
  private @Nullable Open open;

  /** Of the open block: one list for all of them, since there can be very many. */
  private final List<BoundClause> clauses = new ArrayList<>();

  /** Those of the open block that may come once. */
  private final List<BoundClause> once = new ArrayList<>();

  private boolean strayToldOf;
  private final Predicate<Line> fits = this::fits;

  /** Whether a line of the open block is mistaken. */
  private boolean damaged;

  /** Lines with a comment that hides a word. */
  private final Set<Integer> hiding = new HashSet<>();

  private Binder(SeasonFile file) {
    this.lines = file.lines();
    file.comments().stream()
        .filter(c -> c.text().length() > 1 && !Character.isWhitespace(c.text().charAt(1)))
        .forEach(c -> hiding.add(c.span().line()));
  }

  /** A block whose lines are still coming. */
  private record Open(
      Declaration declaration,
      Optional<Bound> head,
      Line line,
      List<BoundClause> clauses,
      List<BoundClause> once)
      implements Guess.Under {

    void add(BoundClause clause) {
      clauses.add(clause);
      if (!clause.clause().many()) {
        once.add(clause);
      }
    }

    /** Looks only at clauses that come once: no more than the table has, however long a block. */
    @Nullable BoundClause said(Clause clause) {
      for (BoundClause earlier : once) {
        if (earlier.clause().equals(clause)) {
          return earlier;
        }
      }
      return null;
    }

    @Override
    public boolean hasSaid(Clause clause) {
      return said(clause) != null;
    }

    Block closed(boolean damaged) {
      return new Block(declaration, head, line, List.copyOf(clauses), damaged);
    }
  }

  /** Binds any lines at all; what is wrong with them is in the findings, and the rest is bound. */
  public static Outcome<BoundFile> bind(SeasonFile file) {
    return new Binder(file).run();
  }

  private Outcome<BoundFile> run() {
    for (int i = 0; i < lines.size(); i++) {
      int told = findings.size();
      line(lines.get(i), i);
      damaged |= findings.size() > told && !DatedLine.isBegunBy(lines.get(i));
    }
    close();
    findings.addAll(implausible);
    return new Outcome<>(new BoundFile(blocks, entries, unread), findings);
  }

  private void close() {
    if (open != null) {
      Block block = open.closed(damaged);
      PlausibleFigures.check(block, implausible);
      blocks.add(block);
      open = null;
    }
  }

  private void begin(Declaration declaration, Optional<Bound> head, Line line) {
    close();
    clauses.clear();
    once.clear();
    open = new Open(declaration, head, line, clauses, once);
    damaged = false;
  }

  private void line(Line line, int index) {
    List<Finding> trap = LineTraps.check(line, fits);
    if (!trap.isEmpty()) {
      findings.addAll(trap);
      saveWhatFits(line, LineTraps.withoutBrackets(line), index);
      return;
    }
    if (DatedLine.isBegunBy(line)) {
      dated(line).ifPresent(findings::add);
      return;
    }
    Optional<Declaration> declaration = Declaration.begunBy(line);
    if (declaration.isPresent()) {
      begin(declaration.get(), head(declaration.get(), line), line);
      return;
    }
    Open block = open;
    Clause clause = block == null ? null : Clauses.of(block.declaration, line.words()).orElse(null);
    if (block != null && clause != null) {
      clause(block, clause, line);
    } else {
      unknown(line, index);
    }
  }

  /** A line of the record is complete in itself: it ends no block, whatever it stands under. */
  private Optional<Finding> dated(Line line) {
    DatedLine.Reading reading = DatedLine.read(line);
    reading.entry().ifPresentOrElse(this::keep, () -> unread.add(line));
    // What `#3A` hides has been told of.
    return reading.finding().filter(f -> !hiding.contains(line.span().line()));
  }

  private void keep(Entry entry) {
    PlausibleFigures.check(entry, implausible);
    entries.add(entry);
  }

  private Optional<Bound> head(Declaration declaration, Line line) {
    Bound bound = declaration.head().bind(line.words(), 1);
    if (bound == null) {
      Shape.Failure failure = declaration.head().why(line.words(), 1);
      findings.add(Misfit.of(line, failure, declaration.word(), declaration.example()));
    }
    return Optional.ofNullable(bound);
  }

  /** What a line told of already still says, so that no other line is blamed for its mistake. */
  private void saveWhatFits(Line line, Line cleaned, int index) {
    if (DatedLine.isBegunBy(cleaned)) {
      unread.add(line);
      return;
    }
    Optional<Declaration> declaration = Declaration.begunBy(cleaned);
    if (declaration.isPresent()) {
      Declaration d = declaration.get();
      begin(d, d.head().match(cleaned.words(), 1).bound(), line);
      return;
    }
    Open block = open;
    Clause clause =
        block == null ? null : Clauses.of(block.declaration, cleaned.words()).orElse(null);
    if (block != null && clause != null) {
      keepIfFits(block, clause, cleaned, line);
    } else {
      Guess.byLinesBelow(cleaned, open, lines.subList(index + 1, lines.size()))
          .ifPresent(m -> begin(m.declaration(), m.head(), line));
    }
  }

  /** Whether a line has the shape of what may stand here. */
  private boolean fits(Line line) {
    if (DatedLine.isBegunBy(line)) {
      return DatedLine.read(line).entry().isPresent();
    }
    Optional<Declaration> declaration = Declaration.begunBy(line);
    if (declaration.isPresent()) {
      return declaration.get().head().bind(line.words(), 1) != null;
    }
    Open block = open;
    Clause clause = block == null ? null : Clauses.of(block.declaration, line.words()).orElse(null);
    return clause != null
        && clause.shape().bind(value(clause, line).value().words(), clause.words().size()) != null;
  }

  /** A fact of a crop without its source; any other line whole. */
  private static SaysReader.Split value(Clause clause, Line line) {
    return CropClauses.isFact(clause) ? SaysReader.split(line) : SaysReader.whole(line);
  }

  private static void keepIfFits(Open block, Clause clause, Line cleaned, Line line) {
    SaysReader.Split split = value(clause, cleaned);
    clause
        .shape()
        .match(split.value().words(), clause.words().size())
        .bound()
        .filter(b -> !block.hasSaid(clause))
        .ifPresent(b -> block.add(new BoundClause(clause, b, line, split.says())));
  }

  private void clause(Open block, Clause clause, Line line) {
    if (!CropClauses.isFact(clause)) {
      value(block, clause, line, line, Optional.empty());
      return;
    }
    SaysReader.Split split = SaysReader.split(line);
    if (split.mistake().isPresent()) {
      findings.add(split.mistake().get());
      keepIfFits(block, clause, line, line);
    } else {
      value(block, clause, line, split.value(), split.says());
    }
  }

  private void value(Open block, Clause clause, Line line, Line value, Optional<Says> says) {
    int from = clause.words().size();
    Bound bound = clause.shape().bind(value.words(), from);
    if (bound == null) {
      findings.add(Misfit.of(value, clause.shape().why(value.words(), from), clause));
      return;
    }
    BoundClause earlier = clause.many() ? null : block.said(clause);
    if (earlier != null) {
      findings.add(saidTwice(clause, line, earlier));
      return;
    }
    block.add(new BoundClause(clause, bound, line, says));
  }

  private static Finding saidTwice(Clause clause, Line line, BoundClause earlier) {
    return Finding.error("said-twice", line.span(), "`" + clause.name() + "` is said twice here.")
        .labelled("said again")
        .also(earlier.span(), "said first")
        .withHelp("Keep one of the two lines.");
  }

  private void unknown(Line line, int index) {
    Optional<Finding> undated = DatedLine.withoutDate(line);
    if (undated.isPresent()) {
      findings.add(undated.get());
      unread.add(line);
      return;
    }
    Optional<Guess.Meant> byWord = Guess.byWord(line, open);
    if (byWord.isPresent()) {
      Guess.Meant meant = byWord.get();
      findings.add(UnknownLine.misspeltDeclaration(line, meant.declaration()));
      begin(meant.declaration(), meant.head(), line);
      return;
    }
    Optional<Guess.Meant> byBelow =
        Guess.byLinesBelow(line, open, lines.subList(index + 1, lines.size()));
    if (byBelow.isPresent()) {
      Guess.Meant meant = byBelow.get();
      findings.add(UnknownLine.tellingFromBelow(line, meant.declaration()));
      begin(meant.declaration(), meant.head(), line);
      return;
    }
    Open block = open;
    if (block != null) {
      Optional<UnknownLine.Near> near = UnknownLine.near(block.declaration, line);
      findings.add(UnknownLine.under(block.declaration, block.line, line, near));
      near.map(UnknownLine.Near::clause)
          .filter(c -> c.words().size() <= line.words().size())
          .ifPresent(c -> keepIfFits(block, c, line, line));
    } else if (!strayToldOf) {
      strayToldOf = true;
      findings.add(UnknownLine.outside(line));
    }
  }
}
