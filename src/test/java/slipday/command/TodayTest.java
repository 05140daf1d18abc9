package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TodayTest {
  private static final String PLAN =
      """
      season 2027
      site home
        place          45 N, 73 W
        time zone      America/New_York
        last frost     18 May
        first frost    27 September
      line ropewalk
        is a           muskmelon
      lot ropewalk-2024
        of             ropewalk
      2027-02-10 tested ropewalk-2024, 44 of 50 seeds
      2027-02-11 counted ropewalk-2024, 60 seeds
      2027-03-01 counted ropewalk-2024, 50 seeds
      """;

  @TempDir Path folder;

  private Run check(Map<String, String> env, String... more) throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN);
    String[] args = new String[more.length + 2];
    args[0] = "check";
    args[1] = "plan.season";
    System.arraycopy(more, 0, args, 2, more.length);
    return Run.in(folder, new byte[0], env, false, args);
  }

  @Test
  void whatIsDatedLaterThanTheDayAskedForIsToldOnce() throws IOException {
    Run run = check(Map.of(), "--date", "2027-02-10");
    assertThat(run.exit()).isEqualTo(Exit.FINDINGS);
    assertThat(run.out())
        .contains("`2027-02-11` has yet to come: today is 2027-02-10. One more line is dated")
        .containsOnlyOnce("date-in-future");
    assertThat(check(Map.of(), "--date", "2027-03-01").out()).doesNotContain("date-in-future");
  }

  /** 2027-02-28T23:00Z is the first of March in Kiritimati, UTC+14. */
  @Test
  void byTheClockTodayIsWhereDaysBeginFirst() throws IOException {
    assertThat(check(Map.of("SOURCE_DATE_EPOCH", "1803855600")).out())
        .doesNotContain("date-in-future");
    assertThat(check(Map.of("SOURCE_DATE_EPOCH", "1803769200")).out())
        .contains("`2027-03-01` has yet to come: today is 2027-02-28.");
  }

  private String today(String date) throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN);
    Run run = Run.in(folder, new byte[0], Map.of(), false, "today", "plan.season", "--date", date);
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void aDayOutsideTheSeasonIsToldOf() throws IOException {
    String over =
        "The season ended on 31 Dec. The next one's plan: slipday next-season plan.season";
    assertThat(today("2028-01-01")).contains(over + " -o NEXT");
    assertThat(today("2027-12-31")).doesNotContain("The season ended", "yet to begin");
    assertThat(today("2027-01-01")).doesNotContain("The season ended", "yet to begin");
    assertThat(today("2026-12-31")).contains("The season is yet to begin.");
  }

  @Test
  void theSeasonIsReckonedAllTheSame() throws IOException {
    check(Map.of());
    Run run =
        Run.in(
            folder,
            new byte[0],
            Map.of("SOURCE_DATE_EPOCH", "1769904000"),
            false,
            "lots",
            "plan.season");
    assertThat(run.out()).contains("ropewalk-2024");
    assertThat(run.exit()).isEqualTo(Exit.FINDINGS);
  }

  @Test
  void aDateThatIsNoneIsTold() throws IOException {
    Run run = check(Map.of(), "--date", "tomorrow");
    assertThat(run.exit()).isEqualTo(Exit.UNUSABLE);
    assertThat(run.err()).contains("--date takes a day such as 2026-07-15, and not `tomorrow`.");
  }
}
