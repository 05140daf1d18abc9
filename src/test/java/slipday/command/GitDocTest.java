package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.testing.CommandOnPath;
import slipday.testing.Golden;

/** What docs/git.md shows does what it says, in a repository that git itself keeps. */
class GitDocTest {
  private static final Path PAGE = Path.of("docs/git.md");
  private static final int MERGES = Integer.getInteger("merges", 25);
  private static final String PLAN =
      """
      season 2026

      include "record"

      site hill
        place          44 N, 72 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September

      bed long
        size           20 m x 1.2 m

      line amber
        is a           muskmelon

      lot amber-f3
        of             amber
        seeds          90
        harvested      2025
        tested         44 of 50 in 2026

      grow amber-f3
        in             long
        plants         12, 60 cm apart
        flowers        cover the chosen
        pollinate      self by hand, for 4 fruits
        seed           saved
      """;

  @TempDir Path folder;
  private Path garden;

  @BeforeEach
  void aGardenInGit() throws IOException, InterruptedException {
    garden = Files.createDirectories(folder.resolve("garden/record")).getParent();
    git("init", "-q", "-b", "main");
    write("plan.season", PLAN);
    write("record/2026.season", "2026-05-12 sowed amber-f3, 16 seeds\n");
    write(".gitattributes", block(".gitattributes"));
    commit();
  }

  /** A block of the page by the name in the comment above it. */
  private static String block(String name) {
    String page = Golden.read(PAGE);
    int at = page.indexOf("<!-- file " + name + " -->");
    assertThat(at).as(name).isNotNegative();
    int from = page.indexOf('\n', page.indexOf("```", at)) + 1;
    return page.substring(from, page.indexOf("```", from));
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(garden.resolve(file), text);
  }

  private record Told(int exit, String said) {}

  private Told run(String... words) throws IOException, InterruptedException {
    Path said = folder.resolve("said.txt");
    ProcessBuilder builder =
        new ProcessBuilder(words)
            .directory(garden.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile());
    builder.environment().put("PATH", CommandOnPath.in(folder.resolve("bin")));
    for (String who : List.of("AUTHOR", "COMMITTER")) {
      builder.environment().put("GIT_" + who + "_NAME", "gardener");
      builder.environment().put("GIT_" + who + "_EMAIL", "gardener@hill.example");
    }
    int exit = builder.start().waitFor();
    return new Told(exit, Files.readString(said, StandardCharsets.UTF_8));
  }

  private String git(String... words) throws IOException, InterruptedException {
    List<String> line = new ArrayList<>(List.of("git"));
    line.addAll(List.of(words));
    Told told = run(line.toArray(String[]::new));
    assertThat(told.exit).as(told.said).isZero();
    return told.said;
  }

  private void commit() throws IOException, InterruptedException {
    git("add", "-A");
    git("commit", "-q", "-m", "Write it down");
  }

  private static String fact(int n) {
    return "2026-07-" + (10 + n % 20) + " selfed amber-f3 plant " + (1 + n % 12) + ", tag T" + n;
  }

  /** Both sides add lines where they like, move some, and add some of the other's. */
  private Set<String> edit(Random random, Set<String> facts) throws IOException {
    List<String> lines =
        new ArrayList<>(Files.readString(garden.resolve("record/2026.season")).lines().toList());
    Set<String> added = new TreeSet<>();
    for (int i = 0; i <= random.nextInt(6); i++) {
      String fact = fact(random.nextInt(60));
      if (!lines.contains(fact)) {
        lines.add(random.nextBoolean() ? lines.size() : random.nextInt(lines.size() + 1), fact);
        added.add(fact);
      }
    }
    if (random.nextInt(4) == 0) {
      Collections.rotate(lines, 1);
    }
    facts.addAll(added);
    write("record/2026.season", String.join("\n", lines) + "\n");
    return added;
  }

