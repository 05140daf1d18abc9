package slipday.season;

import java.util.Optional;
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

  /** How often a planting set out (or sown in place) on a slot flowers and ripens in time. */
  Traces ripening(Needs needs, int start) {
    return walk(new Course(needs, start, Seen.NOTHING, false));
  }

  /**
   * The traces of a planting set out (or sown in place) on a slot, where some of its days may be
   * recorded: no frost came before those.
   */
  Traces walk(Needs needs, int start, Seen seen) {
    return walk(new Course(needs, start, seen, true));
  }

  private Traces walk(Course course) {
    int years = years();
    for (int year = 0; year < years; year++) {
      course.through(year);
    }
    return course.traces;
  }

  /** The slot of the frost that ends the season; the season's end where none comes. */
  private int kill(Needs needs, int year) {
    if (weather.isEmpty()) {
      double lethal = needs.killedAt() + needs.bedColder();
      return statedFrosts[year] < slots && FrostDepth.isNear(lethal)
          ? (int) Math.round(Math.min(slots, FrostDepth.autumnSlot(statedFrosts[year], lethal)))
          : slots;
    }
    Weather.Frosts frosts = weather.get().frosts(needs.bedColder(), needs.killedAt(), midsummer);
    return frosts.firstOfAutumn()[year];
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

  /** One planting's way through the years, each at every pace. */
  private final class Course {
    private final Needs needs;
    private final int start;
    private final int sown;
    private final Seen seen;
    private final boolean toLastSet;
    private final Traces traces = new Traces(years());
    private final Optional<Growth> flowers;
    private final Optional<Growth> ripe;
    private final Optional<Growth> seedRipe;
    private int year;
    private int pace;
    private int end;

    Course(Needs needs, int start, Seen seen, boolean toLastSet) {
      this.needs = needs;
      this.start = start;
      this.sown = start - needs.age();
      this.seen = seen;
      this.toLastSet = toLastSet;
      this.flowers = needs.flowers().map(stage -> new Growth(needs, stage, start));
      this.ripe = needs.ripe().map(stage -> new Growth(needs, stage, start));
      this.seedRipe = needs.seedRipe().map(stage -> new Growth(needs, stage, start));
    }

    void through(int nextYear) {
      year = nextYear;
      end = seen.end(kill(needs, year));
      int up = seen.up().isPresent() ? seen.up().getAsInt() : emergence(needs, sown, year);
      for (pace = 0; pace < Traces.PACES; pace++) {
        sample(up);
      }
    }

    private void sample(int up) {
      set(Event.SOW, sown);
      set(Event.PLANT_OUT, start);
      if (up >= end) {
        return;
      }
      set(Event.EMERGED, up);
      if (flowers.isEmpty()) {
        return;
      }
      int fruiting = fruiting(flowers.get(), up);
      if (fruiting >= end) {
        return;
      }
      set(Event.FIRST_FRUITING, fruiting);
      if (needs.hasMales()) {
        int males = seen.males().orElse(Math.max(up, fruiting - malesEarlier()));
        set(Event.FIRST_MALE, Math.min(males, seen.malesBy().orElse(males)));
      }
      int bloomEnds = Math.min(end, fruiting + (int) Math.round(needs.blooms()[pace])) - 1;
      set(Event.BLOOM_ENDS, bloomEnds);
      fruit(fruiting);
      if (toLastSet) {
        lastSet(fruiting, bloomEnds);
      }
    }

    private int malesEarlier() {
      return (int) Math.round(needs.malesEarlier()[pace]);
    }

    /** As seen, or so long after the males that were seen, or as reckoned if it was not before. */
    private int fruiting(Growth growth, int up) {
      return seen.fruiting()
          .orElseGet(
              () -> Math.min(forecast(growth, up), seen.fruitingBy().orElse(Integer.MAX_VALUE)));
    }

    private int forecast(Growth growth, int up) {
      return seen.males().isPresent() && needs.hasMales()
          ? seen.males().getAsInt() + malesEarlier()
          : firstFruiting(growth, up);
    }

    private void set(Event event, int slot) {
      traces.set(event, year, pace, slot);
    }

    private int firstFruiting(Growth growth, int up) {
      int from =
          switch (needs.fromEvent()) {
            case "sowing" -> sown;
            case "planting out" -> needs.indoors() ? start : up;
            default -> up;
          };
      boolean checkCounts = !needs.fromEvent().equals("planting out");
      int standstill = checkCounts ? (int) Math.round(needs.standsStill()) : 0;
      Stage stage = growth.stage;
      if (!stage.heat()) {
        return from + standstill + (int) Math.round(stage.need()[pace]);
      }
      double need = stage.need()[pace];
      int outdoors = Math.max(from, start + standstill);
      if (from < start) {
        double warmth = Math.min(needs.indoorCelsius(), stage.limit()) - stage.base();
        need -= Math.max(0, warmth) * (start - from);
      }
      return need <= 0 ? Math.max(start, up) : growth.grown(year, outdoors, need);
    }

    private void fruit(int fruiting) {
      int eaten = ripe.isPresent() ? ripe.get().after(year, pace, fruiting) : fruiting;
      eaten = seen.ripe().orElse(eaten);
      if (ripe.isPresent()) {
        ripens(Event.RIPE, eaten);
      }
      if (seedRipe.isPresent()) {
        // A fruit of a slow plant is not full of seed before it is ripe.
        int full = Math.max(eaten, seedRipe.get().after(year, pace, fruiting));
        ripens(Event.SEED_RIPE, seen.seedRipe().orElse(full));
      }
    }

    private void ripens(Event event, int slot) {
      if (slot < end) {
        set(event, slot);
      }
    }

    private void lastSet(int fruiting, int bloomEnds) {
      int last = bloomEnds;
      if (ripe.isPresent()) {
        last = lastInTime(ripe.get(), fruiting, last);
      }
      if (needs.seedSaved() && seedRipe.isPresent()) {
        last = lastInTime(seedRipe.get(), fruiting, last);
      }
      if (last >= fruiting) {
        set(Event.LAST_SET, last);
      }
    }

    /**
     * The last slot of a stretch from which a stage still ends before the frost; below it if none.
     */
    private int lastInTime(Growth growth, int from, int to) {
      int low = from - 1;
      int high = to;
      while (low < high) {
        int middle = (low + high + 1) >> 1;
        if (growth.after(year, pace, middle) < end) {
          low = middle;
        } else {
          high = middle - 1;
        }
      }
      return low;
    }
  }

  /** A stage of growth of one planting, under its cover and in the open. */
  private final class Growth {
    private static final double[][] NO_SUMS = {};

    private final Stage stage;
    private final int coverEnds;
    private final boolean covers;
    private final double[][] open;
    private final double[][] covered;

    Growth(Needs needs, Stage stage, int start) {
      this.stage = stage;
      this.coverEnds = Math.min(slots, start + (int) Math.round(needs.coverDays()));
      this.covers = needs.coverWarmer() != 0;
      this.open = stage.heat() ? heat(0) : NO_SUMS;
      this.covered = stage.heat() && covers ? heat(needs.coverWarmer()) : NO_SUMS;
    }

    private double[][] heat(double warmer) {
      return weather.orElseThrow().heat(stage.base(), stage.limit(), warmer);
    }

    /** The slot by which it is over, from a slot on. */
    int after(int year, int pace, int from) {
      double need = stage.need()[pace];
      return stage.heat() ? grown(year, from, need) : from + (int) Math.round(need);
    }

    /** The slot by which heat from a slot on has met a need, under the cover as long as it lies. */
    int grown(int year, int from, double need) {
      if (!covers || from >= coverEnds) {
        return reach(open[year], from, need);
      }
      double[] sums = covered[year];
      double underCover = sums[coverEnds] - sums[Math.max(0, from)];
      return underCover >= need
          ? reach(sums, from, need)
          : reach(open[year], coverEnds, need - underCover);
    }
  }
}
