package slipday.editor;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import slipday.language.Declaration;
import slipday.source.Source;
import slipday.syntax.Line;
import slipday.syntax.SeasonParser;
import slipday.syntax.WordKind;

/** One name for another, in every file of a plan. */
final class Renaming {
  private final Symbols symbols;

  Renaming(Symbols symbols) {
    this.symbols = symbols;
  }

  /** Why a thing can be given no other name; empty where it can. */
  Optional<String> refusal(Symbols.Symbol symbol) {
    return symbols.declaration(symbol).isEmpty() && symbol.group() != Symbols.Group.TAG
        ? Optional.of("`" + symbol.name() + "` is not declared in this plan.")
        : Optional.empty();
  }

  /** Why a name can't be given to a thing; empty where it can. */
  Optional<String> refusal(Symbols.Symbol symbol, String name) {
    return refusal(symbol).or(() -> refusalOf(name, symbol));
  }

  private Optional<String> refusalOf(String name, Symbols.Symbol symbol) {
    List<Line> lines = SeasonParser.parse(Source.of("", name)).value().lines();
    boolean word =
        lines.size() == 1
            && lines.get(0).words().size() == 1
            && lines.get(0).first().text().equals(name)
            && isName(lines.get(0).first().kind(), symbol);
    if (!word || Declaration.named(name).isPresent()) {
      return Optional.of("`" + name + "` can't be a name: one word, with hyphens where needed.");
    }
    Symbols.Symbol other =
        new Symbols.Symbol(symbol.group(), name.toLowerCase(Locale.ROOT), symbol.season());
    boolean taken = !other.equals(symbol) && !symbols.of(other).isEmpty();
    return taken ? Optional.of("There is a `" + name + "` already.") : Optional.empty();
  }

  private static boolean isName(WordKind kind, Symbols.Symbol symbol) {
    return kind == WordKind.WORD
        || kind == WordKind.MIXED
        || (kind == WordKind.NUMBER && symbol.group() == Symbols.Group.TAG);
  }

  WorkspaceEdit edit(Symbols.Symbol symbol, String name) {
    Map<String, List<TextEdit>> changes = new HashMap<>();
    for (Symbols.Occurrence o : symbols.of(symbol)) {
      changes
          .computeIfAbsent(Where.uri(Where.path(o.span().source())), u -> new ArrayList<>())
          .add(new TextEdit(Where.range(o.span()), name));
    }
    return new WorkspaceEdit(changes);
  }
}
