package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.climate.SeasonAxis;
import slipday.garden.CropFacts;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.language.PlanClauses;
import slipday.measure.Quantity;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * The dates of one planting: chosen, or the gardener's own judged, and all that follows from them.
 */
final class Forecaster {
  private static final String LEAST_SOIL =
      "the first day that suits, in the least soil that seed comes up in, since what the crop wants"
          + " would come too late for fruit to ripen; ";
  private static final int FIRST_SLOT = 15;
  private static final int LAST_AFTER_MIDSUMMER = 60;

  private final Garden garden;
  private final SeasonWeather climate;
  private final Walk walk;
  private final double risk;
  private final Lessons lessons;
  private final Map<String, List<Fact>> recorded;
  private final Map<PlantingKind, DateChooser.Choice> choices = new HashMap<>();
  private final Map<PlantingKind.At, Traces> walked = new HashMap<>();
  private final Map<Traces, Map<Event, DateSpread>> spreads = new HashMap<>();
  private final Map<PlantingKind, List<String>> mends = new HashMap<>();

  Forecaster(Garden garden, SeasonWeather climate, Learned learned) {
    this.garden = garden;
    this.climate = climate;
    this.walk = climate.walk();
    this.risk = garden.site().frostRisk().value();
    this.lessons = new Lessons(learned, climate);
    this.recorded = Observed.byPlanting(garden.record());
  }

  /** A planting with all it takes to reckon it anew on another day. */
  record Draft(
      Planting planting,
      Needs needs,
      DateChooser chooser,
      DateChooser.Choice choice,
      int start,
      boolean fixed,
      Observed observed) {
    boolean isFree() {
      return !fixed;
    }

    /** The recorded day that the start rests on; none where the plan's own day does. */
    Optional<Reasoned<LocalDate>> recorded() {
      return observed
          .start(needs.indoors())
          .or(() -> planting.plantOutOn().isPresent() ? Optional.empty() : observed.day(Event.SOW));
    }
  }

  Draft draft(Planting planting) {
    Observed observed = Observed.of(recorded.getOrDefault(planting.name(), List.of()), planting);
    Needs needs = needs(planting, observed);
    DateChooser chooser = chooser(needs);
    Optional<LocalDate> fixed = fixedStart(planting, needs, observed);
    DateChooser.Choice choice =
        choices.computeIfAbsent(kind(planting, observed), kind -> choose(needs, chooser));
    int start = fixed.map(climate.axis()::slotOf).orElse(choice.start());
    return new Draft(planting, needs, chooser, choice, start, fixed.isPresent(), observed);
  }

  private PlantingKind kind(Planting planting, Observed observed) {
    return PlantingKind.of(planting, observed, lessons.key(planting));
  }

  /** Seedlings whose sowing is on record or fixed have the age they have when they go out. */
  private Needs needs(Planting planting, Observed observed) {
    Needs needs = lessons.taught(NeedsReader.read(garden, planting, climate), planting);
    Optional<LocalDate> sown = sown(planting, observed).map(Reasoned::value);
    Optional<LocalDate> out =
        observed.date(Event.PLANT_OUT).or(() -> planting.plantOutOn().map(Reasoned::value));
    return needs.indoors() && sown.isPresent() && out.isPresent() && sown.get().isBefore(out.get())
        ? needs.startedIndoors((int) ChronoUnit.DAYS.between(sown.get(), out.get()))
        : needs;
  }

  /**
   * Where the soil that is wanted comes too late for fruit to ripen, the least in which seed comes
   * up is taken: in a cool garden that is what is done.
   */
  private DateChooser.Choice choose(Needs needs, DateChooser chooser) {
    DateChooser.Choice wanted = chooser.choose();
    boolean coldSoil = wanted.earlyBound() == Condition.SOIL || wanted.earliest().isEmpty();
    boolean lower = needs.soilAtLeast().filter(s -> s > needs.soilLeast()).isPresent();
    if (wanted.possible() || !coldSoil || !lower) {
      return wanted;
    }
    DateChooser.Choice least =
        chooser(needs.withSoilAtLeast(needs.soilLeast())).choose().inLeastSoil();
    return least.possible() || least.start() < wanted.start() ? least : wanted;
  }

