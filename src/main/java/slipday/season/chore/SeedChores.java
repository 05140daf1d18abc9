package slipday.season.chore;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Cross;
import slipday.garden.Facts;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.SeasonYear;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.PlantingSeason;

/** Seed out of the fruit, and whether seed is alive. */
final class SeedChores {
  /** A test that is older says too little; common practice, no source. */
  private static final int TEST_HOLDS_YEARS = 1;

  /** Below this stock a test costs more seed than it is worth; common practice, no source. */
  private static final int STOCK_WORTH_A_TEST = 50;

  /** In winter still, when there is time to get other seed. */
  private static final int WEEKS_BEFORE_SOWING = 12;

  private static final int TEST_TAKES_DAYS = 14;

  private final SeasonIndex season;
  private final SeasonYear year;

  private SeedChores(SeasonIndex season) {
    this.season = season;
    this.year = season.garden().season();
  }

  static List<Chore> of(SeasonIndex season) {
    SeedChores chores = new SeedChores(season);
    List<Chore> all = new ArrayList<>(chores.testsBeforeSowing());
    List<String> saved = new ArrayList<>();
    for (PlantingSeason planting : season.season().plantings()) {
      if (planting.planting().seedSaved() && !chores.isTaken(planting)) {
        chores.takeSeed(planting).ifPresent(chore -> keep(chore, all, saved));
      }
    }
    for (Cross cross : season.garden().crosses()) {
      if (chores.isTaken(cross)) {
        continue;
      }
      chores.takeSeed(cross).ifPresent(chore -> keep(chore, all, saved));
    }
    chores.testSaved(saved).ifPresent(all::add);
    return all;
  }

  /** Whether the record has the seed of all the marked fruit that was wanted. */
  private boolean isTaken(PlantingSeason planting) {
    return !planting.planting().flowers().seedFlowersOpen()
        && season.on(planting.planting()).stream()
            .anyMatch(p -> p.cross().isEmpty() && season.isSeedTaken(p));
  }

  private boolean isTaken(Cross cross) {
    return season.on(cross.seedParent()).stream()
        .filter(p -> p.subject().equals(cross.name()))
        .anyMatch(season::isSeedTaken);
  }

  private static void keep(Chore chore, List<Chore> all, List<String> saved) {
    all.add(chore);
    saved.add(chore.subject());
  }

  private Optional<Chore> takeSeed(PlantingSeason planting) {
    String name = planting.name();
    Draft draft = new Draft(ChoreKind.TAKE_SEED, name, "Take seed of " + name);
    if (season.pollinatedWithin(planting.planting())) {
      draft.says("From marked fruit only, each fruit's seed by itself with its tag.");
    }
    return seed(planting, draft);
  }

  private Optional<Chore> takeSeed(Cross cross) {
    String of = cross.seedParent().name() + " pollinated by " + cross.pollenParent().name();
    Draft draft =
        new Draft(
                ChoreKind.TAKE_SEED,
                cross.name(),
                "Take seed of the cross " + cross.name(),
                "cross")
            .says(
                "From fruit marked as " + of + " only, each fruit's seed by itself with its tag.");
    return season.planting(cross.seedParent().name()).flatMap(p -> seed(p, draft));
  }

  private Optional<Chore> seed(PlantingSeason planting, Draft draft) {
    Optional<Reasoned<DateSpread>> ready =
        planting.date(Event.SEED_RIPE).or(() -> planting.date(Event.RIPE));
    Optional<LocalDate> ripe = ready.map(Reasoned::value).flatMap(s -> s.usual().or(s::early));
    if (ready.isEmpty() || ripe.isEmpty()) {
      return Optional.empty();
    }
    Facts facts = planting.planting().facts();
    Range rest = facts.valueOr(CropFacts.SEED_RESTS, Range.of(0));
    LocalDate first = ripe.get().plusDays(Math.round(rest.low()));
    LocalDate last =
        season.lastSeed(planting.planting(), ready.get().value().late().orElse(ripe.get()));
    draft
        .says(
            season
                .seedLater(planting.planting())
                .map(
                    d ->
                        "Seed is full "
                            + Words.days(d)
                            + " after pollination, later than the eating stage."))
        .says(
            rest.high() >= 1
                ? Optional.of(
                    "The picked fruit rests for " + Words.days(rest) + " before it is opened.")
                : Optional.empty())
        .says(facts.get(CropFacts.SEED_TAKEN).map(how -> "How: " + how.value() + "."))
        .says("Label the packet at once: line, generation, both parents, tag, year.")
        .cautions(Cautions.ofSeed(season, planting.planting()));
    ChoreTime days = new ChoreTime.Days(first, last.plusDays(Math.round(rest.high())));
    return Optional.of(draft.due(days, ready.get().reason()));
  }

