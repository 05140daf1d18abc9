package slipday.season;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.climate.FrostDepth;
import slipday.garden.Bed;
import slipday.garden.CropFacts;
import slipday.garden.FactKey;
import slipday.garden.Facts;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.garden.Species;
import slipday.language.PlanClauses;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.measure.Units;

/** Reads what a planting asks of its season, and keeps why. */
final class NeedsReader {
  private static final double SEEDLING_AGE = 21;
  private static final double REFERENCE = 22;
  private static final double NEVER_KILLED = -60;
  private static final double COLDEST_SOIL = 5;

  private final Garden garden;
  private final Planting planting;
  private final Facts facts;
  private final boolean weather;
  private final boolean soilKnown;
  private final Units units;
  private final Map<Event, List<Reason>> reasons = new EnumMap<>(Event.class);

  private NeedsReader(Garden garden, Planting planting, SeasonWeather climate) {
    this.garden = garden;
    this.planting = planting;
    this.facts = planting.facts();
    this.units = garden.units();
    this.weather = climate.weather().isPresent();
    this.soilKnown = weather || climate.told().soil().isKnown();
  }

  /**
   * @param climate without weather years figures in days stay in days, and nights are not judged
   */
  static Needs read(Garden garden, Planting planting, SeasonWeather climate) {
    return new NeedsReader(garden, planting, climate).read();
  }

  private Needs read() {
    boolean indoors = indoors();
    Optional<Stage> flowers =
        facts.valueOr(CropFacts.BIENNIAL, false) ? Optional.empty() : flowers();
    Optional<Stage> ripe = ripe();
    double indoorCelsius = indoorCelsius(indoors);
    return new Needs(
        indoors,
        indoors ? age() : 0,
        indoorCelsius,
        emergence(),
        soilWarmer(indoors),
        cover(indoors).map(Planting.Cover::days).orElse(0.0),
        planting.cover().map(c -> c.value().warmer()).orElse(0.0),
        planting.cover().flatMap(c -> c.value().guardsTo()),
        indoors ? spread(CropFacts.STANDS_STILL, Event.FIRST_FRUITING, 0)[1] : 0,
        facts.get(CropFacts.FIRST_FLOWERS).map(f -> f.value().event()).orElse("emergence"),
        flowers,
        planting.line().sex().hasMaleFlowers(),
        spread(CropFacts.MALES_EARLIER, Event.FIRST_MALE, 0),
        spread(CropFacts.BLOOMS_FOR, Event.BLOOM_ENDS, 30),
        ripe,
        seedRipe(ripe),
        planting.seedSaved(),
        killedAt(),
        bedColder(),
        soilAtLeast(indoors),
        facts.get(CropFacts.GERMINATES).map(g -> g.value().low()).orElse(COLDEST_SOIL),
        indoors && weather
            ? note(Event.PLANT_OUT, facts.get(CropFacts.CHILLED_BELOW))
            : Optional.empty(),
        facts.get(CropFacts.HEAT).map(h -> h.value().ends()),
        reasons,
        Map.of());
  }

  private void because(Event event, Reason reason) {
    reasons.computeIfAbsent(event, e -> new ArrayList<>()).add(reason);
  }

  private <T> Optional<T> note(Event event, Optional<Reasoned<T>> stated) {
    stated.ifPresent(s -> because(event, s.reason()));
    return stated.map(Reasoned::value);
  }

  /** Soil under a mulch counts where the soil is known, and for what comes up outdoors. */
  private double soilWarmer(boolean indoors) {
    if (soilKnown) {
      note(Event.PLANT_OUT, planting.soilWarmer());
      if (!indoors) {
        note(Event.EMERGED, planting.soilWarmer());
      }
    }
    return planting.soilWarmer().map(Reasoned::value).orElse(0.0);
  }

