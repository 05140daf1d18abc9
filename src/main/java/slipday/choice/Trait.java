package slipday.choice;

import java.util.Optional;
import java.util.Set;
import slipday.garden.record.KnownTraits;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.measure.Units;

/**
 * Something measured or scored of fruits or plants.
 *
 * @param name as a goal calls it
 * @param unit what its figures are in; empty for points and counts
 * @param scale the ends of its points; empty for what is measured or counted
 */
public record Trait(String name, Optional<Unit> unit, Optional<Range> scale) {
  public static final Trait SWEETNESS =
      new Trait(KnownTraits.SWEETNESS, Optional.of(Unit.BRIX), Optional.empty());
  public static final Trait DAYS_TO_RIPE =
      new Trait(KnownTraits.DAYS_TO_RIPE, Optional.of(Unit.DAY), Optional.empty());
  public static final Trait FRUITS =
      new Trait(KnownTraits.FRUITS_PER_PLANT, Optional.empty(), Optional.empty());

  /** Told by the tongue, so only of plants that were found not to be bitter. */
  private static final Set<String> EATEN = Set.of("flavour", "texture", "juiciness");

  /** What a fruit weighs, in kg or pounds. */
  static Trait weight(Units units) {
    return new Trait(
        KnownTraits.FRUIT_WEIGHT, Optional.of(shown(Unit.KILOGRAM, units)), Optional.empty());
  }

  /**
   * The unit in which figures are reckoned and shown, whichever they were written in.
   *
   * @param units those the gardener is answered in
   */
  static Unit shown(Unit written, Units units) {
    return switch (written.dimension()) {
      case LENGTH -> units.feet() ? Unit.INCH : Unit.CENTIMETRE;
      case MASS -> units.pounds() ? Unit.POUND : Unit.KILOGRAM;
      case TIME -> Unit.DAY;
      default -> written;
    };
  }

  boolean isEaten() {
    return EATEN.contains(name);
  }

  /** Whether it is told once for a plant, and not of each fruit. */
  boolean isOfPlant() {
    return name.equals(FRUITS.name);
  }

  /** A figure of a goal, in this trait's unit. */
  double figure(double number, Optional<Quantity> quantity) {
    return quantity.isPresent() && unit.isPresent()
        ? unit.get().fromBase(quantity.get().base())
        : number;
  }

  /** A figure with its unit, such as {@code 1.42 kg} or {@code 7.5 of 10}. */
  public String words(double figure) {
    String number = number(figure);
    if (scale.isPresent()) {
      return number + " of " + Quantity.plain(scale.get().high());
    }
    return number + unit.map(u -> " " + u.word()).orElse("");
  }

  /** A figure without its unit, to the places that mean something. */
  public String number(double figure) {
    return Quantity.fixed(figure, name.equals(KnownTraits.FRUIT_WEIGHT) ? 2 : 1);
  }
}
