package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A plan compared with itself as git keeps it, in a repository made for the test by git itself. */
class ChangesCommandTest {
  private static final String SITE =
      """
      season 2026

      include "beds.season"
      include "record"

      site hill
        place        44 N, 72 W
        time zone    America/New_York
        last frost   18 May, 1 in 10 after 30 May
        first frost  27 September, 1 in 10 before 14 September

      line amber
        is a         muskmelon

      lot amber-f3
        of           amber
        seeds        90
        harvested    2025
        tested       44 of 50 in 2026

      grow amber-f3
        in           long
        plants       12, 60 cm apart
        flowers      cover the chosen
        pollinate    self by hand, for 8 fruits
        seed         saved
      """;

  @TempDir Path repository;
  private Path garden;

  @BeforeEach
  void commitAPlan() throws IOException, InterruptedException {
    garden = Files.createDirectories(repository.resolve("the garden"));
    Files.createDirectories(garden.resolve("record"));
    Files.writeString(garden.resolve("plan.season"), SITE);
    Files.writeString(garden.resolve("beds.season"), "bed long\n  size  12 m x 1.2 m\n");
    Files.writeString(
        garden.resolve("record/2026.season"), "2026-05-12 sowed amber-f3, 16 seeds\n");
    Files.write(repository.resolve("picture.bin"), new byte[] {0, 1, (byte) 0xff, '\n', 0});
    git("init", "-q");
    git("add", "-A");
    git("-c", "user.name=a", "-c", "user.email=a@b.c", "commit", "-q", "-m", "First");
  }

  private void git(String... words) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(List.of("git", "-C", repository.toString()));
    line.addAll(List.of(words));
    assertThat(new ProcessBuilder(line).inheritIO().start().waitFor()).isZero();
  }

  private Run changes(String... more) {
    List<String> words = new ArrayList<>(List.of("changes", "--git", "HEAD", "plan.season"));
    words.addAll(List.of(more));
    return Run.in(garden, new byte[0], Run.AT_YEARS_END, false, words.toArray(String[]::new));
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(garden.resolve(file), text);
  }

  @Test
  void nothingChangedIsSaidSo() {
    Run run = changes();
    assertThat(run.out())
        .isEqualTo("plan.season at HEAD -> plan.season\n\nThe season is the same.\n");
    assertThat(run.exit()).isZero();
  }

  @Test
  void aRecordedFactMovesTheDatesAfterIt() throws IOException {
    write(
        "record/2026.season",
        "2026-05-12 sowed amber-f3, 16 seeds\n2026-07-20 first male flowers amber-f3\n");
    Run run = changes();
    assertThat(run.out()).contains("first male flowers to first fruiting flowers: 35 days later");
    assertThat(run.out()).contains("record/2026.season:2");
  }

  @Test
  void aFileThatIsNotCommittedYetIsNewsOnlyOnOneSide() throws IOException {
    write("record/2027.season", "2026-07-21 first fruiting flowers amber-f3\n");
    assertThat(changes().out()).contains("amber-f3").doesNotContain("is the same");
  }

  @Test
  void aDeletedFileIsStillThereAtTheRevision() throws IOException {
    Files.delete(garden.resolve("record/2026.season"));
    assertThat(changes().out()).contains("seeds left: 74 -> 90");
  }

  @Test
  void aFindingThatCameFailsWhereAsked() throws IOException, InterruptedException {
    write(
        "plan.season", SITE.replace("cover the chosen", "open").replaceAll("(?m)^ *pollin.*", ""));
    write(
        "beds.season",
        "bed long\n  size  12 m x 1.2 m\nneighbour n\n  grows wild-melon\n  distance 90 m\n");
    assertThat(changes().exit()).isZero();
    Run run = changes("--fail-on", "error");
    assertThat(run.out()).contains("New findings").contains("bitter-pollen");
    assertThat(run.exit()).isEqualTo(1);
    git("add", "-A");
    git("-c", "user.name=a", "-c", "user.email=a@b.c", "commit", "-q", "-m", "Second");
    assertThat(changes("--fail-on", "note").exit()).isZero();
  }

  @Test
  void aPlanThatWasNotThereIsToldPlainly() throws IOException {
    write("other.season", SITE);
    Run run = Run.in(garden, "changes", "--git", "HEAD", "other.season");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("There was no file `other.season` then.");
  }

  @Test
  void anUnknownRevisionIsToldPlainly() {
    Run run = Run.in(garden, "changes", "--git", "no-such-branch", "plan.season");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("no revision `no-such-branch`");
    assertThat(Run.in(garden, "changes", "--git", "--output=x", "plan.season").exit()).isEqualTo(2);
  }

  @Test
  void aFolderWithoutGitIsToldPlainly(@TempDir Path elsewhere) throws IOException {
    Files.writeString(elsewhere.resolve("plan.season"), SITE);
    Run run = Run.in(elsewhere, "changes", "--git", "HEAD", "plan.season");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .contains("folder is not kept in git")
        .contains("slipday changes OLD NEW")
        .doesNotContain("Name a revision");
  }
}
