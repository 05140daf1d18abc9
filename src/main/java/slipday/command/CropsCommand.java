package slipday.command;

import java.util.List;
import java.util.Optional;
import slipday.app.BuiltInCrops;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.finding.Outcome;
import slipday.garden.CropBook;
import slipday.output.CropsText;
import slipday.output.FindingsText;
import slipday.output.Ink;
import slipday.output.Tables;
import slipday.output.data.CropsData;

final class CropsCommand {
  private CropsCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Lists the crops, or the facts of one with their sources.",
            "Facts that are common practice, or cited from memory, are marked so.")
        .words("0", "0..1", "NAME", "A crop or a species; all are listed if none is named.")
        .option("--plan", "PLAN", "A plan whose own crops and facts are taken in.")
        .flag("--include-outside", "Lets that plan include files from outside its folder.")
        .forms("text, json or csv.", Form.TEXT, Form.JSON, Form.CSV)
        .colour()
        .examples(
            "slipday crops",
            "slipday crops muskmelon",
            "slipday crops melon --plan plan.season    with what the plan says of it")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    Optional<String> plan = Optional.of(args.text("--plan", "")).filter(p -> !p.isEmpty());
    Optional<CropBook> book =
        plan.isEmpty()
            ? Optional.of(BuiltInCrops.book())
            : ofPlan(plan.get(), args.has("--include-outside"), streams);
    if (book.isEmpty()) {
      return Exit.FINDINGS;
    }
    List<String> name = args.words("NAME");
    CropsData data =
        name.isEmpty() ? CropsData.list(plan, book.get()) : facts(plan, book.get(), name.get(0));
    streams
        .out()
        .print(
            form.of(
                data,
                () -> Tables.of(data),
                () -> new CropsText(data, Colour.ink(args, streams)).text()));
    return Exit.CLEAN;
  }

  private static CropsData facts(Optional<String> plan, CropBook book, String name) {
    return CropsData.facts(plan, book, name)
        .orElseThrow(
            () ->
                new CommandFailure("There is no crop or species `" + name + "`.", book.help(name)));
  }

  /** The crops of the plan; where it has mistakes, they are told. */
  private static Optional<CropBook> ofPlan(String plan, boolean outside, Streams streams) {
    Outcome<Optional<CropBook>> book =
        new Pipeline(FileTexts.onDisk(), outside, Today.latest(streams))
            .crops(streams.path(plan), plan);
    if (book.value().isEmpty()) {
      throw CommandFailure.of(book.findings());
    }
    if (book.hasErrors()) {
      streams.err().print(new FindingsText(Ink.of(false)).text(book.findings()));
      return Optional.empty();
    }
    return book.value();
  }
}
