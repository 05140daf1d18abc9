package slipday.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Plants of one lot through an invented season, written down as it goes. What a plant was born with
 * shows in all its fruits, where it stands too, and each fruit has luck of its own. Heavier plants
 * are somewhat less sweet, and those with many fruits bear lighter ones.
 */
final class Patch {
  private static final double HEAVY_IS_LESS_SWEET = -0.35;
  private static final double MANY_IS_LIGHT = -0.3;
  private static final double CRACKS = 0.12;
  private static final double[] CONTAINERS = {0.17, 0.23, 0.41};

  private final Diary diary;
  private final Chance chance;
  private final String who;
  private final String name;
  private final FruitKind kind;
  private final int firstTag;
  private final List<Plant> plants = new ArrayList<>();
  private final List<Marked> marked = new ArrayList<>();

  /** A plant, with what all its fruits have in common. */
  static final class Plant {
    final int number;
    final double weight;
    final double sweetness;
    final double days;
    final int fruits;
    boolean stands = true;
    int tags;
    int took;

    private Plant(int number, double weight, double sweetness, double days, int fruits) {
      this.number = number;
      this.weight = weight;
      this.sweetness = sweetness;
      this.days = days;
      this.fruits = fruits;
    }
  }

  /** A tagged fruit that took. */
  record Marked(Plant plant, String tag, LocalDate pollinated) {}

  /** A picked one, with a day for its seed. */
  record Picked(String tag, LocalDate date, boolean cracked, int seeds) {}

  /**
   * @param firstTag the number on the tags of plant 1
   */
  Patch(
      Diary diary,
      Chance chance,
      String who,
      String name,
      FruitKind kind,
      int firstTag,
      int plants) {
    this.diary = diary;
    this.chance = chance;
    this.who = who;
    this.name = name;
    this.kind = kind;
    this.firstTag = firstTag;
    for (int n = 1; n <= plants; n++) {
      this.plants.add(plant(n));
    }
  }

  private Plant plant(int number) {
    double many = chance.normal();
    double heavy = MANY_IS_LIGHT * many + root(MANY_IS_LIGHT) * chance.normal();
    double sweet = HEAVY_IS_LESS_SWEET * heavy + root(HEAVY_IS_LESS_SWEET) * chance.normal();
    long fruits = Math.round(kind.fruits().mean() + kind.fruits().bred() * many);
    return new Plant(
        number,
        value(kind.weight(), heavy),
        value(kind.sweetness(), sweet),
        value(kind.days(), chance.normal()),
        (int) Math.max(1, fruits));
  }

  private static double root(double correlation) {
    return StrictMath.sqrt(1 - correlation * correlation);
  }

  private double value(FruitKind.Spread spread, double born) {
    return spread.mean() + spread.bred() * born + spread.placed() * chance.normal();
  }

  Plant plantNumber(int number) {
    return plants.get(number - 1);
  }

  List<Plant> standing() {
    return plants.stream().filter(p -> p.stands).toList();
  }

  List<Marked> marked() {
    return marked;
  }

  private void add(LocalDate date, String text, Object... values) {
    diary.add(who, date, text, values);
  }

  /** From seed to the bed. */
  void raise(LocalDate sown, int seeds, int up, LocalDate out) {
    add(sown, "sowed %s, %d seeds", name, seeds);
    add(sown.plusDays(8), "emerged %s, %d seedlings", name, up);
    add(out, "planted out %s, %d plants", name, plants.size());
  }

  void stake(LocalDate date) {
    standing()
        .forEach(
            p ->
                add(date, "staked %s plant %d, stake %d", name, p.number, firstTag + p.number - 1));
  }

  void flower(LocalDate males, LocalDate fruiting) {
    add(males, "first male flowers %s", name);
    add(fruiting, "first fruiting flowers %s", name);
  }

  void died(int plant, LocalDate date, String why) {
    plantNumber(plant).stands = false;
    add(date, "died %s plant %d, %s", name, plant, why);
  }

  void rogued(int plant, LocalDate date, String why) {
    plantNumber(plant).stands = false;
    add(date, "rogued %s plant %d, %s", name, plant, why);
  }

