package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.climate.DegreeDays;
import slipday.climate.SeasonAxis;
import slipday.climate.WeatherRecord;
import slipday.climate.WeatherYears;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.measure.Units;

/**
 * Puts what the record teaches of a line into what its planting needs. What a line did in an
 * earlier season is read off that season's weather, so that a cool year does not make it late.
 */
final class Lessons {
  private static final double REFERENCE = 22;

  private final Learned learned;
  private final SeasonWeather climate;
  private final Map<Asked, Optional<Learned.Figure>> figures = new HashMap<>();

  /**
   * What a figure depends on: plantings of one line that are kept alike have it in common, unless
   * one has own days that are its forecast's and not its teacher's.
   */
  private record Asked(String line, Event event, List<Object> more) {}

  Lessons(Learned learned, SeasonWeather climate) {
    this.learned = learned;
    this.climate = climate;
  }

  /** The line's name where the record says something of it; plantings of others are alike. */
  String key(Planting planting) {
    return learned.knows(planting.line()) ? planting.line().name() : "";
  }

  Needs taught(Needs needs, Planting planting) {
    if (!learned.knows(planting.line())) {
      return needs;
    }
    Map<Event, List<Reason>> reasons = new EnumMap<>(Event.class);
    reasons.putAll(needs.reasons());
    Map<Event, Reasoned<Range>> days = new EnumMap<>(Event.class);
    Event ripens = MarkedFruits.ripens(planting.facts());
    Optional<Stage> usual = ripens == Event.RIPE ? needs.ripe() : needs.seedRipe();
    Optional<Stage> own = usual.flatMap(s -> ripening(s, ripens, planting, reasons, days));
    boolean alike = needs.seedRipe().equals(needs.ripe());
    if (own.isPresent() && ripens == Event.RIPE && alike) {
      reasons.put(Event.SEED_RIPE, reasons.getOrDefault(Event.RIPE, List.of()));
    }
    return needs.taught(
        flowers(needs, planting, reasons).or(needs::flowers),
        males(needs, planting, reasons),
        ripens == Event.RIPE ? own.or(needs::ripe) : needs.ripe(),
        ripens == Event.SEED_RIPE || alike ? own.or(needs::seedRipe) : needs.seedRipe(),
        reasons,
        days);
  }

  /** A figure in days or, of a stage told in heat, in a heat sum. */
  private Learned.Kind kind(
      Planting planting, String what, double[] need, boolean heat, List<Reason> reasons) {
    Units units = climate.units();
    return heat
        ? new Learned.Kind(planting.line(), what, need, units.heatUnit(), units.heat(1), reasons)
        : new Learned.Kind(planting.line(), what, need, "days", 1, reasons);
  }

  private static Stage with(Stage stage, double[] need) {
    return new Stage(stage.heat(), need, stage.base(), stage.limit());
  }

  private Optional<Stage> ripening(
      Stage stage,
      Event event,
      Planting planting,
      Map<Event, List<Reason>> reasons,
      Map<Event, Reasoned<Range>> days) {
    List<Reason> usual = reasons.getOrDefault(event, List.of());
    String what = "From pollination to " + event.words();
    return figures
        .computeIfAbsent(
            new Asked(planting.line().name(), event, List.of()),
            asked ->
                learned.ripening(
                    kind(planting, what, stage.need(), stage.heat(), usual),
                    (a, b) -> measure(stage, a, b)))
        .map(
            figure -> {
              reasons.put(event, List.of(figure.reason()));
              double perDay = perDay(stage, planting);
              Range range = new Range(figure.need()[0], figure.need()[2]).times(1 / perDay);
              days.put(event, new Reasoned<>(range, figure.reason()));
              return with(stage, figure.need());
            });
  }

  /** °C-days in a day at the temperature that days are counted at; 1 for figures in days. */
  private static double perDay(Stage stage, Planting planting) {
    double reference = planting.facts().valueOr(CropFacts.REFERENCE, REFERENCE);
    return stage.heat() ? Math.max(1, Math.min(reference, stage.limit()) - stage.base()) : 1;
  }

  private Optional<Stage> flowers(
      Needs needs, Planting planting, Map<Event, List<Reason>> reasons) {
    if (needs.flowers().isEmpty()) {
      return Optional.empty();
    }
    Stage stage = needs.flowers().get();
    List<Reason> usual = reasons.getOrDefault(Event.FIRST_FRUITING, List.of());
    String what = "From " + needs.fromEvent() + " to first fruiting flowers";
    Asked key =
        new Asked(
            planting.line().name(),
            Event.FIRST_FRUITING,
            List.of(
                learned.ownDays(planting),
                needs.standsStill(),
                needs.indoorCelsius(),
                needs.coverDays(),
                needs.coverWarmer()));
    return figures
        .computeIfAbsent(
            key,
            asked ->
                learned.flowering(
                    kind(planting, what, stage.need(), stage.heat(), usual),
                    planting,
                    stand -> flowering(needs, stage, stand)))
        .map(
            figure -> {
              reasons.put(Event.FIRST_FRUITING, List.of(figure.reason()));
              return with(stage, figure.need());
            });
  }

