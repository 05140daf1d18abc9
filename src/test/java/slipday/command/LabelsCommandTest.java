package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LabelsCommandTest {
  private static final String PLAN =
      """
      season 2026
      site hill
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      line squash
        is a acorn-squash
        purpose to keep
      lot squash-from-the-fence-by-the-barn-x
        of squash
        seeds 40
        identity unknown
      """;

  @TempDir Path folder;

  @Test
  void aLabelWhoseCautionMayBeCutOffIsNamed() throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN);
    Run run = Run.in(folder, "labels", "plan.season", "--sheet", "a4-cut", "--size", "30x15");
    assertThat(run.err())
        .isEqualTo(
            "Name and caution may not have room on the label of"
                + " `squash-from-the-fence-by-the-barn-x`: take larger labels, or write on them by"
                + " hand what is cut off.\n");
    assertThat(Run.in(folder, "labels", "plan.season").err()).isEmpty();
    assertThat(Run.in(folder, "labels", "plan.season", "--size", "30x15", "--format", "csv").err())
        .isEmpty();
  }
}
