package slipday.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import slipday.app.BuiltInCropsForTests;
import slipday.finding.Outcome;
import slipday.garden.Garden;
import slipday.garden.Resolver;
import slipday.genetics.Pedigree;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/**
 * A simulated line of squash whose true breeding values are known: weight of fruit, additive, many
 * genes. Each plant has a fruit of another plant's pollen, and two more for the kitchen; each fruit
 * is weighed. The season, the bed and the place in it weigh in too.
 */
final class Breeding {
  private static final String PLAN =
      """
      season %d
      site somewhere
        place 44 N, 72 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed south
        size 10 m x 1 m
      bed north
        size 10 m x 1 m
      line gold
        is a butternut
        purpose to keep
      """;
  private static final List<Block> CROPS = BuiltInCropsForTests.blocks();

  static final int PLANTS = 24;
  static final int PARENTS = 6;
  static final double ADDITIVE = 0.15;
  static final double PERMANENT = 0.10;
  static final double RESIDUAL = 0.25;
  private static final double SEASON = 0.15;
  private static final double BED = 0.25;
  private static final double MEAN = 3;
  private static final int KITCHEN = 2;

  private final Random random;
  private final Pedigree.Builder pedigree = Pedigree.begin(0);
  private final List<String> record = new ArrayList<>();
  private final List<String> plan = new ArrayList<>();
  private final List<Double> values = new ArrayList<>();
  private List<Plant> plants = new ArrayList<>();
  private int year = 2025;

  /** One plant: its number in the pedigree, its stand and number there, and its marked fruit. */
  static final class Plant {
    private final int number;
    private final String stand;
    private final int place;
    private double marked;
    private int father;
    private String tag = "";

    private Plant(int number, String stand, int place) {
      this.number = number;
      this.stand = stand;
      this.place = place;
    }

    String name() {
      return stand + " plant " + place;
    }

    String tag() {
      return tag;
    }

    double marked() {
      return marked;
    }
  }

  /** Plants of the next generation to be grown of a fruit. */
  record Share(Plant plant, int plants) {}

  Breeding(long seed) {
    this.random = new Random(seed);
    List<Plant> founders = new ArrayList<>();
    for (int place = 1; place <= PLANTS; place++) {
      founders.add(new Plant(pedigree.founder("founder", 0), "start", place));
      values.add(ADDITIVE * random.nextGaussian());
    }
    plan.add("lot start\n  of gold\n  generation OP");
    grow(founders, Set.of("start"));
  }

  List<Plant> plants() {
    return plants;
  }

  double value(Plant plant) {
    return values.get(plant.number);
  }

  /** The mean true value of the plants that stand. */
  double mean() {
    return plants.stream().mapToDouble(this::value).average().orElseThrow();
  }

  /** The mean true value of the seed of a choice. */
  double mean(List<Share> shares) {
    double sum = 0;
    for (Share share : shares) {
      double both = (value(share.plant()) + values.get(share.plant().father)) / 2;
      sum += share.plants() * both / PLANTS;
    }
    return sum;
  }

  double inbreeding() {
    Pedigree built = pedigree.build();
    return plants.stream().mapToDouble(p -> built.inbreeding(p.number)).average().orElseThrow();
  }

  /** The mean coancestry of the plants that stand. */
  double coancestry() {
    return pedigree.build().meanCoancestry(plants.stream().map(p -> p.number).toList());
  }

  double coancestry(List<Share> shares) {
    Map<Integer, Double> given = new HashMap<>();
    for (Share share : shares) {
      given.merge(share.plant().number, share.plants() / 2.0, Double::sum);
      given.merge(share.plant().father, share.plants() / 2.0, Double::sum);
    }
    return pedigree.build().meanCoancestry(given);
  }

  /** The heaviest fruits, each on a plant of its own, with as many plants of each. */
  List<Share> heaviest() {
    List<Plant> byWeight = new ArrayList<>(plants);
    byWeight.sort(Comparator.comparingDouble((Plant p) -> -p.marked));
    return byWeight.stream().limit(PARENTS).map(p -> new Share(p, PLANTS / PARENTS)).toList();
  }

