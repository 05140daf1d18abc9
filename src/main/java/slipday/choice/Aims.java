package slipday.choice;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Goal;
import slipday.garden.record.KnownTraits;
import slipday.genetics.Aim;

/** What a goal wants of each trait, in the traits' own units. */
final class Aims {
  private final Map<String, Goal.Aim> wanted = new HashMap<>();
  private final Set<String> names = new LinkedHashSet<>();
  private final Goal.Weighing weighing;
  private final Map<String, Double> byLack = new HashMap<>();

  Aims(Optional<Goal> goal) {
    weighing = goal.map(Goal::weighing).orElse(Goal.Weighing.DEVIATION);
    goal.ifPresent(
        g ->
            g.aims()
                .forEach(
                    a -> {
                      wanted.put(KnownTraits.key(a.trait()), a);
                      names.add(KnownTraits.key(a.trait()));
                    }));
  }

  /** The traits aimed at, in the plan's order. */
  Set<String> names() {
    return names;
  }

  Optional<Goal.Aim> of(Trait trait) {
    return Optional.ofNullable(wanted.get(trait.name()));
  }

  boolean isAimedAt(Trait trait) {
    return wanted.containsKey(trait.name());
  }

  /** Weights a unit of each trait, by name, where the goal weighs by what is lacking. */
  void weigh(Map<String, Double> perUnit) {
    byLack.clear();
    byLack.putAll(perUnit);
  }

  Goal.Weighing weighing() {
    return weighing;
  }

  /** The plan's words, such as {@code raise sweetness to 13 brix}. */
  static String words(Goal.Aim aim) {
    return aim.span().plainText().replaceFirst(", matters .*", "");
  }

  /**
   * @param deviation of the trait among candidates: the unit in which distance matters
   */
  Optional<Aim> aim(Trait trait, double deviation) {
    return of(trait)
        .map(
            a -> {
              double at = trait.figure(a.at().number(), a.at().quantity());
              Optional<Double> to = a.to().map(t -> trait.figure(t.number(), t.quantity()));
              Optional<Double> low = a.way() == Goal.Way.LOWER ? Optional.empty() : Optional.of(at);
              Optional<Double> high =
                  a.way() == Goal.Way.RAISE || a.orMore()
                      ? Optional.empty()
                      : Optional.of(to.orElse(at));
              double unit = weighing == Goal.Weighing.DEVIATION && deviation > 0 ? deviation : 1;
              double weight =
                  weighing == Goal.Weighing.LACKING
                      ? byLack.getOrDefault(trait.name(), 0.0)
                      : a.weight();
              return new Aim(low, high, weight, unit, trait.scale());
            });
  }
}
