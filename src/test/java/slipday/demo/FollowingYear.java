package slipday.demo;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipday.demo.FruitKind.Spread;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.seed.SeedsToSow;

/**
 * A season after the recorded one, invented from its plan: what is planted is raised, pollinated as
 * the plan says, picked, and its seed saved. The same plan gives the same lines.
 */
public final class FollowingYear {
  private static final String WHO = "all";
  private static final double TAKE = 0.45;
  private static final int FLOWERS = 6;

  private final Garden garden;
  private final Diary diary = new Diary();
  private final Chance chance;
  private final Set<String> saved = new HashSet<>();
  private int nextTag = 1;

  private FollowingYear(Garden garden, long seed) {
    this.garden = garden;
    this.chance = new Chance(seed);
  }

  /** The record of the garden's season, as the lines of one file. */
  public static String text(Garden garden, long seed) {
    FollowingYear year = new FollowingYear(garden, seed);
    garden.plantings().forEach(year::grow);
    return String.join("", year.diary.texts().values());
  }

  private LocalDate day(int month, int day) {
    return LocalDate.of(garden.season().year(), month, day);
  }

  private void add(LocalDate date, String text, Object... values) {
    diary.add(WHO, date, text, values);
  }

  private void grow(Planting planting) {
    int plants = planting.plants().map(Reasoned::value).orElse(1);
    int seeds = SeedsToSow.of(planting.lot(), plants);
    Patch patch = new Patch(diary, chance, WHO, planting.name(), kind(planting), nextTag, plants);
    nextTag += plants;
    patch.raise(day(5, 11), seeds, plants, day(6, 1));
    patch.flower(day(6, 15), day(6, 26));
    if (planting.seedSaved() && planting.pollination().isPresent()) {
      byHand(planting, patch);
    } else if (planting.seedSaved()) {
      into(day(9, 10), planting.name(), 40 * plants, planting.line(), ", generation OP, isolated");
    }
    patch.kitchen(day(8, 20), 20);
  }

  private void byHand(Planting planting, Patch patch) {
    boolean selfed = planting.pollination().orElseThrow().value().self();
    patch.pollinate(day(6, 28), selfed || patch.standing().size() < 2, 1, FLOWERS, TAKE);
    for (Patch.Picked fruit : patch.pick()) {
      LocalDate date = fruit.date().plusDays(2);
      if (selfed) {
        String lot = planting.line().name() + "-" + (date.getYear() % 100) + "-" + fruit.tag();
        add(date, "saved %s, %d seeds, into %s", fruit.tag(), fruit.seeds(), lot);
        add(day(11, 20), "counted %s, %d seeds", lot, fruit.seeds() - 5);
      } else {
        into(date, fruit.tag(), fruit.seeds(), planting.line(), "");
      }
    }
  }

  /** Into the one lot of a line for the year, tested once. */
  private void into(LocalDate date, String from, int seeds, Line line, String label) {
    String lot = line.name() + "-" + date.getYear();
    add(date, "saved %s, %d seeds, into %s%s", from, seeds, lot, label);
    if (saved.add(lot)) {
      add(day(12, 5), "tested %s, 46 of 50 seeds", lot);
    }
  }

  private static FruitKind kind(Planting planting) {
    Lot lot = planting.lot();
    Map<String, Spread> weights =
        Map.of(
            "melon", new Spread(1.3, 0.15, 0.06, 0.12),
            "moschata", new Spread(1.6, 0.2, 0.1, 0.2),
            "pepo", new Spread(0.75, 0.08, 0.04, 0.08),
            "cucumber", new Spread(0.4, 0.04, 0.02, 0.05));
    String species = lot.line().crop().species().name();
    boolean sweet = species.equals("melon");
    Spread days = new Spread(sweet ? 37 : 48, 1.5, 0.5, 1.2);
    return new FruitKind(
        weights.getOrDefault(species, new Spread(0.2, 0.01, 0.01, 0.02)),
        sweet ? new Spread(12.2, 0.8, 0.3, 0.6) : new Spread(0, 0, 0, 0),
        days,
        250,
        sweet,
        new Spread(2, 0.8, 0, 0));
  }

  /** The lines of a record, without its comments. */
  public static List<String> lines(String record) {
    return record.lines().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
  }
}
