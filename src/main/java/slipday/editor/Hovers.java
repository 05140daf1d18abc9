package slipday.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.Range;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.Clauses;
import slipday.language.Declaration;
import slipday.language.PlanClauses;
import slipday.language.Unsaid;
import slipday.output.CropsText;
import slipday.output.Ink;
import slipday.output.Question;
import slipday.output.Questions;
import slipday.output.data.CropsData;
import slipday.rules.RulePage;
import slipday.season.Event;
import slipday.source.Source;
import slipday.source.Span;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** What is known about the word under the cursor: crop facts, dates with reasons, meanings. */
final class Hovers {
  private static final int DATES_SHOWN = 12;

  /** What a clause of a planting decides, to be explained on it. */
  private static final Map<Clause, List<String>> DECIDES =
      Map.of(
          PlanClauses.START, List.of(Event.SOW.id(), Event.PLANT_OUT.id()),
          PlanClauses.SOW_ON, List.of(Event.SOW.id(), Event.EMERGED.id()),
          PlanClauses.PLANT_OUT_ON, List.of(Event.PLANT_OUT.id()),
          PlanClauses.FLOWERS, List.of(Event.FIRST_FRUITING.id()),
          PlanClauses.POLLINATE, List.of("flowers-wanted"),
          PlanClauses.SEED, List.of(Event.SEED_RIPE.id()));

  private final Workspace workspace;
  private final Study study;
  private final Path path;

  Hovers(Workspace workspace, Study study, Path path) {
    this.workspace = workspace;
    this.study = study;
    this.path = path;
  }

  Optional<Hover> at(Source source, int offset) {
    Optional<Symbols.Occurrence> name = study.symbols().at(source.name(), offset);
    Optional<Hover> named = name.flatMap(n -> hover(named(n.symbol()), n.span()));
    return named.or(() -> word(offset));
  }

  private String named(Symbols.Symbol symbol) {
    return switch (symbol.group()) {
      case CROP, SPECIES -> crop(symbol.name());
      case SEED, LINE, BED -> answers(symbol.name());
      case TAG -> story(symbol);
      case RULE -> RulePage.of(symbol.name()).map(RulePage::sentence).orElse("");
      case OTHER -> answers(symbol.name());
    };
  }

  private String crop(String name) {
    return CropsData.facts(Optional.of(Where.name(study.plan())), study.crops(), name)
        .map(d -> code(new CropsText(d, Ink.of(false)).text()))
        .orElse("");
  }

  /** What is worked out about a thing, in short. */
  private String answers(String name) {
    List<Question> about =
        workspace.reckoned(study.plan()).map(r -> r.questions().about(name)).orElse(List.of());
    String dates =
        about.stream()
            .filter(q -> q.findings().isEmpty() && !q.answer().isEmpty())
            .limit(DATES_SHOWN)
            .map(q -> "- " + q.topic() + ": " + q.answer())
            .collect(Collectors.joining("\n"));
    return "**" + name + "**" + (dates.isEmpty() ? "" : "\n\n" + dates);
  }

  /** The record of one tagged fruit, by date. */
  private String story(Symbols.Symbol tag) {
    return code(
        study.symbols().of(tag).stream()
            .map(o -> o.span().source().line(o.span().line()).strip())
            .distinct()
            .sorted()
            .collect(Collectors.joining("\n")));
  }

  private Optional<Hover> word(int offset) {
    List<Line> lines = study.file(path).map(SeasonFile::lines).orElse(List.of());
    for (Line line : lines) {
      if (line.span().start() <= offset && offset <= line.span().end()) {
        return word(line, offset);
      }
    }
    return Optional.empty();
  }

  private Optional<Hover> word(Line line, int offset) {
    Optional<Declaration> declaration = Declaration.begunBy(line);
    Word first = line.first();
    if (declaration.isPresent()) {
      boolean on = offset <= first.end();
      Declaration d = declaration.get();
      return on ? hover(d.sentence() + example(d.example()), first.span()) : Optional.empty();
    }
    boolean dated = first.is(WordKind.DATE);
    if (dated && line.words().size() > 1) {
      List<Word> rest = line.words().subList(1, line.words().size());
      return Clauses.dated(rest).flatMap(c -> clause(c, rest, offset, ""));
    }
    for (Block block : study.blocks(path)) {
      for (BoundClause bound : block.clauses()) {
        if (bound.span().equals(line.span())) {
          return clause(bound.clause(), line.words(), offset, decided(block, bound.clause()));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Hover> clause(Clause clause, List<Word> words, int offset, String more) {
    Span name = words.get(0).span().to(words.get(clause.words().size() - 1).span());
    boolean on = name.start() <= offset && offset <= name.end();
    return on
        ? hover(clause.sentence() + leftOut(clause) + example(clause.example()) + more, name)
        : Optional.empty();
  }

  /** Why the dates that a planting's clause decides are what they are. */
  private String decided(Block block, Clause clause) {
    Optional<Workspace.Reckoned> reckoned = workspace.reckoned(study.plan());
    Optional<Questions> questions = reckoned.map(Workspace.Reckoned::questions);
    Optional<String> planting = block.head().flatMap(Hints::planting);
    List<String> topics = DECIDES.getOrDefault(clause, List.of());
    if (questions.isEmpty() || planting.isEmpty() || block.declaration() != Declaration.GROW) {
      return "";
    }
    List<String> reasons = new ArrayList<>();
    for (String topic : topics) {
      questions.get().find(planting.get(), topic).map(reckoned.get()::why).ifPresent(reasons::add);
    }
    return reasons.isEmpty() ? "" : "\n\n" + code(String.join("\n", reasons));
  }

  private static String leftOut(Clause clause) {
    return Unsaid.of(clause).map(holds -> "\n\nLeft out: " + holds).orElse("");
  }

  private static String example(String example) {
    return "\n\n```season\n" + example + "\n```";
  }

  private static String code(String text) {
    return text.isEmpty() ? "" : "```text\n" + text.stripTrailing() + "\n```";
  }

  private static Optional<Hover> hover(String markdown, Span span) {
    if (markdown.isEmpty()) {
      return Optional.empty();
    }
    Range range = Where.range(span);
    return Optional.of(new Hover(new MarkupContent(MarkupKind.MARKDOWN, markdown), range));
  }
}
