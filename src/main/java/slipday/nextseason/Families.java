package slipday.nextseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.measure.Reasoned;
import slipday.nextseason.NextSeason.Role;

/** A line that is being fixed goes on in three to five families, each the seed of one plant. */
final class Families {
  private static final int FEWEST = 3;
  private static final int MOST = 5;
  private static final int USUAL = 4;
  private static final int PLANTS_OF_A_CHECK = 3;

  /** Where a cross parts into types, so many plants show some of them. */
  private static final int PLANTS_THAT_PART = 12;

  private static final String ORDERED =
      "The plants are in the order of `slipday candidates`; the choice is yours.";

  private final Garden garden;
  private final Offspring offspring;
  private final SeedStore stock;
  private final Sowings sowings;

  Families(Garden garden, Offspring offspring, SeedStore stock, Sowings sowings) {
    this.garden = garden;
    this.offspring = offspring;
    this.stock = stock;
    this.sowings = sowings;
  }

  private record Family(Lot lot, Planting from, Plants plant) {}

  /**
   * @param borne this season's plantings of the line that seed was saved of
   * @param checks those of it that no seed was saved of
   */
  void goOn(Line line, List<Planting> borne, List<Planting> checks) {
    Optional<Goal> goal =
        garden.goals().stream().filter(g -> g.line().name().equals(line.name())).findFirst();
    Ranked candidates = new Ranked(garden, line);
    Map<Plants, Family> best = best(borne, candidates);
    List<Plants> ranked = candidates.inOrder(best.keySet());
    List<Plants> order = spread(ranked);
    boolean parts = borne.stream().anyMatch(p -> offspring.isFirstGeneration(p.lot()));
    int stood = borne.stream().mapToInt(Families::plants).sum();
    int plants = parts ? Math.max(stood, PLANTS_THAT_PART) : stood;
    int many = Math.max(1, Math.min(order.size(), Math.min(wanted(goal), Math.max(1, plants / 2))));
    int fruits = borne.stream().mapToInt(Families::fruits).sum();
    for (int i = 0; i < order.size(); i++) {
      Plants plant = order.get(i);
      Family family = Objects.requireNonNull(best.get(plant));
      if (i < many) {
        List<String> why =
            new ArrayList<>(List.of(why(plant, ranked.indexOf(plant), ranked.size(), candidates)));
        if (i == 0) {
          why.add(ORDERED);
        }
        int share = plants / many + (i < plants % many ? 1 : 0);
        int each = Math.min(share, Math.max(1, (fruits + many - 1) / many));
        sowings.sowFamily(family.lot, family.from, share, each, why);
      } else {
        sowings.leaveOut(family.lot.name(), "other families go before; its seed rests");
      }
    }
    if (order.isEmpty()) {
      borne.forEach(p -> sowings.sow(p.lot(), p, Role.AGAIN, plants(p), List.of()));
    } else if (!parts) {
      check(line, borne, checks);
    }
  }

  /** The best plant of each family first, so that no family is lost to another at once. */
  private static List<Plants> spread(List<Plants> ranked) {
    Set<Stand> seen = new HashSet<>();
    List<Plants> firsts = ranked.stream().filter(p -> seen.add(p.stand())).toList();
    return Stream.concat(firsts.stream(), ranked.stream().filter(p -> !firsts.contains(p)))
        .toList();
  }

  private static int plants(Planting planting) {
    return planting.plants().map(Reasoned::value).orElse(0);
  }

  private static int fruits(Planting planting) {
    return planting.pollination().map(p -> p.value().fruits()).orElse(0);
  }

  private static int wanted(Optional<Goal> goal) {
    int parents = goal.flatMap(Goal::parents).orElse(USUAL);
    return Math.max(FEWEST, Math.min(MOST, parents));
  }

  private static String why(Plants plant, int place, int of, Ranked candidates) {
    List<String> words = candidates.words(plant);
    String figures = words.isEmpty() ? "" : ": " + String.join(", ", words);
    return "Seed of " + plant + ", number " + (place + 1) + " of " + of + figures + ".";
  }

  /** The best lot of each plant, of plants that nothing speaks against. */
  private Map<Plants, Family> best(List<Planting> borne, Ranked candidates) {
    Map<Plants, Family> best = new LinkedHashMap<>();
    for (Planting planting : borne) {
      for (Lot lot : bestFirst(offspring.of(planting), candidates)) {
        Plants plant = of(lot);
        Optional<String> refused = candidates.refused(plant);
        if (refused.isPresent()) {
          sowings.leaveOut(lot.name(), "its plant may be no parent: " + refused.get());
        } else if (best.putIfAbsent(plant, new Family(lot, planting, plant)) != null) {
          sowings.leaveOut(lot.name(), "another fruit of its plant goes on; its seed rests");
        }
      }
    }
    return best;
  }

  /** Seed that is not one plant's selfed is taken as a family of its own, by its first fruit. */
  private Plants of(Lot lot) {
    List<Fact.Saved> takings = offspring.takings(lot);
    return offspring.selfed(lot).orElseGet(() -> Offspring.mother(takings.get(0)));
  }

  private List<Lot> bestFirst(List<Lot> lots, Ranked candidates) {
    return lots.stream()
        .filter(stock::isThere)
        .sorted(
            Comparator.<Lot>comparingInt(l -> candidates.place(of(l), l))
                .thenComparingInt(l -> -stock.left(l).orElse(0))
                .thenComparing(Lot::name))
        .toList();
  }

  /** The check of this season while its seed lasts, or else a remnant of what was sown. */
  private void check(Line line, List<Planting> borne, List<Planting> checks) {
    List<String> why =
        List.of(
            "An older generation, to tell gain from the season: keep no seed of it, and weigh and"
                + " taste it like the others.");
    for (Planting planting : checks) {
      int plants = Math.max(plants(planting), 1);
      if (stock.most(planting.lot(), plants, SeedStore.keepBack(planting.lot())) == plants
          && sowings.sow(planting.lot(), planting, Role.CHECK, plants, why).isPresent()) {
        return;
      }
    }
    for (Planting planting : borne) {
      if (sowings.sow(planting.lot(), planting, Role.CHECK, PLANTS_OF_A_CHECK, why).isPresent()) {
        return;
      }
    }
    sowings.leaveOut(
        "a check of " + line.name(),
        "no older seed of it can be spared, so gain and season can't be told apart");
  }
}
