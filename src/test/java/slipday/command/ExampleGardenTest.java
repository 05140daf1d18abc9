package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.testing.Golden;

/** What the commands print of the example garden, in every form, beside golden files. */
class ExampleGardenTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden/tern-hollow");
  private static final String PLAN = "plans/tern-hollow/plan.season";
  private static final String MUDDLE = "plans/tern-hollow/muddle.season";

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "schedule.txt, schedule PLAN",
    "schedule.json, schedule PLAN --format json",
    "schedule.csv, schedule PLAN --format csv",
    "bloom.txt, bloom PLAN",
    "bloom.json, bloom PLAN --format json",
    "climate.txt, climate PLAN",
    "climate.json, climate PLAN --format json",
    "calendar.ics, calendar PLAN",
    "why-ripe.txt, why PLAN tern-amber-f3 ripe",
    "why-ripe.json, why PLAN tern-amber-f3 ripe --format json",
    "crops.txt, crops",
    "crop-acorn-squash.txt, crops acorn-squash",
    "crop-acorn-squash.json, crops acorn-squash --format json",
    "check.txt, check PLAN",
    "check.json, check PLAN --format json",
    "muddle-check.txt, check MUDDLE",
    "muddle-check.json, check MUDDLE --format json",
    "muddle-check.csv, check MUDDLE --format csv",
    "muddle-check.sarif, check MUDDLE --format sarif",
    "explain-bitter-pollen.txt, explain bitter-pollen",
  })
  void printsWhatItDid(String file, String command) {
    Run run = run(command);
    Golden.check(GOLDEN.resolve(file), run.out());
  }

  private static Run run(String command) {
    List<String> words =
        List.of(command.replace("PLAN", PLAN).replace("MUDDLE", MUDDLE).split(" "));
    return Run.in(Path.of(""), words.toArray(new String[0]));
  }

  @Test
  void theCleanPlanPassesAndTheMuddleDoesNot() {
    assertThat(run("check PLAN").exit()).isEqualTo(Exit.CLEAN);
    assertThat(run("check MUDDLE").exit()).isEqualTo(Exit.FINDINGS);
  }

  @Test
  void bothPlansAreInCanonicalLayout() {
    assertThat(run("format --check PLAN MUDDLE").exit()).isEqualTo(Exit.CLEAN);
  }
}
