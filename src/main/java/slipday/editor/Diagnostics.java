package slipday.editor;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticRelatedInformation;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import slipday.finding.Finding;
import slipday.finding.Label;
import slipday.finding.Level;

/** Findings as an editor shows them. */
final class Diagnostics {
  static final String SOURCE = "slipday";

  private Diagnostics() {}

  /** By file; what has no place stands at the top of the plan. */
  static Map<Path, List<Diagnostic>> of(Path plan, List<Finding> findings) {
    Map<Path, List<Diagnostic>> byFile = new HashMap<>();
    for (Finding finding : findings) {
      if (finding.allowed().isEmpty()) {
        Path path = path(plan, finding);
        byFile.computeIfAbsent(path, p -> new ArrayList<>()).add(of(finding));
      }
    }
    return byFile;
  }

  /** A finding about a built-in crop file is told on the plan. */
  private static Path path(Path plan, Finding finding) {
    return finding
        .place()
        .filter(l -> !l.span().source().isBuiltIn())
        .map(l -> Where.path(l.span().source()))
        .orElse(plan);
  }

  static Diagnostic of(Finding finding) {
    Diagnostic diagnostic = new Diagnostic(range(finding), message(finding));
    diagnostic.setSeverity(severity(finding.level()));
    diagnostic.setSource(SOURCE);
    diagnostic.setCode(finding.rule());
    List<DiagnosticRelatedInformation> related = new ArrayList<>();
    for (Label other : finding.others()) {
      if (!other.span().source().isBuiltIn()) {
        String says = other.text().isEmpty() ? "this matters, too" : other.text();
        related.add(new DiagnosticRelatedInformation(Where.location(other.span()), says));
      }
    }
    diagnostic.setRelatedInformation(related);
    return diagnostic;
  }

  static Range range(Finding finding) {
    return finding
        .place()
        .filter(l -> !l.span().source().isBuiltIn())
        .map(l -> Where.range(l.span()))
        .orElseGet(() -> new Range(new Position(0, 0), new Position(0, 1)));
  }

  private static String message(Finding finding) {
    StringBuilder message = new StringBuilder(finding.message());
    finding.notes().forEach(n -> message.append('\n').append(n));
    if (!finding.help().isEmpty()) {
      message.append('\n').append(finding.help());
    }
    return message.toString();
  }

  private static DiagnosticSeverity severity(Level level) {
    return switch (level) {
      case ERROR -> DiagnosticSeverity.Error;
      case WARNING -> DiagnosticSeverity.Warning;
      case NOTE -> DiagnosticSeverity.Information;
    };
  }
}
