package slipday.editor;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.SymbolKind;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.language.Declaration;
import slipday.language.Entry;
import slipday.source.Span;
import slipday.syntax.Comment;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;
import slipday.syntax.Word;

/** The things a file declares, and what of it can be folded away. */
final class Outline {
  private Outline() {}

  static List<DocumentSymbol> symbols(BoundFile file) {
    List<DocumentSymbol> symbols = new ArrayList<>();
    for (Block block : file.blocks()) {
      if (block.line().words().size() > 1) {
        symbols.add(symbol(block));
      }
    }
    file.entries().forEach(e -> symbols.add(symbol(e)));
    return symbols;
  }

  private static DocumentSymbol symbol(Block block) {
    Word name = block.line().words().get(1);
    Span whole =
        block.clauses().isEmpty()
            ? block.span()
            : block.span().to(block.clauses().get(block.clauses().size() - 1).span());
    DocumentSymbol symbol =
        new DocumentSymbol(
            block.declaration().word() + " " + name.unquoted(),
            kind(block.declaration()),
            Where.range(whole),
            Where.range(name.span()));
    List<DocumentSymbol> clauses = new ArrayList<>();
    block
        .clauses()
        .forEach(
            c -> {
              Range range = Where.range(c.span());
              String label = c.span().plainText();
              clauses.add(new DocumentSymbol(label, SymbolKind.Property, range, range));
            });
    symbol.setChildren(clauses);
    return symbol;
  }

  private static DocumentSymbol symbol(Entry entry) {
    Range range = Where.range(entry.span());
    return new DocumentSymbol(entry.wording(), SymbolKind.Event, range, range);
  }

  private static SymbolKind kind(Declaration declaration) {
    return switch (declaration) {
      case SEASON, SITE -> SymbolKind.Namespace;
      case INCLUDE -> SymbolKind.File;
      case BED, NEIGHBOUR, VOLUNTEER -> SymbolKind.Field;
      case LINE, CROP, SPECIES -> SymbolKind.Class;
      case LOT -> SymbolKind.Package;
      case GROW -> SymbolKind.Object;
      case CROSS -> SymbolKind.Operator;
      case GOAL, TRAIT -> SymbolKind.Property;
      case ALLOW -> SymbolKind.Boolean;
      case SOURCE -> SymbolKind.String;
    };
  }

  /** Blocks by their lines, right or wrong, and comments of several lines. */
  static List<FoldingRange> folds(SeasonFile file) {
    List<FoldingRange> folds = new ArrayList<>();
    int opened = -1;
    int last = -1;
    for (Line line : file.lines()) {
      if (Declaration.begunBy(line).isPresent()) {
        fold(folds, opened, last);
        opened = line.span().line();
      }
      last = line.span().line();
    }
    fold(folds, opened, last);
    comments(file, folds);
    return folds;
  }

  private static void comments(SeasonFile file, List<FoldingRange> folds) {
    int first = -1;
    int last = -1;
    for (Comment comment : file.comments()) {
      int line = comment.span().line();
      if (line != last + 1) {
        foldComment(folds, first, last);
        first = line;
      }
      last = line;
    }
    foldComment(folds, first, last);
  }

  private static void foldComment(List<FoldingRange> folds, int first, int last) {
    int before = folds.size();
    fold(folds, first, last);
    if (folds.size() > before) {
      folds.get(before).setKind(FoldingRangeKind.Comment);
    }
  }

  private static void fold(List<FoldingRange> folds, int first, int last) {
    if (first > 0 && last > first) {
      folds.add(new FoldingRange(first - 1, last - 1));
    }
  }
}