  /** Without weather years a cover does nothing but guard against frost. */
  private Optional<Planting.Cover> cover(boolean indoors) {
    Optional<Reasoned<Planting.Cover>> cover = planting.cover();
    if (cover.isEmpty() || !(weather || cover.get().value().guardsTo().isPresent())) {
      return Optional.empty();
    }
    Planting.Cover c = cover.get().value();
    because(
        Event.PLANT_OUT,
        Reason.derived(
            "Under the "
                + c.what()
                + " for "
                + Math.round(c.days())
                + (indoors ? " days from planting out" : " days from sowing in place"),
            cover.get().reason()));
    return Optional.of(c);
  }

  private double killedAt() {
    double killed = note(Event.BLOOM_ENDS, facts.get(CropFacts.KILLED_AT)).orElse(NEVER_KILLED);
    boolean guarded = planting.cover().flatMap(c -> c.value().guardsTo()).isPresent();
    boolean colder = planting.bed().filter(b -> b.colder() != 0).isPresent();
    if (!weather && FrostDepth.isNear(killed) && (killed != 0 || colder || guarded)) {
      because(Event.PLANT_OUT, FrostDepth.reason(units));
      because(Event.BLOOM_ENDS, FrostDepth.reason(units));
    }
    return killed;
  }

  private double bedColder() {
    Optional<Bed> bed = planting.bed().filter(b -> b.colder() != 0);
    bed.map(b -> b.places().reason(PlanClauses.FROST_POCKET))
        .ifPresent(
            pocket -> {
              because(Event.PLANT_OUT, pocket);
              because(Event.BLOOM_ENDS, pocket);
            });
    return bed.map(Bed::colder).orElse(0.0);
  }

  /** What is asked of the soil; told as a reason where the soil is known. */
  private Optional<Double> soilAtLeast(boolean indoors) {
    Optional<Reasoned<Double>> asked = facts.get(indoors ? CropFacts.SET_OUT_AT : CropFacts.SOW_AT);
    if (soilKnown) {
      note(Event.PLANT_OUT, asked);
      if (!weather) {
        garden.site().soil().forEach(r -> because(Event.PLANT_OUT, r.reason()));
      }
    } else if (!indoors) {
      note(Event.EMERGED, asked);
    }
    return asked.map(Reasoned::value);
  }

  private boolean indoors() {
    if (planting.start().isPresent()) {
      because(Event.SOW, planting.places().reason(PlanClauses.START));
      return planting.start().get().indoors();
    }
    return note(Event.SOW, facts.get(CropFacts.STARTED_INDOORS)).orElse(false);
  }

  private int age() {
    Optional<Double> told = planting.start().flatMap(Planting.Start::age);
    if (told.isPresent()) {
      return (int) Math.round(told.get());
    }
    return (int)
        Math.round(
            note(Event.SOW, facts.get(CropFacts.SEEDLING_AGE))
                .map(Range::middle)
                .orElse(SEEDLING_AGE));
  }

  private double indoorCelsius(boolean indoors) {
    Optional<Double> told = planting.start().flatMap(Planting.Start::temperature);
    if (indoors && told.isEmpty()) {
      because(
          Event.EMERGED,
          Reason.byDefault(
              "Raised indoors at "
                  + units.temperature(PlantingSeason.INDOORS)
                  + ", where the plan names no temperature."));
    }
    return told.orElse(PlantingSeason.INDOORS);
  }

  private EmergenceTable emergence() {
    Facts table = facts;
    Optional<Reasoned<String>> like = facts.get(CropFacts.EMERGES_LIKE);
    if (facts.all(CropFacts.EMERGES).isEmpty() && like.isPresent()) {
      because(Event.EMERGED, like.get().reason());
      Species standIn = garden.species().get(like.get().value());
      table = standIn == null ? facts : standIn.facts();
    }
    List<Reasoned<CropFacts.EmergenceRow>> rows = table.all(CropFacts.EMERGES);
    rows.forEach(r -> because(Event.EMERGED, r.reason()));
    Range limits = note(Event.EMERGED, facts.get(CropFacts.GERMINATES)).orElse(new Range(4, 40));
    return new EmergenceTable(
        rows.stream().map(Reasoned::value).toList(), limits.low(), limits.high());
  }

