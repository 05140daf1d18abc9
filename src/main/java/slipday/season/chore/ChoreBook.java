package slipday.season.chore;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * The chores of one garden in one season.
 *
 * @param season its label, such as {@code 2026} or {@code 2026-27}
 * @param site the site's name
 * @param title the site's title
 * @param zone whose clock the hours are by
 * @param firstDay the season's first day
 * @param chores in {@link Chore#ORDER}
 */
public record ChoreBook(
    String season, String site, String title, ZoneId zone, LocalDate firstDay, List<Chore> chores) {

  public ChoreBook {
    chores = chores.stream().sorted(Chore.ORDER).toList();
  }
}
