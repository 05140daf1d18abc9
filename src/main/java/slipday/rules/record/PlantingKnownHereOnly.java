package slipday.rules.record;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.finding.Level;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Stand;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A planting has a name of its own, and the record nowhere tells which lot was sown under it. */
public final class PlantingKnownHereOnly implements Rule {
  @Override
  public String id() {
    return "planting-known-here-only";
  }

  @Override
  public Level level() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    List<Planting> named =
        season.garden().plantings().stream().filter(p -> !p.name().equals(p.lot().name())).toList();
    if (named.isEmpty()) {
      return;
    }
    GardenRecord record = season.garden().record();
    Set<String> lots = new HashSet<>();
    season.garden().lots().forEach(l -> lots.add(l.name()));
    named.stream()
        .filter(p -> !lots.contains(p.name()))
        .forEach(p -> judge(p, facts(p, record), reporter));
  }

  /** What is recorded of its sowing and its fruit. */
  private static List<Fact> facts(Planting planting, GardenRecord record) {
    return record.facts().stream()
        .filter(
            f ->
                stand(f)
                    .filter(s -> s.year() == record.season() && s.name().equals(planting.name()))
                    .isPresent())
        .toList();
  }

  private static Optional<Stand> stand(Fact fact) {
    if (fact instanceof Fact.Sowed sowed) {
      return Optional.of(sowed.stand());
    }
    return fact instanceof Fruit fruit ? Optional.of(fruit.seedParent().stand()) : Optional.empty();
  }

  private static void judge(Planting planting, List<Fact> facts, Reporter reporter) {
    boolean told = facts.stream().anyMatch(f -> f instanceof Fact.Sowed s && s.lotTold());
    if (facts.isEmpty() || told) {
      return;
    }
    Fact first = facts.get(0);
    Optional<Integer> seeds = first instanceof Fact.Sowed s ? s.seeds() : Optional.empty();
    String line =
        (first instanceof Fact.Sowed ? first.date().toString() : "DATE")
            + " sowed "
            + planting.lot().name()
            + " as "
            + planting.name()
            + seeds.map(n -> ", " + n + " seeds").orElse("");
    Reporter.Report report =
        reporter
            .report(
                planting,
                first.span(),
                "Only this plan tells that "
                    + Words.tick(planting.name())
                    + " is of lot "
                    + Words.tick(planting.lot().name())
                    + ": beside next year's plan the record will not be understood.")
            .marked("recorded here")
            .also(planting.span(), "the planting's name")
            .concerns(planting.lot())
            .help(
                (first instanceof Fact.Sowed ? "Write the line as `" : "Record its sowing as `")
                    + line
                    + "`.");
    planting.bed().ifPresent(report::concerns);
  }
}
