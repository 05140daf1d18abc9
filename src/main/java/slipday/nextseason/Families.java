package slipday.nextseason;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slipday.choice.Chosen;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.measure.Reasoned;
import slipday.nextseason.NextSeason.Role;

/**
 * How a line goes on from seed that was saved of it this season: from which lots, and with how many
 * plants of each. Its goal deals the plants out, as {@code slipday choose} does. One that is being
 * fixed goes on in a few families, each the seed of one plant; one that is kept goes on from as
 * many mothers as it has room for. No seed of a plant that may be no parent goes on.
 */
final class Families {
  private static final int USUAL = 4;
  private static final int PLANTS_OF_A_CHECK = 3;

  /** Where a cross parts into types, so many plants show some of them. */
  private static final int PLANTS_THAT_PART = 12;

  private static final String NO_GOAL =
      "No goal is declared for the line, so its plants are taken as they come; the choice is"
          + " yours.";

  private static final String NONE_FIT =
      "Of the seed that was saved of it none may go on; why, is told of each lot.";

  private final Garden garden;
  private final Offspring offspring;
  private final SeedStore stock;
  private final Sowings sowings;
  private final SownAgain again;

  Families(Garden garden, Offspring offspring, SeedStore stock, Sowings sowings, SownAgain again) {
    this.garden = garden;
    this.offspring = offspring;
    this.stock = stock;
    this.sowings = sowings;
    this.again = again;
  }

  /**
   * A lot that may go on.
   *
   * @param mothers the plants that bore its seed; where nobody numbered them, their planting
   */
  private record Family(Lot lot, Planting from, List<Plants> mothers) {
    boolean isOfOne() {
      return mothers.size() == 1 && mothers.get(0).plant().isPresent();
    }
  }

  /**
   * A line that is being fixed.
   *
   * @param borne this season's plantings of the line that seed was saved of
   * @param checks those of it that no seed was saved of
   */
  void fix(Line line, List<Planting> borne, List<Planting> checks) {
    boolean parts = borne.stream().anyMatch(p -> offspring.isFirstGeneration(p.lot()));
    int stood = borne.stream().mapToInt(Families::plants).sum();
    int plants = parts ? Math.max(stood, PLANTS_THAT_PART) : stood;
    LineChoice choice = new LineChoice(garden, line, plants);
    List<Family> families = fit(borne, choice.ranked());
    Map<Family, Integer> weights = chosen(choice, families, borne);
    if (weights.isEmpty()) {
      weights = evenly(families, plants, choice.ranked());
    }
    int fruits = borne.stream().mapToInt(Families::fruits).sum();
    Map<Family, Integer> dealt = dealt(plants, weights, 1);
    int each = Math.max(1, (fruits + dealt.size() - 1) / Math.max(1, dealt.size()));
    dealt.forEach(
        (family, share) ->
            sowings.sowFamily(
                family.lot,
                family.from,
                share,
                Math.min(share, each),
                why(family, choice, sowings.follower(family.from).isEmpty())));
    rest(families, dealt);
    if (dealt.isEmpty()) {
      borne.forEach(p -> again.sow(p, Role.AGAIN, List.of(NONE_FIT)));
    } else if (!parts) {
      check(line, borne, checks);
    }
  }

  /** A planting of a line that is kept as it is, or bred on. */
  void carryOn(Planting planting) {
    List<Lot> children = offspring.of(planting).stream().filter(stock::isThere).toList();
    if (children.isEmpty()) {
      String none = "No seed was saved of it in " + garden.season().label() + ".";
      again.sow(planting, Role.AGAIN, planting.seedSaved() ? List.of(none) : List.of());
      return;
    }
    int plants = plants(planting);
    LineChoice choice = new LineChoice(garden, planting.line(), linePlants(planting.line()));
    List<Family> families = fit(List.of(planting), choice.ranked());
    Map<Family, Integer> weights = chosen(choice, families, List.of(planting));
    if (weights.isEmpty()) {
      families.forEach(f -> weights.put(f, f.mothers.size()));
    }
    // Sibs need a mate beside them.
    int least = planting.pollination().filter(p -> !p.value().self()).isPresent() ? 2 : 1;
    Map<Family, Integer> dealt = dealt(plants, weights, least);
    dealt.forEach(
        (family, share) -> {
          List<String> why = new ArrayList<>();
          boolean first = sowings.follower(planting).isEmpty();
          why.addAll(why(family, choice, first));
          if (first && dealt.size() > 1 && least > 1) {
            why.add(
                "The line goes on from "
                    + dealt.size()
                    + " lots, so that it keeps more parents: give the flowers of one the pollen of"
                    + " another, which is no cross.");
          }
          if (planting.line().purpose() == Line.Purpose.KEEP && stock.mayRest(family.lot)) {
            why.add("It may rest: its seed stays good for another season.");
          }
          sowings.sowPart(family.lot, planting, share, why);
        });
    rest(families, dealt);
    if (dealt.isEmpty()) {
      again.sow(planting, Role.AGAIN, List.of(NONE_FIT));
    }
  }

