package slipday.rules.pollination;

import java.time.LocalDate;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.Named;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.PollinationPlan;
import slipday.season.Season;
import slipday.source.Span;

/** The flowers and mornings there are will hardly give the fruits wanted by hand pollination. */
public final class TooFewFlowers implements Rule {
  private static final double AS_OFTEN_AS_NOT = 0.5;
  private static final double LIKELY = 0.8;

  private static final String MORE_FLOWERS =
      "Grow more plants, begin with the first flowers and pollinate on more mornings, or want"
          + " fewer fruits; a seed parent can carry seed enough in one or two.";
  private static final String MORE_HANDS =
      "More plants would not help: find more hands or mornings, or want fewer fruits, here or of"
          + " another planting that flowers then.";

  @Override
  public String id() {
    return "too-few-flowers";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public Level milderLevel() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Optional<LocalDate> told = lastTold(season);
    season.pollinations().stream()
        .filter(p -> p.chance() < LIKELY && !isOver(p, told))
        .filter(
            p -> p.cross().map(c -> CrossCannotBeMade.obstacles(season, c).isEmpty()).orElse(true))
        // Parents that never meet are told of by a rule of their own.
        .filter(p -> p.cross().isEmpty() || p.mornings() > 0)
        .forEach(p -> found(season, p, reporter));
  }

  /** The last day of the season of which something is on record. */
  private static Optional<LocalDate> lastTold(Season season) {
    return season.garden().record().facts().stream()
        .map(Fact::date)
        .filter(season.garden().season()::contains)
        .max(LocalDate::compareTo);
  }

  /** What the record has settled is not forecast. */
  private static boolean isOver(PollinationPlan plan, Optional<LocalDate> told) {
    return plan.until().isPresent() && told.filter(plan.until().get()::isBefore).isPresent();
  }

  /** The line that says how many fruits are wanted. */
  static Span wish(PollinationPlan plan) {
    return plan.cross()
        .map(c -> c.places().of(PlanClauses.FRUITS))
        .orElseGet(() -> plan.seedParent().places().of(PlanClauses.POLLINATE));
  }

  private static void found(Season season, PollinationPlan plan, Reporter reporter) {
    Planting seed = plan.seedParent();
    Named subject = plan.cross().isPresent() ? plan.cross().get() : seed;
    Reporter.Report report =
        reporter
            .report(
                plan.chance() < AS_OFTEN_AS_NOT,
                subject,
                wish(plan),
                Words.count(plan.wanted(), "fruit", "fruits")
                    + " of "
                    + Words.tick(plan.subject())
                    + (plan.wanted() == 1 ? " is" : " are")
                    + " wanted, and the flowers there are give so many in "
                    + Words.percent(plan.chance())
                    + " of cases.")
            .also(seed.places().of(PlanClauses.PLANTS), "the plants that flower")
            .concerns(seed)
            .concerns(seed.lot())
            .note(
                "About "
                    + Words.count(plan.flowersThere(), "flower", "flowers")
                    + (plan.handsAreShort()
                        ? " of the "
                            + plan.flowersOpen()
                            + " that open have hands to pollinate them"
                        : " can be pollinated")
                    + " on "
                    + Words.count(plan.mornings(), "morning", "mornings")
                    + (plan.isHopeless()
                        ? "; no number of flowers makes the fruits likely"
                        : "; it takes " + plan.flowersLikely() + " for an even chance")
                    + plan.flowersSure().map(f -> " and " + f + " to be sure").orElse("")
                    + ".")
            .note(
                "A pollination takes in "
                    + Words.percent(plan.take().value())
                    + " of cases. "
                    + Words.note(plan.take().reason()));
    report
        .because(plan.reason())
        .fact(season.garden().site().hands().reason())
        .help(plan.handsAreShort() ? MORE_HANDS : MORE_FLOWERS);
  }
}
