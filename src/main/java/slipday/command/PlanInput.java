package slipday.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.garden.Garden;
import slipday.output.FindingsText;
import slipday.output.Ink;
import slipday.output.Shell;
import slipday.season.Season;

/** The plan a command is about, and how it is read. */
final class PlanInput {
  private final Args args;
  private final Streams streams;
  private final FileTexts texts = FileTexts.onDisk();
  private final boolean stdin;
  private final String name;

  PlanInput(Args args, Streams streams) {
    this.args = args;
    this.streams = streams;
    String plan = args.words("PLAN").get(0);
    this.stdin = plan.equals("-");
    String called = stdin ? args.text("--stdin-name", "stdin.season") : plan;
    this.name = called.replace('\\', '/');
  }

  /** The plan as it is called in results. */
  String name() {
    return name;
  }

  Ink ink() {
    return Colour.ink(args, streams);
  }

  /**
   * The plan, checked.
   *
   * @throws CommandFailure if its first file can't be used
   */
  Checked read() {
    return read(Today.latest(streams));
  }

  /**
   * The plan, checked.
   *
   * @param today what is recorded of later days is in the future
   * @throws CommandFailure if its first file can't be used
   */
  Checked read(LocalDate today) {
    return read(today, garden -> {});
  }

  /**
   * The plan, checked.
   *
   * @param today what is recorded of later days is in the future
   * @param named is handed a sound garden before its season is reckoned
   * @throws CommandFailure if its first file can't be used
   */
  Checked read(LocalDate today, Consumer<Garden> named) {
    Pipeline pipeline = new Pipeline(texts, args.has("--include-outside"), today, named);
    Path path = streams.path(name);
    Checked checked = stdin ? pipeline.check(streams.in(), name, path) : pipeline.check(path, name);
    if (!checked.usable()) {
      throw CommandFailure.of(checked.findings());
    }
    return checked;
  }

  /**
   * @param file to be written
   * @param called as the user named it
   * @throws CommandFailure if that is one of the files the plan was read from
   */
  void refuseToOverwrite(Path file, String called) {
    if (texts.hasRead(file)) {
      throw new CommandFailure(
          "`" + called + "` is one of the files that were read, and is left as it is.",
          "Name another file to write.");
    }
  }

  /**
   * Does with the plan's season what a command is for, if there is one, and then says what errors
   * stand in the plan.
   *
   * @return the exit code they call for
   */
  int withSeason(Consumer<Season> does) {
    return withSeason(read(), does);
  }

  /** The same of a plan that is read. */
  int withSeason(Checked checked, Consumer<Season> does) {
    checked.season().ifPresent(does);
    return tellErrors(checked);
  }

  /**
   * Says on the stream of messages what errors stand in the plan.
   *
   * @return the exit code they call for
   */
  int tellErrors(Checked checked) {
    return tellErrors(checked, "plan", finding -> true);
  }

  /** The same of what is amiss with the weather record alone. */
  int tellWeatherErrors(Checked checked) {
    return tellErrors(checked, "weather record", f -> f.rule().startsWith("weather-"));
  }

  private int tellErrors(Checked checked, String where, Predicate<Finding> told) {
    List<Finding> errors =
        checked.findings().stream()
            .filter(f -> f.level() == Level.ERROR && f.allowed().isEmpty())
            .filter(told)
            .toList();
    if (errors.isEmpty()) {
      return Exit.CLEAN;
    }
    if (checked.season().isEmpty()) {
      streams.err().print(new FindingsText(Ink.of(false)).text(errors));
      streams.err().print(FindingsText.count(errors));
      return Exit.FINDINGS;
    }
    // The result stands; what the rules hold against the plan is told by `check`.
    String count = FindingsText.count(errors).strip().replaceFirst("\\.$", "");
    streams
        .err()
        .print(count + " in this " + where + ": " + Shell.command("check", name(), "") + "\n");
    return Exit.FINDINGS;
  }
}
