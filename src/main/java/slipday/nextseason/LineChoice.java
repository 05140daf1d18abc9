package slipday.nextseason;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import slipday.choice.Candidates;
import slipday.choice.Chooser;
import slipday.choice.Chosen;
import slipday.choice.Wish;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.Line;
import slipday.garden.record.Plants;
import slipday.genetics.Answer;

/** What {@code slipday choose} makes of a line; its candidates alone where it has no goal. */
final class LineChoice {
  private final Optional<Goal> goal;
  private final Optional<Chosen> chosen;
  private final Optional<String> refusal;
  private final Ranked ranked;

  /**
   * @param plants of the next season
   */
  LineChoice(Garden garden, Line line, int plants) {
    goal = garden.goals().stream().filter(g -> g.line().name().equals(line.name())).findFirst();
    Optional<Answer<Chosen>> answer =
        goal.map(g -> Chooser.choose(garden, line, Wish.ofPlants(plants)));
    chosen = answer.flatMap(Answer::value);
    refusal = answer.flatMap(Answer::refusal);
    ranked =
        new Ranked(chosen.map(Chosen::candidates).orElseGet(() -> Candidates.of(garden, line)));
  }

  boolean hasGoal() {
    return goal.isPresent();
  }

  Ranked ranked() {
    return ranked;
  }

  List<Chosen.Part> parts() {
    return chosen.map(Chosen::parts).orElse(List.of());
  }

  int plants() {
    return chosen.map(Chosen::plants).orElse(0);
  }

  int plantsOf(Plants plant) {
    return parts().stream()
        .filter(p -> p.plant().plant().equals(plant))
        .mapToInt(Chosen.Part::plants)
        .sum();
  }

  /** What the choice keeps to and comes to, or why there is none. */
  Optional<String> terms() {
    return chosen
        .map(LineChoice::terms)
        .or(() -> refusal.map(r -> "`slipday choose` chooses none: " + r));
  }

  private static String terms(Chosen chosen) {
    String limits =
        chosen.limits().stream().map(Chosen.Bound::says).collect(Collectors.joining(", and "));
    String index =
        chosen
            .index()
            .map(i -> String.format(Locale.ROOT, ", short of the aims by %.2f", 0.0 - i))
            .orElse(", for nothing can be valued here");
    return "The choice keeps to " + limits + index + "; it is yours to change.";
  }
}