  Plant tagged(String tag) {
    return plants.stream().filter(p -> p.tag.equals(tag)).findFirst().orElseThrow();
  }

  /** Sows the seed of a choice, and another season goes by. */
  void sow(List<Share> shares) {
    Pedigree built = pedigree.build();
    List<Plant> next = new ArrayList<>();
    Set<String> lots = new HashSet<>();
    for (Share share : shares) {
      Plant mother = share.plant();
      String lot = "s" + (year + 1) + "-" + mother.tag;
      record.add(year + "-10-01 saved " + mother.tag + ", 200 seeds, into " + lot + ", of gold");
      lots.add(lot);
      double within =
          Math.sqrt(
              ADDITIVE
                  * ADDITIVE
                  * (1 - (built.inbreeding(mother.number) + built.inbreeding(mother.father)) / 2)
                  / 2);
      for (int place = 1; place <= share.plants(); place++) {
        next.add(new Plant(pedigree.offspring(lot, mother.number, mother.father), lot, place));
        values.add(
            (values.get(mother.number) + values.get(mother.father)) / 2
                + within * random.nextGaussian());
      }
    }
    grow(next, lots);
  }

  private void grow(List<Plant> next, Set<String> lots) {
    year++;
    plants = next;
    plan.removeIf(block -> block.startsWith("grow"));
    double season = SEASON * random.nextGaussian();
    boolean south = true;
    for (String lot : lots.stream().sorted().toList()) {
      // A family stands in one bed, as in a garden; the beds take turns.
      String bed = lots.size() == 1 || south ? "south" : "north";
      south = !south;
      plan.add("grow " + lot + "\n  in " + bed + "\n  plants 12, 50 cm apart");
      double ground = season + (bed.equals("south") ? BED : 0);
      for (Plant plant : plants) {
        if (plant.stand.equals(lot)) {
          bear(plant, ground);
        }
      }
    }
  }

  private void bear(Plant plant, double ground) {
    Plant father = plant;
    while (father == plant) {
      father = plants.get(random.nextInt(plants.size()));
    }
    plant.father = father.number;
    plant.tag = "t" + (plants.indexOf(plant) + 1);
    record.add(
        year
            + "-07-10 "
            + (father.stand.equals(plant.stand)
                ? "sibbed " + plant.name() + " by plant " + father.place
                : "crossed " + plant.name() + " by " + father.name())
            + ", tag "
            + plant.tag);
    double own = MEAN + ground + value(plant) + PERMANENT * random.nextGaussian();
    for (int fruit = 0; fruit <= KITCHEN; fruit++) {
      double kilograms = own + RESIDUAL * random.nextGaussian();
      plant.marked = fruit == 0 ? kilograms : plant.marked;
      record.add(
          String.format(
              Locale.ROOT,
              "%d-09-0%d picked %s, %.2f kg",
              year,
              fruit + 1,
              fruit == 0 ? plant.tag : plant.name(),
              kilograms));
    }
  }

  /** The garden as its gardener has written it down. */
  Garden garden() {
    double fruit = ADDITIVE * ADDITIVE + PERMANENT * PERMANENT + RESIDUAL * RESIDUAL;
    String goal =
        String.format(
            Locale.ROOT,
            "goal gold\n  raise fruit weight to 9 kg\n"
                + "  heritability fruit weight %.3f of a fruit, in moschata, OP\n",
            ADDITIVE * ADDITIVE / fruit);
    String text = PLAN.formatted(year) + String.join("\n", plan) + "\n" + goal;
    Outcome<Optional<Garden>> garden =
        Resolver.resolve(
            CROPS,
            read("plan.season", text).and(read("r.season", String.join("\n", record) + "\n")));
    if (garden.hasErrors()) {
      throw new AssertionError("the simulated garden is mistaken: " + garden.findings());
    }
    return garden.value().orElseThrow();
  }

  private static BoundFile read(String name, String text) {
    return Binder.bind(SeasonParser.parse(Source.of(name, text)).value()).value();
  }
}
