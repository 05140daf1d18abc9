package slipday.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slipday.app.FileTexts;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Outcome;
import slipday.format.Formatter;
import slipday.output.FindingsText;
import slipday.output.Ink;
import slipday.output.Json;
import slipday.output.data.FormatData;
import slipday.output.data.FormatData.FileState;
import slipday.source.Source;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;

@Command(
    description = {
      "Lays season files out in the one canonical way.",
      "",
      "Comments and meaning stay. A file with mistakes is left as it is."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday format plan.season record/*.season",
      "  slipday format --check plan.season     says whether it would change",
      "  slipday format - < draft.season        prints it laid out"
    })
final class FormatCommand implements Callable<Integer> {
  private static final String STDIN = "-";

  private final Streams streams;

  @Mixin private final HelpOption help = new HelpOption();

  @Parameters(
      arity = "1..*",
      paramLabel = "PLAN",
      description = "The files; - for standard input, which is printed laid out.")
  private List<String> names = List.of();

  @Option(
      names = "--check",
      description = "Changes nothing; says which files would change, with exit code 1 if any.")
  private boolean check;

  @Option(
      names = "--stdin-name",
      paramLabel = "NAME",
      description = "What to call standard input in messages.")
  private String stdinName = "stdin.season";

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.TextOrJson.class,
      description = "text or json.")
  private Form form = Form.TEXT;

  FormatCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.TEXT, Form.JSON);
    if (names.contains(STDIN) && names.size() > 1) {
      throw new CommandFailure("Standard input comes alone.", "Name files, or `-`, not both.");
    }
    List<FileState> states = new ArrayList<>();
    for (String name : names) {
      states.add(new FileState(name, one(name)));
    }
    if (form == Form.JSON) {
      streams.out().print(Json.text(FormatData.of(check, states)));
    } else if (check || !names.contains(STDIN)) {
      states.stream()
          .filter(s -> s.state().equals(FormatData.CHANGED))
          .forEach(s -> streams.out().print(s.file() + "\n"));
    }
    return exit(states);
  }

  private int exit(List<FileState> states) {
    List<String> all = states.stream().map(FileState::state).toList();
    if (all.contains(FormatData.UNUSABLE)) {
      return Exit.UNUSABLE;
    }
    boolean wouldChange = check && all.contains(FormatData.CHANGED);
    return wouldChange || all.contains(FormatData.MISTAKEN) ? Exit.FINDINGS : Exit.CLEAN;
  }

  /** Lays one file out, or says why not; returns what became of it. */
  private String one(String name) {
    boolean stdin = name.equals(STDIN);
    String called = stdin ? stdinName : name.replace('\\', '/');
    Outcome<Optional<Source>> read =
        stdin
            ? FileTexts.read(streams.in(), called)
            : FileTexts.onDisk().read(streams.path(name), called);
    if (read.value().isEmpty()) {
      tell(read.findings());
      return FormatData.UNUSABLE;
    }
    Source source = read.value().get();
    Outcome<SeasonFile> parsed = SeasonParser.parse(source);
    Outcome<String> laidOut = Formatter.format(parsed.value());
    List<Finding> mistakes =
        Stream.concat(parsed.findings().stream(), laidOut.findings().stream())
            .filter(f -> f.level() == Level.ERROR)
            .sorted(Finding.ORDER)
            .toList();
    if (!mistakes.isEmpty()) {
      tell(mistakes);
      streams.err().print("`" + called + "` has mistakes and is left as it is.\n");
      return FormatData.MISTAKEN;
    }
    return write(name, called, source.text(), laidOut.value());
  }

  private String write(String name, String called, String before, String after) {
    boolean changed = !before.equals(after);
    if (name.equals(STDIN)) {
      if (!check && form == Form.TEXT) {
        streams.out().print(after);
      }
    } else if (changed && !check) {
      FileWriting.replace(streams.path(name), called, after);
    }
    return changed ? FormatData.CHANGED : FormatData.UNCHANGED;
  }

  private void tell(List<Finding> findings) {
    streams.err().print(new FindingsText(Ink.of(false)).text(findings));
  }
}
