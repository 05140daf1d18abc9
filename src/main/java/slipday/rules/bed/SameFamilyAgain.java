package slipday.rules.bed;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.Bed;
import slipday.garden.CropFacts;
import slipday.garden.Facts;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** A bed gets the family back that grew in it too few years ago. */
public final class SameFamilyAgain implements Rule {
  @Override
  public String id() {
    return "same-family-again";
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
    Map<String, List<Planting>> byBedAndFamily = new LinkedHashMap<>();
    for (Planting planting : season.garden().plantings()) {
      if (planting.bed().isPresent() && family(planting.facts()).isPresent()) {
        String key = planting.bed().get().name() + " " + family(planting.facts()).get();
        byBedAndFamily.computeIfAbsent(key, k -> new ArrayList<>()).add(planting);
      }
    }
    int year = season.garden().season().year();
    byBedAndFamily.values().forEach(plantings -> judge(plantings, year, reporter));
  }

  private static Optional<String> family(Facts facts) {
    return facts.get(CropFacts.FAMILY).map(Reasoned::value);
  }

  private static void judge(List<Planting> plantings, int year, Reporter reporter) {
    Planting first = plantings.get(0);
    Bed bed = first.bed().orElseThrow();
    String family = family(first.facts()).orElseThrow();
    Optional<Reasoned<Range>> rotation = first.facts().get(CropFacts.ROTATION);
    Optional<Reasoned<Bed.Grew>> last =
        bed.grew().stream()
            .filter(g -> g.value().year() < year)
            .filter(g -> family(g.value().crop().facts()).filter(family::equals).isPresent())
            .max((a, b) -> Integer.compare(a.value().year(), b.value().year()));
    if (rotation.isEmpty() || last.isEmpty()) {
      return;
    }
    int gap = year - last.get().value().year();
    Range years = rotation.get().value();
    if (gap < years.high()) {
      found(bed, family, plantings, last.get(), gap, rotation.get(), reporter);
    }
  }

  private static void found(
      Bed bed,
      String family,
      List<Planting> plantings,
      Reasoned<Bed.Grew> last,
      int gap,
      Reasoned<Range> rotation,
      Reporter reporter) {
    Range years = rotation.value();
    Planting first = plantings.get(0);
    Reporter.Report report =
        reporter
            .report(
                gap < years.low(),
                bed,
                first.places().of(PlanClauses.IN),
                "The family "
                    + Words.tick(family)
                    + " comes back to bed "
                    + Words.tick(bed.name())
                    + " after "
                    + Words.count(gap, "year", "years")
                    + ".")
            .marked("comes back here")
            .also(last.reason().place().orElseGet(bed::span), "grew here before");
    plantings.forEach(report::concerns);
    plantings.stream()
        .skip(1)
        .forEach(p -> report.also(p.places().of(PlanClauses.IN), "comes back too"));
    report
        .fact(rotation.reason())
        .help(
            "Choose a bed without this family since "
                + Math.round(last.value().year() + gap - years.high())
                + ", or accept the risk of soil-borne disease with an `allow` and its reason.");
  }
}
