package slipday.season;

import java.util.Optional;
import java.util.function.IntUnaryOperator;
import slipday.climate.FrostDepth;
import slipday.climate.ReadSoil;

/**
 * Walks a planting through every year at every pace. With weather years by heat; without, by
 * calendar days, each "year" then being one first autumn frost out of its distribution.
 */
final class Walk {
  private static final double USUAL_SOIL = 18;

  /** Two months of summer before the slot that is called midsummer. */
  private static final int SUMMER_DAYS = 61;

  /** Days after sowing on which soil is looked at, where it was read. */
  private static final int SOIL_DAYS = 5;

  private final Optional<Weather> weather;
  private final int slots;
  private final int midsummer;
  private final int[] statedFrosts;
  private final ReadSoil readSoil;

  /**
   * @param statedFrosts without weather: slots of the first autumn frost at even steps of its
   *     distribution; unused with weather
   * @param readSoil without weather: the soil as it was read
   */
  Walk(Optional<Weather> weather, int slots, int midsummer, int[] statedFrosts, ReadSoil readSoil) {
    this.weather = weather;
    this.slots = slots;
    this.midsummer = midsummer;
    this.statedFrosts = statedFrosts;
    this.readSoil = readSoil;
  }

  int years() {
    return weather.map(Weather::years).orElse(statedFrosts.length);
  }

  /** The traces of a planting set out (or sown in place) on a slot. */
  Traces walk(Needs needs, int start) {
    return walk(needs, start, Seen.NOTHING);
  }

  /** The same where some of its days are recorded: no frost came before those. */
  Traces walk(Needs needs, int start, Seen seen) {
    Traces traces = new Traces(years());
    for (int year = 0; year < years(); year++) {
      int end = seen.end(kill(needs, year));
      for (int pace = 0; pace < Traces.PACES; pace++) {
        new Sample(needs, start, seen, year, pace, end, traces).run();
      }
    }
    return traces;
  }

  /** The slot of the frost that ends the season; the season's end where none comes. */
  int kill(Needs needs, int year) {
    if (weather.isEmpty()) {
      double lethal = needs.killedAt() + needs.bedColder();
      return statedFrosts[year] < slots && FrostDepth.isNear(lethal)
          ? (int) Math.round(Math.min(slots, FrostDepth.autumnSlot(statedFrosts[year], lethal)))
          : slots;
    }
    double[] lows = weather.get().lows(year);
    for (int s = midsummer; s < slots; s++) {
      if (lows[s] - needs.bedColder() <= needs.killedAt()) {
        return s;
      }
    }
    return slots;
  }

  /** The slot at which a seed sown on another is up. */
  int emergence(Needs needs, int sown, int year) {
    if (needs.indoors()) {
      return sown + days(needs.emergence().days(needs.indoorCelsius()), 7);
    }
    if (weather.isEmpty()) {
      double soil =
          readSoil.at(sown + SOIL_DAYS).stream()
              .map(read -> read + needs.soilWarmer())
              .findFirst()
              .orElseGet(() -> unread(needs, sown));
      return sown + days(needs.emergence().days(soil), 10);
    }
    if (needs.emergence().isEmpty()) {
      return sown + 10;
    }
    double[] done = weather.get().emergence(year, needs.emergence(), needs.soilWarmer());
    return reach(done, sown, 1);
  }

  /** Seed goes into the least soil it asks for, unless it is summer. */
  private double unread(Needs needs, int sown) {
    double asked = needs.soilAtLeast().orElse(USUAL_SOIL);
    return sown < midsummer - SUMMER_DAYS ? asked : Math.max(USUAL_SOIL, asked);
  }

  private static int days(double figure, int fallback) {
    return Double.isFinite(figure) ? (int) Math.round(figure) : fallback;
  }

