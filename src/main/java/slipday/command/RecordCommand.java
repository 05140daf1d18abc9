package slipday.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.RecordBook;
import slipday.app.RecordTable;
import slipday.finding.Outcome;
import slipday.output.Shell;
import slipday.source.Source;

/** Adds to the record what was checked first; a mistake writes nothing. */
final class RecordCommand {
  private final Args args;
  private final Streams streams;

  private RecordCommand(Args args, Streams streams) {
    this.args = args;
    this.streams = streams;
  }

  static Spec spec(Streams streams) {
    return Spec.of(
            "Adds a line to the season's record, if it can be so.",
            "It goes into the file of its year in the folder record beside the plan.",
            "What is recorded already is not added again. With --from the rows of a table are",
            "added, all or none. --columns says which of its columns holds the date, tag,",
            "planting, plant, by, by plant, state, weight, less, sweetness, fault, or a trait",
            "by its name. A unit or a scale that ends a column's name counts for its bare",
            "figures: `Gross kg`, `Taste (of 10)`. Columns may be parted by commas, by",
            "semicolons (then a decimal may have a comma) or by tabs.")
        .words("0", "1", "PLAN", "The plan's first file.")
        .words("1..*", "0..*", "ENTRY", "The line: a date, and what was done or seen.")
        .option("--from", "FILE", "A table (CSV) with a row for each line to add.")
        .option("--columns", "A=B,...", "Which of its columns holds what, as date=Day,tag=Fruit.")
        .option("--verb", "VERB", "What its rows tell of: picked (if not said), selfed ...")
        .flag("--skip-bad", "Adds the good rows though others are bad.")
        .flag("--include-outside", "Lets the plan include files from outside its folder.")
        .examples(
            "slipday record plan.season 2026-07-15 took 3A",
            "slipday record plan.season '2026-08-19 note 3A, \"sweet\"'",
            "slipday record plan.season --from picked.csv \\",
            "    --columns 'date=Day,tag=Fruit,weight=Gross kg,flavour=Taste (of 10)'",
            "slipday record plan.season --from pollen.csv --verb sibbed \\",
            "    --columns 'date=Day,planting=Lot,plant=Mother,by plant=Father,tag=Tag'")
        .runs(a -> new RecordCommand(a, streams).run());
  }

  private int run() {
    String name = args.words("PLAN").get(0).replace('\\', '/');
    Path plan = streams.path(name);
    List<RecordBook.Wish> wishes = wishes();
    RecordBook book =
        new RecordBook(plan, name, args.has("--include-outside"), Today.latest(streams));
    Checked before = check(plan, name);
    if (before.garden().isEmpty()) {
      throw new CommandFailure(
          "`" + name + "` has mistakes, and nothing can be checked against it.",
          "See `" + Shell.command("check", name, "") + "`.");
    }
    RecordBook.Addition wanted = book.add(before, wishes);
    // Another may have written since; what is written is checked again while nobody else can.
    return isToWrite(wanted)
        ? RecordLock.holding(book.folder(), () -> write(book.add(check(plan, name), wishes)))
        : write(wanted);
  }

  private boolean isToWrite(RecordBook.Addition addition) {
    boolean stopped = !addition.refused().isEmpty() && !args.has("--skip-bad");
    return !stopped && !addition.texts().isEmpty();
  }

  private Checked check(Path plan, String name) {
    Checked checked =
        new slipday.app.Pipeline(
                FileTexts.onDisk(), args.has("--include-outside"), Today.latest(streams))
            .check(plan, name);
    if (!checked.usable()) {
      throw CommandFailure.of(checked.findings());
    }
    return checked;
  }

  private List<RecordBook.Wish> wishes() {
    String from = args.text("--from", "");
    String entry = String.join(" ", args.words("ENTRY"));
    if (from.isEmpty() == entry.isBlank()) {
      throw new CommandFailure(
          from.isEmpty() ? "Nothing is said to record." : "A line and a table don't go together.",
          "Give one line, or a table with `--from`.");
    }
    return from.isEmpty() ? List.of(new RecordBook.Wish("", entry)) : table(from);
  }

  private List<RecordBook.Wish> table(String from) {
    String columns = args.text("--columns", "");
    if (columns.isEmpty()) {
      throw new CommandFailure(
          "Nothing says which column of `" + from + "` holds what.",
          "Add `--columns`, such as `--columns date=Day,tag=Fruit`.");
    }
    Outcome<Optional<Source>> read = FileTexts.onDisk().read(streams.path(from), from);
    if (read.value().isEmpty()) {
      throw CommandFailure.of(read.findings());
    }
    Outcome<List<RecordBook.Wish>> rows =
        RecordTable.read(read.value().get().text(), args.text("--verb", "picked"), columns);
    if (!rows.findings().isEmpty()) {
      throw CommandFailure.of(rows.findings());
    }
    return rows.value();
  }

  private int write(RecordBook.Addition addition) {
    addition.refused().forEach(this::tell);
    boolean refused = !addition.refused().isEmpty();
    if (refused && !args.has("--skip-bad")) {
      streams.err().print("Nothing is recorded.\n");
      return Exit.FINDINGS;
    }
    addition
        .texts()
        .forEach((file, text) -> FileWriting.replace(file, "record/" + file.getFileName(), text));
    addition.added().forEach(l -> streams.out().print("recorded " + l + "\n"));
    addition.known().forEach(l -> streams.out().print("known already: " + l + "\n"));
    addition
        .heed()
        .forEach(
            f ->
                streams
                    .err()
                    .print(
                        f.level().name().toLowerCase(Locale.ROOT)
                            + ": "
                            + f.message()
                            + (f.help().isEmpty() ? "" : " " + f.help())
                            + "\n"));
    if (args.has("--from")) {
      streams.out().print(sum(addition));
    }
    return refused ? Exit.FINDINGS : Exit.CLEAN;
  }

  private static String sum(RecordBook.Addition addition) {
    int added = addition.added().size();
    return added
        + (added == 1 ? " row" : " rows")
        + " recorded, "
        + addition.known().size()
        + " known already, "
        + addition.refused().size()
        + " refused.\n";
  }

  private void tell(RecordBook.Refusal refusal) {
    String from = refusal.wish().from();
    String help = refusal.finding().help();
    streams
        .err()
        .print(
            (from.isEmpty() ? "" : args.text("--from", "") + ", " + from + ": ")
                + refusal.finding().message()
                + (help.isEmpty() ? "" : " " + help)
                + "\n  "
                + refusal.wish().text().strip()
                + "\n");
  }
}
