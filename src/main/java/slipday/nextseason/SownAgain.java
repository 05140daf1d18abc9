package slipday.nextseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.nextseason.NextSeason.Role;

/** A planting that no seed of its own follows: its lot is sown again, or another of the line. */
final class SownAgain {
  static final String NO_SEED = "no seed of it can be spared";

  private final Garden garden;
  private final Sowings sowings;

  SownAgain(Garden garden, Sowings sowings) {
    this.garden = garden;
    this.sowings = sowings;
  }

  void sow(Planting planting, Role role, List<String> why) {
    List<Lot> lots = new ArrayList<>(List.of(planting.lot()));
    garden.lots().stream()
        .filter(l -> l.line().name().equals(planting.line().name()))
        .filter(l -> !l.name().equals(planting.lot().name()))
        .filter(l -> l.identity() == Lot.Identity.KNOWN)
        .sorted(Comparator.comparing(l -> -l.harvested().map(Reasoned::value).orElse(0)))
        .forEach(lots::add);
    int plants = planting.plants().map(Reasoned::value).orElse(0);
    boolean sown =
        lots.stream()
            .filter(l -> l.bitterParent(garden).isEmpty())
            .anyMatch(l -> sowings.sow(l, planting, role, plants, why).isPresent());
    if (!sown) {
      sowings.leaveOut(planting.name(), NO_SEED);
    }
  }
}
