package slipday.garden.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import slipday.garden.Bed;
import slipday.garden.Crop;
import slipday.garden.CropFacts;
import slipday.garden.Lot;
import slipday.garden.Outsider;
import slipday.garden.PollenReach;
import slipday.garden.Species;
import slipday.language.Entry;
import slipday.language.PlanClauses;
import slipday.language.RecordClauses;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * What kept all other pollen from a planting's open flowers: a cage of its own, or its distance
 * from all its kin but plants of the same lot. Distance counts from every bed in which any plant of
 * the two stood in the season, and must be the strict one; whether the two flowered together is not
 * asked. Where the plan tells of no kin at all nothing is claimed, but of a kind that pollinates
 * itself: what nobody told of would have to stand very near. Where it does not tell how far off kin
 * is, nothing is claimed.
 */
final class Isolation {
  private static final String ITSELF = "itself";

  private final Planned planned;
  private final Function<String, Optional<Lot>> lots;

  /** The beds that plants of a planting were moved to. */
  private final Map<String, Set<String>> moves = new HashMap<>();

  private final Map<String, Optional<Kept>> known = new HashMap<>();

  /**
   * @param lots by name; empty for one that is not known yet
   */
  Isolation(Entries entries, Planned planned, Function<String, Optional<Lot>> lots) {
    this.planned = planned;
    this.lots = lots;
    for (Entry entry : entries.all()) {
      if (entry.is(RecordClauses.MOVED)
          && entries.seasons().of(entry) == entries.seasons().planned()) {
        moves
            .computeIfAbsent(entry.bound().name("planting").text(), p -> new LinkedHashSet<>())
            .add(entry.bound().name("bed").text());
      }
    }
  }

  /**
   * Why no other pollen came.
   *
   * @param byDistance by distance, or by what the label does not say, and not by a cage
   */
  record Kept(Reason reason, boolean byDistance) {}

  /** The nearest kin so far, and all that the distances rest on. */
  private static final class Nearest {
    private final List<Reason> reasons = new ArrayList<>();
    private @Nullable String name;
    private double metres = Double.MAX_VALUE;

    void see(String kin, double away, List<Reason> because) {
      reasons.addAll(because);
      if (away < metres) {
        metres = away;
        name = kin;
      }
    }
  }

  /** Of a planting of the plan's season; empty where other pollen came or may have. */
  Optional<Kept> of(String name) {
    Optional<Kept> kept = known.get(name);
    if (kept == null) {
      kept = kept(name);
      known.put(name, kept);
    }
    return kept;
  }

  private Optional<Kept> kept(String name) {
    Planned.Stand stand = planned.stands().get(name);
    if (stand == null) {
      return Optional.empty();
    }
    if (stand.isCagedAlone()) {
      Reason cage = Reason.quoting(stand.flowers().orElseThrow().span());
      return Optional.of(new Kept(Reason.derived("it stood in a cage of its own", cage), false));
    }
    Optional<Lot> lot = lots.apply(stand.lot());
    Optional<Reasoned<Range>> needed = lot.flatMap(l -> l.line().facts().get(CropFacts.ISOLATION));
    boolean ownPollen =
        stand.keepsItsFlowers() && lot.filter(l -> l.line().sex().shedsPollen()).isPresent();
    return ownPollen && needed.isPresent()
        ? distant(name, lot.orElseThrow(), needed.get())
        : Optional.empty();
  }

  private Optional<Kept> distant(String name, Lot lot, Reasoned<Range> needed) {
    Crop crop = lot.line().crop();
    Nearest nearest = new Nearest();
    boolean far = farFromPlantings(name, lot, nearest) && farFromOutsiders(crop, nearest);
    double strict = needed.value().high();
    if (far
        && nearest.name == null
        && lot.line().facts().valueOr(CropFacts.POLLEN_BY, "").equals(ITSELF)) {
      return Optional.of(
          new Kept(
              Reason.derived(
                  "its kind pollinates itself, and the plan tells of no kin of it that flowers"
                      + " nearby",
                  needed.reason()),
              true));
    }
    if (!far || nearest.name == null || nearest.metres < strict) {
      return Optional.empty();
    }
    nearest.reasons.add(needed.reason());
    return Optional.of(
        new Kept(
            Reason.derived(
                "its nearest kin that the plan tells of, `"
                    + nearest.name
                    + "`, was "
                    + metres(nearest.metres)
                    + " away all season, beyond the "
                    + metres(strict)
                    + " that keep its kind clean (of nearer kin nobody told)",
                nearest.reasons),
            true));
  }

  private static String metres(double metres) {
    return Quantity.plain(Math.round(metres)) + " m";
  }

  /** Whether every planting's kind and distance is known. */
  private boolean farFromPlantings(String name, Lot lot, Nearest nearest) {
    Species species = lot.line().crop().species();
    Set<Bed> own = beds(name);
    for (Map.Entry<String, Planned.Stand> other : planned.stands().entrySet()) {
      if (other.getKey().equals(name)) {
        continue;
      }
      if (other.getValue().lot().equals(lot.name())) {
        continue; // the same seed, sown twice
      }
      Optional<Lot> theirLot = lots.apply(other.getValue().lot());
      if (theirLot.isEmpty()) {
        return false;
      }
      if (PollenReach.degree(theirLot.get().line().crop().species(), species).isPresent()) {
        Set<Bed> theirs = beds(other.getKey());
        Optional<Double> away = away(own, theirs);
        if (away.isEmpty()) {
          return false;
        }
        List<Reason> corners = new ArrayList<>();
        own.forEach(b -> corners.add(b.places().reason(PlanClauses.CORNER)));
        theirs.forEach(b -> corners.add(b.places().reason(PlanClauses.CORNER)));
        nearest.see(other.getKey(), away.get(), corners);
      }
    }
    return true;
  }

  /** The least between any two of them; empty where one is not told, or there are none. */
  private static Optional<Double> away(Set<Bed> own, Set<Bed> theirs) {
    double least = Double.MAX_VALUE;
    for (Bed mine : own) {
      for (Bed other : theirs) {
        Optional<Double> apart = mine.distanceTo(other);
        if (apart.isEmpty()) {
          return apart;
        }
        least = Math.min(least, apart.get());
      }
    }
    return least == Double.MAX_VALUE ? Optional.empty() : Optional.of(least);
  }

  /** That of the plan, and all that plants of it were moved to; none where one is not known. */
  private Set<Bed> beds(String name) {
    Set<String> names = new LinkedHashSet<>();
    Planned.Stand stand = planned.stands().get(name);
    if (stand != null) {
      stand.bed().ifPresent(names::add);
    }
    names.addAll(moves.getOrDefault(name, Set.of()));
    Set<Bed> beds = new LinkedHashSet<>();
    for (String bed : names) {
      Bed known = planned.beds().get(bed);
      if (known == null) {
        return Set.of();
      }
      beds.add(known);
    }
    return beds;
  }

  private boolean farFromOutsiders(Crop crop, Nearest nearest) {
    for (Outsider outsider : planned.outsiders()) {
      boolean kin =
          outsider.crops().stream()
              .anyMatch(c -> PollenReach.degree(c.value().species(), crop.species()).isPresent());
      if (kin) {
        if (outsider.distance().isEmpty()) {
          return false;
        }
        Reasoned<Double> distance = outsider.distance().get();
        nearest.see(outsider.name(), distance.value(), List.of(distance.reason()));
      }
    }
    return true;
  }
}
