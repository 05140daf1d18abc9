package slipday.garden.record;

import java.time.LocalDate;
import java.util.Locale;
import slipday.garden.SeasonYear;
import slipday.language.Bound;
import slipday.language.Entry;

/** Which season a day falls in. Seasons of other years run as the plan's does. */
final class Seasons {
  private static final int SOUTHERN_START = 7;

  /** Seed may be sown so many days before the season's first. */
  private static final int SOWN_AHEAD = 60;

  private final SeasonYear plan;

  Seasons(SeasonYear plan) {
    this.plan = plan;
  }

  int planned() {
    return plan.year();
  }

  /** By the first of its years. */
  int of(LocalDate date) {
    boolean before = plan.acrossNewYear() && date.getMonthValue() < SOUTHERN_START;
    return before ? date.getYear() - 1 : date.getYear();
  }

  /** The season an entry names, or else the one it is dated in. */
  int of(Entry entry) {
    Bound bound = entry.bound();
    return bound.has("season") ? bound.season("season").year() : of(entry.date());
  }

  boolean isShortlyBeforePlanned(LocalDate date) {
    return date.isBefore(plan.first()) && !date.isBefore(plan.first().minusDays(SOWN_AHEAD));
  }

  String label(int year) {
    return plan.acrossNewYear()
        ? year + "-" + String.format(Locale.ROOT, "%02d", (year + 1) % 100)
        : Integer.toString(year);
  }
}