  private int linePlants(Line line) {
    return Math.max(
        1,
        garden.plantings().stream()
            .filter(p -> p.line().name().equals(line.name()) && p.seedSaved())
            .mapToInt(Families::plants)
            .sum());
  }

  /** Where nobody says how many plants, the first lot alone follows. */
  private Map<Family, Integer> dealt(int plants, Map<Family, Integer> weights, int least) {
    if (plants == 0) {
      return weights.keySet().stream().findFirst().map(f -> Map.of(f, 0)).orElse(Map.of());
    }
    Map<Family, Integer> dealt =
        Deal.out(plants, weights, least, f -> stock.most(f.lot, plants, SeedStore.keepBack(f.lot)));
    int left = plants - dealt.values().stream().mapToInt(Integer::intValue).sum();
    // What no seed is there for is asked of the first, which then says that it has too little.
    dealt.keySet().stream().findFirst().ifPresent(f -> dealt.merge(f, left, Integer::sum));
    return dealt;
  }

  private void rest(List<Family> families, Map<Family, Integer> dealt) {
    families.stream()
        .filter(f -> !dealt.containsKey(f))
        .forEach(
            f ->
                sowings.leaveOut(
                    f.lot.name(),
                    stock.most(f.lot, 1, SeedStore.keepBack(f.lot)) == 0
                        ? SownAgain.NO_SEED
                        : "others go before; its seed rests"));
  }

  /** As {@code slipday choose} deals the plants out, among the lots in which the seed lies. */
  private Map<Family, Integer> chosen(
      LineChoice choice, List<Family> families, List<Planting> borne) {
    Map<Family, Integer> weights = new LinkedHashMap<>();
    for (Chosen.Part part : choice.parts()) {
      Optional<Family> family =
          families.stream()
              .filter(f -> part.fruit().savedInto().contains(f.lot.name()))
              .findFirst()
              .or(
                  () ->
                      families.stream()
                          .filter(f -> f.isOfOne() && f.mothers.contains(part.plant().plant()))
                          .findFirst());
      family.ifPresent(f -> weights.merge(f, part.plants(), Integer::sum));
      boolean ofThese =
          borne.stream().anyMatch(p -> p.name().equals(part.plant().plant().stand().name()));
      if (family.isEmpty() && ofThese) {
        sowings.leaveOut(
            part.tag(), "`slipday choose` takes it, and its seed is in no lot that can be sown");
      }
    }
    return weights;
  }

  private List<String> why(Family family, LineChoice choice, boolean first) {
    List<String> why = new ArrayList<>();
    List<Chosen.Part> parts =
        choice.parts().stream()
            .filter(p -> p.fruit().savedInto().contains(family.lot.name()))
            .toList();
    if (!family.isOfOne()) {
      why.add(seedOf(family));
      if (!parts.isEmpty() && family.mothers.size() > 1) {
        String tags = parts.stream().map(Chosen.Part::tag).collect(Collectors.joining(", "));
        why.add(
            "`slipday choose` takes "
                + tags
                + "; in a lot of mixed seed no fruit's share can be told from another's.");
      }
    } else if (choice.parts().isEmpty()) {
      Plants plant = family.mothers.get(0);
      why.add("Seed of " + plant + choice.ranked().figures(plant) + ".");
    } else {
      Plants plant = family.mothers.get(0);
      why.add(
          "Seed of "
              + plant
              + ", which `slipday choose` gives "
              + choice.plantsOf(plant)
              + " of "
              + choice.plants()
              + " plants"
              + choice.ranked().figures(plant)
              + ".");
      why.addAll(choice.ranked().speaks(plant));
    }
    if (first) {
      Optional.of(family).filter(Family::isOfOne).flatMap(f -> choice.terms()).ifPresent(why::add);
      if (!choice.hasGoal() && family.lot.line().purpose() == Line.Purpose.FIX) {
        why.add(NO_GOAL);
      }
    }
    return why;
  }

