package slipday.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import slipday.climate.SeasonAxis;

/**
 * What would make an impossible season possible: each mend is tried out, and only told if it works.
 */
final class Mends {
  private static final int OLDER_BY = 14;
  private static final double TUNNEL_WARMER = 3;
  private static final double TUNNEL_DAYS = 35;
  private static final double TUNNEL_GUARDS = -2;
  private static final double MULCH_WARMER = 3;

  private final Needs needs;
  private final Function<Needs, DateChooser> choosers;
  private final SeasonAxis axis;

  Mends(Forecaster.Draft draft, Function<Needs, DateChooser> choosers, SeasonAxis axis) {
    this.needs = draft.needs();
    this.choosers = choosers;
    this.axis = axis;
  }

  List<String> sentences() {
    List<String> works = new ArrayList<>();
    if (needs.indoors()) {
      tried(older(), "Start indoors " + OLDER_BY + " days earlier").ifPresent(works::add);
    } else {
      tried(startedIndoors(), "Start indoors, 3 weeks before planting out").ifPresent(works::add);
    }
    tried(mulched(), "Lay a mulch that warms the soil by 3 C").ifPresent(works::add);
    tried(tunnelled(needs), "Cover with a tunnel for 5 weeks, air 3 C warmer, guarding to -2 C")
        .ifPresent(works::add);
    if (works.isEmpty() && needs.indoors()) {
      tried(tunnelled(older()), "Start 14 days earlier and cover with a tunnel for 5 weeks")
          .ifPresent(works::add);
    }
    shorter().ifPresent(works::add);
    if (works.isEmpty()) {
      works.add(
          "Nothing tried here is enough: grow a line that ripens much sooner, or accept more risk.");
    }
    return works;
  }

  private Optional<String> tried(Needs changed, String what) {
    DateChooser.Choice choice = choosers.apply(changed).choose();
    return choice.possible()
        ? Optional.of(what + ": it then fits from " + axis.dayText(choice.start()) + ".")
        : Optional.empty();
  }

  /** How much shorter from pollination to ripe a line would have to be. */
  private Optional<String> shorter() {
    for (int percent = 5; percent <= 50; percent += 5) {
      double factor = 1 - percent / 100.0;
      Needs quicker = withRipening(factor);
      if (choosers.apply(quicker).choose().possible()) {
        return Optional.of(
            String.format(
                Locale.ROOT,
                "Or grow a line that takes %d %% less from pollination to ripe.",
                percent));
      }
    }
    return Optional.empty();
  }

  private static Stage scaled(Stage stage, double factor) {
    double[] need = stage.need().clone();
    for (int i = 0; i < need.length; i++) {
      need[i] *= factor;
    }
    return new Stage(stage.heat(), need, stage.base(), stage.limit());
  }

  private Needs withRipening(double factor) {
    return copy(
        needs,
        needs.indoors(),
        needs.age(),
        needs.soilWarmer(),
        needs.coverDays(),
        needs.coverWarmer(),
        needs.guardsTo(),
        needs.ripe().map(s -> scaled(s, factor)),
        needs.seedRipe().map(s -> scaled(s, factor)));
  }

  private Needs older() {
    return copy(
        needs,
        true,
        needs.age() + OLDER_BY,
        needs.soilWarmer(),
        needs.coverDays(),
        needs.coverWarmer(),
        needs.guardsTo(),
        needs.ripe(),
        needs.seedRipe());
  }

  private Needs startedIndoors() {
    return copy(
        needs,
        true,
        21,
        needs.soilWarmer(),
        needs.coverDays(),
        needs.coverWarmer(),
        needs.guardsTo(),
        needs.ripe(),
        needs.seedRipe());
  }

  private Needs mulched() {
    return copy(
        needs,
        needs.indoors(),
        needs.age(),
        needs.soilWarmer() + MULCH_WARMER,
        needs.coverDays(),
        needs.coverWarmer(),
        needs.guardsTo(),
        needs.ripe(),
        needs.seedRipe());
  }

  private static Needs tunnelled(Needs n) {
    return copy(
        n,
        n.indoors(),
        n.age(),
        n.soilWarmer() + TUNNEL_WARMER / 2,
        TUNNEL_DAYS,
        Math.max(n.coverWarmer(), TUNNEL_WARMER),
        Optional.of(TUNNEL_GUARDS),
        n.ripe(),
        n.seedRipe());
  }

  private static Needs copy(
      Needs n,
      boolean indoors,
      int age,
      double soilWarmer,
      double coverDays,
      double coverWarmer,
      Optional<Double> guardsTo,
      Optional<Stage> ripe,
      Optional<Stage> seedRipe) {
    return new Needs(
        indoors,
        age,
        n.indoorCelsius(),
        n.emergence(),
        soilWarmer,
        coverDays,
        coverWarmer,
        guardsTo,
        n.standsStill(),
        n.fromEvent(),
        n.flowers(),
        n.hasMales(),
        n.malesEarlier(),
        n.blooms(),
        ripe,
        seedRipe,
        n.seedSaved(),
        n.killedAt(),
        n.bedColder(),
        n.soilAtLeast(),
        n.nightsAtLeast(),
        n.heatEnds(),
        n.reasons());
  }
}