  private DateChooser chooser(Needs needs) {
    SeasonAxis axis = climate.axis();
    Conditions conditions =
        new Conditions(climate.weather(), walk, needs, climate.told(), axis.midsummer(), risk);
    return new DateChooser(
        needs, walk, conditions, FIRST_SLOT, axis.midsummer() + LAST_AFTER_MIDSUMMER);
  }

  /** The planting-out (or in-place sowing) day a recorded or a fixed date amounts to. */
  private static Optional<LocalDate> fixedStart(Planting planting, Needs needs, Observed observed) {
    Optional<LocalDate> out = planting.plantOutOn().map(Reasoned::value);
    Optional<LocalDate> sown = sown(planting, observed).map(s -> s.value().plusDays(needs.age()));
    Optional<LocalDate> planned = needs.indoors() ? out.or(() -> sown) : sown.or(() -> out);
    return observed.start(needs.indoors()).map(Reasoned::value).or(() -> planned);
  }

  private static Optional<Reasoned<LocalDate>> sown(Planting planting, Observed observed) {
    return observed.day(Event.SOW).or(planting::sowOn);
  }

  Traces traces(Draft draft, int start) {
    return walked.computeIfAbsent(
        new PlantingKind.At(kind(draft.planting(), draft.observed()), start),
        key -> walk.walk(draft.needs(), start, Seen.of(draft.observed(), climate.axis())));
  }

  PlantingSeason finish(Draft draft, int start, List<Reason> moved) {
    Needs needs = draft.needs();
    Traces traces = traces(draft, start);
    LocalDate date = climate.axis().dateOf(start);
    DateChoice choice = choice(draft, start, date, traces, moved);
    Map<Event, Reasoned<DateSpread>> dates = new EnumMap<>(Event.class);
    decided(draft, choice, dates);
    draft
        .observed()
        .days()
        .forEach((event, day) -> dates.put(event, decided(day.value(), day.reason())));
    forecast(draft, traces, choice, dates);
    boolean sure = !draft.planting().facts().valueOr(CropFacts.SHORT_DAYS, false);
    Model model = climate.weather().isPresent() ? Model.WEATHER_YEARS : Model.CALENDAR_DAYS;
    return new PlantingSeason(
        draft.planting(),
        model,
        needs.indoors(),
        Collections.unmodifiableMap(dates),
        choice,
        traces,
        sure,
        climate.reason(),
        needs.ownDays(),
        draft.observed().gone());
  }

  private void decided(Draft draft, DateChoice choice, Map<Event, Reasoned<DateSpread>> dates) {
    Planting planting = draft.planting();
    Needs needs = draft.needs();
    LocalDate out = choice.date();
    if (!needs.indoors()) {
      dates.put(Event.SOW, decided(out, choice.reason()));
      return;
    }
    Reason outReason = choice.reason();
    dates.put(Event.PLANT_OUT, decided(out, outReason));
    Optional<Reasoned<LocalDate>> told = sown(planting, draft.observed());
    LocalDate sown = told.map(Reasoned::value).orElse(out.minusDays(needs.age()));
    Reason sowReason =
        told.map(Reasoned::reason)
            .orElseGet(
                () ->
                    Reason.derived(
                        needs.age() + " days before planting out",
                        join(needs.reasons().get(Event.SOW), outReason)));
    dates.put(Event.SOW, decided(sown, sowReason));
    planting
        .facts()
        .get(CropFacts.HARDENED_FOR)
        .flatMap(usual -> hardening(needs, sown).before(out, usual, outReason))
        .ifPresent(day -> dates.put(Event.HARDEN, decided(day.value(), day.reason())));
    planting
        .facts()
        .get(CropFacts.POTTED_ON_AT)
        .filter(p -> sown.plusDays(Math.round(p.value().low())).isBefore(out))
        .ifPresent(
            p ->
                dates.put(
                    Event.POT_ON,
                    decided(
                        sown.plusDays(Math.round(p.value().low())),
                        Reason.derived(
                            Math.round(p.value().low()) + " days after sowing",
                            p.reason(),
                            sowReason))));
  }

