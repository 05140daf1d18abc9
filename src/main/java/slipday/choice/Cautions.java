package slipday.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.garden.Goal;
import slipday.genetics.Aim;

/**
 * What is to be borne in mind of a goal's traits: scales that run out, traits that pull together.
 */
final class Cautions {
  private final Optional<Goal> goal;
  private final Aims aims;
  private final List<TraitValues> traits;

  Cautions(Optional<Goal> goal, Aims aims, List<TraitValues> traits) {
    this.goal = goal;
    this.aims = aims;
    this.traits = traits;
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>();
    for (TraitValues trait : traits) {
      aims.aim(trait.trait(), trait.deviation())
          .flatMap(aim -> scale(trait, aim))
          .ifPresent(notes::add);
    }
    boolean stated =
        goal.filter(g -> !g.correlations().isEmpty() || !g.environmental().isEmpty()).isPresent();
    if (stated) {
      boolean luck = goal.filter(g -> !g.environmental().isEmpty()).isPresent();
      notes.add(
          "Traits that go together by the plan's correlations were valued together, so each is told"
              + " by the others too"
              + (luck
                  ? "."
                  : "; no environmental correlation is stated, so what places and luck do to one is"
                      + " taken as saying nothing of another."));
    }
    return notes;
  }

  private static Optional<String> scale(TraitValues trait, Aim aim) {
    String name = trait.trait().name();
    if (!aim.isOnScale()) {
      return Optional.of(
          "The aim for "
              + name
              + " lies beyond the points it was given, so it is never met; the more of them the"
              + " better.");
    }
    List<Double> figures = trait.figures();
    int onTheEnd = (int) figures.stream().filter(f -> isOnTheEnd(trait, aim, f)).count();
    return aim.isWornOut(onTheEnd, figures.size()) && figures.size() > 1
        ? Optional.of(
            onTheEnd
                + " of "
                + figures.size()
                + " plants have all the points there are for "
                + name
                + ": its scale can't tell the best apart any more.")
        : Optional.empty();
  }

  private static boolean isOnTheEnd(TraitValues trait, Aim aim, double figure) {
    boolean up = aim.low().isPresent() && aim.high().isEmpty();
    boolean down = aim.high().isPresent() && aim.low().isEmpty();
    return trait
        .trait()
        .scale()
        .filter(s -> (up && figure >= s.high()) || (down && figure <= s.low()))
        .isPresent();
  }
}
