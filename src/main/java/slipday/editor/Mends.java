package slipday.editor;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.Declaration;
import slipday.language.PlanClauses;
import slipday.language.Value;
import slipday.measure.Unit;
import slipday.rules.RuleCatalog;
import slipday.season.DateChoice;
import slipday.season.PlantingSeason;
import slipday.season.Season;
import slipday.source.Source;
import slipday.source.Span;

/** What would mend a finding, as edits. */
final class Mends {
  private static final Pattern NEAR = Pattern.compile("Did you mean `([^`]+)`\\?");
  private static final Pattern WORD = Pattern.compile("[\\p{L}%]+");
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
  private static final String COVERED = "cover the chosen";

  /** Rules that covered flowers would satisfy. */
  static final Set<String> COVERING =
      Set.of("bitter-pollen", "seed-open-to-crossing", "pollen-from-outside", "flowers-left-open");

  private final Study study;
  private final Optional<Season> season;

  Mends(Study study, Optional<Season> season) {
    this.study = study;
    this.season = season;
  }

  List<CodeAction> of(Finding finding) {
    List<CodeAction> mends = new ArrayList<>();
    nearest(finding, mends);
    units(finding, mends);
    if (COVERING.contains(finding.rule())) {
      cover(finding, mends);
    }
    shift(finding, mends);
    allow(finding, mends);
    if (mends.size() == 1) {
      mends.get(0).setIsPreferred(true);
    }
    return mends;
  }

  private void nearest(Finding finding, List<CodeAction> mends) {
    Matcher near = NEAR.matcher(finding.help());
    if (near.find()) {
      own(finding)
          .ifPresent(s -> add(mends, finding, "Write `" + near.group(1) + "`", s, near.group(1)));
    }
  }

  private static Optional<Span> own(Finding finding) {
    return finding.place().map(l -> l.span()).filter(s -> !s.source().isBuiltIn());
  }

  /** The help names the units that fit. */
  private void units(Finding finding, List<CodeAction> mends) {
    if (!finding.rule().equals("unit-missing")) {
      return;
    }
    Optional<Span> number = own(finding);
    Matcher words = WORD.matcher(finding.help());
    while (words.find() && number.isPresent()) {
      String unit = words.group();
      if (Unit.named(unit).isPresent()) {
        String with = number.get().text() + " " + unit;
        add(mends, finding, "Write `" + with + "`", number.get(), with);
      }
    }
  }

  private void cover(Finding finding, List<CodeAction> mends) {
    for (Block block : grown(finding.subject())) {
      String title = "Cover the chosen flowers of `" + finding.subject() + "`";
      Optional<BoundClause> flowers = block.find(PlanClauses.FLOWERS);
      if (flowers.isEmpty()) {
        addLine(mends, finding, title, block, "  flowers        " + COVERED);
      } else {
        value(flowers.get()).ifPresent(v -> add(mends, finding, title, v, COVERED));
      }
    }
  }

  /** The blocks that grow a planting; one, where the plan is sound. */
  private List<Block> grown(String planting) {
    return study.said().values().stream()
        .flatMap(f -> f.blocks().stream())
        .filter(b -> b.declaration() == Declaration.GROW)
        .filter(b -> b.head().flatMap(Hints::planting).filter(planting::equals).isPresent())
        .toList();
  }

  /** What stands after a clause's own words. */
  private static Optional<Span> value(BoundClause clause) {
    var words = clause.line().words();
    int from = clause.clause().words().size();
    return from >= words.size()
        ? Optional.empty()
        : Optional.of(words.get(from).span().to(words.get(words.size() - 1).span()));
  }

  /** A day the gardener fixed, to the nearest one that meets every condition. */
  private void shift(Finding finding, List<CodeAction> mends) {
    Optional<PlantingSeason> planting = season.flatMap(s -> s.planting(finding.subject()));
    if (planting.isEmpty() || finding.level() == Level.NOTE) {
      return;
    }
    DateChoice choice = planting.get().choice();
    Optional<LocalDate> day =
        Stream.concat(
                choice.earliest().filter(d -> d.isAfter(choice.date())).stream(),
                choice.latest().filter(d -> d.isBefore(choice.date())).stream())
            .findFirst();
    if (!choice.fixed() || !choice.possible() || day.isEmpty()) {
      return;
    }
    for (Block block : grown(finding.subject())) {
      for (Clause clause : List.of(PlanClauses.PLANT_OUT_ON, PlanClauses.SOW_ON)) {
        Optional<Value> written = block.find(clause).flatMap(c -> c.bound().find("day"));
        written.ifPresent(
            v -> {
              String text = DAY.format(day.get());
              add(
                  mends,
                  finding,
                  "Shift to " + text + ", the nearest day that fits",
                  v.span(),
                  text);
            });
      }
    }
  }

  private void allow(Finding finding, List<CodeAction> mends) {
    boolean rule = RuleCatalog.rule(finding.rule()).isPresent();
    Optional<Source> file = own(finding).map(Span::source);
    if (!rule || finding.subject().isEmpty() || file.isEmpty()) {
      return;
    }
    Source source = file.get();
    int end = source.text().length();
    String gap = source.text().endsWith("\n") ? "\n" : "\n\n";
    String block =
        gap
            + "allow "
            + finding.rule()
            + "\n  in             "
            + finding.subject()
            + "\n  because        \"\"\n";
    add(mends, finding, "Allow it, with a reason to fill in", new Span(source, end, end), block);
  }

  private void addLine(
      List<CodeAction> mends, Finding finding, String title, Block block, String line) {
    Span last =
        block.clauses().isEmpty()
            ? block.span()
            : block.clauses().get(block.clauses().size() - 1).span();
    Span at = new Span(last.source(), last.end(), last.end());
    add(mends, finding, title, at, "\n" + line);
  }

  private void add(List<CodeAction> mends, Finding finding, String title, Span span, String text) {
    CodeAction action = new CodeAction(title);
    action.setKind(CodeActionKind.QuickFix);
    action.setDiagnostics(List.of(Diagnostics.of(finding)));
    action.setEdit(edit(Where.path(span.source()), Where.range(span), text));
    mends.add(action);
  }

  private static WorkspaceEdit edit(Path path, Range range, String text) {
    WorkspaceEdit edit = new WorkspaceEdit();
    edit.getChanges().put(Where.uri(path), List.of(new TextEdit(range, text)));
    return edit;
  }
}
