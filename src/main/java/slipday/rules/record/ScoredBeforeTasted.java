package slipday.rules.record;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.Garden;
import slipday.garden.record.Fact;
import slipday.garden.record.Figures;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.garden.record.Subject;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A fruit that may be poisonous was scored before its plant was tasted for bitterness. */
public final class ScoredBeforeTasted implements Rule {
  /** What is judged without a mouthful. */
  private static final Set<String> OUTWARD =
      Set.of("looks", "colour", "netting", "vigour", "keeping", "firmness");

  @Override
  public String id() {
    return "scored-before-tasted";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Garden garden = season.garden();
    Map<Plants, LocalDate> tasted = new HashMap<>();
    garden
        .record()
        .every(Fact.Tasted.class)
        .forEach(t -> plants(t.subject()).ifPresent(p -> tasted.putIfAbsent(p, t.date())));
    Set<Plants> told = new HashSet<>();
    for (Fact fact : garden.record().facts()) {
      plants(fact)
          .filter(p -> p.stand().year() == garden.season().year())
          .filter(p -> p.stand().lot().bitterRisk(garden))
          .filter(p -> !p.stand().lot().line().crop().isBitter())
          .filter(p -> !isTasted(p, fact.date(), tasted))
          .filter(told::add)
          .ifPresent(p -> found(fact, p, reporter));
    }
  }

  private static boolean isTasted(Plants plants, LocalDate by, Map<Plants, LocalDate> tasted) {
    LocalDate day = tasted.get(plants);
    return day != null && !day.isAfter(by);
  }

  private static Optional<Plants> plants(Subject subject) {
    if (subject instanceof Fruit fruit) {
      return Optional.of(fruit.seedParent());
    }
    return subject instanceof Plants plants ? Optional.of(plants) : Optional.empty();
  }

  /** The plants whose fruit a fact scores for eating. */
  private static Optional<Plants> plants(Fact fact) {
    if (fact instanceof Fact.Picked p && !eating(p.figures()).isEmpty()) {
      return plants(p.subject());
    }
    return fact instanceof Fact.Measured m && !eating(m.figures()).isEmpty()
        ? plants(m.subject())
        : Optional.empty();
  }

  private static List<String> eating(Figures figures) {
    return figures.traits().stream()
        .filter(t -> t.outOf().isPresent() && !OUTWARD.contains(t.name()))
        .map(Figures.Trait::name)
        .toList();
  }

  private static void found(Fact fact, Plants plants, Reporter reporter) {
    Figures figures =
        fact instanceof Fact.Picked p ? p.figures() : ((Fact.Measured) fact).figures();
    Reporter.Report report =
        reporter
            .report(
                plants.stand().planting().orElseThrow(),
                fact.span(),
                "Fruit of "
                    + Words.tick(plants.toString())
                    + " was scored for "
                    + String.join(", ", eating(figures))
                    + " and not tasted for bitterness first.")
            .concerns(plants.stand().lot())
            .concerns(plants.stand().lot().line());
    plants.stand().planting().flatMap(p -> p.bed()).ifPresent(report::concerns);
    plants
        .stand()
        .lot()
        .exposedTo()
        .forEach(e -> e.reason().place().ifPresent(s -> report.also(s, "what makes it doubtful")));
    report
        .note(Caution.POISON.words())
        .help(
            Caution.TASTE_FIRST.words()
                + " Record `"
                + fact.date()
                + " tasted "
                + plants
                + ", clean` if it was tasted so.");
  }
}
