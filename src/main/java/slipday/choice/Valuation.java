package slipday.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.descent.Relatives;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.record.Grounds;
import slipday.garden.record.KnownTraits;
import slipday.garden.record.Plants;

/** Values the traits of plants as a goal has it, those that go together by one set of equations. */
final class Valuation {
  private final Garden garden;
  private final Optional<Goal> goal;
  private final Observations observations;
  private final Faults faults;
  private final Relatives relatives;

  /**
   * @param relatives with all plants that were observed
   */
  Valuation(
      Garden garden,
      Optional<Goal> goal,
      Observations observations,
      Faults faults,
      Relatives relatives) {
    this.garden = garden;
    this.goal = goal;
    this.observations = observations;
    this.faults = faults;
    this.relatives = relatives;
  }

  /** Each trait with what of it is inherited, in the order given. */
  List<Together.Known> of(List<Trait> traits) {
    Map<Plants, Double> loads = loads();
    Grounds grounds = new Grounds(garden);
    List<Together.Known> known = new ArrayList<>();
    for (Trait trait : traits) {
      TraitModel model = TraitModel.of(usable(trait), relatives, grounds, loads);
      Optional<Goal.Inheritance> stated =
          goal.stream()
              .flatMap(g -> g.heritabilities().stream())
              .filter(h -> KnownTraits.key(h.trait()).equals(trait.name()))
              .findFirst();
      known.add(Together.Known.alone(model, Inheritance.of(model, stated)));
    }
    return new Together(new Correlations(goal)).valued(known);
  }

  /** Nothing told by the tongue counts before a plant that may be bitter was found clean. */
  List<Observed> usable(Trait trait) {
    return observations.of(trait.name()).stream()
        .filter(
            o ->
                !trait.isEaten()
                    || !o.plant().stand().lot().bitterRisk(garden)
                    || faults.bitter(o.plant()).filter(bitter -> !bitter).isPresent())
        .toList();
  }

  /** Nothing where fruits per plant are chosen for: never both. */
  Map<Plants, Double> loads() {
    boolean chosenFor =
        goal.stream()
            .flatMap(g -> g.aims().stream())
            .anyMatch(a -> KnownTraits.key(a.trait()).equals(Trait.FRUITS.name()));
    return chosenFor ? Map.of() : borne();
  }

  /** How many fruits each plant bore, as far as they were counted. */
  Map<Plants, Double> borne() {
    Map<Plants, Double> borne = new HashMap<>();
    observations.of(Trait.FRUITS.name()).forEach(o -> borne.put(o.plant(), o.value()));
    return borne;
  }
}
