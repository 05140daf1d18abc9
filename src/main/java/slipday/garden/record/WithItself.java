package slipday.garden.record;

import java.util.Optional;
import slipday.finding.Finding;

/** A sib of a plant by itself is a self, and a cross within one planting a sib. */
final class WithItself {
  private WithItself() {}

  static Optional<Finding> of(Fruit fruit) {
    Plants mother = fruit.seedParent();
    Plants father = fruit.pollenParent();
    boolean onePlant = mother.plant().isPresent() && mother.equals(father);
    if (onePlant && fruit.mating() != Mating.SELF) {
      return Optional.of(
          found(fruit, mother + "` by itself, which is a self.")
              .withHelp(
                  "Write `selfed "
                      + mother
                      + ", tag "
                      + fruit.tag()
                      + "`; or mend the number: `sibbed "
                      + mother
                      + " by plant N, tag "
                      + fruit.tag()
                      + "`."));
    }
    if (fruit.mating().isCross() && mother.stand().equals(father.stand())) {
      String by = father.plant().map(n -> " by plant " + n).orElse("");
      return Optional.of(
          found(fruit, mother.stand().name() + "` by itself, which is a sib.")
              .withHelp(
                  "Write `sibbed "
                      + mother
                      + by
                      + ", tag "
                      + fruit.tag()
                      + "`; a cross names another planting after `by`."));
    }
    return Optional.empty();
  }

  private static Finding found(Fruit fruit, String what) {
    return Finding.error(
        "with-itself",
        fruit.span(),
        "`" + fruit.tag() + "` was " + fruit.mating().words() + ": `" + what);
  }
}
