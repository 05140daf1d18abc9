package slipday.nextseason;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.nextseason.NextSeason.LeftOut;
import slipday.nextseason.NextSeason.Role;
import slipday.nextseason.NextSeason.Sown;

/** Plantings as they are decided on, with the seed each takes. */
final class Sowings {
  /** Enough of a cross to see that it is one, and to self a few. */
  private static final int PLANTS_OF_A_CROSS = 3;

  private final SeedStore stock;
  private final Offspring offspring;
  private final List<Sown> all = new ArrayList<>();
  private final List<LeftOut> leftOut = new ArrayList<>();
  private final Set<String> sown = new HashSet<>();
  private final Map<String, List<String>> followers = new LinkedHashMap<>();

  Sowings(SeedStore stock, Offspring offspring) {
    this.stock = stock;
    this.offspring = offspring;
  }

  List<Sown> all() {
    return all;
  }

  List<LeftOut> leftOut() {
    return leftOut;
  }

  Map<String, List<String>> followers() {
    return followers;
  }

  void leaveOut(String name, String why) {
    leftOut.add(new LeftOut(name, why));
  }

  /** The planting that does next season what this one did. */
  Optional<String> follower(Planting planting) {
    return followers.getOrDefault(planting.name(), List.of()).stream().findFirst();
  }

  /** As this season's planting was grown; nothing where its seed is too little for one plant. */
  Optional<Sown> sow(Lot lot, Planting from, Role role, int plants, List<String> why) {
    boolean selfed = from.pollination().filter(p -> p.value().self()).isPresent();
    int fruits = from.pollination().map(p -> p.value().fruits()).orElse(0);
    int fromPlants = from.pollination().flatMap(p -> p.value().fromPlants()).orElse(0);
    boolean saved = role != Role.CHECK && from.seedSaved();
    Plan plan = new Plan(selfed, saved ? fruits : 0, fromPlants, saved);
    return sow(lot, from, role, plants, plan, why);
  }

  /** Some of a planting's plants, and of the fruits that it is to bear. */
  Optional<Sown> sowPart(Lot lot, Planting from, int plants, List<String> why) {
    int all = Math.max(1, from.plants().map(Reasoned::value).orElse(plants));
    boolean selfed = from.pollination().filter(p -> p.value().self()).isPresent();
    int fruits = from.pollination().map(p -> p.value().fruits()).orElse(0);
    int fromPlants = from.pollination().flatMap(p -> p.value().fromPlants()).orElse(0);
    Plan plan =
        new Plan(
            selfed,
            from.seedSaved() ? part(fruits, plants, all) : 0,
            part(fromPlants, plants, all),
            from.seedSaved());
    return sow(lot, from, Role.CARRIED_ON, plants, plan, why);
  }

  private static int part(int figure, int plants, int all) {
    return plants == 0 ? figure : Math.min(figure, (figure * plants + all - 1) / all);
  }

  /** A family of a line that is being fixed. */
  Optional<Sown> sowFamily(Lot lot, Planting from, int plants, int fruits, List<String> why) {
    return sow(lot, from, Role.FAMILY, plants, new Plan(true, fruits, 0, true), why);
  }

  Optional<Sown> sowCross(Lot lot, Planting mother, List<String> why) {
    boolean selfed = lot.line().purpose() != Line.Purpose.KEEP;
    Plan plan = new Plan(selfed, PLANTS_OF_A_CROSS, 2, true);
    return sow(lot, mother, Role.NEW_CROSS, PLANTS_OF_A_CROSS, plan, why);
  }

  private record Plan(boolean selfed, int fruits, int fromPlants, boolean seedSaved) {}

  private Optional<Sown> sow(
      Lot lot, Planting from, Role role, int wanted, Plan plan, List<String> why) {
    int plants = stock.most(lot, wanted, SeedStore.keepBack(lot));
    if ((plants == 0 && wanted > 0) || !stock.isThere(lot) || !sown.add(lot.name())) {
      return Optional.empty();
    }
    int toSow = plants == 0 ? 0 : stock.toSow(lot, plants);
    Optional<Integer> remnant = plants == 0 ? stock.left(lot) : stock.take(lot, plants);
    List<String> words = new ArrayList<>();
    words.add(what(lot));
    words.addAll(why);
    if (plants < wanted) {
      words.add(
          "For want of seed it has "
              + plants
              + (plants == 1 ? " plant" : " plants")
              + " and not "
              + wanted
              + ", so that a remnant stays.");
    }
    words.add(seed(lot, toSow, remnant));
    Sown made =
        new Sown(
            lot,
            from,
            role,
            from.bed(),
            plants,
            plan.selfed,
            plan.fruits,
            Math.min(plan.fromPlants, Math.max(plants, 1)),
            plan.seedSaved,
            toSow,
            remnant,
            words);
    all.add(made);
    if (role != Role.CHECK && role != Role.NEW_CROSS) {
      followers.computeIfAbsent(from.name(), n -> new ArrayList<>()).add(lot.name());
    }
    return Optional.of(made);
  }

  private String what(Lot lot) {
    return lot.line().title() + offspring.generation(lot).map(g -> ", " + g).orElse("") + ".";
  }

  private String seed(Lot lot, int toSow, Optional<Integer> remnant) {
    String seeds =
        remnant
            .map(n -> toSow + " of " + (n + toSow) + " seeds to sow, " + n + " stay")
            .orElse("Its seeds were never counted; " + toSow + " to sow");
    String until = stock.growOn(lot).map(w -> "; " + w).orElse("");
    return seeds + until + ".";
  }
}
