package slipday.output.data;

import java.util.List;
import slipday.finding.Finding;
import slipday.finding.Level;

/** What {@code check} says of a plan. */
public record CheckData(Head slipday, String plan, Count count, List<FindingData> findings) {
  /** How many stand of each level, and how many are allowed. */
  public record Count(long errors, long warnings, long notes, long allowed) {}

  public static CheckData of(String plan, List<Finding> findings) {
    Count count =
        new Count(
            standing(findings, Level.ERROR),
            standing(findings, Level.WARNING),
            standing(findings, Level.NOTE),
            findings.stream().filter(f -> f.allowed().isPresent()).count());
    return new CheckData(
        Head.of("check"), plan, count, findings.stream().map(FindingData::of).toList());
  }

  private static long standing(List<Finding> findings, Level level) {
    return findings.stream().filter(f -> f.allowed().isEmpty() && f.level() == level).count();
  }
}
