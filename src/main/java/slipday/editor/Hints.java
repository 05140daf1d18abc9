package slipday.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.lsp4j.InlayHint;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.Declaration;
import slipday.language.PlanClauses;
import slipday.output.Question;
import slipday.season.Event;
import slipday.season.PlantingSeason;
import slipday.source.Span;

/** Dates worked out, shown beside the clause each follows from. */
final class Hints {
  /** Which dates a clause shows; those of clauses a planting lacks go to its first line. */
  private static final Map<Clause, List<Event>> SHOWN =
      Map.of(
          PlanClauses.START,
          List.of(Event.SOW, Event.PLANT_OUT),
          PlanClauses.FLOWERS,
          List.of(Event.FIRST_MALE, Event.FIRST_FRUITING, Event.LAST_SET),
          PlanClauses.SEED,
          List.of(Event.SEED_RIPE));

  private final Workspace.Reckoned reckoned;

  Hints(Workspace.Reckoned reckoned) {
    this.reckoned = reckoned;
  }

  /** The hints of a file, within the lines asked for. */
  List<InlayHint> of(List<Block> blocks, Predicate<Span> wanted) {
    List<InlayHint> hints = new ArrayList<>();
    for (Block block : blocks) {
      if (block.declaration() == Declaration.GROW) {
        block
            .head()
            .flatMap(Hints::planting)
            .flatMap(reckoned.season()::planting)
            .ifPresent(p -> planting(p, block, wanted, hints));
      }
    }
    return hints;
  }

  static Optional<String> planting(Bound head) {
    return Stream.of("as", "lot")
        .flatMap(n -> head.names(n).stream())
        .map(n -> n.text())
        .findFirst();
  }

  private void planting(
      PlantingSeason p, Block block, Predicate<Span> wanted, List<InlayHint> hints) {
    List<Event> head = new ArrayList<>();
    for (Map.Entry<Clause, List<Event>> shown : SHOWN.entrySet()) {
      Optional<BoundClause> clause = block.find(shown.getKey());
      if (clause.isEmpty()) {
        head.addAll(shown.getValue());
      } else if (wanted.test(clause.get().span())) {
        hint(p, clause.get().span(), shown.getValue()).ifPresent(hints::add);
      }
    }
    head.add(Event.RIPE);
    head.sort(null);
    if (wanted.test(block.span())) {
      hint(p, block.span(), head).ifPresent(hints::add);
    }
  }

  private Optional<InlayHint> hint(PlantingSeason p, Span at, List<Event> events) {
    List<Question> asked =
        events.stream().flatMap(e -> reckoned.questions().find(p.name(), e.id()).stream()).toList();
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    String label =
        events.stream()
            .flatMap(
                e ->
                    reckoned.questions().find(p.name(), e.id()).stream()
                        .map(q -> e.words() + " " + q.answer()))
            .collect(Collectors.joining(" · "));
    InlayHint hint = new InlayHint(Where.position(at.source(), at.end()), Either.forLeft(label));
    hint.setPaddingLeft(true);
    String reasons = asked.stream().map(reckoned::why).collect(Collectors.joining("\n"));
    hint.setTooltip(
        Either.forRight(new MarkupContent(MarkupKind.MARKDOWN, "```text\n" + reasons + "```")));
    return Optional.of(hint);
  }
}