  private Hardening hardening(Needs needs, LocalDate sown) {
    SeasonAxis axis = climate.axis();
    return new Hardening(axis.dateOf(walk.emergence(needs, axis.slotOf(sown), 0)));
  }

  private static Reasoned<DateSpread> decided(LocalDate date, Reason reason) {
    return new Reasoned<>(DateSpread.decided(date), reason);
  }

  /** What is to come; of plants that are gone nothing is. */
  private void forecast(
      Draft draft, Traces traces, DateChoice choice, Map<Event, Reasoned<DateSpread>> dates) {
    Needs needs = draft.needs();
    Optional<Reasoned<LocalDate>> gone = draft.observed().gone();
    Event before = needs.indoors() ? Event.PLANT_OUT : Event.SOW;
    Reason base = dates.get(before) == null ? choice.reason() : dates.get(before).reason();
    for (Event event : Event.values()) {
      boolean forecastable =
          event.ordinal() >= Event.FIRST_MALE.ordinal() || event == Event.EMERGED;
      if (!forecastable || dates.containsKey(event) || !applies(needs, event)) {
        continue;
      }
      List<Reason> from = new ArrayList<>(needs.reasons().getOrDefault(event, List.of()));
      if (event == Event.LAST_SET) {
        from.addAll(
            needs
                .reasons()
                .getOrDefault(needs.seedSaved() ? Event.SEED_RIPE : Event.RIPE, List.of()));
      }
      draft.observed().openedBy(event).ifPresent(by -> from.add(0, by.reason()));
      Event rests = restsOn(event);
      Reasoned<DateSpread> earlier = dates.get(rests);
      from.add(earlier == null ? base : earlier.reason());
      from.add(climate.reason());
      DateSpread spread = spread(traces, event);
      if (gone.isPresent() && spread.usual().isEmpty()) {
        continue;
      }
      gone.ifPresent(g -> from.add(g.reason()));
      dates.put(event, new Reasoned<>(spread, Reason.derived(sentence(event, spread), from)));
    }
  }

  private DateSpread spread(Traces traces, Event event) {
    return spreads
        .computeIfAbsent(traces, t -> new EnumMap<>(Event.class))
        .computeIfAbsent(event, e -> traces.spread(e, climate.axis()));
  }

  private static boolean applies(Needs needs, Event event) {
    return switch (event) {
      case EMERGED -> true;
      case FIRST_MALE -> needs.flowers().isPresent() && needs.hasMales();
      case RIPE -> needs.flowers().isPresent() && needs.ripe().isPresent();
      case SEED_RIPE -> needs.flowers().isPresent() && needs.seedRipe().isPresent();
      default -> needs.flowers().isPresent();
    };
  }

  private static Event restsOn(Event event) {
    return switch (event) {
      case EMERGED -> Event.SOW;
      case FIRST_FRUITING -> Event.PLANT_OUT;
      default -> Event.FIRST_FRUITING;
    };
  }

  private String sentence(Event event, DateSpread spread) {
    String usual = spread.usual().map(this::dayText).orElse("not in the usual year");
    return event.words() + ": " + usual + " in the middle of the years";
  }

  private String dayText(LocalDate date) {
    return climate.axis().dayText(climate.axis().slotOf(date));
  }

