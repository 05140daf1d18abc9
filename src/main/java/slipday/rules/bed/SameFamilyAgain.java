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
import slipday.garden.record.Fact;
import slipday.garden.record.Grounds;
import slipday.language.PlanClauses;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

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
    int year = season.garden().season().year();
    for (List<Grounds.Part> bed : new Grounds(season.garden()).byBed().values()) {
      Map<String, List<Grounds.Part>> byFamily = new LinkedHashMap<>();
      for (Grounds.Part part : bed) {
        family(part.planting().facts())
            .ifPresent(f -> byFamily.computeIfAbsent(f, k -> new ArrayList<>()).add(part));
      }
      byFamily.values().forEach(parts -> judge(parts, year, reporter));
    }
  }

  private static Span place(Grounds.Part part) {
    return part.move()
        .map(Fact.Moved::span)
        .orElseGet(() -> part.planting().places().of(PlanClauses.IN));
  }

  private static Optional<String> family(Facts facts) {
    return facts.get(CropFacts.FAMILY).map(Reasoned::value);
  }

  private static void judge(List<Grounds.Part> parts, int year, Reporter reporter) {
    Planting first = parts.get(0).planting();
    Bed bed = parts.get(0).bed();
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
      found(bed, family, parts, last.get(), gap, rotation.get(), reporter);
    }
  }

  private static void found(
      Bed bed,
      String family,
      List<Grounds.Part> parts,
      Reasoned<Bed.Grew> last,
      int gap,
      Reasoned<Range> rotation,
      Reporter reporter) {
    Range years = rotation.value();
    Reporter.Report report =
        reporter
            .report(
                gap < years.low(),
                bed,
                place(parts.get(0)),
                "The family "
                    + Words.tick(family)
                    + " comes back to bed "
                    + Words.tick(bed.name())
                    + " after "
                    + Words.count(gap, "year", "years")
                    + ".")
            .marked("comes back here")
            .also(last.reason().place().orElseGet(bed::span), "grew here before");
    parts.forEach(p -> report.concerns(p.planting()));
    parts.stream().skip(1).forEach(p -> report.also(place(p), "comes back too"));
    report
        .fact(rotation.reason())
        .help(
            "Choose a bed without this family since "
                + Math.round(last.value().year() + gap - years.high())
                + ", or accept the risk of soil-borne disease with an `allow` and its reason.");
  }
}
