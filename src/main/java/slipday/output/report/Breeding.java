package slipday.output.report;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import slipday.choice.Candidates;
import slipday.choice.Chooser;
import slipday.choice.Chosen;
import slipday.choice.Progress;
import slipday.choice.Wish;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.genetics.Answer;

/**
 * What the page tells of lines that have a goal. It rests on garden and record alone, so that it
 * can be reckoned before the season is.
 *
 * @param lines by the line's name, in the order of the goals
 */
public record Breeding(Map<String, OfLine> lines) {
  /**
   * A line's.
   *
   * @param chosen whose seed goes on, or why none can
   */
  record OfLine(Candidates candidates, Answer<Chosen> chosen, Progress progress) {}

  /** The longest of what a page waits for. */
  public static Breeding of(Garden garden) {
    Map<String, OfLine> lines = new LinkedHashMap<>();
    for (Goal goal : garden.goals()) {
      Answer<Chosen> chosen = Chooser.choose(garden, goal.line(), Wish.none());
      Candidates candidates =
          chosen
              .value()
              .map(Chosen::candidates)
              .orElseGet(() -> Candidates.of(garden, goal.line()));
      Progress progress = Progress.of(garden, goal.line());
      lines.put(goal.line().name(), new OfLine(candidates, chosen, progress));
    }
    return new Breeding(lines);
  }

  /** Of a line; empty where it has no goal. */
  Optional<OfLine> of(String line) {
    return Optional.ofNullable(lines.get(line));
  }
}