  String nextTag(Plant plant) {
    return "" + (firstTag + plant.number - 1) + (char) ('A' + plant.tags++);
  }

  /**
   * Flowers of each plant are pollinated until so many took, or there were so many.
   *
   * @param selfed selfed, or sibbed by a plant next in the row
   * @param take the share that sets fruit
   */
  void pollinate(LocalDate first, boolean selfed, int fruits, int flowers, double take) {
    Map<LocalDate, Integer> covered = new TreeMap<>();
    List<Plant> row = standing();
    for (int i = 0; i < row.size(); i++) {
      Plant mother = row.get(i);
      Plant father = row.get((i + 1 + chance.from(0, row.size() - 2)) % row.size());
      LocalDate date = first.plusDays(chance.from(0, 5));
      for (int n = 0; n < flowers && mother.took < fruits; n++) {
        String tag = nextTag(mother);
        String by = selfed ? "" : " by plant " + father.number;
        String how = selfed ? "selfed" : "sibbed";
        add(date, "%s %s plant %d%s, tag %s", how, name, mother.number, by, tag);
        covered.merge(date.minusDays(1), 1, Integer::sum);
        check(mother, tag, date, take);
        date = date.plusDays(chance.from(1, 4));
      }
    }
    covered.forEach((date, n) -> add(date, "covered %s, %d flowers", name, n));
  }

  /** A week after its pollination, whether it took. */
  void check(Plant mother, String tag, LocalDate pollinated, double take) {
    boolean took = chance.in(take);
    add(pollinated.plusDays(chance.from(7, 9)), (took ? "took " : "failed ") + tag);
    if (took) {
      mother.took++;
      marked.add(new Marked(mother, tag, pollinated));
    }
  }

  /** All marked fruit, each when it is ripe. */
  List<Picked> pick() {
    return marked.stream().filter(m -> m.plant.stands).map(this::pick).toList();
  }

  private Picked pick(Marked fruit) {
    double ripe = fruit.plant.days + kind.days().own() * chance.normal();
    LocalDate date = fruit.pollinated.plusDays(Math.round(ripe));
    boolean cracked = kind.slips() && chance.in(CRACKS);
    String state = kind.slips() ? chance.in(0.85) ? ", full slip" : ", half slip" : "";
    String line = "picked " + fruit.tag + state + ", " + gross(fruit.plant) + eating(fruit.plant);
    add(date, line + (cracked ? ", fault cracked" : ""));
    int seeds = (int) Math.round(kind.seeds() * (1 + 0.15 * chance.normal()));
    return new Picked(fruit.tag, date, cracked, seeds);
  }

  private double net(Plant plant) {
    double own = kind.weight().own() * chance.normal();
    return Math.max(0.1 * kind.weight().mean(), plant.weight + own);
  }

  private String gross(Plant plant) {
    double container = CONTAINERS[chance.from(0, CONTAINERS.length - 1)];
    return String.format(
        java.util.Locale.ROOT, "%.2f kg less %.2f kg", net(plant) + container, container);
  }

  private String eating(Plant plant) {
    if (kind.sweetness().mean() <= 0) {
      return "";
    }
    double brix = plant.sweetness + kind.sweetness().own() * chance.normal();
    long flavour = Math.round(6.4 + 0.8 * (brix - 12) + 0.7 * chance.normal());
    return String.format(
        java.util.Locale.ROOT,
        ", %.1f brix, flavour %d of 10",
        brix,
        Math.max(1, Math.min(10, flavour)));
  }

  /** What a plant bears beside its marked fruit, weighed and some of it tasted. */
  void kitchen(LocalDate first, int days) {
    for (Plant plant : standing()) {
      for (int n = plant.took; n < plant.fruits; n++) {
        LocalDate date = first.plusDays(chance.from(0, days));
        String eaten = chance.in(0.7) ? eating(plant) : "";
        add(date, "picked %s plant %d, %.2f kg%s", name, plant.number, net(plant), eaten);
      }
    }
  }
}
