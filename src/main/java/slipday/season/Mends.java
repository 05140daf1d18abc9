package slipday.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import slipday.climate.SeasonAxis;
import slipday.measure.Units;

/**
 * What would make an impossible season possible: each mend is tried out, and only told if it works.
 */
final class Mends {
  private static final int OLDER_BY = 14;
  private static final int SEEDLING_AGE = 21;
  private static final double TUNNEL_WARMER = 3;
  private static final double TUNNEL_DAYS = 35;
  private static final double TUNNEL_GUARDS = -2;
  private static final double MULCH_WARMER = 3;

  private final Needs needs;
  private final Function<Needs, DateChooser.Choice> chosen;
  private final SeasonAxis axis;
  private final Units units;

  /**
   * @param chosen the date that would be chosen for changed needs
   */
  Mends(Needs needs, Function<Needs, DateChooser.Choice> chosen, SeasonAxis axis, Units units) {
    this.needs = needs;
    this.chosen = chosen;
    this.axis = axis;
    this.units = units;
  }

  List<String> sentences() {
    List<String> works = new ArrayList<>();
    if (needs.indoors()) {
      tried(
              needs.startedIndoors(needs.age() + OLDER_BY),
              "Start indoors " + OLDER_BY + " days earlier")
          .ifPresent(works::add);
    } else {
      tried(needs.startedIndoors(SEEDLING_AGE), "Start indoors, 3 weeks before planting out")
          .ifPresent(works::add);
    }
    tried(
            needs.mulched(MULCH_WARMER),
            "Lay a mulch that warms the soil by " + units.writtenDifference(MULCH_WARMER))
        .ifPresent(works::add);
    tried(
            tunnelled(needs),
            "Cover with a tunnel for 5 weeks, air "
                + units.writtenDifference(TUNNEL_WARMER)
                + " warmer, guarding to "
                + units.written(TUNNEL_GUARDS))
        .ifPresent(works::add);
    if (works.isEmpty() && needs.indoors()) {
      tried(
              tunnelled(needs.startedIndoors(needs.age() + OLDER_BY)),
              "Start 14 days earlier and cover with a tunnel for 5 weeks")
          .ifPresent(works::add);
    }
    shorter().ifPresent(works::add);
    if (works.isEmpty()) {
      works.add(
          "Nothing tried here is enough: grow a line that ripens much sooner, or accept more"
              + " risk.");
    }
    return works;
  }

  private Optional<String> tried(Needs changed, String what) {
    DateChooser.Choice choice = chosen.apply(changed);
    return choice.possible()
        ? Optional.of(what + ": it then fits from " + axis.dayText(choice.start()) + ".")
        : Optional.empty();
  }

  /** How much shorter from pollination to ripe a line would have to be. */
  private Optional<String> shorter() {
    for (int percent = 5; percent <= 50; percent += 5) {
      double factor = 1 - percent / 100.0;
      Needs quicker = needs.withRipening(factor);
      if (chosen.apply(quicker).possible()) {
        return Optional.of(
            String.format(
                Locale.ROOT,
                "Grow a line that takes %d %% less from pollination to ripe.",
                percent));
      }
    }
    return Optional.empty();
  }

  private static Needs tunnelled(Needs open) {
    return open.tunnelled(TUNNEL_DAYS, TUNNEL_WARMER, TUNNEL_GUARDS);
  }
}
