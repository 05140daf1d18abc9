package slipday.rules.pollination;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Cross;
import slipday.garden.FlowerCare;
import slipday.garden.Planting;
import slipday.garden.Sex;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/** A cross has no pollen, no flower to bear it, or parents that do not cross at all. */
public final class CrossCannotBeMade implements Rule {
  private static final double READILY = 3;

  @Override
  public String id() {
    return "cross-cannot-be-made";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.WARNING;
  }

  /**
   * One thing in the way.
   *
   * @param grave whether it makes the cross impossible rather than hard
   * @param says completes "Cross `x` can't be made: …" or "… is hard to make: …"
   */
  record Obstacle(boolean grave, String says, Span place, String help) {}

  @Override
  public void check(Season season, Reporter reporter) {
    for (Cross cross : season.garden().crosses()) {
      obstacles(season, cross).forEach(o -> found(cross, o, reporter));
    }
  }

  private static void found(Cross cross, Obstacle obstacle, Reporter reporter) {
    reporter
        .report(
            obstacle.grave(),
            cross,
            cross.span(),
            "Cross "
                + Words.tick(cross.name())
                + (obstacle.grave() ? " can't be made: " : " is hard to make: ")
                + obstacle.says()
                + ".")
        .also(obstacle.place(), "because of this")
        .concerns(cross.seedParent())
        .concerns(cross.pollenParent())
        .help(obstacle.help());
  }

  static List<Obstacle> obstacles(Season season, Cross cross) {
    if (cross.seedParent().name().equals(cross.pollenParent().name())) {
      return List.of(oneParent(cross));
    }
    List<Obstacle> all = new ArrayList<>();
    pollen(cross.pollenParent()).ifPresent(all::add);
    fruit(cross.seedParent()).ifPresent(all::add);
    kinds(cross).ifPresent(all::add);
    for (Planting parent : List.of(cross.seedParent(), cross.pollenParent())) {
      if (parent.facts().valueOr(CropFacts.BIENNIAL, false)) {
        String says = Words.tick(parent.name()) + " does not flower in the year it is sown";
        String help = "Keep its best plants over winter and cross them next year.";
        all.add(new Obstacle(true, says, parent.span(), help));
      }
      if (parent.flowers().caged()) {
        String says = Words.tick(parent.name()) + " flowers in a cage";
        String help = "Open the cage at dawn, before the bees fly, and shut it again.";
        all.add(new Obstacle(false, says, flowers(parent), help));
      }
    }
    return all;
  }

  private static Obstacle oneParent(Cross cross) {
    return new Obstacle(
        true,
        Words.tick(cross.seedParent().name()) + " is both its parents",
        cross.places().of(PlanClauses.POLLEN_PARENT),
        "Pollination within one planting is `pollinate self by hand, for 4 fruits`, or `sib`, under"
            + " its `grow`.");
  }

  private static Span flowers(Planting planting) {
    return planting.places().of(PlanClauses.FLOWERS);
  }

  private static Optional<Obstacle> pollen(Planting parent) {
    Sex sex = parent.line().sex();
    FlowerCare.How how = parent.flowers().how();
    boolean removed =
        how == FlowerCare.How.ALL_REMOVED
            || (how == FlowerCare.How.MALES_REMOVED && !sex.fruitingFlowersArePerfect());
    if (!sex.shedsPollen()) {
      String says = Words.tick(parent.name()) + " is " + sex.words() + " and has no pollen";
      return Optional.of(
          new Obstacle(true, says, parent.line().span(), "Take another pollen parent."));
    }
    String says = "the flowers that would give its pollen are removed from ";
    return removed
        ? Optional.of(
            new Obstacle(
                true,
                says + Words.tick(parent.name()),
                flowers(parent),
                "Leave its male flowers on, covered from the evening before."))
        : Optional.empty();
  }

  private static Optional<Obstacle> fruit(Planting parent) {
    FlowerCare.How how = parent.flowers().how();
    boolean removed = how == FlowerCare.How.ALL_REMOVED || how == FlowerCare.How.FEMALES_REMOVED;
    return removed
        ? Optional.of(
            new Obstacle(
                true,
                "the flowers that would bear it are removed from " + Words.tick(parent.name()),
                flowers(parent),
                "Leave them on, and cover the chosen."))
        : Optional.empty();
  }

  private static Optional<Obstacle> kinds(Cross cross) {
    String seed = cross.seedParent().species().name();
    String pollen = cross.pollenParent().species().name();
    if (seed.equals(pollen)) {
      return Optional.empty();
    }
    double degree =
        cross.seedParent().species().facts().all(CropFacts.CROSSES_WITH).stream()
            .filter(d -> d.value().species().equals(pollen))
            .mapToDouble(d -> d.value().degree().high())
            .findFirst()
            .orElse(0);
    String latin =
        cross.seedParent().species().latin() + " and " + cross.pollenParent().species().latin();
    Span place = cross.places().of(PlanClauses.POLLEN_PARENT);
    if (degree <= 0) {
      return Optional.of(
          new Obstacle(true, latin + " do not cross", place, "Cross within one species."));
    }
    String help = "Pollinate many flowers; most such fruits are empty, and a set is no proof.";
    return degree < READILY
        ? Optional.of(new Obstacle(false, latin + " cross seldom", place, help))
        : Optional.empty();
  }
}
