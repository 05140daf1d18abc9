package slipday.app;

import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.garden.Garden;
import slipday.language.BoundFile;
import slipday.season.Season;
import slipday.syntax.SeasonFile;

/**
 * What the pipeline made of a plan.
 *
 * @param usable false where the plan's first file could not be read at all
 * @param files every file taken in
 * @param said what each of the files says, in the same order
 * @param garden empty where text or names are mistaken beyond a garden
 * @param season empty where there are mistakes that would make its dates wrong
 * @param findings all of them, sorted, folded; allowed ones too
 */
public record Checked(
    boolean usable,
    List<SeasonFile> files,
    List<BoundFile> said,
    Optional<Garden> garden,
    Optional<Season> season,
    List<Finding> findings) {

  /** Whether a finding of this level or worse stands, that is not allowed. */
  public boolean has(Level atLeast) {
    return findings.stream()
        .anyMatch(f -> f.allowed().isEmpty() && f.level().compareTo(atLeast) >= 0);
  }
}
