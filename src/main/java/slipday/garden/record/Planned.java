package slipday.garden.record;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Bed;
import slipday.garden.Outsider;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.PlanClauses;

/**
 * What the plan says of where things grow, as far as it is known before its lots are.
 *
 * @param stands the plantings by name, in the plan's order
 */
public record Planned(Map<String, Stand> stands, Map<String, Bed> beds, List<Outsider> outsiders) {
  /** A planting; its bed and what is done with its flowers where the plan says so. */
  record Stand(String lot, Optional<String> bed, Optional<BoundClause> flowers) {
    /** In a cage of its own. */
    boolean isCagedAlone() {
      return flowers.filter(c -> c.bound().choice("how").equals("caged")).isPresent();
    }

    /** No flowers are taken off it, so its own pollen is about. */
    boolean keepsItsFlowers() {
      return flowers.filter(c -> c.bound().choice("how").endsWith("removed")).isEmpty();
    }
  }

  public static Planned of(List<Block> grow, Map<String, Bed> beds, List<Outsider> outsiders) {
    Map<String, Stand> stands = new java.util.LinkedHashMap<>();
    for (Block block : grow) {
      block
          .head()
          .ifPresent(
              h -> {
                String lot = h.name("lot").text();
                stands.putIfAbsent(
                    h.has("as") ? h.name("as").text() : lot,
                    new Stand(
                        lot,
                        block.find(PlanClauses.IN).map(c -> c.bound().name("bed").text()),
                        block.find(PlanClauses.FLOWERS)));
              });
    }
    return new Planned(stands, beds, outsiders);
  }

  /** The plantings by name, with the name of the lot of each. */
  Map<String, String> lots() {
    Map<String, String> lots = new HashMap<>();
    stands.forEach((name, stand) -> lots.put(name, stand.lot()));
    return lots;
  }
}
