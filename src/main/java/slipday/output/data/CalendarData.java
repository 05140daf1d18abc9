package slipday.output.data;

import java.util.List;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.ChoreTime;

/** The season's chores, in the order they are due. */
public record CalendarData(
    Head slipday,
    String plan,
    String season,
    String site,
    String timeZone,
    List<ChoreData> chores) {
  /**
   * One chore.
   *
   * @param kind what is done: {@code cover}, {@code pollinate} …
   * @param key tells it from every other chore of the season, and stays when dates change
   * @param allDay whether {@code from} and {@code to} are whole days, both included, or hours by
   *     the garden's clock
   */
  public record ChoreData(
      String kind,
      String subject,
      String key,
      String title,
      boolean allDay,
      String from,
      String to,
      List<String> description,
      List<String> cautions) {
    static ChoreData of(Chore chore) {
      boolean hours = chore.time() instanceof ChoreTime.Hours;
      return new ChoreData(
          chore.kind().id(),
          chore.subject(),
          chore.key(),
          chore.title(),
          !hours,
          hours ? chore.time().start().toString() : chore.time().start().toLocalDate().toString(),
          hours
              ? ((ChoreTime.Hours) chore.time()).to().toString()
              : chore.time().lastDay().toString(),
          chore.description(),
          chore.cautions());
    }
  }

  public static CalendarData of(String plan, ChoreBook book) {
    return new CalendarData(
        Head.of("calendar"),
        plan,
        book.season(),
        book.site(),
        book.zone().getId(),
        book.chores().stream().map(ChoreData::of).toList());
  }
}
