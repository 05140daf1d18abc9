package slipday.language;

import slipday.measure.Unit;
import slipday.measure.Units;

/**
 * Which units a plan and its record write, so that they are answered in the same. Temperatures,
 * lengths and weights each go by what is written more often; where a sort is not written at all it
 * goes with the rest. Areas go with lengths.
 */
public final class UnitsUsed {
  private int fahrenheit;
  private int celsius;
  private int feet;
  private int metres;
  private int pounds;
  private int kilograms;

  private UnitsUsed() {}

  /**
   * @param said the plan's own words, without the crops that ship
   */
  public static Units in(BoundFile said) {
    UnitsUsed used = new UnitsUsed();
    for (Block block : said.blocks()) {
      for (BoundClause clause : block.clauses()) {
        used.count(clause.bound());
      }
    }
    for (Entry entry : said.entries()) {
      used.count(entry.bound());
    }
    return used.most();
  }

  /** Few lines have units, and a plan may have very many lines. */
  private void count(Bound bound) {
    if (bound.mayMeasure()) {
      bound.each(this::count);
    }
  }

  private void count(Value value) {
    if (value instanceof Value.Amount amount) {
      count(amount.quantity().unit());
    } else if (value instanceof Value.Between between && between.unit().isPresent()) {
      count(between.unit().get());
    }
  }

  private void count(Unit unit) {
    switch (unit) {
      case FAHRENHEIT, FAHRENHEIT_DAY -> fahrenheit++;
      case CELSIUS, CELSIUS_DAY -> celsius++;
      case FOOT, INCH, MILE, SQUARE_FOOT -> feet++;
      case METRE, CENTIMETRE, KILOMETRE, SQUARE_METRE -> metres++;
      case POUND, OUNCE -> pounds++;
      case KILOGRAM, GRAM -> kilograms++;
      default -> {}
    }
  }

  private Units most() {
    boolean rest = fahrenheit + feet + pounds > celsius + metres + kilograms;
    return new Units(
        most(fahrenheit, celsius, rest), most(feet, metres, rest), most(pounds, kilograms, rest));
  }

  private static boolean most(int one, int other, boolean rest) {
    return one + other == 0 ? rest : one > other;
  }
}
