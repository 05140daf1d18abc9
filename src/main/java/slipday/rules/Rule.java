package slipday.rules;

import slipday.finding.Level;
import slipday.season.Season;

/**
 * One thing a plan can break. Its id names the problem, so that {@code allow} reads well before it;
 * its page says what it means.
 */
public interface Rule {
  /** In lower case, with hyphens: {@code beds-overlap}. */
  String id();

  /** The level of its findings. */
  Level level();

  /** The level of its milder cases, for a rule that has some; its page says which. */
  default Level milderLevel() {
    return level();
  }

  void check(Season season, Reporter reporter);
}
