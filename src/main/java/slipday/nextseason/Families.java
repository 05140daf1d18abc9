package slipday.nextseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipday.choice.Candidates;
import slipday.choice.Chooser;
import slipday.choice.Chosen;
import slipday.choice.Wish;
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

/**
 * A line that is being fixed goes on in a few families, each the seed of one plant: those that its
 * goal chooses.
 */
final class Families {
  private static final int USUAL = 4;
  private static final int PLANTS_OF_A_CHECK = 3;

  /** Where a cross parts into types, so many plants show some of them. */
  private static final int PLANTS_THAT_PART = 12;

  private static final String NO_GOAL =
      "No goal is declared for the line, so its plants are taken as they come; the choice is"
          + " yours.";

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

  /** How many plants of the next season a family has, and why. */
  private record Share(Plants plant, int plants, List<String> why) {}

  /**
   * @param borne this season's plantings of the line that seed was saved of
   * @param checks those of it that no seed was saved of
   */
  void goOn(Line line, List<Planting> borne, List<Planting> checks) {
    Optional<Goal> goal =
        garden.goals().stream().filter(g -> g.line().name().equals(line.name())).findFirst();
    boolean parts = borne.stream().anyMatch(p -> offspring.isFirstGeneration(p.lot()));
    int stood = borne.stream().mapToInt(Families::plants).sum();
    int plants = parts ? Math.max(stood, PLANTS_THAT_PART) : stood;
    Optional<Chosen> chosen =
        goal.flatMap(g -> Chooser.choose(garden, line, Wish.ofPlants(plants)).value());
    Ranked candidates =
        new Ranked(chosen.map(Chosen::candidates).orElseGet(() -> Candidates.of(garden, line)));
    Map<Plants, Family> best = best(borne, candidates);
    List<Share> shares =
        chosen
            .map(c -> dealt(c, best, candidates))
            .filter(dealt -> !dealt.isEmpty())
            .orElseGet(() -> evenly(candidates.inOrder(best.keySet()), plants, candidates));
    sow(shares, best, borne.stream().mapToInt(Families::fruits).sum());
    if (shares.isEmpty()) {
      borne.forEach(p -> sowings.sow(p.lot(), p, Role.AGAIN, plants(p), List.of()));
    } else if (!parts) {
      check(line, borne, checks);
    }
  }

  private void sow(List<Share> shares, Map<Plants, Family> best, int fruits) {
    Set<Plants> sown = new HashSet<>();
    for (Share share : shares) {
      Family family = Objects.requireNonNull(best.get(share.plant));
      int each = Math.max(1, (fruits + shares.size() - 1) / shares.size());
      sowings.sowFamily(
          family.lot, family.from, share.plants, Math.min(share.plants, each), share.why);
      sown.add(share.plant);
    }
    best.values().stream()
        .filter(f -> !sown.contains(f.plant))
        .forEach(f -> sowings.leaveOut(f.lot.name(), "other families go before; its seed rests"));
  }

  /** As {@code slipday choose} deals the plants out, among the plants whose seed lies here. */
  private List<Share> dealt(Chosen chosen, Map<Plants, Family> best, Ranked candidates) {
    Map<Plants, Integer> dealt = new LinkedHashMap<>();
    for (Chosen.Part part : chosen.parts()) {
      if (best.containsKey(part.plant().plant())) {
        dealt.merge(part.plant().plant(), part.plants(), Integer::sum);
      } else {
        sowings.leaveOut(
            part.tag(), "`slipday choose` takes it, and its seed is in no lot that can be sown");
      }
    }
    List<Share> shares = new ArrayList<>();
    dealt.forEach(
        (plant, plants) -> {
          List<String> why = new ArrayList<>();
          why.add(
              "Seed of "
                  + plant
                  + ", which `slipday choose` gives "
                  + plants
                  + " of "
                  + chosen.plants()
                  + " plants"
                  + candidates.figures(plant)
                  + ".");
          why.addAll(candidates.speaks(plant));
          if (shares.isEmpty()) {
            why.add(terms(chosen));
          }
          shares.add(new Share(plant, plants, why));
        });
    return shares;
  }

  /** What the choice keeps to and comes to. */
  private static String terms(Chosen chosen) {
    String limits =
        chosen.limits().stream().map(Chosen.Bound::says).collect(Collectors.joining(", and "));
    String index =
        chosen
            .index()
            .map(i -> String.format(Locale.ROOT, ", short of the aims by %.2f", 0.0 - i))
            .orElse(", for nothing can be valued here");
    return "The choice keeps to " + limits + index + "; it is yours to change.";
  }

  /**
   * In equal parts, the best plant of each stand first, so that none is lost to another at once.
   */
  private List<Share> evenly(List<Plants> ranked, int plants, Ranked candidates) {
    Set<Stand> seen = new HashSet<>();
    List<Plants> firsts = ranked.stream().filter(p -> seen.add(p.stand())).toList();
    List<Plants> order =
        Stream.concat(firsts.stream(), ranked.stream().filter(p -> !firsts.contains(p))).toList();
    int wanted = Math.min(USUAL, Math.max(1, plants / 2));
    int many = Math.min(order.size(), wanted);
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < many; i++) {
      List<String> why = new ArrayList<>();
      why.add("Seed of " + order.get(i) + candidates.figures(order.get(i)) + ".");
      if (i == 0) {
        why.add(NO_GOAL);
      }
      shares.add(new Share(order.get(i), plants / many + (i < plants % many ? 1 : 0), why));
    }
    return shares;
  }

  private static int plants(Planting planting) {
    return planting.plants().map(Reasoned::value).orElse(0);
  }

  private static int fruits(Planting planting) {
    return planting.pollination().map(p -> p.value().fruits()).orElse(0);
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
