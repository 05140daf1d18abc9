package slipday.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

final class FormatCommand {
  private static final String STDIN = "-";

  private final Streams streams;
  private final List<String> names;
  private final boolean check;
  private final String stdinName;
  private final Form form;

  private FormatCommand(Args args, Streams streams) {
    this.streams = streams;
    this.names = args.words("PLAN");
    this.check = args.has("--check");
    this.stdinName = args.text("--stdin-name", "stdin.season");
    this.form = args.form(Form.TEXT);
  }

  static Spec spec(Streams streams) {
    return Spec.of(
            "Lays season files out in the one canonical way.",
            "Comments and meaning stay. A file with mistakes is left as it is.")
        .words(
            "0..*", "1..*", "PLAN", "The files; - for standard input, which is printed laid out.")
        .flag("--check", "Only says which files would change, with exit code 1 if any.")
        .option("--stdin-name", "NAME", "What to call standard input in messages.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .examples(
            "slipday format plan.season record/*.season",
            "slipday format --check plan.season     says whether it would change",
            "slipday format - < draft.season        prints it laid out")
        .runs(args -> new FormatCommand(args, streams).run());
  }

  private int run() {
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
