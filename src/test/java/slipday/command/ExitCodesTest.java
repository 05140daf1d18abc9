package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A script is told of errors in a plan by whatever command it runs. */
class ExitCodesTest {
  private static final Path GARDEN = Path.of("plans/tern-hollow").toAbsolutePath();

  private static Run run(String command) {
    return Run.in(GARDEN, command.replaceFirst(" |$", " muddle.season ").strip().split(" "));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "schedule",
        "bloom",
        "today",
        "calendar",
        "sheet",
        "labels",
        "report",
        "lots",
        "tags",
        "store",
        "candidates tern-amber",
        "progress tern-amber",
        "descent tern-amber-f3",
        "next-season -o -",
      })
  void theResultStandsAndTheErrorsAreCounted(String command) {
    Run run = run(command);
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).isNotEmpty();
    assertThat(run.err()).endsWith("errors in this plan: slipday check muddle.season\n");
  }

  @Test
  void anAnswerToWhyIsAllThatWasAsked() {
    assertThat(run("why tern-amber-f3").exit()).isZero();
    assertThat(run("climate").exit()).isZero();
  }
}
