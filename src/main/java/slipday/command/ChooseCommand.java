package slipday.command;

import java.util.List;
import java.util.Optional;
import slipday.choice.Chooser;
import slipday.choice.Chosen;
import slipday.choice.Wish;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.genetics.parents.Question;
import slipday.output.ChooseTable;
import slipday.output.ChooseText;
import slipday.output.data.ChooseData;

/** The fruits of a line whose seed goes on. */
final class ChooseCommand {
  private static final String TAGS = "TAG";
  private static final int MOST = 10_000;

  private ChooseCommand() {}

  static Spec spec(Streams streams) {
    return Spec.of(
            "Chooses the fruits of a line whose seed goes on.",
            "The best set by the line's goal that keeps to a floor on seed parents, and on the",
            "effective size or under a cap on coancestry where that is asked: how many plants",
            "to grow of each, what to expect of them, and what the limits cost.")
        .plan()
        .words("1", "1", LineArgument.LABEL, "The line, as the plan calls it.")
        .words("2..*", "0..*", TAGS, "The fruits that --what-if keeps or drops.")
        .option("--parents", "N", "The fewest seed parents; the goal's if not said.")
        .option("--effective-size", "N", "The least effective size, by all parents' shares.")
        .option("--coancestry", "FIGURE", "The most mean coancestry, such as 0.6.")
        .option("--plants", "N", "Plants of the next generation; as many as now if not said.")
        .choice(
            "--what-if",
            "WHAT",
            List.of("keep", "drop"),
            "Keeps or drops fruits as well, and shows the difference.")
        .forms("text, json or csv.", Form.TEXT, Form.JSON, Form.CSV)
        .examples(
            "slipday choose plan.season tern-amber",
            "slipday choose plan.season tern-amber --parents 5 --plants 20",
            "slipday choose plan.season tern-amber --what-if drop 3A")
        .runs(args -> run(args, streams));
  }

  private static int run(Args args, Streams streams) {
    Form form = args.form(Form.TEXT);
    Optional<String> whatIf = args.choice("--what-if");
    List<String> tags = args.words(TAGS);
    if (whatIf.isPresent() == tags.isEmpty()) {
      throw new CommandFailure(
          whatIf.isPresent()
              ? "--what-if needs the tag of a fruit."
              : "What is to become of `" + tags.get(0) + "` is not said.",
          "For example: --what-if drop 3A");
    }
    Wish wish = wish(args, List.of(), List.of());
    PlanInput plan = new PlanInput(args, streams);
    return plan.withSeason(
        season -> {
          Line line = LineArgument.of(args, season.garden(), plan.name());
          Chosen chosen = choose(season.garden(), line, wish);
          Optional<Chosen> other =
              whatIf.map(
                  w ->
                      choose(
                          season.garden(),
                          line,
                          w.equals("keep")
                              ? wish(args, tags, List.of())
                              : wish(args, List.of(), tags)));
          ChooseData data = ChooseData.of(plan.name(), season, chosen);
          String says = whatIf.orElse("") + " " + String.join(", ", tags);
          ChooseData told = other.map(o -> data.with(says, o)).orElse(data);
          streams
              .out()
              .print(
                  form.of(
                      told,
                      () -> ChooseTable.of(told),
                      () -> new ChooseText(told, chosen, other, plan.ink()).text()));
        });
  }

  private static Chosen choose(Garden garden, Line line, Wish wish) {
    return Chooser.choose(garden, line, wish).match(c -> c, why -> Numbers.fail(why, ""));
  }

  private static Wish wish(Args args, List<String> keep, List<String> drop) {
    return new Wish(
        number(args, "--parents", Question.MOST_PARTS),
        figure(args, "--effective-size", 1, MOST),
        figure(args, "--coancestry", 0, 1),
        number(args, "--plants", Question.MOST_PARTS),
        keep,
        drop);
  }

  private static Optional<Integer> number(Args args, String option, int most) {
    return args.has(option)
        ? Optional.of(Numbers.whole(args, option, 1, most, 1))
        : Optional.empty();
  }

  private static Optional<Double> figure(Args args, String option, double least, double most) {
    if (!args.has(option)) {
      return Optional.empty();
    }
    String text = args.text(option, "");
    Optional<Double> figure =
        text.matches("\\d{1,6}(\\.\\d{1,6})?|\\.\\d{1,6}")
            ? Optional.of(Double.parseDouble(text)).filter(f -> f >= least && f <= most)
            : Optional.empty();
    return Optional.of(
        figure.orElseGet(
            () ->
                Numbers.fail(
                    option
                        + " takes a figure from "
                        + slipday.measure.Quantity.plain(least)
                        + " to "
                        + slipday.measure.Quantity.plain(most)
                        + ", and not `"
                        + text
                        + "`.",
                    "")));
  }
}
