package slipday.output.data;

import java.time.LocalDate;
import java.util.List;

/**
 * A week's page for the clipboard. Each of its lines is one entry of the record with boxes left
 * open; filled in, its pieces put together in their order are that entry as it is written.
 *
 * @param from the week's first day
 * @param to its last
 * @param parts the page from top to bottom
 */
public record SheetData(
    Head slipday,
    String plan,
    SeasonData season,
    LocalDate from,
    LocalDate to,
    List<SheetPartData> parts) {
  /**
   * Entries of one kind of work.
   *
   * @param title the work
   * @param hint how it is done; may be empty
   */
  public record SheetPartData(String title, String hint, List<EntryData> entries) {}

  /**
   * One entry.
   *
   * @param about what to know when doing it; may be empty
   * @param pieces of the record's line, in their order
   */
  public record EntryData(String about, List<PieceData> pieces) {}

  /**
   * A piece of a line: words, or a box, or a choice to tick.
   *
   * @param text as it stands; empty for a box or a choice
   * @param box what to fill in: {@code date}, {@code plant}, {@code count}, {@code weight}, {@code
   *     figure} or {@code words}; empty for others
   * @param choices of which one is ticked; none for others
   * @param before what to write before what was filled in, if anything was: an optional part
   * @param after what to write after it
   */
  public record PieceData(
      String text, String box, List<String> choices, String before, String after) {}

  public static SheetData of(
      String plan, SeasonData season, LocalDate from, LocalDate to, List<SheetPartData> parts) {
    return new SheetData(Head.of("sheet"), plan, season, from, to, parts);
  }
}
