package slipday.garden;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.PlanClauses;
import slipday.language.Value;

/** Whether the frost dates a site states follow one another as a season does. */
final class FrostOrder {
  private static final int YEAR = 366;

  /** Any leap year: 29 February is a day of it. */
  private static final int LEAP = 2028;

  private static final double HALF = 0.5;

  private final List<Finding> findings;
  private final boolean south;

  FrostOrder(List<Finding> findings, boolean south) {
    this.findings = findings;
    this.south = south;
  }

  void check(Block site) {
    Optional<BoundClause> last = site.find(PlanClauses.LAST_FROST);
    Optional<BoundClause> first = site.find(PlanClauses.FIRST_FROST);
    if (last.isPresent() && first.isPresent() && place(last.get()) >= place(first.get())) {
      findings.add(
          Finding.error(
                  "impossible-date",
                  last.get().span(),
                  "The last frost of spring comes after the first frost of autumn.")
              .also(first.get().span(), "the first of autumn")
              .withHelp(
                  south
                      ? "South of the equator spring is from September on, and autumn from March"
                          + " on."
                      : "`last frost` is the one in spring, `first frost` the one in autumn."));
      return;
    }
    last.ifPresent(c -> odds(c, PlanClauses.LAST_FROST, "late"));
    first.ifPresent(c -> odds(c, PlanClauses.FIRST_FROST, "early"));
  }

  private void odds(BoundClause c, Clause clause, String second) {
    if (!c.bound().has("share")) {
      return;
    }
    boolean late = second.equals("late");
    Value.Day day = c.bound().day(second);
    int apart = slot(day.day()) - slot(c.bound().day("usual").day());
    double share = c.bound().share("share").share();
    if (late ? apart <= 0 : apart >= 0) {
      report(
          c,
          clause,
          "`"
              + day.span().text()
              + "` is not "
              + (late ? "later" : "earlier")
              + " than the usual day.");
    } else if (share <= 0 || share >= HALF) {
      report(
          c,
          clause,
          "The odds of frost "
              + (late ? "after" : "before")
              + " `"
              + day.span().text()
              + "` are more than none and less than half of the years.");
    }
  }

  private void report(BoundClause c, Clause clause, String message) {
    findings.add(
        Finding.error("impossible-date", c.span(), message)
            .withHelp("The usual day is the middle of the years: `" + clause.example() + "`."));
  }

  private int place(BoundClause c) {
    return slot(c.bound().day("usual").day());
  }

  /** Days into the garden's year, which begins in midwinter. */
  private int slot(MonthDay day) {
    int ofYear = day.atYear(LEAP).getDayOfYear();
    return south ? (ofYear + YEAR / 2) % YEAR : ofYear;
  }
}
