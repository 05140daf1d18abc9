package slipday.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.app.Checked;
import slipday.choice.Candidates;
import slipday.finding.Nearest;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.Planting;
import slipday.output.CandidateQuestions;
import slipday.output.Json;
import slipday.output.Question;
import slipday.output.Questions;
import slipday.output.Shell;
import slipday.output.WhyText;
import slipday.rules.RuleCatalog;

final class WhyCommand {
  private final PlanInput plan;
  private final List<String> what;

  private WhyCommand(PlanInput plan, List<String> what) {
    this.plan = plan;
    this.what = ruleLast(what);
  }

  /** A rule may be named before the thing as well as after it. */
  private static List<String> ruleLast(List<String> what) {
    if (what.size() < 2 || !RuleCatalog.ids().contains(what.get(0))) {
      return what;
    }
    List<String> turned = new ArrayList<>(what.subList(1, what.size()));
    turned.add(what.get(0));
    return turned;
  }

  static Spec spec(Streams streams) {
    return Spec.of(
            "Says why: the chain of facts behind a date or a finding.",
            "Down to lines of the plan, weather years and crop facts with their sources.")
        .plan()
        .words(
            "1..*",
            "1..*",
            "WHAT",
            "A planting, cross, bed, lot, line, tag, plant or site, and an event, a condition, a"
                + " trait or a rule.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .examples(
            "slipday why plan.season ropewalk-2023             what can be asked of it",
            "slipday why plan.season ropewalk-2023 ripe        an event",
            "slipday why plan.season ropewalk-2023 frost       a condition",
            "slipday why plan.season long-south beds-overlap   what a rule found of it",
            "slipday why plan.season amber plant 2 sweetness   what a candidate promises",
            "slipday why plan.season beds-overlap              all that a rule found")
        .runs(
            args ->
                new WhyCommand(new PlanInput(args, streams), args.words("WHAT"))
                    .run(args.form(Form.TEXT), streams));
  }

  private int run(Form form, Streams streams) {
    Checked checked = plan.read();
    if (checked.season().isEmpty() && !asksForFinding(checked)) {
      return plan.tellErrors(checked);
    }
    Garden garden = checked.garden().orElseThrow();
    Questions questions = Questions.of(garden, checked.season(), checked.findings());
    if (checked.season().isPresent()) {
      addCandidates(garden, questions);
    }
    Asked of = Asked.of(what, questions);
    String subject = of.subject();
    boolean listOnly = of.topic().isEmpty() && questions.subjects().contains(subject);
    List<Question> asked = listOnly ? questions.about(subject) : asked(garden, questions, of);
    if (form == Form.JSON) {
      streams.out().print(Json.text(WhyText.data(plan.name(), asked, !listOnly)));
      return Exit.CLEAN;
    }
    WhyText text = WhyText.of(garden.season(), plan.ink());
    streams
        .out()
        .print(
            listOnly
                ? text.list(plan.name(), subject, asked)
                : String.join("\n", asked.stream().map(text::text).toList()));
    return Exit.CLEAN;
  }

  /** Values are worked out only where a line that has a goal, or one plant, is asked about. */
  private void addCandidates(Garden garden, Questions questions) {
    boolean plant = what.contains("plant");
    garden.goals().stream()
        .map(Goal::line)
        .filter(line -> plant || what.get(0).equals(line.name()))
        .forEach(line -> questions.add(CandidateQuestions.of(Candidates.of(garden, line))));
  }

  /** Without a season only what was found can be asked. */
  private boolean asksForFinding(Checked checked) {
    String last = what.get(what.size() - 1);
    return checked.garden().isPresent()
        && checked.findings().stream().anyMatch(f -> f.rule().equals(last));
  }

  /** A thing may be of several words, {@code rope plant 2}: the longest that is one is meant. */
  private record Asked(String subject, String topic) {
    static Asked of(List<String> words, Questions questions) {
      for (int n = words.size(); n > 0; n--) {
        Optional<String> subject = questions.subject(String.join(" ", words.subList(0, n)));
        if (subject.isPresent()) {
          return new Asked(subject.get(), String.join(" ", words.subList(n, words.size())));
        }
      }
      return new Asked(words.get(0), String.join(" ", words.subList(1, words.size())));
    }
  }

  private List<Question> asked(Garden garden, Questions questions, Asked of) {
    String subject = of.subject();
    if (!questions.subjects().contains(subject)) {
      List<Question> ofRule = of.topic().isEmpty() ? questions.ofRule(subject) : List.of();
      if (ofRule.isEmpty()) {
        throw RuleCatalog.ids().contains(subject)
            ? foundNothing(subject)
            : unknown(questions, subject);
      }
      return ofRule;
    }
    String topic = of.topic();
    return questions
        .find(subject, topic)
        .map(List::of)
        .orElseThrow(
            () -> {
              List<String> known =
                  questions.about(subject).stream().map(Question::topic).distinct().toList();
              return new CommandFailure(
                  "Nothing called `" + topic + "` can be asked of `" + subject + "`.",
                  grownOf(garden, subject)
                      .filter(planting -> questions.find(planting, topic).isPresent())
                      .map(planting -> askOf(planting, topic))
                      .orElseGet(() -> help(topic, known)));
            });
  }

  /** The first planting of a line, or in a bed: dates are worked out for plantings. */
  private static Optional<String> grownOf(Garden garden, String subject) {
    return garden.plantings().stream()
        .filter(
            p ->
                p.line().name().equals(subject)
                    || p.lot().name().equals(subject)
                    || p.bed().filter(b -> b.name().equals(subject)).isPresent())
        .map(Planting::name)
        .findFirst();
  }

  private String askOf(String planting, String topic) {
    return "Ask it of a planting: `"
        + Shell.command("why", plan.name(), planting + " " + topic)
        + "`.";
  }

  private static String help(String topic, List<String> known) {
    return known.isEmpty()
        ? "Nothing is worked out about it by itself; ask about what is grown of it or in it."
        : Nearest.help(topic, known, "question");
  }

  private CommandFailure foundNothing(String rule) {
    return new CommandFailure(
        "The rule `" + rule + "` found nothing in `" + plan.name() + "`.",
        "`slipday explain " + rule + "` says what it looks for.");
  }

  private CommandFailure unknown(Questions questions, String subject) {
    List<String> known = new ArrayList<>(questions.subjects());
    known.addAll(questions.rules());
    return new CommandFailure(
        "Nothing in `"
            + plan.name()
            + "` is called `"
            + subject
            + "`, and no rule of that name found anything.",
        Nearest.help(subject, known, "thing"));
  }
}
