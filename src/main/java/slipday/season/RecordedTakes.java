package slipday.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.garden.Crop;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Mating;
import slipday.measure.Quantity;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** What the record says of hand pollination: how often it takes here, what has set, what stands. */
final class RecordedTakes {
  private final GardenRecord record;
  private final List<Fact.SetChecked> sets;

  RecordedTakes(GardenRecord record) {
    this.record = record;
    this.sets = List.copyOf(record.sets().values());
  }

  /**
   * The crop's take with this garden's own takes and failures added, of every season on record: the
   * crop's share counts as many flowers as it is worth, and each flower checked here as one (the
   * beta distribution is conjugate to counts).
   */
  Reasoned<CropFacts.TakeRate> learned(
      Reasoned<CropFacts.TakeRate> usual, Crop crop, boolean emasculated) {
    List<Fact.SetChecked> own =
        sets.stream()
            .filter(s -> crop(s.fruit()).name().equals(crop.name()))
            .filter(s -> isEmasculated(s.fruit()) == emasculated)
            .toList();
    if (own.isEmpty()) {
      return usual;
    }
    long took = own.stream().filter(Fact.SetChecked::took).count();
    int worth = usual.value().worth() + own.size();
    double share = (usual.value().share() * usual.value().worth() + took) / worth;
    List<Reason> from = new ArrayList<>(List.of(usual.reason()));
    own.forEach(s -> from.add(s.at().reason()));
    String says =
        "A take of "
            + Quantity.plain(Math.round(share * 100))
            + " %: "
            + took
            + " of "
            + own.size()
            + " tagged flowers took here, added to the crop's "
            + Quantity.plain(Math.round(usual.value().share() * 100))
            + " %";
    return new Reasoned<>(new CropFacts.TakeRate(share, worth), Reason.derived(says, from));
  }

  private static Crop crop(Fruit fruit) {
    return fruit.seedParent().stand().lot().line().crop();
  }

  /** A cross on a perfect flower is made on one without its anthers. */
  private static boolean isEmasculated(Fruit fruit) {
    return fruit.mating().isCross()
        && fruit.seedParent().stand().lot().line().sex().fruitingFlowersArePerfect();
  }

  /** Fruits of a planting, or of a cross on it, that took this season and have not dropped. */
  Reasoned<Integer> set(Planting seed, Planting pollen, boolean cross, boolean self) {
    List<Reason> from =
        sets.stream()
            .filter(s -> s.took() && s.fruit().year() == record.season())
            .filter(s -> s.fruit().seedParent().stand().name().equals(seed.name()))
            .filter(
                s ->
                    cross
                        ? s.fruit().mating().isCross()
                            && s.fruit().pollenParent().stand().name().equals(pollen.name())
                        : s.fruit().mating() == (self ? Mating.SELF : Mating.SIB))
            .map(s -> s.at().reason())
            .toList();
    return new Reasoned<>(from.size(), Reason.derived(from.size() + " fruits have set", from));
  }

  /** Plants that stand: planted out on record, or else meant in the plan, less those gone. */
  Optional<Reasoned<Integer>> standing(Planting planting) {
    List<Reason> from = new ArrayList<>();
    int planted = 0;
    boolean counted = true;
    for (Fact.PlantedOut out :
        record.every(Fact.PlantedOut.class).filter(p -> isOf(p, planting)).toList()) {
      counted &= out.plants().isPresent();
      planted += out.plants().orElse(0);
      from.add(out.at().reason());
    }
    if (from.isEmpty() || !counted) {
      from.clear();
      planted = planting.plants().map(Reasoned::value).orElse(0);
      planting.plants().ifPresent(p -> from.add(p.reason()));
    }
    if (from.isEmpty()) {
      return Optional.empty();
    }
    int gone = 0;
    for (Fact.Lost lost : record.every(Fact.Lost.class).filter(l -> isOf(l, planting)).toList()) {
      gone += lost.count();
      from.add(lost.at().reason());
    }
    int stand = Math.max(0, planted - gone);
    return Optional.of(
        new Reasoned<>(
            stand, from.size() == 1 ? from.get(0) : Reason.derived(stand + " plants stand", from)));
  }

  private boolean isOf(Fact.PlantedOut out, Planting planting) {
    return out.stand().year() == record.season() && out.stand().name().equals(planting.name());
  }

  private boolean isOf(Fact.Lost lost, Planting planting) {
    return lost.plants().stand().year() == record.season()
        && lost.plants().stand().name().equals(planting.name());
  }
}
