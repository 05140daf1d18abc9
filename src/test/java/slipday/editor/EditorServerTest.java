package slipday.editor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SemanticTokensParams;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The server as an editor meets it: lsp4j's client side, over bytes. */
class EditorServerTest {
  static final String PLAN =
      """
      season 2026

      include "record"

      site hill
        place          44 N, 72 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September

      # Two beds,
      # one of them shady.
      bed long-south
        size           20 m x 1.2 m

      line tern-amber
        is a           muskmelon
        purpose        to fix

      lot tern-amber-f3
        of             tern-amber
        generation     F3
        seeds          140
        harvested      2025
        tested         44 of 50 in 2026

      grow tern-amber-f3
        in             long-south
        plants         12, 60 cm apart
        start          indoors, 3 weeks before planting out
        flowers        cover the chosen
        pollinate      self by hand, for 8 fruits
        seed           saved
      """;
  private static final String RECORD =
      """
      2026-05-12 sowed tern-amber-f3, 16 seeds
      2026-07-08 selfed tern-amber-f3 plant 3, tag 3A
      2026-07-15 took 3A
      """;

  @TempDir Path folder;
  private Path plan;
  private Path record;
  private Editor editor;

  @BeforeEach
  void openThePlan() throws IOException {
    folder = folder.toRealPath();
    plan = Files.writeString(folder.resolve("plan.season"), PLAN);
    Files.createDirectories(folder.resolve("record"));
    record = Files.writeString(folder.resolve("record/2026.season"), RECORD);
    editor = new Editor();
    editor.open(plan);
  }

  @AfterEach
  void nothingWentWrong() throws IOException {
    assertThat(editor.leave()).isTrue();
    editor.close();
    assertThat(editor.log).isEmpty();
  }

  @Test
  void findingsAreToldAsOneTypes() {
    editor.type(plan, PLAN.replace("in             long-south", "in             long-suoth"));
    Diagnostic wrong = editor.awaitRule(plan, "unknown-name").get(0);
    assertThat(wrong.getSeverity()).isEqualTo(DiagnosticSeverity.Error);
    assertThat(wrong.getMessage()).contains("Did you mean `long-south`?");
    assertThat(wrong.getRange().getStart()).isEqualTo(editor.at(plan, "long-suoth", false));
    editor.type(plan, PLAN);
    editor.awaitNo(plan, "unknown-name");
  }

  @Test
  void findingsOfTheSeasonFollowWhenTypingPauses() {
    editor.type(plan, PLAN.replace("60 cm apart", "90 cm apart").replace("12,", "40,"));
    Diagnostic full = editor.awaitRule(plan, "bed-overfull").get(0);
    assertThat(full.getSeverity()).isEqualTo(DiagnosticSeverity.Warning);
  }

  @Test
  void findingsOfAnIncludedFileStandInItEvenUnsaved() {
    editor.open(record);
    editor.type(record, RECORD.replace("took 3A", "took 3B"));
    Diagnostic wrong = editor.awaitRule(record, "unknown-tag").get(0);
    assertThat(wrong.getRange().getStart().getLine()).isEqualTo(2);
    editor.type(record, RECORD);
    editor.awaitNo(record, "unknown-tag");
  }

  @Test
  void aContradictionPointsAtBothLines() {
    editor.open(record);
    editor.type(record, RECORD + "2026-07-15 failed 3A\n");
    Diagnostic wrong =
        editor
            .await(record, all -> all.stream().anyMatch(d -> !d.getRelatedInformation().isEmpty()))
            .get(0);
    assertThat(wrong.getRelatedInformation().get(0).getLocation().getUri())
        .isEqualTo(record.toUri().toString());
  }

  @Test
  void hoverTellsACropsFactsWithTheirSources() {
    Hover hover = hover(plan, "muskmelon");
    assertThat(hover.getContents().getRight().getValue()).contains("Sources").contains("[1");
  }

  @Test
  void hoverTellsWhyADateIsWhatItIs() {
    editor.awaitNo(plan, "none");
    awaitHints("sow");
    String why = hover(plan, "start ").getContents().getRight().getValue();
    assertThat(why)
        .contains("planting out")
        .contains("last frost 18 May")
        .contains("plan.season:8");
    String meaning = hover(plan, "flowers ").getContents().getRight().getValue();
    assertThat(meaning).contains("```season");
  }