  private double[] males(Needs needs, Planting planting, Map<Event, List<Reason>> reasons) {
    if (!needs.hasMales()) {
      return needs.malesEarlier();
    }
    List<Reason> usual = reasons.getOrDefault(Event.FIRST_MALE, List.of());
    Optional<Learned.Figure> figure =
        figures.computeIfAbsent(
            new Asked(planting.line().name(), Event.FIRST_MALE, List.of(learned.ownDays(planting))),
            asked ->
                learned.malesEarlier(
                    kind(
                        planting,
                        "From first male to first fruiting flowers",
                        needs.malesEarlier(),
                        false,
                        usual),
                    planting));
    figure.ifPresent(f -> reasons.put(Event.FIRST_MALE, List.of(f.reason())));
    return figure.map(Learned.Figure::need).orElse(needs.malesEarlier());
  }

  /** What a walk would have needed to come to the day that was seen, in the unit of a stage. */
  private Learned.Measured measure(Stage stage, LocalDate from, LocalDate to) {
    return stage.heat()
        ? heat(stage, from, to, 0, from)
        : new Learned.Measured(ChronoUnit.DAYS.between(from, to), "");
  }

  /** As {@link Walk} goes from the event counted from to the first fruiting flower, backwards. */
  private Optional<Learned.Measured> flowering(Needs needs, Stage stage, Learned.Flowering stand) {
    Optional<LocalDate> sown = stand.day(Event.SOW);
    Optional<LocalDate> out = stand.day(Event.PLANT_OUT);
    boolean indoors = out.isPresent();
    Optional<LocalDate> from =
        switch (needs.fromEvent()) {
          case "sowing" -> sown;
          case "planting out" -> indoors ? out : stand.day(Event.EMERGED);
          default -> stand.day(Event.EMERGED);
        };
    Optional<LocalDate> start = out.or(() -> sown);
    LocalDate flower = stand.day(Event.FIRST_FRUITING).orElseThrow();
    if (from.isEmpty() || start.isEmpty() || from.get().isAfter(flower)) {
      return Optional.empty();
    }
    boolean checked = indoors && !needs.fromEvent().equals("planting out");
    long standstill = checked ? Math.round(needs.standsStill()) : 0;
    if (!stage.heat()) {
      long days = ChronoUnit.DAYS.between(from.get(), flower) - standstill;
      return Optional.of(new Learned.Measured(days, ""));
    }
    LocalDate growsFrom = start.get().plusDays(standstill);
    LocalDate outdoors = from.get().isAfter(growsFrom) ? from.get() : growsFrom;
    long inside = Math.max(0, ChronoUnit.DAYS.between(from.get(), start.get()));
    double warmth = Math.max(0, Math.min(needs.indoorCelsius(), stage.limit()) - stage.base());
    LocalDate coverEnds = start.get().plusDays(Math.round(needs.coverDays()));
    Learned.Measured heat = heat(stage, outdoors, flower, needs.coverWarmer(), coverEnds);
    return Optional.of(new Learned.Measured(heat.figure() + warmth * inside, heat.how()));
  }

  /**
   * °C-days from a day to another, both counted in.
   *
   * @param warmer °C under a cover
   * @param coverEnds the first day without it
   */
  private Learned.Measured heat(
      Stage stage, LocalDate from, LocalDate to, double warmer, LocalDate coverEnds) {
    WeatherYears years = climate.years().orElseThrow();
    double[] lows = years.meanLows();
    double[] highs = years.meanHighs();
    double own = 0;
    double mean = 0;
    boolean known = true;
    for (LocalDate day = from; !day.isAfter(to); day = day.plusDays(1)) {
      double more = day.isBefore(coverEnds) ? warmer : 0;
      WeatherRecord record = years.record();
      double low = record.low(day) + more;
      double high = record.high(day) + more;
      known &= !Double.isNaN(low) && !Double.isNaN(high);
      own += ofDay(stage, low, high);
      int slot = Math.floorMod(climate.axis().slotOf(day), SeasonAxis.SLOTS);
      mean += ofDay(stage, lows[slot] + more, highs[slot] + more);
    }
    String covered = warmer > 0 && from.isBefore(coverEnds) ? ", covered as this season" : "";
    return known
        ? new Learned.Measured(own, " by that season's weather" + covered)
        : new Learned.Measured(
            mean, " by the mean of the weather years, as that season's is not known" + covered);
  }

  private static double ofDay(Stage stage, double low, double high) {
    return DegreeDays.ofDay(Weather.METHOD, low, high, stage.base(), stage.limit());
  }
}
