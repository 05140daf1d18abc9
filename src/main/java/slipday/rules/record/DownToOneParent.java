package slipday.rules.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipday.finding.Level;
import slipday.garden.Line;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** All the season's seed of a line that is to be kept comes from one plant. */
public final class DownToOneParent implements Rule {
  @Override
  public String id() {
    return "down-to-one-parent";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    int year = season.garden().season().year();
    Map<String, List<Taking>> byLine = new LinkedHashMap<>();
    Taking.of(season)
        .filter(t -> t.stand().year() == year)
        .filter(t -> t.lot().line().purpose() == Line.Purpose.KEEP)
        .forEach(t -> byLine.computeIfAbsent(t.lot().line().name(), n -> new ArrayList<>()).add(t));
    byLine.values().stream()
        .filter(DownToOneParent::isOfOne)
        .filter(t -> !moreHangs(season.garden().record(), t))
        .forEach(t -> found(t, reporter));
  }

  private static boolean isOfOne(List<Taking> takings) {
    return takings.stream().allMatch(t -> t.mother().plant().isPresent())
        && takings.stream().map(Taking::mother).distinct().count() == 1;
  }

  /** Whether a marked fruit of another plant of the line may still give seed. */
  private static boolean moreHangs(GardenRecord record, List<Taking> takings) {
    Set<Fruit.Key> over = new HashSet<>();
    record
        .sets()
        .forEach(
            (key, set) -> {
              if (!set.took()) {
                over.add(key);
              }
            });
    record
        .every(Fact.Saved.class)
        .forEach(
            s -> {
              if (s.from() instanceof Fruit fruit) {
                over.add(fruit.key());
              }
            });
    String line = takings.get(0).lot().line().name();
    return record
        .every(Fruit.class)
        .filter(f -> f.year() == record.season() && !f.mating().isCross())
        .filter(f -> f.seedParent().stand().lot().line().name().equals(line))
        .anyMatch(f -> !over.contains(f.key()) && !f.seedParent().equals(takings.get(0).mother()));
  }

  private static void found(List<Taking> takings, Reporter reporter) {
    Taking first = takings.get(0);
    Line line = first.lot().line();
    Reporter.Report report =
        first.report(
            reporter,
            true,
            "All seed of "
                + Words.tick(line.name())
                + " saved this season is from one plant, "
                + Words.tick(first.mother().toString())
                + ".");
    takings.stream().skip(1).forEach(t -> report.also(t.saved().span(), "the same plant"));
    report
        .also(line.places().of(PlanClauses.PURPOSE), "a line to keep")
        .note("What that one plant lacked is lost to the line, and its offspring are all kin.")
        .help(
            "Save a little seed from other plants of it too, or keep seed of an earlier year beside"
                + " this and sow both; a line being made is `purpose to fix`.");
  }
}
