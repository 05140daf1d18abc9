package slipday.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.finding.Outcome;
import slipday.output.Json;
import slipday.output.calendar.CalendarOptions;
import slipday.output.calendar.CalendarWriter;
import slipday.output.data.CalendarData;
import slipday.season.Season;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.Chores;
import slipday.season.chore.Gathering;
import slipday.source.Source;

final class CalendarCommand {
  private final Args args;
  private final Streams streams;
  private final String output;

  private CalendarCommand(Args args, Streams streams) {
    this.args = args;
    this.streams = streams;
    this.output = PageOutput.named(args);
  }

  static Spec spec(Streams streams) {
    return Spec.of(
            "Writes the season's chores as an iCalendar file.",
            "What is done on one evening or morning is one event, with a list. Where the file is",
            "already there, it is brought up to date: what did not change stays as it was, and",
            "what is no longer to be done is cancelled. In JSON each planting has its own.")
        .plan()
        .option(PageOutput.OPTION, "FILE", PageOutput.SAYS)
        .flag("--tasks", "Writes tasks to tick off instead of events.")
        .option(
            "--since",
            "EARLIER",
            "The earlier file to bring up to date; FILE itself if it is there.")
        .forms("ics or json.", Form.ICS, Form.JSON)
        .examples(
            "slipday calendar plan.season -o season.ics",
            "slipday calendar plan.season -o season.ics --tasks",
            "slipday calendar plan.season --since last.ics > season.ics",
            "slipday calendar plan.season --format json")
        .runs(args -> new CalendarCommand(args, streams).run());
  }

  private int run() {
    Form form = args.form(Form.ICS);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    return plan.withSeason(checked, season -> write(season, form, plan));
  }

  private void write(Season season, Form form, PlanInput plan) {
    PageOutput page = new PageOutput(args, streams, plan);
    // Before it is taken for a calendar to bring up to date.
    page.refuseToOverwrite();
    ChoreBook book = Chores.of(season);
    ChoreBook rounds = Gathering.of(book);
    String text =
        form == Form.JSON ? Json.text(CalendarData.of(plan.name(), book)) : calendar(rounds);
    int chores = (form == Form.JSON ? book : rounds).chores().size();
    page.write(text, chores + " chores");
  }

  private String calendar(ChoreBook book) {
    CalendarOptions options = new CalendarOptions(args.has("--tasks"), Today.now(streams));
    Outcome<Optional<String>> written = CalendarWriter.write(book, earlier(), options);
    return written.value().orElseThrow(() -> CommandFailure.of(written.findings()));
  }

  private Optional<Source> earlier() {
    String since = args.text("--since", "");
    String name = since.isEmpty() ? output : since;
    Path path = streams.path(name);
    if (name.isEmpty() || (since.isEmpty() && !Files.isRegularFile(path))) {
      return Optional.empty();
    }
    Outcome<Optional<Source>> read = FileTexts.onDisk().read(path, name);
    if (read.value().isEmpty()) {
      throw CommandFailure.of(read.findings());
    }
    return read.value();
  }
}
