package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalendarCommandTest {
  private static final Path PLAN =
      Path.of("src/test/resources/cases/command/by-calendar-days/plan.season");

  @TempDir Path folder;

  @BeforeEach
  void thePlan() throws IOException {
    Files.copy(PLAN, folder.resolve("plan.season"));
  }

  private Run calendar(String... more) {
    String[] args = new String[more.length + 2];
    args[0] = "calendar";
    args[1] = "plan.season";
    System.arraycopy(more, 0, args, 2, more.length);
    return Run.in(folder, new byte[0], Map.of("SOURCE_DATE_EPOCH", "1800000000"), false, args);
  }

  private String text(String name) throws IOException {
    return Files.readString(folder.resolve(name));
  }

  @Test
  void itIsWrittenToTheFileOrToStandardOutput() throws IOException {
    Run run = calendar("-o", "season.ics");
    assertThat(run.err()).doesNotContain("slipday:");
    assertThat(run.out()).matches("season\\.ics: \\d+ chores\\.\n");
    assertThat(text("season.ics")).startsWith("BEGIN:VCALENDAR\r\n").endsWith("END:VCALENDAR\r\n");
    assertThat(calendar().out()).isEqualTo(text("season.ics"));
  }

  @Test
  void onceMoreGivesTheSameBytes() throws IOException {
    calendar("-o", "season.ics");
    String first = text("season.ics");
    calendar("-o", "season.ics");
    assertThat(text("season.ics")).isEqualTo(first);
  }

  @Test
  void aChangedPlanUpdatesTheFileThatIsThere() throws IOException {
    calendar("-o", "season.ics");
    Path plan = folder.resolve("plan.season");
    Files.writeString(
        plan,
        Files.readString(plan).replace("for 8 fruits from 5 plants", "for 9 fruits from 5 plants"));
    Run run = calendar("--since", "season.ics", "-o", "new.ics");
    assertThat(run.out()).startsWith("new.ics: ");
    assertThat(text("new.ics")).contains("SEQUENCE:1");
    assertThat(text("season.ics")).doesNotContain("SEQUENCE:1");
  }

  @Test
  void aFileThatIsNoCalendarIsNotOverwritten() throws IOException {
    Files.writeString(folder.resolve("season.ics"), "dear diary\n");
    Run run = calendar("-o", "season.ics");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("slipday: ");
    assertThat(text("season.ics")).isEqualTo("dear diary\n");
  }

  @Test
  void whereNothingCanBeWrittenNothingIsLeft() throws IOException {
    Run run = calendar("-o", "nowhere/season.ics");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err())
        .isEqualTo("slipday: `nowhere/season.ics` can't be written: there is no folder for it.\n");
    try (var files = Files.list(folder)) {
      assertThat(files).hasSize(1);
    }
  }

  @Test
  void aPlanWithMistakesWritesNothing() throws IOException {
    Files.writeString(folder.resolve("plan.season"), "season 2026\nbed x\nbed x\n");
    Run run = calendar("-o", "season.ics");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("error[name-twice]");
    assertThat(folder.resolve("season.ics")).doesNotExist();
  }

  @Test
  void tasksAreTasks() {
    assertThat(calendar("--tasks").out()).contains("BEGIN:VTODO").doesNotContain("BEGIN:VEVENT");
  }
}