  private double[] spread(FactKey<Range> key, Event event, double fallback) {
    Range range = note(event, facts.get(key)).orElse(Range.of(fallback));
    return paces(range);
  }

  private static double[] paces(Range range) {
    return new double[] {range.low(), range.middle(), range.high()};
  }

  private Optional<Stage> flowers() {
    Optional<Reasoned<CropFacts.FirstFlowers>> stated = facts.get(CropFacts.FIRST_FLOWERS);
    stated.ifPresent(s -> because(Event.FIRST_FRUITING, s.reason()));
    return stated.map(
        s -> {
          CropFacts.FirstFlowers f = s.value();
          CropFacts.GrowthLimits limits = f.limits().orElseGet(this::growth);
          return stage(Event.FIRST_FRUITING, f.after(), f.heat(), limits);
        });
  }

  private CropFacts.GrowthLimits growth() {
    return facts
        .get(CropFacts.GROWTH)
        .map(Reasoned::value)
        .orElse(new CropFacts.GrowthLimits(10, Optional.empty()));
  }

  private Optional<Stage> ripe() {
    Optional<Reasoned<CropFacts.RipeAfter>> stated = facts.get(CropFacts.RIPE);
    stated.ifPresent(s -> because(Event.RIPE, s.reason()));
    return stated.map(s -> stage(Event.RIPE, s.value().after(), s.value().heat(), growth()));
  }

  private Optional<Stage> seedRipe(Optional<Stage> ripe) {
    Optional<Reasoned<Range>> stated = facts.get(CropFacts.SEED_RIPE);
    if (stated.isEmpty()) {
      facts.get(CropFacts.RIPE).ifPresent(r -> because(Event.SEED_RIPE, r.reason()));
      return ripe;
    }
    because(Event.SEED_RIPE, stated.get().reason());
    return Optional.of(stage(Event.SEED_RIPE, stated.get().value(), false, growth()));
  }

  /**
   * A figure in days becomes degree-days at the crop's reference temperature, if there is weather.
   */
  private Stage stage(Event event, Range after, boolean heat, CropFacts.GrowthLimits limits) {
    double limit = limits.limit().orElse(Double.POSITIVE_INFINITY);
    if (heat && !weather) {
      return inDays(event, after, limits);
    }
    if (heat || !weather) {
      return new Stage(heat, paces(after), limits.base(), limit);
    }
    double reference = reference(event);
    double perDay = Math.min(reference, limit) - limits.base();
    if (perDay <= 0) {
      return new Stage(false, paces(after), limits.base(), limit);
    }
    facts.get(CropFacts.GROWTH).ifPresent(g -> because(event, g.reason()));
    because(
        event,
        Reason.method(
            "Derived: days turned into "
                + Math.round(units.heat(after.low() * perDay))
                + " to "
                + Math.round(units.heat(after.high() * perDay))
                + " "
                + units.heatUnit()
                + " above "
                + units.written(limits.base())
                + ", as "
                + Quantity.plain(units.heat(perDay))
                + " a day at the reference temperature; counted by "
                + Weather.METHOD.words()
                + " (Baskerville and Emin 1969, Ecology 50:514)"));
    return new Stage(true, paces(after.times(perDay)), limits.base(), limit);
  }

  private Stage inDays(Event event, Range heat, CropFacts.GrowthLimits limits) {
    double perDay = Math.max(1, reference(event) - limits.base());
    because(
        event, Reason.method("Derived: a heat sum turned into days at the reference temperature."));
    Range days = heat.times(1 / perDay);
    return Stage.days(days.low(), days.middle(), days.high());
  }

  private double reference(Event event) {
    Optional<Reasoned<Double>> stated = facts.get(CropFacts.REFERENCE);
    stated.ifPresent(s -> because(event, s.reason()));
    if (stated.isEmpty()) {
      because(
          event,
          Reason.byDefault(
              "Days are counted at "
                  + units.temperature(REFERENCE)
                  + ", where the crop names none."));
    }
    return stated.map(Reasoned::value).orElse(REFERENCE);
  }
}
