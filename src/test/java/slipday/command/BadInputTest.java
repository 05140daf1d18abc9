package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that can't be used, or not as they are: each is told clearly, and nothing is written. */
class BadInputTest {
  private static final String SITE =
      "season 2026\nsite hill\n  place 44 N, 72 W\n  time zone America/New_York\n"
          + "  last frost 18 May\n  first frost 27 September\n";

  @TempDir Path folder;

  @BeforeEach
  void aSoundPlan() throws IOException {
    write("plan.season", SITE);
  }

  private void write(String name, String text) throws IOException {
    write(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private void write(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.write(file, bytes);
  }

  private Run run(String... args) throws IOException {
    List<String> before = listing();
    Run run = Run.in(folder, args);
    assertThat(listing()).as("files after " + List.of(args)).isEqualTo(before);
    assertThat(run.err()).doesNotContain("\tat ");
    return run;
  }

  private List<String> listing() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.map(Path::toString).sorted().toList();
    }
  }

  @Test
  void theSoundPlanIsClean() throws IOException {
    assertThat(run("check", "plan.season")).isEqualTo(new Run(0, "Nothing found.\n", ""));
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "schedule", "bloom", "climate"})
  void aMissingFileIsGuessed(String command) throws IOException {
    Run run = run(command, "plam.season");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo("slipday: There is no file `plam.season`.\nDid you mean `plan.season`?\n");
  }

  @Test
  void aFolderIsNoPlan() throws IOException {
    Files.createDirectory(folder.resolve("beds"));
    Run run = run("check", "beds");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).startsWith("slipday: `beds` is a folder, not a file.\n");
  }

  @Test
  void aBinaryIsNoPlan() throws IOException {
    write("seed.season", new byte[] {'b', 'e', 'd', 0, 1, 2});
    Run run = run("check", "seed.season");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).startsWith("slipday: `seed.season` is not a text.\n");
  }

  @Test
  void anEmptyFileLacksItsBeginning() throws IOException {
    write("empty.season", "");
    Run run = run("check", "empty.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out())
        .startsWith("error[nothing-begun]: `empty.season` says nothing yet.\n")
        .contains("Begin with two lines such as `season 2026` and `site ")
        .endsWith("\n1 error.\n");
  }

  @Test
  void theClimateOfAMistakenRecordIsToldWithAWarningThatItIs() throws IOException {
    write("plan.season", SITE + "  weather file \"w.csv\"\n");
    write("w.csv", "date,low C,high C\n2020-01-01,x,3\n2020-01-02,1,3\n");
    Run run = run("climate", "plan.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).startsWith("Climate of ");
    assertThat(run.err()).isEqualTo("1 error in this weather record: slipday check plan.season\n");
  }

  @Test
  void aFileOfCommentsSaysNothingEither() throws IOException {
    write("comments.season", "# to be written in spring\n\n");
    assertThat(run("check", "comments.season").out())
        .contains("`comments.season` says nothing yet.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE"})
  void textOfTwoBytesALetterIsCalledByItsName(String charset) throws IOException {
    write("wide.season", SITE.getBytes(Charset.forName(charset)));
    Run run = run("check", "wide.season");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            "slipday: `wide.season` is saved as UTF-16, and Slipday reads UTF-8.\n"
                + "Save the file as UTF-8 in the editor it was written with.\n");
  }

  @Test
  void textThatIsNotUtf8IsToldWithItsLine() throws IOException {
    write("latin.season", "season 2026\n# caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
    Run run = run("check", "latin.season");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo(
            "slipday: Line 2 of `latin.season` is not UTF-8.\n"
                + "Save the file as UTF-8 in the editor it was written with.\n");
  }

  @Test
  void aByteOrderMarkAndOtherLineEndsAreTaken() throws IOException {
    write("windows.season", "\uFEFF" + SITE.replace("\n", "\r\n"));
    assertThat(run("check", "windows.season").exit()).isZero();
  }

  @Test
  void theMarkStandsUnderItsPlaceBesideAByteOrderMark() throws IOException {
    write("marked.season", "\uFEFFsaeson 2026\n");
    assertThat(run("check", "marked.season").out()).contains("1 | saeson 2026\n  | ^^^^^^");
  }

  @Test
  void anIncludeThatRunsInACircleIsTold() throws IOException {
    write("a.season", SITE + "include \"b.season\"\n");
    write("b.season", "include \"a.season\"\n");
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("error[include-circle]").contains("b.season:1:9");
  }

  @Test
  void anIncludeThatIsNotThereIsToldWhereItIsWritten() throws IOException {
    write("a.season", SITE + "include \"plam.season\"\n");
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out())
        .contains("error[include-missing]: There is no file `plam.season`.")
        .contains("a.season:7:9")
        .contains("Did you mean `plan.season`?");
  }

  @Test
  void theFolderOfTheRecordMayBeYetToCome() throws IOException {
    write("a.season", SITE + "include \"record\"\n");
    assertThat(run("check", "a.season").out()).doesNotContain("include-missing");
    write("b.season", SITE + "include \"diary\"\n");
    assertThat(run("check", "b.season").out()).contains("There is no file `diary`.");
    write("recrod/c.season", "");
    assertThat(run("check", "a.season").out())
        .contains("There is no file `record`.")
        .contains("Did you mean `recrod`?");
  }

  @Test
  void anIncludeFromOutsideTakesLeave() throws IOException {
    write("inner/a.season", SITE + "include \"../beds.season\"\n");
    write("beds.season", "bed x\n");
    Run run = run("check", "inner/a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("error[include-outside]").contains("--include-outside");
    assertThat(run("check", "inner/a.season", "--include-outside").exit()).isZero();
  }

  @Test
  void theThirtiethOfFebruaryIsNoDay() throws IOException {
    write("a.season", SITE.replace("18 May", "30 February"));
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("error[impossible-date]: There is no `30 February`.");
  }

  @Test
  void weatherWithTextInANumberIsToldWithItsCell() throws IOException {
    write("a.season", SITE + "");
    write("w.csv", "date,low (C),high (C)\n2020-05-01,3,12\n2020-05-02,warm,12\n");
    write("a.season", SITE.replace("  last", "  weather file \"w.csv\"\n  last"));
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains(" w.csv:3:12").contains("warm");
    assertThat(run("schedule", "a.season").exit()).isEqualTo(1);
  }

  @Test
  void aLowAboveItsHighIsTold() throws IOException {
    write("w.csv", "date,low (C),high (C)\n2020-05-01,13,12\n");
    write("a.season", SITE.replace("  last", "  weather file \"w.csv\"\n  last"));
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains(" w.csv:2:");
  }

  @Test
  void weatherThatIsNotThereIsTold() throws IOException {
    write("a.season", SITE.replace("  last", "  weather file \"w.csv\"\n  last"));
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("error[weather-missing]: There is no file `w.csv`.");
  }

  @Test
  void twoThingsOfOneNameAreToldTogether() throws IOException {
    write("a.season", SITE + "bed x\nbed x\n");
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains("error[name-twice]").contains("a.season:8:1", "a.season:7:1");
  }

  @Test
  void aFarTooLongLineIsShownInPart() throws IOException {
    write("a.season", SITE + "bde " + "x".repeat(1_000_000) + "\n");
    Run run = run("check", "a.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 100);
    assertThat(run.out()).contains("7 | bde xxx").contains("...");
  }

  @Test
  void aTextThatSteersTheTerminalIsShownHarmless() throws IOException {
    write("a.season", SITE + "bde \u001b[31mred \u202e\n");
    String out = run("check", "a.season").out();
    assertThat(out).contains("bde \uFFFD[31mred").doesNotContain("\u001b", "\u202e");
  }

  @Test
  void standardInputIsLookedAtInItsFolder() throws IOException {
    write("inner/beds.season", "bed x\nbed x\n");
    byte[] plan = (SITE + "include \"beds.season\"\n").getBytes(StandardCharsets.UTF_8);
    Run run =
        Run.in(folder, plan, Map.of(), false, "check", "-", "--stdin-name", "inner/draft.season");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).contains(" inner/beds.season:2:1");
  }
}
