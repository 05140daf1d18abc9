package slipday.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slipday.demo.FruitKind.Spread;

/**
 * Makes the invented record of the example garden's season 2026, the same bytes every time: what
 * two gardeners wrote down, a file each. Run its {@code main} in the project's folder to write them
 * anew.
 *
 * <p>What the plants are like is drawn as {@link Patch} says. Which died, what was bitter, what was
 * given away and every note is made up here.
 */
public final class MakeTernHollowRecord {
  /** Where the record lies. */
  public static final Path FOLDER = Path.of("plans/tern-hollow/record");

  private static final long SEED = 20;
  private static final String ALMA = "alma-2026.season";
  private static final String JORY = "jory-2026.season";
  private static final String AMBER = "tern-amber-f3";
  private static final String OLDER = "tern-amber-f2";
  private static final String ROPE = "ropewalk-2023";
  private static final LocalDate COUNTING = day(11, 13);

  private static final FruitKind AMBER_FRUIT =
      new FruitKind(
          new Spread(1.42, 0.24, 0.07, 0.12),
          new Spread(12.1, 0.85, 0.30, 0.60),
          new Spread(38, 1.8, 0.5, 1.2),
          360,
          true,
          new Spread(3.3, 1.0, 0, 0));

  private static final FruitKind OLDER_FRUIT =
      new FruitKind(
          new Spread(1.30, 0.26, 0.07, 0.13),
          new Spread(11.2, 1.00, 0.30, 0.60),
          new Spread(39.5, 2.4, 0.5, 1.2),
          360,
          true,
          new Spread(3.0, 1.1, 0, 0));

  private static final FruitKind ROPE_FRUIT =
      new FruitKind(
          new Spread(0.94, 0.10, 0.05, 0.09),
          new Spread(11.4, 0.50, 0.30, 0.60),
          new Spread(31, 1.2, 0.5, 1.0),
          330,
          true,
          new Spread(3.4, 1.0, 0, 0));

  private static final FruitKind LANTERN_FRUIT =
      new FruitKind(
          new Spread(2.2, 0.2, 0.1, 0.25),
          new Spread(9.8, 0.5, 0.3, 0.7),
          new Spread(52, 2, 1, 2),
          400,
          false,
          new Spread(2, 0.4, 0, 0));

  private static final FruitKind SWAP_FRUIT =
      new FruitKind(
          new Spread(1.1, 0.3, 0.1, 0.15),
          new Spread(9.4, 1.2, 0.3, 0.7),
          new Spread(40, 3, 1, 2),
          350,
          true,
          new Spread(3, 0.6, 0, 0));

  private static final FruitKind SANDBANK_FRUIT = squash(1.45, 0.18, 50, 190, 3.2);
  private static final FruitKind CHEESE_FRUIT = squash(3.6, 0.5, 58, 250, 2.2);
  private static final FruitKind STAIR_FRUIT = squash(0.74, 0.08, 51, 120, 4);
  private static final FruitKind KETTLE_FRUIT = squash(0.42, 0.05, 42, 210, 4);

  private final Diary diary = new Diary();
  private final Chance chance = new Chance(SEED);

  private MakeTernHollowRecord() {}

  private static FruitKind squash(
      double kilograms, double bred, double days, int seeds, double many) {
    return new FruitKind(
        new Spread(kilograms, bred, bred / 2, bred),
        new Spread(0, 0, 0, 0),
        new Spread(days, 1.5, 0.5, 1.5),
        seeds,
        false,
        new Spread(many, 0.8, 0, 0));
  }

  /** The texts of the files, by their names. */
  public static Map<String, String> texts() {
    MakeTernHollowRecord record = new MakeTernHollowRecord();
    record.winter();
    record.amber();
    record.older();
    record.ropewalk();
    record.tasted();
    record.squash();
    record.cucumbers();
    record.openPollinated();
    record.autumn();
    Map<String, String> texts = new LinkedHashMap<>();
    record
        .diary
        .texts()
        .forEach(
            (name, lines) ->
                texts.put(
                    name,
                    "# Invented, and made by a program: see README.md beside this file.\n"
                        + lines));
    return texts;
  }

  public static void main(String[] args) throws IOException {
    Files.createDirectories(FOLDER);
    for (Map.Entry<String, String> file : texts().entrySet()) {
      Files.writeString(FOLDER.resolve(file.getKey()), file.getValue());
    }
  }

