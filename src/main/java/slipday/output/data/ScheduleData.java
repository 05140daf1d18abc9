package slipday.output.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** The dates of every planting. */
public record ScheduleData(
    Head slipday, String plan, SeasonData season, List<PlantingDates> plantings) {
  /**
   * One planting.
   *
   * @param model what its dates were worked out with
   * @param sureOfFlowers false where it waits for short days: nothing is then certain from its
   *     flowers on
   * @param flowersThisSeason false for a biennial in its first year
   * @param cover the tunnel or fleece over it
   */
  public record PlantingDates(
      String name,
      String line,
      String crop,
      String species,
      Optional<String> bed,
      Optional<Integer> plants,
      boolean indoors,
      String model,
      boolean sureOfFlowers,
      boolean flowersThisSeason,
      ChosenData chosen,
      Optional<CoverData> cover,
      List<EventData> events) {
    static PlantingDates of(PlantingSeason p) {
      return new PlantingDates(
          p.name(),
          p.planting().line().name(),
          p.planting().crop().name(),
          p.planting().species().name(),
          p.planting().bed().map(b -> b.name()),
          p.planting().plants().map(n -> n.value()),
          p.indoors(),
          p.model().words(),
          p.sureOfFlowers(),
          p.flowers(),
          ChosenData.of(p.choice(), p.indoors()),
          p.covered().map(c -> new CoverData(c.what(), c.from(), c.off())),
          p.dates().entrySet().stream()
              .map(e -> EventData.of(p.planting(), e.getKey(), e.getValue().value()))
              .toList());
    }
  }

  /**
   * A tunnel or fleece over a planting.
   *
   * @param from the day it goes on: with the plants, or with seed that is sown in place
   * @param off the day it comes off
   */
  public record CoverData(String what, LocalDate from, LocalDate off) {}

  /**
   * @param names the plantings wanted; empty for all
   */
  public static ScheduleData of(String plan, Season season, Set<String> names) {
    return new ScheduleData(
        Head.of("schedule"),
        plan,
        SeasonData.of(season),
        season.plantings().stream()
            .filter(p -> names.isEmpty() || names.contains(p.name()))
            .map(PlantingDates::of)
            .toList());
  }
}