  @Test
  void hoverTellsTheStoryOfATag() {
    editor.open(record);
    assertThat(hover(record, "3A").getContents().getRight().getValue())
        .contains("2026-07-08 selfed")
        .contains("2026-07-15 took");
  }

  private Hover hover(Path path, String words) {
    return Editor.get(
        editor
            .server
            .getTextDocumentService()
            .hover(new HoverParams(Editor.document(path), editor.at(path, words, false))));
  }

  @Test
  void datesStandBesideTheirClausesAndMoveWithThem() {
    String before = awaitHints("sow");
    assertThat(before).contains("sow 12 May · plant out 2 Jun").contains("ripe");
    editor.type(plan, PLAN.replace("3 weeks before", "2 weeks before"));
    assertThat(awaitHintsOtherThan(before))
        .contains("sow 12 May · plant out 26 May")
        .isNotEqualTo(before);
  }

  private String hints() {
    return editor.hints(plan).stream()
        .map(h -> h.getPosition().getLine() + " " + h.getLabel().getLeft())
        .collect(Collectors.joining("\n"));
  }

  private String awaitHints(String words) {
    return awaitHintsOtherThan("", words);
  }

  private String awaitHintsOtherThan(String other) {
    return awaitHintsOtherThan(other, "");
  }

  private String awaitHintsOtherThan(String other, String words) {
    String hints = hints();
    for (int i = 0; i < 600 && (hints.equals(other) || !hints.contains(words)); i++) {
      try {
        Thread.sleep(50);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
      hints = hints();
    }
    return hints;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "is a           | muskmelon",
        "in             | long-south",
        "of  | tern-amber",
        "grow | tern-amber-f3",
        "flowers        | cover",
        "purpose        to | fix",
        "plants         12, 60 | cm",
        "start          indoors, 3 | weeks",
        "time | zone",
      })
  void completesWhatCanStandThere(String typed, String offered) {
    String line = typed.startsWith("grow") ? typed + " " : "  " + typed + " ";
    editor.type(plan, PLAN.replaceFirst("(?m)^ *" + typed + " .*$", line));
    assertThat(editor.complete(plan, editor.at(plan, line, true))).contains(offered);
  }

  @Test
  void completesClausesWithWhatTheyMean() {
    editor.type(plan, PLAN + "  ");
    List<CompletionItem> items = editor.items(plan, editor.at(plan, PLAN + "  ", true));
    CompletionItem flowers =
        items.stream().filter(i -> i.getLabel().equals("flowers")).findFirst().orElseThrow();
    assertThat(flowers.getDocumentation().getRight().getValue()).contains("```season");
    assertThat(items).noneMatch(i -> i.getLabel().equals("last frost"));
    assertThat(items).noneMatch(i -> i.getLabel().equals("site"));
  }

  @Test
  void completesTheRecord() {
    editor.open(record);
    editor.type(record, RECORD + "2026-07-20 ");
    assertThat(editor.complete(record, editor.at(record, "2026-07-20 ", true)))
        .contains("selfed", "first male flowers", "picked");
    editor.type(record, RECORD + "2026-08-20 picked ");
    assertThat(editor.complete(record, editor.at(record, "picked ", true))).contains("3A");
    editor.type(record, RECORD + "2026-08-20 picked 3A, 1.6 ");
    assertThat(editor.complete(record, editor.at(record, "1.6 ", true))).contains("kg", "lb");
  }

  @Test
  void offersNothingInCommentsAndTexts() {
    editor.type(plan, PLAN + "# a note ");
    assertThat(editor.complete(plan, editor.at(plan, "# a note ", true))).isEmpty();
  }

  @Test
  void findsDeclarationsAndUsesAcrossFiles() {
    editor.open(record);
    Position use = editor.at(record, "tern-amber-f3", false);
    List<? extends Location> declared =
        Editor.get(
                editor
                    .server
                    .getTextDocumentService()
                    .definition(new DefinitionParams(Editor.document(record), use)))
            .getLeft();
    assertThat(declared).hasSize(1);
    assertThat(declared.get(0).getUri()).isEqualTo(plan.toUri().toString());
    assertThat(declared.get(0).getRange().getStart())
        .isEqualTo(new Position(line("lot tern-amber-f3"), 4));
    List<? extends Location> uses =
        Editor.get(
            editor
                .server
                .getTextDocumentService()
                .references(
                    new ReferenceParams(Editor.document(record), use, new ReferenceContext(true))));
    assertThat(uses).hasSize(4);
  }