  private static LocalDate day(int month, int day) {
    return LocalDate.of(2026, month, day);
  }

  private void alma(LocalDate date, String text, Object... values) {
    diary.add(ALMA, date, text, values);
  }

  private void jory(LocalDate date, String text, Object... values) {
    diary.add(JORY, date, text, values);
  }

  private void winter() {
    jory(day(2, 24), "tested oak-stair-2024, 18 of 20 seeds");
    jory(day(2, 24), "tested sandbank-2024, 17 of 20 seeds");
    jory(day(3, 1), "note \"the seed box stands in the north room now, in a tin with rice\"");
  }

  /** The line being fixed: three plants fall out, the others bear one to three marked fruits. */
  private void amber() {
    Patch patch = new Patch(diary, chance, ALMA, AMBER, AMBER_FRUIT, 1, 12);
    patch.raise(day(5, 11), 17, 15, day(6, 1));
    alma(day(5, 24), "potted on %s, 15 plants", AMBER);
    patch.stake(day(6, 12));
    patch.flower(day(6, 15), day(6, 26));
    alma(day(7, 1), "measured %s plant 7, netted 1", AMBER);
    patch.rogued(7, day(7, 1), "netted fruit set");
    patch.pollinate(day(6, 28), true, 3, 6, 0.34);
    alma(day(7, 30), "off-type seen %s plant 11, netted fruit", AMBER);
    patch.died(9, day(7, 26), "wilt");
    netting(AMBER, 12, List.of(7, 9), List.of(11));
    for (Patch.Plant plant : patch.standing()) {
      int sutures = chance.from(2, 5);
      alma(day(8, 9), "scored %s plant %d, sutures %d of 5", AMBER, plant.number, sutures);
    }
    for (Patch.Picked fruit : patch.pick()) {
      sizes(fruit);
      boolean offType = fruit.tag().startsWith("11");
      if (!offType) {
        into(fruit, fruit.date().plusDays(chance.from(1, 4)), "tern-amber-f4-" + fruit.tag());
      }
    }
    patch.kitchen(day(7, 30), 26);
    alma(day(8, 2), "note %s plant 3, \"sets early, and shades its own fruit well\"", AMBER);
    alma(day(8, 10), "photo 10A, file \"photos/10A.jpg\"");
    alma(day(8, 11), "sweetness 10A, 12.7 brix");
    alma(day(8, 15), "fault %s plant 1, sunburnt", AMBER);
    alma(day(8, 20), "note %s, \"powdery mildew from the west end, after a wet week\"", AMBER);
    alma(day(9, 4), "note \"scale checked against a bag of sugar: 3 g light\"");
  }

  private void sizes(Patch.Picked fruit) {
    if (chance.in(0.6)) {
      double length = 12.5 + 1.2 * chance.normal();
      double width = length + 2.2 + 0.6 * chance.normal();
      alma(fruit.date(), "measured %s, length %.1f cm, width %.1f cm", fruit.tag(), length, width);
    }
  }

  /** Whether a plant's fruit is netted: 1, or 0. */
  private void netting(String name, int plants, List<Integer> gone, List<Integer> netted) {
    for (int n = 1; n <= plants; n++) {
      if (!gone.contains(n)) {
        alma(day(7, 30), "measured %s plant %d, netted %d", name, n, netted.contains(n) ? 1 : 0);
      }
    }
  }

  private void into(Patch.Picked fruit, LocalDate date, String lot) {
    int lost = chance.from(0, 9);
    alma(date, "saved %s, %d seeds, into %s", fruit.tag(), fruit.seeds(), lot);
    alma(date.plusDays(12), "dried %s", lot);
    alma(COUNTING, "counted %s, %d seeds", lot, fruit.seeds() - lost);
  }

  /** Remnant seed of the generation before, to tell the season from what selection did. */
  private void older() {
    Patch patch = new Patch(diary, chance, ALMA, OLDER, OLDER_FRUIT, 301, 6);
    patch.raise(day(5, 11), 10, 7, day(6, 1));
    patch.flower(day(6, 16), day(6, 27));
    netting(OLDER, 6, List.of(), List.of(2, 5));
    patch.kitchen(day(7, 31), 26);
    alma(day(8, 30), "note %s, \"paler and less sweet beside the F3, same bed, same sun\"", OLDER);
  }

