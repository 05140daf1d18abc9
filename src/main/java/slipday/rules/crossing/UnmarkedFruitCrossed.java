package slipday.rules.crossing;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.finding.Level;
import slipday.garden.Planting;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Exposure;
import slipday.season.Season;
import slipday.source.Span;

/** Who sheds pollen on a planting whose marked seed is clean: only marked fruit holds line seed. */
public final class UnmarkedFruitCrossed implements Rule {
  private static final int MOST_NAMED = 6;

  @Override
  public String id() {
    return "unmarked-fruit-is-crossed";
  }

  @Override
  public Level level() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Map<String, List<Exposure>> byReceiver =
        season.exposures().stream()
            .filter(e -> e.receiver().seedSaved() && !e.intoSeed())
            .collect(
                Collectors.groupingBy(
                    e -> e.receiver().name(), LinkedHashMap::new, Collectors.toList()));
    byReceiver.values().forEach(all -> found(all, reporter));
  }

  private static void found(List<Exposure> exposures, Reporter reporter) {
    Planting receiver = exposures.get(0).receiver();
    List<String> kin = names(exposures, true);
    List<String> others = names(exposures, false);
    String which = kin.isEmpty() ? "" : shed(kin) + " pollen on its other flowers";
    String now =
        others.isEmpty()
            ? ""
            : (kin.isEmpty() ? shed(others) + " pollen" : "; " + shed(others) + " some")
                + " that, being another species', is seldom fertile on it";
    Reporter.Report report =
        reporter.report(
            receiver,
            receiver.span(),
            "Only marked fruit of "
                + Words.tick(receiver.name())
                + " holds its own seed: "
                + which
                + now
                + ".");
    report.marked("its chosen flowers are covered");
    Set<Span> told = new HashSet<>();
    exposures.stream()
        .filter(e -> told.add(e.source().span()))
        .limit(MOST_NAMED)
        .forEach(e -> report.also(e.source().span(), "sheds the pollen"));
    exposures.forEach(e -> e.source().planting().ifPresent(report::concerns));
    report.help("Mark every fruit pollinated by hand; an unmarked one is for the kitchen.");
  }

  private static List<String> names(List<Exposure> exposures, boolean sameSpecies) {
    return exposures.stream()
        .filter(e -> e.sameSpecies() == sameSpecies)
        .map(e -> e.source().name())
        .distinct()
        .toList();
  }

  /** {@code `a` and `b` shed}. */
  private static String shed(List<String> sources) {
    int more = Math.max(0, sources.size() - MOST_NAMED);
    return Words.list(sources.stream().limit(MOST_NAMED).toList())
        + (more > 0 ? ", and " + more + " more," : "")
        + (sources.size() == 1 ? " sheds" : " shed");
  }
}
