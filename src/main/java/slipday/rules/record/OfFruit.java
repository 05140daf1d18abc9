package slipday.rules.record;

import slipday.garden.Planting;
import slipday.garden.record.Fruit;
import slipday.rules.Reporter;

/** Reports on a marked fruit where it was marked; they concern its plant's lot and bed too. */
final class OfFruit {
  private OfFruit() {}

  /**
   * @param fruit of a planting of this season
   */
  static Reporter.Report report(Fruit fruit, String message, Reporter reporter) {
    Planting mother = fruit.seedParent().stand().planting().orElseThrow();
    Reporter.Report report =
        reporter.report(mother, fruit.span(), message).concerns(fruit.seedParent().stand().lot());
    mother.bed().ifPresent(report::concerns);
    return report;
  }
}
