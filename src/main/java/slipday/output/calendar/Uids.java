package slipday.output.calendar;

import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;

/**
 * What tells one entry from all others for ever: season, site and the chore's key. No date and no
 * number is in it, so that a chore moved is the same entry.
 */
final class Uids {
  static final String OURS = "slipday:";

  private static final String TASK = ":task";

  private Uids() {}

  /** What all entries of this garden and season begin with. */
  static String prefix(ChoreBook book) {
    return OURS + book.season() + ":" + book.site() + ":";
  }

  /** An event and a task are two entries: a calendar can't turn the one into the other. */
  static String of(ChoreBook book, Chore chore, boolean task) {
    return prefix(book) + chore.key() + (task ? TASK : "");
  }
}