  private String seedOf(Family family) {
    List<Fact.Saved> takings = offspring.takings(family.lot);
    long fruits = takings.stream().filter(t -> t.from() instanceof Fruit).count();
    String of = "Seed of " + family.from.name();
    if (fruits == 0) {
      return of + ", from fruit that nobody marked.";
    }
    int plants = offspring.seedParents(family.lot);
    return of
        + ", from "
        + fruits
        + (fruits == 1 ? " marked fruit" : " marked fruits")
        + (plants > 0 ? " on " + plants + (plants == 1 ? " plant" : " plants") : "")
        + ".";
  }

  /**
   * In equal parts, the best plant of each stand first, so that none is lost to another at once.
   */
  private static Map<Family, Integer> evenly(List<Family> families, int plants, Ranked ranked) {
    List<Plants> order = ranked.inOrder(families.stream().map(f -> f.mothers.get(0)).toList());
    List<Family> best =
        families.stream()
            .sorted(Comparator.comparingInt(f -> order.indexOf(f.mothers.get(0))))
            .toList();
    Set<Stand> seen = new HashSet<>();
    List<Family> firsts = best.stream().filter(f -> seen.add(f.mothers.get(0).stand())).toList();
    Map<Family, Integer> weights = new LinkedHashMap<>();
    Stream.concat(firsts.stream(), best.stream().filter(f -> !firsts.contains(f)))
        .limit(Math.min(USUAL, Math.max(1, plants / 2)))
        .forEach(f -> weights.put(f, f.isOfOne() ? 1 : f.mothers.size()));
    return weights;
  }

  private static int plants(Planting planting) {
    return planting.plants().map(Reasoned::value).orElse(0);
  }

  private static int fruits(Planting planting) {
    return planting.pollination().map(p -> p.value().fruits()).orElse(0);
  }

  /** The lots that may go on, the best of each plant; what may not is left out with its reason. */
  private List<Family> fit(List<Planting> borne, Ranked ranked) {
    List<Family> fit = new ArrayList<>();
    Set<Plants> seen = new HashSet<>();
    for (Planting planting : borne) {
      for (Lot lot : bestFirst(offspring.of(planting), ranked)) {
        Family family = new Family(lot, planting, mothers(lot));
        Optional<String> unfit = unfit(lot, ranked);
        if (unfit.isPresent()) {
          sowings.leaveOut(lot.name(), unfit.get());
        } else if (family.isOfOne() && !seen.add(family.mothers.get(0))) {
          sowings.leaveOut(lot.name(), "another fruit of its plant goes on; its seed rests");
        } else {
          fit.add(family);
        }
      }
    }
    return fit;
  }

  /**
   * Why no seed of a lot may be sown; a mix goes on while a parent in it may, unless one is bitter.
   */
  private Optional<String> unfit(Lot lot, Ranked ranked) {
    Optional<String> bitter =
        lot.bitterParent(garden)
            .map(b -> "it is of " + b.culprit().name() + ", which tasted bitter: destroy it");
    List<Optional<String>> refused = offspring.takings(lot).stream().map(ranked::refused).toList();
    return bitter.or(
        () ->
            refused.stream().allMatch(Optional::isPresent)
                ? refused.stream().findFirst().flatMap(r -> r)
                : Optional.empty());
  }

  private List<Plants> mothers(Lot lot) {
    return offspring.takings(lot).stream().map(Offspring::mother).distinct().toList();
  }

  /** Seed of a known father first, then of most mothers, then as the plant's fruits rank. */
  private List<Lot> bestFirst(List<Lot> lots, Ranked ranked) {
    return lots.stream()
        .filter(stock::isThere)
        .sorted(
            Comparator.<Lot, Lot.Identity>comparing(Lot::identity)
                .thenComparingInt(l -> -mothers(l).size())
                .thenComparingInt(l -> ranked.place(mothers(l).get(0), l))
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
