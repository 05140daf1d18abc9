package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NextSeasonCommandTest {
  private static final String PLAN =
      """
      season 2026
      include "record"
      site home
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed south
        size 8 m x 1.2 m
      line ember
        is a muskmelon
        purpose to keep
      lot ember-2024
        of ember
        seeds 60
        harvested 2024
      grow ember-2024
        in south
        plants 6, 60 cm apart
      """;

  @TempDir Path folder;

  @BeforeEach
  void thePlan() throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN);
    Files.createDirectory(folder.resolve("record"));
    Files.writeString(
        folder.resolve("record/2026.season"), "2026-05-20 sowed ember-2024, 10 seeds\n");
  }

  private Run next(String... more) {
    String[] args =
        Stream.concat(Stream.of("next-season", "plan.season"), Stream.of(more))
            .toArray(String[]::new);
    return Run.in(folder, args);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void theFileHoldsWhatIsPrintedAndNothingElseIsLeft() throws IOException {
    Run run = next("-o", "next.season");
    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    String printed = next("-o", "-").out();
    assertThat(Files.readString(folder.resolve("next.season"))).isEqualTo(printed);
    assertThat(printed).contains("season 2027\n", "include \"record\"\n", "  seeds          50\n");
    assertThat(names()).containsExactly("next.season", "plan.season", "record");
  }

  @Test
  void nothingThatIsThereIsTouched() throws IOException {
    Path there = folder.resolve("next.season");
    Files.writeString(there, "mine\n");
    Run run = next("-o", "next.season");
    assertThat(run.exit()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.err()).contains("`next.season` is there already, and is left as it is.");
    assertThat(run.out()).isEmpty();
    assertThat(Files.readString(there)).isEqualTo("mine\n");
    assertThat(next("-o", "record").exit()).isEqualTo(Exit.UNUSABLE);
    assertThat(names()).containsExactly("next.season", "plan.season", "record");
  }

  /** A link that leads nowhere is there, too. */
  @Test
  void aLinkIsNotFollowed() throws IOException {
    Files.createSymbolicLink(folder.resolve("next.season"), folder.resolve("gone/away.season"));
    assertThat(next("-o", "next.season").exit()).isEqualTo(Exit.UNUSABLE);
    assertThat(Files.isSymbolicLink(folder.resolve("next.season"))).isTrue();
  }

  /** Between looking and writing somebody may be quicker. */
  @Test
  void whoeverComesFirstKeepsThePlace() throws IOException {
    Path there = folder.resolve("next.season");
    Files.writeString(there, "mine\n");
    assertThat(
            org.assertj.core.api.Assertions.catchThrowable(
                () -> FileWriting.create(there, "next.season", "yours\n")))
        .isInstanceOf(CommandFailure.class)
        .hasMessageContaining("is there already");
    assertThat(Files.readString(there)).isEqualTo("mine\n");
    assertThat(names()).containsExactly("next.season", "plan.season", "record");
  }

  @Test
  void aPlanWithMistakesHasNoNext() throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN.replace("of ember", "of embers"));
    Run run = next("-o", "next.season");
    assertThat(run.exit()).isEqualTo(Exit.FINDINGS);
    assertThat(run.err()).contains("embers");
    assertThat(names()).containsExactly("plan.season", "record");
  }
}
