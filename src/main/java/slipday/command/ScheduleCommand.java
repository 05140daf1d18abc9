package slipday.command;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slipday.app.Checked;
import slipday.finding.Nearest;
import slipday.output.Json;
import slipday.output.ScheduleText;
import slipday.output.Tables;
import slipday.output.data.ScheduleData;
import slipday.season.PlantingSeason;
import slipday.season.Season;

@Command(
    description = {
      "Says when to sow, plant out and pollinate, and when it ripens.",
      "",
      "For each planting: early, usual and late dates, what bounds them, and what would",
      "make an impossible season possible."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday schedule plan.season",
      "  slipday schedule plan.season ropewalk-2024",
      "  slipday schedule plan.season --format csv > dates.csv"
    })
final class ScheduleCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final PlanInput plan = new PlanInput();
  @Mixin private final HelpOption help = new HelpOption();

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "PLANTING",
      description = "The plantings to show; all of them if none is named.")
  private List<String> wanted = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.OrCsv.class,
      description = "text, json or csv.")
  private Form form = Form.TEXT;

  ScheduleCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.TEXT, Form.JSON, Form.CSV);
    Checked checked = plan.read(streams);
    if (checked.season().isPresent()) {
      Season season = checked.season().get();
      ScheduleData data = ScheduleData.of(plan.name(), season, names(season));
      streams
          .out()
          .print(
              switch (form) {
                case JSON -> Json.text(data);
                case CSV -> Tables.of(data);
                default -> new ScheduleText(data, plan.ink(streams)).text();
              });
    }
    return plan.tellErrors(checked, streams);
  }

  private Set<String> names(Season season) {
    List<String> known = season.plantings().stream().map(PlantingSeason::name).toList();
    for (String name : wanted) {
      if (!known.contains(name)) {
        throw new CommandFailure(
            "There is no planting `" + name + "` in `" + plan.name() + "`.",
            Nearest.help(name, known, "planting"));
      }
    }
    return new LinkedHashSet<>(wanted);
  }
}
