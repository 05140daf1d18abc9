package slipday.rules.bed;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.Bed;
import slipday.garden.Planting;
import slipday.garden.Room;
import slipday.garden.record.Fact;
import slipday.garden.record.Grounds;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/** The plants of a bed cover more ground than it has, trailing and all. */
public final class BedOverfull implements Rule {
  @Override
  public String id() {
    return "bed-overfull";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Map<String, List<Grounds.Part>> byBed = new Grounds(season.garden()).byBed();
    for (Bed bed : season.garden().beds()) {
      List<Needed> needed =
          byBed.getOrDefault(bed.name(), List.of()).stream()
              .flatMap(p -> needed(p).stream())
              .toList();
      bed.size().ifPresent(s -> judge(bed, s, needed, reporter));
    }
  }

  /** Plants of a planting with the ground each covers, m². */
  private record Needed(Grounds.Part part, int plants, Reasoned<Double> each) {
    Planting planting() {
      return part.planting();
    }

    double area() {
      return plants * each.value();
    }
  }

  private static Optional<Needed> needed(Grounds.Part part) {
    return part.plants()
        .flatMap(
            plants -> Room.ofPlant(part.planting().facts()).map(g -> new Needed(part, plants, g)));
  }

  private static void judge(Bed bed, Bed.Size size, List<Needed> plantings, Reporter reporter) {
    double wanted = plantings.stream().mapToDouble(Needed::area).sum();
    double room = Room.of(bed, size);
    if (wanted <= room * (1 + 1e-9)) {
      return;
    }
    Reporter.Report report =
        reporter
            .report(
                bed,
                bed.places().of(PlanClauses.SIZE),
                "The plants in "
                    + Words.tick(bed.name())
                    + " want "
                    + reporter.units().area(wanted)
                    + ", and it has "
                    + reporter.units().area(room)
                    + ".")
            .marked(
                bed.trail() > 0
                    ? "with " + reporter.units().distance(bed.trail()) + " to trail on every side"
                    : "this big");
    plantings.forEach(n -> tell(n, report));
    report
        .note("All plantings of the season are counted, as if they stood at one time.")
        .help(mend(plantings, wanted - room));
  }

  private static void tell(Needed n, Reporter.Report report) {
    report
        .concerns(n.planting())
        .also(place(n), "want " + report.units().area(n.area()))
        .fact(n.each().reason());
  }

  private static Span place(Needed n) {
    return n.part()
        .move()
        .map(Fact.Moved::span)
        .orElseGet(() -> n.planting().places().of(PlanClauses.PLANTS));
  }

  private static String mend(List<Needed> plantings, double over) {
    Needed largest =
        plantings.stream().max(java.util.Comparator.comparingDouble(Needed::area)).orElseThrow();
    int fewer = (int) Math.ceil(over / largest.each().value() - 1e-9);
    String name = Words.tick(largest.planting().name());
    String less =
        fewer < largest.plants()
            ? "Grow " + Words.count(fewer, "plant", "plants") + " fewer of " + name
            : "Move " + name + " to another bed";
    return less
        + ". Where vines may trail beyond the bed, say so under it (`"
        + PlanClauses.VINES.example()
        + "`); where plants are trained up, tell their `area` under the line.";
  }
}
