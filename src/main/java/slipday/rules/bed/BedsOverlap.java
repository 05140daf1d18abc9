package slipday.rules.bed;

import java.util.ArrayList;
import java.util.List;
import slipday.finding.Level;
import slipday.garden.Bed;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Two beds lie on the same ground. Swept from west to east. */
public final class BedsOverlap implements Rule {
  @Override
  public String id() {
    return "beds-overlap";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    List<Bed> placed =
        season.garden().beds().stream()
            .filter(b -> b.size().isPresent() && b.corner().isPresent())
            .sorted((a, b) -> Double.compare(west(a), west(b)))
            .toList();
    List<Bed> open = new ArrayList<>();
    for (Bed bed : placed) {
      open.removeIf(b -> east(b) <= west(bed));
      open.stream().filter(bed::overlaps).forEach(other -> found(bed, other, reporter));
      open.add(bed);
    }
  }

  private static double west(Bed bed) {
    return bed.corner().orElseThrow().east();
  }

  private static double east(Bed bed) {
    return west(bed) + bed.size().orElseThrow().length();
  }

  private static void found(Bed a, Bed b, Reporter reporter) {
    boolean inOrder = a.span().compareTo(b.span()) < 0;
    Bed first = inOrder ? a : b;
    Bed second = inOrder ? b : a;
    Bed.Corner corner = first.corner().orElseThrow();
    Bed.Size size = first.size().orElseThrow();
    reporter
        .report(
            second,
            second.places().of(PlanClauses.CORNER),
            "Beds "
                + Words.tick(first.name())
                + " and "
                + Words.tick(second.name())
                + " lie on the same ground.")
        .marked("lies over the other")
        .also(first.places().of(PlanClauses.CORNER), "lies here")
        .concerns(first)
        .note(
            Words.tick(first.name())
                + " reaches from "
                + reporter.units().distance(corner.east())
                + " to "
                + reporter.units().distance(corner.east() + size.length())
                + " east and from "
                + reporter.units().distance(corner.north())
                + " to "
                + reporter.units().distance(corner.north() + size.width())
                + " north; a corner is a bed's south-west one.")
        .help(
            "Begin "
                + Words.tick(second.name())
                + " at "
                + reporter.units().distance(corner.north() + size.width())
                + " north or more, or mend the size of one.");
  }
}
