package slipday.garden.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;

/** What is recorded of days that have yet to come. */
public final class Ahead {
  private Ahead() {}

  /**
   * One finding for all of it, at the first.
   *
   * @param today the last day that can have been
   */
  public static Optional<Finding> of(GardenRecord record, LocalDate today) {
    List<Fact> ahead = record.facts().stream().filter(f -> f.date().isAfter(today)).toList();
    if (ahead.isEmpty()) {
      return Optional.empty();
    }
    Fact first = ahead.get(0);
    int others = ahead.size() - 1;
    String more =
        others == 0
            ? ""
            : others == 1
                ? " One more line is dated later."
                : " " + others + " more lines are too.";
    return Optional.of(
        Finding.error(
                "date-in-future",
                first.span(),
                "`" + first.date() + "` has yet to come: today is " + today + "." + more)
            .withHelp(
                "Mend the year or the day; what is meant to be done stands in the plan, not in the"
                    + " record."));
  }
}