  private List<Chore> testsBeforeSowing() {
    Map<String, PlantingSeason> firstSown = new LinkedHashMap<>();
    for (PlantingSeason planting : season.season().plantings()) {
      if (sown(planting).isPresent() && wantsTest(planting.planting().lot())) {
        firstSown.merge(
            planting.planting().lot().name(),
            planting,
            (a, b) -> sown(a).orElseThrow().isAfter(sown(b).orElseThrow()) ? b : a);
      }
    }
    return firstSown.values().stream().flatMap(p -> testBeforeSowing(p).stream()).toList();
  }

  private boolean wantsTest(Lot lot) {
    boolean fresh =
        lot.tested()
            .flatMap(t -> t.value().year())
            .map(y -> year.year() - y <= TEST_HOLDS_YEARS)
            .orElse(false);
    boolean enough = lot.seeds().map(s -> s.value() >= STOCK_WORTH_A_TEST).orElse(true);
    return !fresh && enough;
  }

  private Optional<Chore> testBeforeSowing(PlantingSeason planting) {
    Lot lot = planting.planting().lot();
    LocalDate sown = sown(planting).orElseThrow();
    LocalDate last = sown.minusDays(7);
    if (last.isBefore(year.first())) {
      return Optional.empty();
    }
    LocalDate early = sown.minusWeeks(WEEKS_BEFORE_SOWING);
    LocalDate first = early.isBefore(year.first()) ? year.first() : early;
    LocalDate until = first.plusDays(TEST_TAKES_DAYS);
    String seeds = lot.seeds().map(s -> testSize(s.value())).orElse("20 or more");
    Draft draft =
        new Draft(ChoreKind.TEST_GERMINATION, lot.name(), "Test the germination of " + lot.name())
            .says(
                seeds
                    + " seeds between moist paper"
                    + warmth(planting.planting())
                    + ". Count the sound seedlings after "
                    + TEST_TAKES_DAYS
                    + " days and note them as such: so many of so many.")
            .says(
                lot.tested().isEmpty()
                    ? "This lot has no test yet; its sowing is due on "
                        + Words.day(sown)
                        + ". There is time still to get other seed."
                    : "Its last test is old; its sowing is due on " + Words.day(sown) + ".");
    return Optional.of(
        draft.due(
            new ChoreTime.Days(first, until.isAfter(last) ? last : until),
            planting.date(Event.SOW).orElseThrow().reason(),
            lot.tested().map(Reasoned::reason).orElse(Reason.plan(lot.name(), lot.span()))));
  }

  private String warmth(Planting planting) {
    return planting
        .facts()
        .get(CropFacts.GERMINATES)
        .map(Reasoned::value)
        .map(
            r ->
                ", well between "
                    + season.season().garden().units().inBothScales(r.low())
                    + " and "
                    + season.season().garden().units().inBothScales(r.high())
                    + ", the ends of where it germinates")
        .orElse("");
  }

  private static String testSize(int stock) {
    return Integer.toString(Math.max(10, Math.min(50, stock / 5)));
  }

  private Optional<Chore> testSaved(List<String> saved) {
    if (saved.isEmpty()) {
      return Optional.empty();
    }
    LocalDate last = year.last();
    Draft draft =
        new Draft(
                ChoreKind.TEST_GERMINATION,
                season.garden().site().name(),
                "Test the germination of this season's seed",
                "saved")
            .says("Once it is dry: " + String.join(", ", saved) + ".")
            .says("Note the seedlings as counted: so many of so many.");
    return Optional.of(
        draft.due(
            new ChoreTime.Days(last.minusDays(30), last),
            Reason.byDefault("New seed is tested in the last month of the season.")));
  }

  private static Optional<LocalDate> sown(PlantingSeason planting) {
    return planting.date(Event.SOW).map(Reasoned::value).flatMap(DateSpread::usual);
  }
}
