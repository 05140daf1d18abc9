package slipday.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.Diagnostic;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an editor offers to mend a finding, applied: the finding is gone. */
class MendsTest {
  private static final String PLAN = EditorServerTest.PLAN.replace("include \"record\"\n\n", "");

  @TempDir Path folder;
  private Path plan;
  private Editor editor;

  @BeforeEach
  void openThePlan() throws IOException {
    plan = Files.writeString(folder.toRealPath().resolve("plan.season"), PLAN);
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
  void mendsAMistypedName() {
    editor.type(plan, PLAN.replace("is a           muskmelon", "is a           muskmellon"));
    mend("unknown-name", "Write `muskmelon`");
    editor.awaitNo(plan, "unknown-name");
    assertThat(editor.text(plan)).isEqualTo(PLAN);
  }

  @Test
  void mendsAMissingUnit() {
    editor.type(plan, PLAN.replace("60 cm apart", "60 apart"));
    mend("unit-missing", "Write `60 cm`");
    assertThat(editor.text(plan)).isEqualTo(PLAN);
  }

  @Test
  void mendsOpenFlowersByCoveringThem() {
    editor.type(
        plan,
        PLAN.replace("cover the chosen", "open").replaceFirst("(?m)^ *pollinate.*\n", "")
            + "\nneighbour over-the-fence\n  grows          wild-melon\n"
            + "  distance       90 m\n");
    mend("bitter-pollen", "Cover the chosen flowers of `tern-amber-f3`");
    assertThat(editor.text(plan)).contains("flowers        cover the chosen");
    editor.awaitNo(plan, "bitter-pollen");
  }

  @Test
  void mendsADateByTheNearestDayThatFits() {
    editor.type(
        plan,
        PLAN.replace("  flowers        cover", "  plant out on   1 May\n  flowers        cover"));
    CodeAction shift = mend("frost-after-planting", "Shift to ");
    assertThat(shift.getTitle()).contains("the nearest day that fits");
    editor.awaitNo(plan, "frost-after-planting");
  }

  @Test
  void allowsAFindingWithAReasonToFillIn() {
    editor.type(plan, PLAN.replace("60 cm apart", "90 cm apart").replace("12,", "40,"));
    mend("bed-overfull", "Allow it");
    assertThat(editor.text(plan)).endsWith("  because        \"\"\n");
    editor.type(plan, editor.text(plan).replace("\"\"", "\"trained up\""));
    editor.awaitNo(plan, "bed-overfull");
  }

  private CodeAction mend(String rule, String title) {
    Diagnostic wrong =
        editor.awaitRule(plan, rule).stream()
            .filter(d -> rule.equals(d.getCode().getLeft()))
            .findFirst()
            .orElseThrow();
    List<CodeAction> mends = editor.mends(plan, wrong);
    CodeAction mend =
        mends.stream()
            .filter(m -> m.getTitle().startsWith(title))
            .findFirst()
            .orElseThrow(
                () -> new AssertionError(mends.stream().map(CodeAction::getTitle).toList() + ""));
    editor.apply(mend.getEdit());
    return mend;
  }
}
