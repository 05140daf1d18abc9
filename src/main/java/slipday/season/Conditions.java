package slipday.season;

import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import slipday.climate.FrostDepth;
import slipday.climate.FrostLaw;

/** In which share of years each condition is met for a planting set out on a day. */
final class Conditions {
  /** How many days from planting out the soil and the nights are looked at. */
  static final int FIRST_DAYS = 7;

  /** Fruit set is lost where more than this share of the first mornings are too hot. */
  private static final double MORNINGS_LOST = 0.5;

  private static final int FIRST_MORNINGS = 14;

  private final Optional<Weather> weather;
  private final Walk walk;
  private final Needs needs;
  private final Told told;
  private final int midsummer;
  private final double risk;

  Conditions(
      Optional<Weather> weather, Walk walk, Needs needs, Told told, int midsummer, double risk) {
    this.weather = weather;
    this.walk = walk;
    this.needs = needs;
    this.told = told;
    this.midsummer = midsummer;
    this.risk = risk;
  }

  /** The share of years in which a condition must be met. */
  double wanted(Condition condition) {
    return condition.wanted(risk);
  }

  boolean met(Condition condition, double chance) {
    return chance >= wanted(condition) - 1e-9;
  }

  /** Frost, soil and nights: what keeps a planting from going out. */
  Map<Condition, Double> spring(int start) {
    Map<Condition, Double> chances = new EnumMap<>(Condition.class);
    frostFree(start).ifPresent(c -> chances.put(Condition.FROST, c));
    needs.soilAtLeast().flatMap(t -> soil(start, t)).ifPresent(c -> chances.put(Condition.SOIL, c));
    needs
        .nightsAtLeast()
        .flatMap(t -> nights(start, t))
        .ifPresent(c -> chances.put(Condition.CHILL, c));
    return chances;
  }

  /** Whether spring keeps a planting in no longer; asked of many days, so the cheapest first. */
  boolean springMet(int start) {
    return isMet(Condition.FROST, frostFree(start))
        && isMet(Condition.CHILL, needs.nightsAtLeast().flatMap(t -> nights(start, t)))
        && isMet(Condition.SOIL, needs.soilAtLeast().flatMap(t -> soil(start, t)));
  }

  private boolean isMet(Condition condition, Optional<Double> chance) {
    return chance.isEmpty() || met(condition, chance.get());
  }

  /** What the rest of the season says of it, out of its traces. */
  Map<Condition, Double> summer(Traces traces) {
    Map<Condition, Double> chances = new EnumMap<>(Condition.class);
    if (needs.flowers().isEmpty()) {
      return chances;
    }
    if (needs.ripe().isPresent()) {
      chances.put(Condition.RIPENING, traces.chance(Event.RIPE));
    }
    if (needs.seedSaved() && needs.seedRipe().isPresent()) {
      chances.put(Condition.SEED_RIPENING, traces.chance(Event.SEED_RIPE));
    }
    needs.heatEnds().flatMap(t -> cool(traces, t)).ifPresent(c -> chances.put(Condition.HEAT, c));
    return chances;
  }

  /**
   * The share of years without a killing frost between planting out (or coming up) and midsummer.
   */
  private Optional<Double> frostFree(int start) {
    if (weather.isEmpty()) {
      int up = needs.indoors() ? start : walk.emergence(needs, start, 0);
      return told.spring().flatMap(law -> frostFree(law, up));
    }
    return Optional.of(1 - frostyYears(start).cardinality() / (double) weather.get().years());
  }

  /** Frosts of two depths, one kept off by a cover for a time: the later to end is the worse. */
  private Optional<Double> frostFree(FrostLaw law, int from) {
    double open = needs.killedAt() + needs.bedColder();
    if (!FrostDepth.isNear(open)) {
      return Optional.empty();
    }
    double frozen = FrostDepth.chanceAfter(law, from, open);
    if (needs.guardsTo().isPresent() && needs.coverDays() > 0) {
      double covered = Math.min(open, needs.guardsTo().get() + needs.bedColder());
      int coverEnds = from + (int) Math.round(needs.coverDays());
      frozen =
          Math.max(
              FrostDepth.chanceAfter(law, from, covered),
              FrostDepth.chanceAfter(law, coverEnds, open));
    }
    return Optional.of(1 - frozen);
  }

