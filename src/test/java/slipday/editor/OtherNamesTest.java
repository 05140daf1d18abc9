package slipday.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words for crops besides their names, in an editor. */
class OtherNamesTest {
  private static final String PLAN =
      """
      season 2026

      site hill
        place          44 N, 72 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September

      crop ridge-melon
        of             melon
        also called    ridgey

      line tern-amber
        is a           ridgey

      line heron
        is a           zucchini
      """;

  @TempDir Path folder;
  private Path plan;
  private Editor editor;

  @BeforeEach
  void open() throws IOException {
    plan = Files.writeString(folder.toRealPath().resolve("plan.season"), PLAN);
    editor = new Editor();
    editor.open(plan);
  }

  @AfterEach
  void close() throws IOException {
    assertThat(editor.leave()).isTrue();
    editor.close();
  }

  @Test
  void theyAreOfferedWhereACropCanStand() {
    assertThat(editor.complete(plan, editor.at(plan, "is a           z", true)))
        .contains("zucchini", "courgette")
        .doesNotContain("cantaloupe");
  }

  @Test
  void hoverTellsTheFactsOfTheCropMeant() {
    Hover hover =
        Editor.get(
            editor
                .server
                .getTextDocumentService()
                .hover(new HoverParams(Editor.document(plan), editor.at(plan, "zucchini", false))));
    assertThat(hover.getContents().getRight().getValue()).contains("courgette, of pepo");
  }

  @Test
  void theLineThatSaysSoIsFound() {
    Location said =
        Editor.get(
                editor
                    .server
                    .getTextDocumentService()
                    .definition(
                        new DefinitionParams(
                            Editor.document(plan), editor.at(plan, "is a           ridgey", true))))
            .getLeft()
            .get(0);
    assertThat(said.getRange().getStart().getLine()).isEqualTo(10);
  }
}
