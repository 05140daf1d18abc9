package slipday.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import slipday.app.Checked;
import slipday.finding.Nearest;
import slipday.garden.Garden;
import slipday.output.Json;
import slipday.output.Question;
import slipday.output.Questions;
import slipday.output.WhyText;

@Command(
    description = {
      "Says why: the chain of facts behind a date or a finding.",
      "",
      "Down to lines of the plan, weather years and crop facts with their sources."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  slipday why plan.season ropewalk-2024             what can be asked of it",
      "  slipday why plan.season ropewalk-2024 ripe        an event",
      "  slipday why plan.season ropewalk-2024 frost       a condition",
      "  slipday why plan.season long-south beds-overlap   what a rule found of it",
      "  slipday why plan.season beds-overlap              all that a rule found"
    })
final class WhyCommand implements Callable<Integer> {
  private final Streams streams;

  @Mixin private final PlanInput plan = new PlanInput();
  @Mixin private final HelpOption help = new HelpOption();

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "WHAT",
      description = "A planting, cross, bed, lot or site, and an event, a condition or a rule.")
  private List<String> what = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORM",
      completionCandidates = Form.TextOrJson.class,
      description = "text or json.")
  private Form form = Form.TEXT;

  WhyCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    form.oneOf(Form.TEXT, Form.JSON);
    Checked checked = plan.read(streams);
    if (checked.season().isEmpty() && !asksForFinding(checked)) {
      return plan.tellErrors(checked, streams);
    }
    Garden garden = checked.garden().orElseThrow();
    Questions questions = Questions.of(garden, checked.season(), checked.findings());
    String subject = what.get(0);
    boolean listOnly = what.size() == 1 && questions.subjects().contains(subject);
    List<Question> asked = listOnly ? questions.about(subject) : asked(questions);
    if (form == Form.JSON) {
      streams.out().print(Json.text(WhyText.data(plan.name(), asked, !listOnly)));
      return Exit.CLEAN;
    }
    WhyText text = WhyText.of(garden.season(), plan.ink(streams));
    streams
        .out()
        .print(
            listOnly
                ? text.list(plan.name(), subject, asked)
                : String.join("\n", asked.stream().map(text::text).toList()));
    return Exit.CLEAN;
  }

  /** Without a season only what was found can be asked. */
  private boolean asksForFinding(Checked checked) {
    String last = what.get(what.size() - 1);
    return checked.garden().isPresent()
        && checked.findings().stream().anyMatch(f -> f.rule().equals(last));
  }

  private List<Question> asked(Questions questions) {
    String subject = what.get(0);
    if (!questions.subjects().contains(subject)) {
      List<Question> ofRule = what.size() == 1 ? questions.ofRule(subject) : List.of();
      if (ofRule.isEmpty()) {
        throw unknown(questions, subject);
      }
      return ofRule;
    }
    String topic = String.join(" ", what.subList(1, what.size()));
    return questions
        .find(subject, topic)
        .map(List::of)
        .orElseThrow(
            () -> {
              List<String> known =
                  questions.about(subject).stream().map(Question::topic).distinct().toList();
              return new CommandFailure(
                  "Nothing called `" + topic + "` can be asked of `" + subject + "`.",
                  Nearest.help(topic, known, "question"));
            });
  }

  private CommandFailure unknown(Questions questions, String subject) {
    List<String> known = new ArrayList<>(questions.subjects());
    known.addAll(questions.rules());
    return new CommandFailure(
        "Nothing in `"
            + plan.name()
            + "` is called `"
            + subject
            + "`, and no rule of that name"
            + " found anything.",
        Nearest.help(subject, known, "thing"));
  }
}
