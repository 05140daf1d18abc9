package slipday.output.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.climate.FrostLaw;
import slipday.garden.Bed;
import slipday.garden.Planting;
import slipday.garden.Species;
import slipday.measure.Reasoned;
import slipday.output.Days;
import slipday.output.Lines;
import slipday.output.report.Template.Raw;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.Exposure;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/**
 * The season as bars over the calendar.
 *
 * @param head the months
 * @param under what lies behind the bars
 * @param site the site's id in the book of reasons
 * @param groups the plantings, those of one species together
 */
record SeasonView(Raw head, Raw under, String frost, String site, List<Group> groups) {
  /**
   * Plantings of a species.
   *
   * @param kin a sentence on their crossing; empty where there is one alone
   */
  record Group(String species, String latin, String kin, List<Row> rows, Sheds sheds) {}

  /**
   * @param thing its id in the book of reasons
   * @param name the planting's, where it is not the line's too
   * @param told its dates in words, for who can't see the bar
   */
  record Row(String thing, String title, String name, String facts, String told, Raw bar) {}

  static SeasonView of(Season season, Reach reach, Ids ids, Optional<LocalDate> today) {
    Axis axis = Axis.of(season);
    CalendarDrawing calendar = new CalendarDrawing(axis, season.climate());
    return new SeasonView(
        new Raw(calendar.head().toString()),
        new Raw(calendar.under(today).toString()),
        frost(season),
        ids.of(season.garden().site()),
        groups(season, reach, axis, ids));
  }

  private static String frost(Season season) {
    List<String> says = new ArrayList<>();
    season.climate().lastSpringFrost().ifPresent(law -> says.add("Last spring" + told(law)));
    season.climate().firstAutumnFrost().ifPresent(law -> says.add("First autumn" + told(law)));
    return String.join(" ", says);
  }

  private static String told(FrostLaw law) {
    String middle =
        law.chanceNone() < 0.5 ? " frost about " + law.axis().dayText(law.median()) : " frost";
    return middle + ", " + law.oneInTenText() + ".";
  }

  private static List<Group> groups(Season season, Reach reach, Axis axis, Ids ids) {
    Days days = new Days(season.garden().season().first(), season.garden().season().last());
    Bloom bloom = new Bloom(season);
    Map<Species, List<PlantingSeason>> bySpecies = new LinkedHashMap<>();
    for (PlantingSeason p : season.plantings()) {
      bySpecies.computeIfAbsent(p.planting().species(), s -> new ArrayList<>()).add(p);
    }
    List<Group> groups = new ArrayList<>();
    bySpecies.forEach(
        (species, plantings) -> {
          List<Row> rows =
              plantings.stream()
                  .map(p -> row(p, axis, reach.of(p.name()), bloom, ids, days))
                  .toList();
          Sheds sheds = Sheds.of(plantings, reach, ids, season.garden().units());
          groups.add(
              new Group(species.name(), species.latin(), kin(plantings.size()), rows, sheds));
        });
    return groups;
  }

  private static String kin(int plantings) {
    return plantings < 2
        ? ""
        : "One species: these "
            + plantings
            + " cross with one another wherever flowers stand open.";
  }

  private static Row row(
      PlantingSeason p, Axis axis, List<Exposure> reach, Bloom bloom, Ids ids, Days days) {
    Planting planting = p.planting();
    List<String> facts = new ArrayList<>();
    facts.add(planting.crop().name());
    planting.plants().ifPresent(n -> facts.add(Lines.count(n.value(), "plant")));
    planting.bed().map(Bed::name).ifPresent(b -> facts.add("in " + b));
    if (planting.seedSaved()) {
      facts.add("seed saved");
    }
    String title = planting.line().title();
    return new Row(
        ids.of(planting),
        title,
        planting.name().equals(title) ? "" : planting.name(),
        String.join(", ", facts),
        told(p, days),
        new Raw(SeasonBar.of(p, axis, reach, bloom).toString()));
  }

  private static String told(PlantingSeason p, Days days) {
    List<String> dates = new ArrayList<>();
    for (Map.Entry<Event, Reasoned<DateSpread>> date : p.dates().entrySet()) {
      dates.add(date.getKey().words() + " " + span(date.getValue().value(), days));
    }
    return String.join("; ", dates);
  }

  static String span(DateSpread spread, Days days) {
    String usual = days.day(spread.usual());
    boolean single = spread.decided() || spread.early().equals(spread.late());
    return single
        ? usual
        : usual + " (" + days.day(spread.early()) + " to " + days.day(spread.late()) + ")";
  }
}
