package slipday.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.output.Json;
import slipday.output.calendar.CalendarOptions;
import slipday.output.calendar.CalendarWriter;
import slipday.output.data.CalendarData;
import slipday.season.Season;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.Chores;
import slipday.source.Source;

@Command(
    description = {
      "Writes the season's chores as an iCalendar file.",
      "",
      "Where the file is already there, it is brought up to date: what did not change stays",
      "as it was, and what is no longer to be done is cancelled."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday calendar plan.season -o season.ics",
      "  slipday calendar plan.season -o season.ics --tasks     as tasks to tick off",
      "  slipday calendar plan.season --since last.ics > season.ics",
      "  slipday calendar plan.season --format json"
    })
final class CalendarCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final PlanInput plan = new PlanInput();
  @Mixin private final HelpOption help = new HelpOption();

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "The file to write; standard output if none is named.")
  private String output = "";

  @Option(names = "--tasks", description = "Writes tasks to tick off instead of events.")
  private boolean tasks;

  @Option(
      names = "--since",
      paramLabel = "EARLIER",
      description = "The earlier file to bring up to date; FILE itself if it is there.")
  private String since = "";

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.IcsOrJson.class,
      description = "ics or json.")
  private Form form = Form.ICS;

  CalendarCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.ICS, Form.JSON);
    Checked checked = plan.read(streams);
    if (checked.season().isPresent()) {
      write(checked.season().get());
    }
    return plan.tellErrors(checked, streams);
  }

  private void write(Season season) {
    ChoreBook book = Chores.of(season);
    String text =
        form == Form.JSON ? Json.text(CalendarData.of(plan.name(), book)) : calendar(book);
    if (output.isEmpty()) {
      streams.out().print(text);
    } else {
      FileWriting.replace(streams.path(output), output, text);
      streams.out().print(output + ": " + book.chores().size() + " chores.\n");
    }
  }

  private String calendar(ChoreBook book) {
    CalendarOptions options = new CalendarOptions(tasks, stamp());
    Outcome<Optional<String>> written = CalendarWriter.write(book, earlier(), options);
    return written
        .value()
        .orElseThrow(
            () -> {
              Finding why = written.findings().get(0);
              return new CommandFailure(why.message(), why.help());
            });
  }

  private Optional<Source> earlier() {
    String name = since.isEmpty() ? output : since;
    Path path = streams.path(name);
    if (name.isEmpty() || (since.isEmpty() && !Files.exists(path))) {
      return Optional.empty();
    }
    Outcome<Optional<Source>> read = FileTexts.onDisk().read(path, name);
    if (read.value().isEmpty()) {
      Finding why = read.findings().get(0);
      throw new CommandFailure(why.message(), why.help());
    }
    return read.value();
  }

  /** When this run was; builds that must be repeatable say it in SOURCE_DATE_EPOCH. */
  private Instant stamp() {
    String fixed = streams.env().getOrDefault("SOURCE_DATE_EPOCH", "");
    return fixed.matches("\\d{1,12}")
        ? Instant.ofEpochSecond(Long.parseLong(fixed))
        : Instant.now();
  }
}