  private int line(String words) {
    return (int) PLAN.substring(0, PLAN.indexOf(words)).lines().count();
  }

  @Test
  void renamesAcrossFilesAndThePlanStaysSound() {
    editor.open(record);
    editor.apply(rename(record, "tern-amber-f3", "amber-three"));
    assertThat(editor.text(plan)).contains("lot amber-three").contains("grow amber-three");
    assertThat(editor.text(record)).contains("sowed amber-three,").doesNotContain("tern-amber-f3");
    editor.awaitNo(plan, "unknown-name");
    editor.apply(rename(record, "3A", "12"));
    assertThat(editor.text(record)).contains("tag 12\n").contains("took 12\n");
    assertThatThrownBy(() -> rename(plan, "long-south", "two words"))
        .hasMessageContaining("can't be a name");
    assertThatThrownBy(() -> rename(plan, "muskmelon", "melon-of-mine"))
        .hasMessageContaining("is not declared in this plan");
  }

  private org.eclipse.lsp4j.WorkspaceEdit rename(Path path, String from, String to) {
    Position at = editor.at(path, from, false);
    return Editor.get(
        editor
            .server
            .getTextDocumentService()
            .rename(new RenameParams(Editor.document(path), at, to)));
  }

  @Test
  void outlinesAndFolds() {
    var outline =
        Editor.get(
            editor
                .server
                .getTextDocumentService()
                .documentSymbol(new DocumentSymbolParams(Editor.document(plan))));
    assertThat(outline).extracting(e -> e.getRight().getName()).contains("bed long-south");
    var folds =
        Editor.get(
            editor
                .server
                .getTextDocumentService()
                .foldingRange(new FoldingRangeRequestParams(Editor.document(plan))));
    assertThat(folds)
        .anyMatch(f -> f.getStartLine() == line("grow tern") && f.getEndLine() > f.getStartLine())
        .anyMatch(f -> "comment".equals(f.getKind()));
  }

  @Test
  void formatsAsTheCommandDoesButNoMistakenFile() {
    editor.type(plan, PLAN.replace("  is a           muskmelon", "    is a muskmelon"));
    DocumentFormattingParams params =
        new DocumentFormattingParams(Editor.document(plan), new FormattingOptions(2, true));
    var edits = Editor.get(editor.server.getTextDocumentService().formatting(params));
    assertThat(Editor.applied(editor.text(plan), List.copyOf(edits))).isEqualTo(PLAN);
    editor.type(plan, PLAN.replace("is a", "iz a"));
    assertThat(Editor.get(editor.server.getTextDocumentService().formatting(params))).isEmpty();
  }

  @Test
  void coloursWordsByWhatTheyAre() {
    List<Integer> data =
        Editor.get(
                editor
                    .server
                    .getTextDocumentService()
                    .semanticTokensFull(new SemanticTokensParams(Editor.document(plan))))
            .getData();
    assertThat(data.size() % 5).isZero();
    assertThat(data.subList(0, 10))
        .containsExactly(
            0,
            0,
            6,
            Tokens.TYPES.indexOf("keyword"),
            0,
            0,
            7,
            4,
            Tokens.TYPES.indexOf("number"),
            0);
  }

  @Test
  void aBrokenPlanNeverTakesItDown() {
    Random random = new Random(20270708);
    String junk =
        "{}()\"#,%°\t\n 0.5kg 3A 2026-02-30 grow in selfed include \"plan.season\" \uD83D";
    for (int i = 0; i < 40; i++) {
      StringBuilder text = new StringBuilder(PLAN);
      for (int cut = 0; cut < 6; cut++) {
        int from = random.nextInt(text.length());
        int to = Math.min(text.length(), from + random.nextInt(40));
        int start = random.nextInt(junk.length());
        text.replace(
            from, to, junk.substring(start, start + random.nextInt(junk.length() - start)));
      }
      editor.type(plan, text.toString());
      Position at = new Position(random.nextInt(60), random.nextInt(90));
      editor.complete(plan, at);
      editor.hints(plan);
      Editor.get(
          editor.server.getTextDocumentService().hover(new HoverParams(Editor.document(plan), at)));
      Editor.get(
          editor
              .server
              .getTextDocumentService()
              .semanticTokensFull(new SemanticTokensParams(Editor.document(plan))));
    }
    editor.type(plan, PLAN.replace("60 cm apart", "60 apart"));
    editor.awaitRule(plan, "unit-missing");
  }
}