  /** The old line, sibbed, and crossed by the new one. */
  private void ropewalk() {
    Patch patch = new Patch(diary, chance, ALMA, ROPE, ROPE_FRUIT, 21, 14);
    patch.raise(day(5, 11), 19, 17, day(6, 1));
    patch.stake(day(6, 12));
    patch.flower(day(6, 14), day(6, 24));
    patch.died(13, day(6, 20), "cutworm");
    patch.died(6, day(7, 2), "wilt");
    patch.pollinate(day(6, 27), false, 1, 3, 0.33);
    List<Patch.Marked> sibs = List.copyOf(patch.marked());
    crosses(patch);
    for (Patch.Picked fruit : patch.pick()) {
      boolean sib = sibs.stream().anyMatch(m -> m.tag().equals(fruit.tag()));
      LocalDate date = fruit.date().plusDays(chance.from(1, 4));
      if (sib) {
        alma(date, "saved %s, %d seeds, into ropewalk-2026", fruit.tag(), fruit.seeds());
      } else {
        crossed(fruit, date);
      }
    }
    alma(day(9, 5), "dried ropewalk-2026");
    patch.kitchen(day(7, 22), 28);
  }

  private void crosses(Patch patch) {
    int[] mothers = {1, 1, 4, 4, 8, 8, 10, 12};
    int[] fathers = {3, 3, 3, 5, 5, 2, 2, 8};
    LocalDate date = day(7, 9);
    for (int i = 0; i < mothers.length; i++) {
      Patch.Plant mother = patch.plantNumber(mothers[i]);
      String tag = patch.nextTag(mother);
      alma(date.minusDays(1), "covered %s plant %d, 1 flowers", ROPE, mothers[i]);
      if (i < mothers.length - 1) {
        alma(date.minusDays(1), "emasculated %s plant %d", ROPE, mothers[i]);
      }
      alma(
          date,
          "crossed %s plant %d by %s plant %d, tag %s",
          ROPE,
          mothers[i],
          AMBER,
          fathers[i],
          tag);
      patch.check(mother, tag, date, i == 2 || i == 4 || i == mothers.length - 1 ? 1 : 0);
      date = date.plusDays(i % 2 == 0 ? 1 : 2);
    }
  }

  private void crossed(Patch.Picked fruit, LocalDate date) {
    String lot = "ropewalk-amber-" + fruit.tag();
    alma(date, "saved %s, %d seeds, into %s, of ropewalk-amber", fruit.tag(), fruit.seeds(), lot);
    alma(date.plusDays(12), "dried %s", lot);
    alma(COUNTING, "counted %s, %d seeds", lot, fruit.seeds() - chance.from(0, 9));
  }

  /** Grown to be eaten, or to see what they are; one plant of the packet was bitter. */
  private void tasted() {
    Patch lantern = new Patch(diary, chance, ALMA, "winter-lantern-2024", LANTERN_FRUIT, 0, 3);
    lantern.raise(day(5, 4), 6, 5, day(6, 1));
    lantern.flower(day(6, 16), day(6, 28));
    lantern.kitchen(day(8, 18), 25);
    alma(day(9, 14), "note winter-lantern-2024, \"keeps, but tastes of little this far north\"");
    Patch swap = new Patch(diary, chance, ALMA, "swap-table-2025", SWAP_FRUIT, 0, 3);
    swap.raise(day(5, 11), 6, 6, day(6, 1));
    swap.flower(day(6, 15), day(6, 26));
    alma(day(7, 28), "tasted swap-table-2025 plant 1, clean");
    alma(day(7, 28), "tasted swap-table-2025 plant 2, bitter");
    alma(day(7, 28), "tasted swap-table-2025 plant 3, clean");
    swap.rogued(2, day(7, 28), "bitter");
    swap.kitchen(day(8, 1), 20);
  }

  private void squash() {
    Patch sandbank = new Patch(diary, chance, JORY, "sandbank-2024", SANDBANK_FRUIT, 41, 6);
    sandbank.raise(day(5, 11), 12, 9, day(6, 1));
    sandbank.flower(day(6, 27), day(7, 5));
    sandbank.pollinate(day(7, 7), false, 2, 4, 0.55);
    stored(sandbank, "sandbank-2026", "cellar, top shelf");
    sandbank.kitchen(day(9, 6), 12);
    jory(day(9, 19), "weighed sandbank-2024, 4 fruits, 12 lb 9 oz");
    Patch stair = new Patch(diary, chance, JORY, "oak-stair-2024", STAIR_FRUIT, 51, 6);
    stair.raise(day(5, 11), 11, 10, day(6, 1));
    stair.flower(day(6, 23), day(7, 1));
    stair.died(4, day(7, 22), "vine borer");
    stair.pollinate(day(7, 3), false, 2, 4, 0.55);
    stored(stair, "oak-stair-2026", "cellar, second shelf");
    stair.kitchen(day(8, 25), 14);
    Patch cheese = new Patch(diary, chance, JORY, "mill-cheese-2025", CHEESE_FRUIT, 0, 3);
    cheese.raise(day(4, 27), 6, 6, day(6, 1));
    cheese.flower(day(6, 14), day(6, 23));
    cheese.kitchen(day(9, 8), 10);
    jory(day(9, 20), "stored mill-cheese-2025, \"cellar floor, on straw\"");
  }

