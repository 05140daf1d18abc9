package slipday.change;

import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.garden.Garden;
import slipday.season.Season;

/**
 * A plan in one of its two states.
 *
 * @param name the plan as it is called in results
 * @param garden empty where text or names are mistaken beyond a garden
 * @param season empty where mistakes keep it from being reckoned
 * @param findings all of them; allowed ones too
 */
public record Side(
    String name, Optional<Garden> garden, Optional<Season> season, List<Finding> findings) {
  public Side {
    findings = List.copyOf(findings);
  }
}