  /** The first slot by whose end a running sum has grown by a need since the start of another. */
  private int reach(double[] sums, int from, double need) {
    if (from < 0 || from >= slots) {
      return Traces.NEVER;
    }
    double goal = sums[from] + need;
    if (sums[slots] < goal) {
      return Traces.NEVER;
    }
    int low = from;
    int high = slots - 1;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (sums[middle + 1] >= goal) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /** One year at one pace. */
  private final class Sample {
    private final Needs needs;
    private final int start;
    private final Seen seen;
    private final int year;
    private final int pace;
    private final int end;
    private final Traces traces;

    Sample(Needs needs, int start, Seen seen, int year, int pace, int end, Traces traces) {
      this.needs = needs;
      this.start = start;
      this.seen = seen;
      this.year = year;
      this.pace = pace;
      this.end = end;
      this.traces = traces;
    }

    void run() {
      int sown = start - needs.age();
      int up = seen.up().orElseGet(() -> emergence(needs, sown, year));
      set(Event.SOW, sown);
      set(Event.PLANT_OUT, start);
      if (up >= end) {
        return;
      }
      set(Event.EMERGED, up);
      if (needs.flowers().isEmpty()) {
        return;
      }
      int fruiting = fruiting(needs.flowers().get(), sown, up);
      if (fruiting >= end) {
        return;
      }
      set(Event.FIRST_FRUITING, fruiting);
      if (needs.hasMales()) {
        set(Event.FIRST_MALE, seen.males().orElse(Math.max(up, fruiting - malesEarlier())));
      }
      int bloomEnds = Math.min(end, fruiting + (int) Math.round(needs.blooms()[pace])) - 1;
      set(Event.BLOOM_ENDS, bloomEnds);
      fruit(fruiting, bloomEnds);
    }

    private int malesEarlier() {
      return (int) Math.round(needs.malesEarlier()[pace]);
    }

    /** As seen, or so long after the males that were seen, or as reckoned. */
    private int fruiting(Stage stage, int sown, int up) {
      if (seen.fruiting().isPresent()) {
        return seen.fruiting().getAsInt();
      }
      return seen.males().isPresent() && needs.hasMales()
          ? seen.males().getAsInt() + malesEarlier()
          : firstFruiting(stage, sown, up);
    }

    private void set(Event event, int slot) {
      traces.set(event, year, pace, slot);
    }

    private int firstFruiting(Stage stage, int sown, int up) {
      int from =
          switch (needs.fromEvent()) {
            case "sowing" -> sown;
            case "planting out" -> needs.indoors() ? start : up;
            default -> up;
          };
      boolean checkCounts = !needs.fromEvent().equals("planting out");
      int standstill = checkCounts ? (int) Math.round(needs.standsStill()) : 0;
      if (!stage.heat()) {
        return from + standstill + (int) Math.round(stage.need()[pace]);
      }
      double need = stage.need()[pace];
      int outdoors = Math.max(from, start + standstill);
      if (from < start) {
        double warmth = Math.min(needs.indoorCelsius(), stage.limit()) - stage.base();
        need -= Math.max(0, warmth) * (start - from);
      }
      return need <= 0 ? Math.max(start, up) : grow(stage, outdoors, need);
    }

    /** The slot by which heat from a slot on has met a need, under the cover as long as it lies. */
    private int grow(Stage stage, int from, double need) {
      Weather w = weather.orElseThrow();
      double[] open = w.heat(year, stage.base(), stage.limit(), 0);
      int coverEnds = Math.min(slots, start + (int) Math.round(needs.coverDays()));
      if (needs.coverWarmer() == 0 || from >= coverEnds) {
        return reach(open, from, need);
      }
      double[] covered = w.heat(year, stage.base(), stage.limit(), needs.coverWarmer());
      double underCover = covered[coverEnds] - covered[Math.max(0, from)];
      return underCover >= need
          ? reach(covered, from, need)
          : reach(open, coverEnds, need - underCover);
    }

    private int after(Stage stage, int pollinated) {
      return stage.heat()
          ? grow(stage, pollinated, stage.need()[pace])
          : pollinated + (int) Math.round(stage.need()[pace]);
    }

    private void fruit(int fruiting, int bloomEnds) {
      int eaten =
          seen.ripe().orElse(needs.ripe().map(stage -> after(stage, fruiting)).orElse(fruiting));
      needs.ripe().ifPresent(stage -> ripens(Event.RIPE, eaten));
      // A fruit of a slow plant is not full of seed before it is ripe.
      needs
          .seedRipe()
          .ifPresent(
              stage ->
                  ripens(
                      Event.SEED_RIPE,
                      seen.seedRipe().orElse(Math.max(eaten, after(stage, fruiting)))));
      int last = bloomEnds;
      if (needs.ripe().isPresent()) {
        Stage stage = needs.ripe().get();
        last = lastSuch(fruiting, last, s -> after(stage, s));
      }
      if (needs.seedSaved() && needs.seedRipe().isPresent()) {
        Stage stage = needs.seedRipe().get();
        last = lastSuch(fruiting, last, s -> after(stage, s));
      }
      if (last >= fruiting) {
        set(Event.LAST_SET, last);
      }
    }

    private void ripens(Event event, int slot) {
      if (slot < end) {
        set(event, slot);
      }
    }

    /**
     * The last slot of a stretch from which a stage still ends before the frost; below it if none.
     */
    private int lastSuch(int from, int to, IntUnaryOperator after) {
      int low = from - 1;
      int high = to;
      while (low < high) {
        int middle = (low + high + 1) >> 1;
        if (after.applyAsInt(middle) < end) {
          low = middle;
        } else {
          high = middle - 1;
        }
      }
      return low;
    }
  }
}