  /** Marked squash lies some weeks before its seed is taken; some of it does not keep. */
  private void stored(Patch patch, String lot, String where) {
    LocalDate opened = day(10, 16);
    for (Patch.Picked fruit : patch.pick()) {
      boolean rots = chance.in(0.12);
      jory(fruit.date().plusDays(3), "stored %s, \"%s\"", fruit.tag(), where);
      jory(opened, "looked at %s, %s", fruit.tag(), rots ? "rotten" : "sound");
      if (!rots) {
        jory(opened, "saved %s, %d seeds, into %s", fruit.tag(), fruit.seeds(), lot);
      }
    }
    jory(opened.plusDays(14), "dried %s", lot);
  }

  private void cucumbers() {
    Patch kettle = new Patch(diary, chance, JORY, "kettle-green-2024", KETTLE_FRUIT, 61, 6);
    kettle.raise(day(5, 11), 10, 8, day(6, 1));
    kettle.flower(day(6, 12), day(6, 20));
    kettle.pollinate(day(6, 22), false, 1, 3, 0.7);
    for (Patch.Picked fruit : kettle.pick()) {
      jory(
          fruit.date().plusDays(7),
          "saved %s, %d seeds, into kettle-green-2026",
          fruit.tag(),
          fruit.seeds());
    }
    jory(day(8, 30), "dried kettle-green-2026");
    for (int week = 0; week < 5; week++) {
      int fruits = chance.from(9, 16);
      jory(
          day(7, 2).plusWeeks(week),
          "picked kettle-green-2024, %d fruits, %d g",
          fruits,
          fruits * 96 + chance.from(-40, 40));
    }
  }

  /** Corn and tomatoes are left to the wind and to themselves. */
  private void openPollinated() {
    jory(day(5, 20), "sowed lantern-row-2025, 120 seeds");
    jory(day(6, 1), "emerged lantern-row-2025, 88 seedlings");
    jory(day(7, 17), "first male flowers lantern-row-2025");
    jory(day(7, 19), "first fruiting flowers lantern-row-2025");
    jory(day(8, 6), "picked lantern-row-2025, 34 fruits, flavour 8 of 10");
    jory(
        day(9, 12),
        "saved lantern-row-2025, 2600 seeds, into lantern-row-2026, generation OP, isolated");
    jory(day(10, 10), "dried lantern-row-2026");
    jory(day(4, 20), "sowed brick-lane-2024, 9 seeds");
    jory(day(4, 27), "emerged brick-lane-2024, 8 seedlings");
    jory(day(6, 1), "planted out brick-lane-2024, 5 plants");
    jory(day(6, 18), "first fruiting flowers brick-lane-2024");
    jory(day(8, 3), "picked brick-lane-2024, 11 fruits, 1.9 kg, flavour 7 of 10");
    jory(day(8, 17), "picked brick-lane-2024, 23 fruits, 3.8 kg");
    jory(
        day(8, 21),
        "saved brick-lane-2024, 380 seeds, into brick-lane-2026, generation OP, isolated");
    jory(day(9, 1), "dried brick-lane-2026");
  }

  private void autumn() {
    jory(day(10, 4), "note \"first frost on the roofs, the garden an hour later\"");
    jory(day(11, 1), "dropped swap-table, one plant of three was bitter");
    alma(COUNTING, "counted ropewalk-2026, 1980 seeds");
    jory(COUNTING, "counted sandbank-2026, 1510 seeds");
    alma(day(11, 20), "given away ropewalk-2026, 60 seeds, to a neighbour");
    jory(day(11, 18), "tested ropewalk-2026, 47 of 50 seeds");
    jory(day(11, 18), "tested kettle-green-2026, 24 of 25 seeds");
  }
}
