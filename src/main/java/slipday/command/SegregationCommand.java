package slipday.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.app.Checked;
import slipday.finding.Nearest;
import slipday.genetics.Answer;
import slipday.genetics.InheritedRatio.Grown;
import slipday.odds.TraitCount;
import slipday.odds.TraitCounter;
import slipday.odds.Trials;
import slipday.output.Json;
import slipday.output.SegregationText;
import slipday.output.data.SegregationData;

/** Counts against ratios: of plants on record, or given as they stand. */
final class SegregationCommand {
  private static final String COUNTS = "\\d{1,7}(:\\d{1,7})+";
  private static final String EXAMPLE = "For example: slipday segregation 315:101:108:32";

  private final Args args;
  private final Streams streams;

  private SegregationCommand(Args args, Streams streams) {
    this.args = args;
    this.streams = streams;
  }

  static Spec spec(Streams streams) {
    return Spec.of(
            "Holds counts of a trait against ratios of inheritance.",
            "Counts stand in place of the plan, 315:101:108:32; or the plants on record are",
            "counted by a trait: off-type, bitter, a fault, or a trait given points. They are",
            "held against every ratio that one or two genes can give, or against one.")
        .plan()
        .words("1..*", "0..*", "TRAIT", "What the plants of the record are counted by.")
        .option("--of", "NAME", "Only of this planting, lot or line.")
        .option("--against", "RATIO", "One ratio, class by class, such as 9:3:3:1.")
        .choice(
            "--grown",
            "WHAT",
            List.of("selfed", "backcross"),
            "Only ratios of selfed F1 plants, or of a backcross.")
        .forms("text or json.", Form.TEXT, Form.JSON)
        .examples(
            "slipday segregation 315:101:108:32 --against 9:3:3:1",
            "slipday segregation 23:9 --grown selfed",
            "slipday segregation plan.season cracked --of tern-amber-f3")
        .runs(args -> new SegregationCommand(args, streams).run());
  }

  private int run() {
    Form form = args.form(Form.TEXT);
    String first = args.words("PLAN").get(0);
    List<String> trait = args.words("TRAIT");
    if (first.matches(COUNTS)) {
      if (!trait.isEmpty() || args.has("--of")) {
        throw new CommandFailure("Counts that are given need no trait or name.", EXAMPLE);
      }
      Trials trials = tried(parts(first)).match(t -> t, why -> Numbers.fail(why, EXAMPLE));
      tell(SegregationData.of(trials), form);
      return Exit.CLEAN;
    }
    return recorded(String.join(" ", trait), form);
  }

  private void tell(SegregationData data, Form form) {
    String text =
        form == Form.JSON
            ? Json.text(data)
            : new SegregationText(data, Colour.ink(args, streams)).text();
    streams.out().print(text);
  }

  private Answer<Trials> tried(List<Integer> counts) {
    Optional<Grown> grown = args.choice("--grown").map(SegregationCommand::grown);
    if (!args.has("--against")) {
      return Trials.againstAll(counts, grown);
    }
    String against = args.text("--against", "");
    if (!against.matches(COUNTS)) {
      throw new CommandFailure("`" + against + "` is not a ratio.", "For example 9:3:3:1.");
    }
    return Trials.against(counts, parts(against));
  }

  private static Grown grown(String word) {
    return word.equals("selfed") ? Grown.SELFED : Grown.BACKCROSS;
  }

  private static List<Integer> parts(String text) {
    return Arrays.stream(text.split(":", -1)).map(Integer::valueOf).toList();
  }

  private int recorded(String trait, Form form) {
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked);
    }
    TraitCounter counter = new TraitCounter(checked.season().get().garden().record());
    Set<String> known = counter.known();
    if (trait.isEmpty()) {
      throw new CommandFailure(
          "No trait is named to count the plants by.",
          known.isEmpty() ? "The record has none yet." : "On record: " + list(known));
    }
    Optional<String> of = Optional.of(args.text("--of", "")).filter(n -> !n.isEmpty());
    of.filter(name -> !counter.names().contains(name))
        .ifPresent(
            name ->
                Numbers.fail(
                    "Nothing is on record of a planting, lot or line `" + name + "`.",
                    Nearest.help(name, counter.names(), "name")));
    List<TraitCount> counts = counter.counts(trait, of);
    if (counts.isEmpty()) {
      throw new CommandFailure(
          "No plant is on record with `"
              + trait
              + "`"
              + of.map(n -> " in `" + n + "`").orElse("")
              + ".",
          Nearest.to(trait, known)
              .filter(n -> !n.equals(trait))
              .map(Nearest::meant)
              .orElse(known.isEmpty() ? "" : "On record: " + list(known)));
    }
    List<SegregationData.CountedData> told = new ArrayList<>();
    counts.forEach(
        c ->
            told.add(
                tried(c.counts())
                    .match(
                        trials -> SegregationData.counted(c, trials),
                        why -> SegregationData.refused(c, why))));
    tell(SegregationData.of(plan.name(), trait, told), form);
    return Exit.CLEAN;
  }

  private static String list(Set<String> known) {
    return String.join(", ", known) + ".";
  }
}
