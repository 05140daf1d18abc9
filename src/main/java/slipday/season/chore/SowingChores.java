package slipday.season.chore;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.FactKey;
import slipday.garden.Planting;
import slipday.genetics.Odds;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.measure.Units;
import slipday.season.DateChoice;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.PlantingSeason;
import slipday.seed.Outlook;
import slipday.seed.SeedsToSow;

/** From seed to a plant in its bed. */
final class SowingChores {
  private final PlantingSeason season;
  private final Planting planting;

  private final int year;
  private final Units units;

  private SowingChores(PlantingSeason season, int year, Units units) {
    this.season = season;
    this.year = year;
    this.units = units;
    this.planting = season.planting();
  }

  /**
   * @param year the season's, by which seed has aged
   */
  static List<Chore> of(PlantingSeason season, int year, Units units) {
    SowingChores chores = new SowingChores(season, year, units);
    List<Chore> all = new ArrayList<>();
    chores.sow().ifPresent(all::add);
    if (season.indoors()) {
      chores.potOn().ifPresent(all::add);
      chores.harden().ifPresent(all::add);
      chores.plantOut().ifPresent(all::add);
    }
    chores.liftCover().ifPresent(all::add);
    return all;
  }

  private Optional<Chore> sow() {
    String where =
        season.indoors()
            ? " indoors"
            : planting.bed().map(bed -> " in " + bed.name()).orElse(" in its bed");
    Draft draft =
        new Draft(ChoreKind.SOW, planting.name(), "Sow " + planting.name() + where)
            .says(howMuchSeed());
    if (season.indoors()) {
      draft.says(
          planting
              .start()
              .flatMap(Planting.Start::temperature)
              .map(t -> "Keep it at " + units.inBothScales(t) + "."));
    } else {
      draft.says(
          degrees(CropFacts.SOW_AT, "The soil wants %s or more at sowing depth; measure it."));
      draft.says(open());
      draft.says(covered());
    }
    draft.says("Label every pot or row at once with the lot's name and the day.");
    return on(Event.SOW, draft);
  }

  private Optional<String> howMuchSeed() {
    if (planting.plants().isEmpty()) {
      return planting.seedsToSow().map(s -> Words.count(s.value(), "seed") + ".");
    }
    int plants = planting.plants().get().value();
    String wanted = ", for " + Words.count(plants, "plant");
    if (planting.seedsToSow().isPresent()) {
      return Optional.of(Words.count(planting.seedsToSow().get().value(), "seed") + wanted + ".");
    }
    Outlook outlook = Outlook.of(planting.lot(), year);
    int seeds = SeedsToSow.of(planting.lot(), plants, outlook);
    return Optional.of(
        seeds < Odds.MOST
            ? Words.count(seeds, "seed")
                + wanted
                + ": enough in 19 of 20 cases"
                + (outlook.asUsual() ? ", if it has kept as usual." : ".")
            : "All the seed there is, and other seed beside it" + wanted + ": little comes up.");
  }

  private Optional<Chore> potOn() {
    return on(
        Event.POT_ON,
        new Draft(ChoreKind.POT_ON, planting.name(), "Pot on " + planting.name())
            .says("Into larger pots, the root ball whole. The label moves with the plant."));
  }

  private Optional<Chore> harden() {
    Optional<LocalDate> first = usual(Event.HARDEN);
    Optional<LocalDate> out = usual(Event.PLANT_OUT);
    if (first.isEmpty() || out.isEmpty() || !first.get().isBefore(out.get())) {
      return Optional.empty();
    }
    Draft draft =
        new Draft(ChoreKind.HARDEN_OFF, planting.name(), "Harden off " + planting.name())
            .says(
                "Outdoors for an hour or two at first, in shade and out of the wind, and longer"
                    + " each day. Water less.")
            .says(degrees(CropFacts.NIGHTS, "Indoors again on nights below %s."));
    ChoreTime days = new ChoreTime.Days(first.get(), out.get().minusDays(1));
    return Optional.of(draft.due(days, reason(Event.HARDEN)));
  }

  private Optional<Chore> plantOut() {
    Draft draft =
        new Draft(ChoreKind.PLANT_OUT, planting.name(), "Plant out " + planting.name())
            .says(howManyPlants())
            .says(degrees(CropFacts.SET_OUT_AT, "The soil wants %s or more; measure it first."))
            .says(degrees(CropFacts.NIGHTS, "The nights want %s or more."))
            .says(open())
            .says(covered())
            .says("Give every plant a stake with its number.");
    return on(Event.PLANT_OUT, draft);
  }

  private Optional<String> covered() {
    return season
        .covered()
        .map(
            c ->
                "Put the "
                    + c.what()
                    + " on the same day; it comes off on "
                    + Words.day(c.off())
                    + ", and before the first flower that the bees are to visit.");
  }

  private Optional<Chore> liftCover() {
    Reason from = reason(season.indoors() ? Event.PLANT_OUT : Event.SOW);
    return season
        .covered()
        .map(
            c ->
                new Draft(
                        ChoreKind.LIFT_COVER,
                        planting.name(),
                        "Take the " + c.what() + " off " + planting.name())
                    .says(
                        "Sooner, if the first flower opens that the bees are to visit; on a dull"
                            + " day, so that the leaves are not burnt.")
                    .due(ChoreTime.on(c.off()), from));
  }

  private Optional<String> howManyPlants() {
    String where = planting.bed().map(bed -> " in " + bed.name()).orElse("");
    String apart = planting.apart().map(a -> ", " + units.length(a.value()) + " apart").orElse("");
    return planting.plants().map(p -> Words.count(p.value(), "plant") + where + apart + ".");
  }

  /** Between which days it can be done. */
  private Optional<String> open() {
    DateChoice choice = season.choice();
    if (!choice.possible() || choice.earliest().isEmpty() || choice.latest().isEmpty()) {
      return Optional.empty();
    }
    LocalDate earliest = choice.earliest().get();
    LocalDate latest = choice.latest().get();
    return earliest.isBefore(latest)
        ? Optional.of(
            "Any day from "
                + Words.day(earliest)
                + " (before it: "
                + choice.earlyBound().words()
                + ") to "
                + Words.day(latest)
                + " (after it: "
                + choice.lateBound().words()
                + ") will do.")
        : Optional.empty();
  }

  private Optional<String> degrees(FactKey<Double> key, String sentence) {
    return planting
        .facts()
        .get(key)
        .map(t -> sentence.replace("%s", units.inBothScales(t.value())));
  }

  private Optional<Chore> on(Event event, Draft draft) {
    return usual(event).map(day -> draft.due(ChoreTime.on(day), reason(event)));
  }

  private Optional<LocalDate> usual(Event event) {
    return season.date(event).map(Reasoned::value).flatMap(DateSpread::usual);
  }

  private Reason reason(Event event) {
    return season.date(event).orElseThrow().reason();
  }
}
