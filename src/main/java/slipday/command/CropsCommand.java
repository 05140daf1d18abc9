package slipday.command;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slipday.app.BuiltInCrops;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Nearest;
import slipday.garden.CropBook;
import slipday.output.CropsText;
import slipday.output.FindingsText;
import slipday.output.Ink;
import slipday.output.Json;
import slipday.output.Tables;
import slipday.output.data.CropsData;

@Command(
    description = {
      "Lists the crops, or the facts of one with their sources.",
      "",
      "Facts that are common practice, or cited from memory, are marked so."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday crops",
      "  slipday crops muskmelon",
      "  slipday crops melon --plan plan.season    with what the plan says of it"
    })
final class CropsCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final HelpOption help = new HelpOption();

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "NAME",
      description = "A crop or a species; all are listed if none is named.")
  private String name = "";

  @Option(
      names = "--plan",
      paramLabel = "PLAN",
      description = "A plan whose own crops and facts are taken in.")
  private String plan = "";

  @Option(names = "--include-outside", description = "As for `slipday check`.")
  private boolean includeOutside;

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.OrCsv.class,
      description = "text, json or csv.")
  private Form form = Form.TEXT;

  @Option(names = "--color", paramLabel = "WHEN", description = "auto, always or never.")
  private Colour colour = Colour.AUTO;

  CropsCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.TEXT, Form.JSON, Form.CSV);
    Optional<String> planName = Optional.of(plan).filter(p -> !p.isEmpty());
    Optional<CropBook> book = plan.isEmpty() ? Optional.of(BuiltInCrops.book()) : ofPlan();
    if (book.isEmpty()) {
      return Exit.FINDINGS;
    }
    CropsData data =
        name.isEmpty() ? CropsData.list(planName, book.get()) : facts(planName, book.get());
    streams
        .out()
        .print(
            switch (form) {
              case JSON -> Json.text(data);
              case CSV -> Tables.of(data);
              default -> new CropsText(data, colour.ink(streams)).text();
            });
    return Exit.CLEAN;
  }

  private CropsData facts(Optional<String> planName, CropBook book) {
    return CropsData.facts(planName, book, name)
        .orElseThrow(
            () -> {
              Set<String> known = new TreeSet<>(book.crops().keySet());
              known.addAll(book.species().keySet());
              return new CommandFailure(
                  "There is no crop or species `" + name + "`.", Nearest.help(name, known, "crop"));
            });
  }

  /** The crops of the plan; where its names are mistaken, that is said. */
  private Optional<CropBook> ofPlan() {
    Checked checked =
        new Pipeline(FileTexts.onDisk(), includeOutside).check(streams.path(plan), plan);
    if (!checked.usable()) {
      Finding why = checked.findings().get(0);
      throw new CommandFailure(why.message(), why.help());
    }
    if (checked.crops().isEmpty()) {
      List<Finding> errors =
          checked.findings().stream().filter(f -> f.level() == Level.ERROR).toList();
      streams.err().print(new FindingsText(Ink.of(false)).text(errors));
    }
    return checked.crops();
  }
}