  @Test
  void aMergeKeepsWhatBothGardenersWrote() throws IOException, InterruptedException {
    Random random = new Random(20270710);
    Set<String> facts = new TreeSet<>();
    for (int merge = 0; merge < MERGES; merge++) {
      git("checkout", "-q", "-b", "other" + merge);
      edit(random, facts);
      git("commit", "-q", "-a", "--allow-empty", "-m", "One");
      git("checkout", "-q", "main");
      edit(random, facts);
      git("commit", "-q", "-a", "--allow-empty", "-m", "Other");
      git("merge", "-q", "--no-edit", "other" + merge);
      List<String> lines = Files.readString(garden.resolve("record/2026.season")).lines().toList();
      assertThat(lines).as("after merge %d", merge).containsAll(facts);
      assertThat(lines).contains("2026-05-12 sowed amber-f3, 16 seeds");
      assertThat(lines).allMatch(l -> l.isEmpty() || l.startsWith("2026-"));
    }
    assertThat(facts).hasSizeGreaterThan(20);
    Run check = Run.in(garden, new byte[0], Run.AT_YEARS_END, false, "check", "plan.season");
    assertThat(check.out()).doesNotContain("syntax").doesNotContain("conflict");
    Run lots = Run.in(garden, new byte[0], Run.AT_YEARS_END, false, "lots", "plan.season");
    assertThat(lots.out()).contains(" 74 ");
  }

  @Test
  void withoutTheAttributeGitAsksInsteadOfKeepingBoth() throws IOException, InterruptedException {
    Files.delete(garden.resolve(".gitattributes"));
    commit();
    git("checkout", "-q", "-b", "other");
    write("record/2026.season", fact(1) + "\n");
    git("commit", "-q", "-a", "-m", "One");
    git("checkout", "-q", "main");
    write("record/2026.season", fact(2) + "\n");
    git("commit", "-q", "-a", "-m", "Other");
    assertThat(run("git", "merge", "-q", "--no-edit", "other").exit).isNotZero();
    Run check = Run.in(garden, "check", "plan.season");
    assertThat(check.exit()).isEqualTo(1);
    assertThat(check.out()).contains("2026.season");
  }

  @Test
  void theHookRefusesWhatIsWrongAndTellsWhatChanges() throws IOException, InterruptedException {
    Path hook = garden.resolve(".git/hooks/pre-commit");
    Files.createDirectories(garden.resolve(".git/hooks"));
    Files.writeString(hook, block("pre-commit"));
    assertThat(hook.toFile().setExecutable(true)).isTrue();

    write("plan.season", PLAN.replace("seeds          90", "seeds 90"));
    git("add", "-A");
    Told loose = run("git", "commit", "-q", "-m", "Loose");
    assertThat(loose.exit).isNotZero();
    assertThat(loose.said).contains("Lay them out first: slipday format plan.season");

    write("plan.season", PLAN.replace("in             long", "in             lung"));
    git("add", "-A");
    Told wrong = run("git", "commit", "-q", "-m", "Wrong");
    assertThat(wrong.exit).isNotZero();
    assertThat(wrong.said).contains("unknown-name").contains("`long`");

    write("plan.season", PLAN.replace("for 4 fruits", "for 6 fruits"));
    git("add", "-A");
    Told right = run("git", "commit", "-q", "-m", "More fruits");
    assertThat(right.said).contains("fruits wanted: 4 -> 6");
    assertThat(right.exit).isZero();
    assertThat(git("status", "--porcelain")).isEmpty();
  }

  @Test
  void theReviewAndTheServerWriteTheirFiles() throws IOException, InterruptedException {
    git("checkout", "-q", "-b", "more");
    write("plan.season", PLAN.replace("for 4 fruits", "for 6 fruits"));
    commit();
    assertThat(run("sh", "-c", block("review")).exit).isZero();
    assertThat(Files.readString(garden.resolve("changes.md")))
        .startsWith("# `plan.season at main` -> `plan.season`")
        .contains("- `amber-f3`, fruits wanted: 4 -> 6");

    assertThat(run("sh", "-c", block("server")).exit).isZero();
    assertThat(Files.readString(garden.resolve("findings.sarif"))).contains("\"2.1.0\"");
    write("plan.season", PLAN.replace("in             long", "in             lung"));
    Told wrong = run("sh", "-c", block("server"));
    assertThat(wrong.exit).isEqualTo(1);
    assertThat(wrong.said).contains("unknown-name");
    assertThat(Files.readString(garden.resolve("findings.sarif"))).contains("unknown-name");
    Files.delete(garden.resolve("plan.season"));
    assertThat(run("sh", "-c", block("server")).exit).isEqualTo(2);
  }

  @Test
  void everyBlockOfThePageIsOneThatATestRuns() {
    long blocks = Golden.read(PAGE).lines().filter(l -> l.matches("```\\w+")).count();
    long named = Golden.read(PAGE).lines().filter(l -> l.startsWith("<!-- file ")).count();
    assertThat(blocks - named).as("blocks that show a folder, not a file").isEqualTo(1);
  }
}
