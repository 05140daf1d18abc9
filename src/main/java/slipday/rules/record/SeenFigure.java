package slipday.rules.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.garden.record.Subject;
import slipday.language.Value;
import slipday.measure.Quantity;
import slipday.measure.Unit;
import slipday.source.Span;

/**
 * A figure that was recorded of fruit.
 *
 * @param figure of one fruit, in the base unit
 * @param fruits how many were weighed together
 * @param place where it stands
 * @param written as it stands, without its unit
 * @param unit it was written in; empty for counts
 * @param reading from what is written, in its base unit, to what it is for one fruit
 */
record SeenFigure(
    Fact fact,
    Subject subject,
    Stand stand,
    Likely.Sort sort,
    double figure,
    int fruits,
    Span place,
    double written,
    Optional<Unit> unit,
    DoubleUnaryOperator reading) {
  private static final double THOUSAND = 1000;

  /** Everything weighed, tasted and counted of fruit, of any season. */
  static List<SeenFigure> all(GardenRecord record) {
    List<SeenFigure> all = new ArrayList<>();
    for (Fact fact : record.facts()) {
      if (fact instanceof Fact.Picked picked) {
        figures(fact, picked.subject(), picked.figures(), all::add);
      } else if (fact instanceof Fact.Measured measured) {
        figures(fact, measured.subject(), measured.figures(), all::add);
      } else if (fact instanceof Fact.LookedAt looked) {
        figures(fact, looked.subject(), looked.figures(), all::add);
      } else if (fact instanceof Fact.Saved saved && saved.from() instanceof Fruit fruit) {
        seeds(saved, fruit, all::add);
      }
    }
    return all;
  }

  private static void seeds(Fact.Saved saved, Fruit fruit, Consumer<SeenFigure> seen) {
    if (saved.seeds().isPresent() && saved.counted().isPresent()) {
      int seeds = saved.seeds().get();
      seen.accept(
          new SeenFigure(
              saved,
              fruit,
              fruit.seedParent().stand(),
              Likely.Sort.SEEDS,
              seeds,
              1,
              saved.counted().get(),
              seeds,
              Optional.empty(),
              n -> n));
    }
  }

  private static void figures(
      Fact fact, Subject subject, Figures figures, Consumer<SeenFigure> seen) {
    Stand stand =
        subject instanceof Fruit fruit
            ? fruit.seedParent().stand()
            : subject instanceof Plants plants ? plants.stand() : null;
    if (stand == null) {
      return;
    }
    if (figures.mass().isPresent() && figures.kilograms().isPresent()) {
      Value.Amount mass = figures.mass().get();
      double net = figures.kilograms().get();
      double container = mass.quantity().base() - net;
      int fruits = Math.max(1, figures.fruits());
      DoubleUnaryOperator reading = gross -> (gross - container) / fruits;
      seen.accept(
          amount(fact, subject, stand, Likely.Sort.WEIGHT, net / fruits, fruits, mass, reading));
    }
    if (figures.sweetness().isPresent() && figures.brix().isPresent()) {
      double brix = figures.brix().get();
      Value.Amount written = figures.sweetness().get();
      seen.accept(amount(fact, subject, stand, Likely.Sort.SWEETNESS, brix, 1, written, b -> b));
    }
  }

  private static SeenFigure amount(
      Fact fact,
      Subject subject,
      Stand stand,
      Likely.Sort sort,
      double figure,
      int fruits,
      Value.Amount written,
      DoubleUnaryOperator reading) {
    Quantity quantity = written.quantity();
    return new SeenFigure(
        fact,
        subject,
        stand,
        sort,
        figure,
        fruits,
        written.span(),
        quantity.amount(),
        Optional.of(quantity.unit()),
        reading);
  }

  /** Whether it says of ripe fruit what it weighs: marked, and not looked at after a rest. */
  boolean isOfMarkedFruit() {
    return subject instanceof Fruit && !(fact instanceof Fact.LookedAt);
  }

  /** Whether figure and unit stand as one would write them anew, and not as 4 lb 12 oz. */
  boolean isPlain() {
    return unit.isEmpty() || place.text().strip().split(" +").length <= 2;
  }

  /** Another figure for it with its point or zeros elsewhere, in the unit it was written in. */
  double read(double other) {
    return reading.applyAsDouble(unit.map(u -> u.toBase(other)).orElse(other));
  }

  /** The figure with its unit as it stands. */
  String text() {
    return text(1, written);
  }

  /**
   * Another figure as it would stand in its place.
   *
   * @param slip how many times the one written it is; of a thousand kg and g are taken for each
   *     other
   */
  String text(double slip, double other) {
    if (unit.isPresent() && unit.get() == Unit.GRAM && slip == THOUSAND) {
      return Quantity.plain(written) + " " + Unit.KILOGRAM.word();
    }
    if (unit.isPresent() && unit.get() == Unit.KILOGRAM && slip * THOUSAND == 1) {
      return Quantity.plain(written) + " " + Unit.GRAM.word();
    }
    return Quantity.plain(other) + unit.map(u -> " " + u.word()).orElse("");
  }
}
