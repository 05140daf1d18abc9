package slipday.garden.record;

import java.util.Locale;
import slipday.garden.Facts;

/**
 * A flower pollinated by hand and tagged, and the fruit it becomes.
 *
 * @param year the season its tag belongs to, by its first year
 */
public record Fruit(
    At at, Mating mating, Plants seedParent, Plants pollenParent, String tag, int year)
    implements Subject, Fact {

  @Override
  public String name() {
    return tag;
  }

  /** Its tag in its season; case does not matter. */
  public Key key() {
    return new Key(year, tag.toLowerCase(Locale.ROOT));
  }

  /** The facts of the kind its flesh is of, its mother's. */
  public Facts facts() {
    return seedParent.stand().lot().line().facts();
  }

  /** What sets one fruit apart from all others, over the seasons. */
  public record Key(int year, String tag) {
    static Key of(int year, String tag) {
      return new Key(year, tag.toLowerCase(Locale.ROOT));
    }
  }
}