  /** The years in which it would have frozen. */
  List<String> frostYears(int start) {
    Weather w = weather.orElseThrow();
    return frostyYears(start).stream().mapToObj(w::label).toList();
  }

  private BitSet frostyYears(int start) {
    BitSet frozen = new BitSet();
    Weather w = weather.orElseThrow();
    for (int year = 0; year < w.years(); year++) {
      int from = needs.indoors() ? start : walk.emergence(needs, start, year);
      frozen.set(year, freezes(w, year, from));
    }
    return frozen;
  }

  /** A frost after the cover is off, or one while it lies that goes deeper than it guards. */
  private boolean freezes(Weather w, int year, int from) {
    int coverEnds = from + (int) Math.round(needs.coverDays());
    if (lastFrost(w, year, needs.killedAt()) >= Math.max(0, Math.max(from, coverEnds))) {
      return true;
    }
    double guarded = Math.min(needs.guardsTo().orElse(needs.killedAt()), needs.killedAt());
    return coverEnds > from
        && lastFrost(w, year, guarded) >= from
        && w.freezes(
            year, Math.max(0, from), Math.min(coverEnds, midsummer), needs.bedColder(), guarded);
  }

  private int lastFrost(Weather w, int year, double killedAt) {
    return w.frosts(needs.bedColder(), killedAt, midsummer).lastOfSpring()[year];
  }

  private Optional<Double> soil(int start, double atLeast) {
    if (weather.isEmpty()) {
      return told.soil().chance(start + FIRST_DAYS / 2.0, atLeast - needs.soilWarmer()).stream()
          .boxed()
          .findFirst();
    }
    return share(
        year ->
            Weather.mean(weather.orElseThrow().soil(year), start, FIRST_DAYS) + needs.soilWarmer()
                >= atLeast);
  }

  private Optional<Double> nights(int start, double atLeast) {
    double warmer = (needs.coverDays() > 0 ? needs.coverWarmer() : 0) - needs.bedColder();
    return share(
        year ->
            Weather.mean(weather.orElseThrow().lows(year), start, FIRST_DAYS) + warmer >= atLeast);
  }

  private Optional<Double> share(IntPredicate met) {
    if (weather.isEmpty()) {
      return Optional.empty();
    }
    int years = weather.get().years();
    int count = 0;
    for (int year = 0; year < years; year++) {
      count += met.test(year) ? 1 : 0;
    }
    return Optional.of(count / (double) years);
  }

  /** The share of samples whose first mornings of bloom are mostly not too hot. */
  private Optional<Double> cool(Traces traces, double ends) {
    if (weather.isEmpty()) {
      return Optional.empty();
    }
    double cool = 0;
    double bloom = 0;
    for (int sample = 0; sample < traces.samples(); sample++) {
      int from = traces.slot(Event.FIRST_FRUITING, sample);
      if (from == Traces.NEVER) {
        continue;
      }
      bloom += traces.weight(sample);
      double[] highs = weather.get().highs(sample / Traces.PACES);
      cool += hotShare(highs, from, ends) <= MORNINGS_LOST ? traces.weight(sample) : 0;
    }
    return bloom == 0 ? Optional.empty() : Optional.of(cool / bloom);
  }

  private static double hotShare(double[] highs, int from, double ends) {
    int to = Math.min(highs.length, from + FIRST_MORNINGS);
    int hot = 0;
    for (int s = from; s < to; s++) {
      hot += highs[s] >= ends ? 1 : 0;
    }
    return hot / (double) Math.max(1, to - from);
  }
}
