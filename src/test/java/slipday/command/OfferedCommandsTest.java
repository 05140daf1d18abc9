package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.output.Shell;

/** Commands that answers offer can be typed as they stand, whatever the plan's file is called. */
class OfferedCommandsTest {
  private static final String PLAN_NAME = "Ann's plans/my plan.season";
  private static final String PLAN =
      """
      season 2026

      site hill
        place          44 N, 72 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September

      bed south
        size           20 m x 3 m

      line dunlin
        is a           acorn-squash

      lot dunlin-26
        of             dunlin
        seeds          40
        harvested      2025

      grow dunlin-26
        in             south
        plants         60, 1 m apart
        start          indoors, 3 weeks before planting out
        flowers        cover the chosen
        pollinate      self by hand, for 4 fruits
        seed           saved
      """;

  private static final Pattern OFFERED = Pattern.compile("slipday [a-z-]+ [^\\n`]*[^\\n`.]");

  @TempDir Path folder;
  private Path plan;

  @BeforeEach
  void write() throws IOException {
    plan = folder.resolve(PLAN_NAME);
    Files.createDirectories(plan.getParent());
    Files.writeString(plan, PLAN);
  }

  @ParameterizedTest
  @CsvSource({
    "schedule, why",
    "bloom, calendar",
    "lots, lots",
    "why dunlin-26, why",
    "why dunlin ripe, why",
    "today --date 2027-02-01, next-season",
    "next-season -o next~year.season, check",
  })
  void whatIsOfferedRuns(String asked, String offers) throws IOException, InterruptedException {
    List<String> words = List.of(asked.split(" "));
    offeredRuns(words, offers);
  }

  @Test
  void soDoesWhatIsOfferedOfErrors() throws IOException, InterruptedException {
    Files.writeString(plan, "season 2026\nbed x\nbed x\n");
    offeredRuns(List.of("record", "2026-05-01", "sowed dunlin-26, 9 seeds"), "check");
  }

  private void offeredRuns(List<String> asked, String offers)
      throws IOException, InterruptedException {
    java.util.ArrayList<String> args = new java.util.ArrayList<>(asked);
    args.add(1, PLAN_NAME);
    Run run = Run.in(folder, args.toArray(String[]::new));
    Matcher offered = OFFERED.matcher(run.out() + (offers.equals("next-season") ? "" : run.err()));
    assertThat(offered.find()).as(run.out() + run.err()).isTrue();
    String[] typed = words(offered.group().replace("LOT", "dunlin-26"));
    assertThat(typed[0]).isEqualTo(offers);
    assertThat(Run.in(folder, typed).exit()).as(String.join("|", typed)).isLessThan(2);
  }

  /** A command line taken apart by the shell itself. */
  private static String[] words(String line) throws IOException, InterruptedException {
    Process shell =
        new ProcessBuilder("sh", "-c", "slipday() { printf '%s\\n' \"$@\"; }; " + line).start();
    String words = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(shell.waitFor()).as(line).isZero();
    return words.split("\n");
  }

  @Test
  void aPlainPathStaysAsItIs() {
    assertThat(Shell.command("check", "plans/tern-höllow/plan_1.season", ""))
        .isEqualTo("slipday check plans/tern-höllow/plan_1.season");
    assertThat(Shell.command("lots", "a$b.season", "LOT"))
        .isEqualTo("slipday lots 'a$b.season' LOT");
  }
}
