package slipday.garden.record;

import java.util.Optional;
import slipday.garden.Lot;
import slipday.garden.Planting;

/**
 * The plants of one lot that stood together in one season.
 *
 * @param year the season, by its first year
 * @param planting empty for a season other than the plan's
 */
public record Stand(int year, String name, Lot lot, Optional<Planting> planting) {
  /** Stands of one season and name are one; their lots' lines need no comparing. */
  @Override
  public boolean equals(Object other) {
    return other instanceof Stand s && s.year == year && s.name.equals(name);
  }

  @Override
  public int hashCode() {
    return 31 * year + name.hashCode();
  }
}