  private DateChoice choice(
      Draft draft, int start, LocalDate date, Traces traces, List<Reason> moved) {
    DateChooser.Choice c = draft.choice();
    Map<Condition, Double> chances =
        draft.observed().gone().isPresent() ? Map.of() : draft.chooser().chances(start, traces);
    boolean moves = !moved.isEmpty();
    Condition early = moves ? Condition.BLOOM : c.earlyBound();
    Map<Condition, Reason> because = new EnumMap<>(Condition.class);
    chances.forEach(
        (condition, share) -> because.put(condition, chance(draft, condition, share, start)));
    return new DateChoice(
        date,
        draft.fixed(),
        draft.recorded().isPresent(),
        slot(c.earliest()),
        early,
        slot(c.latest()),
        c.lateBound(),
        c.possible(),
        c.possible() ? List.of() : mends(draft),
        Collections.unmodifiableMap(chances),
        Collections.unmodifiableMap(because),
        reason(draft, date, early, because, moved));
  }

  private List<String> mends(Draft draft) {
    return mends.computeIfAbsent(
        kind(draft.planting(), draft.observed()),
        k ->
            new Mends(draft.needs(), n -> choose(n, chooser(n)), climate.axis(), garden.units())
                .sentences());
  }

  private Optional<LocalDate> slot(java.util.OptionalInt slot) {
    return slot.isPresent()
        ? Optional.of(climate.axis().dateOf(slot.getAsInt()))
        : Optional.empty();
  }

  private Reason reason(
      Draft draft,
      LocalDate date,
      Condition early,
      Map<Condition, Reason> chances,
      List<Reason> moved) {
    List<Reason> from = new ArrayList<>(moved);
    from.addAll(chances.values());
    from.addAll(draft.needs().reasons().getOrDefault(Event.PLANT_OUT, List.of()));
    from.add(garden.site().frostRisk().reason());
    from.add(climate.reason());
    Optional<Reasoned<LocalDate>> recorded = draft.recorded();
    if (recorded.isPresent()) {
      from.add(0, recorded.get().reason());
      return Reason.derived(dayText(date) + ", as the record has it", from);
    }
    if (draft.fixed()) {
      Planting p = draft.planting();
      from.add(
          0,
          p.places()
              .reason(p.plantOutOn().isPresent() ? PlanClauses.PLANT_OUT_ON : PlanClauses.SOW_ON));
      return Reason.derived(dayText(date) + ", as the plan fixes it", from);
    }
    String bound =
        draft.choice().possible()
            ? (draft.choice().leastSoil()
                    ? LEAST_SOIL
                    : "the first day that meets every condition; ")
                + early.words()
                + " keeps it from being earlier"
            : "no day meets every condition; " + draft.choice().lateBound().words() + " fails";
    return Reason.derived(dayText(date) + ": " + bound, from);
  }

  /** {@code frost risk: met in 27 of 30 years; frozen in 2003, 2010, 2019}. */
  private Reason chance(Draft draft, Condition condition, double chance, int start) {
    int years = climate.weather().map(Weather::years).orElse(0);
    String share =
        years > 0
                && condition != Condition.RIPENING
                && condition != Condition.SEED_RIPENING
                && condition != Condition.HEAT
            ? Math.round(chance * years) + " of " + years + " years"
            : Quantity.plain(Math.round(chance * 100)) + " % of years";
    String text = condition.met() + ": in " + share;
    if (condition == Condition.FROST && years > 0) {
      Conditions conditions =
          new Conditions(
              climate.weather(),
              walk,
              draft.needs(),
              climate.told(),
              climate.axis().midsummer(),
              risk);
      List<String> frozen = conditions.frostYears(start);
      text += frozen.isEmpty() ? "" : "; it froze after that day in " + String.join(", ", frozen);
      return Reason.weather(text);
    }
    return years > 0 ? Reason.weather(text) : Reason.derived(text, climate.reason());
  }

  private static List<Reason> join(
      java.util.@org.jspecify.annotations.Nullable List<Reason> first, Reason last) {
    List<Reason> all = new ArrayList<>(first == null ? List.of() : first);
    all.add(last);
    return all;
  }
}
