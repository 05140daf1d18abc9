package slipday.output.calendar;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;

/**
 * What tells one entry from all others for ever: season, site and the chore's key. A chore moved is
 * the same entry, but for a round through the garden: the day is what it is known by, so that an
 * evening ticked off stays ticked off.
 */
final class Uids {
  static final String OURS = "slipday:";

  /** As rounds were once written, by their number. */
  private static final Pattern NUMBERED = Pattern.compile("(round:[a-z-]+:)\\d{1,3}(:task)?");

  private static final String TASK = ":task";

  private Uids() {}

  /** What all entries of this garden and season begin with. */
  static String prefix(ChoreBook book) {
    return OURS + book.season() + ":" + book.site() + ":";
  }

  /** What an entry of ours that bears a round's number is called now, by the day it is on. */
  static Optional<String> byDay(ChoreBook book, String uid, LocalDate day) {
    Matcher numbered = NUMBERED.matcher(uid.substring(prefix(book).length()));
    return numbered.matches()
        ? Optional.of(
            prefix(book) + numbered.group(1) + day + Objects.toString(numbered.group(2), ""))
        : Optional.empty();
  }

  /** An event and a task are two entries: a calendar can't turn the one into the other. */
  static String of(ChoreBook book, Chore chore, boolean task) {
    return prefix(book) + chore.key() + (task ? TASK : "");
  }
}
