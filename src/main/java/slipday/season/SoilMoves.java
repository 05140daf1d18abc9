package slipday.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import slipday.garden.Planting;
import slipday.garden.record.FruitStory;

/** By how much the gardener's own readings of the soil move the days that are chosen. */
public final class SoilMoves {
  private SoilMoves() {}

  /**
   * A planting whose day is another for the readings.
   *
   * @param without the day it would be planted out, or sown in place, without any reading
   * @param with the same with them
   */
  public record Move(Planting planting, LocalDate without, LocalDate with) {
    /** Later for the readings, if above nothing; sooner if below. */
    public int days() {
      return (int) (with.toEpochDay() - without.toEpochDay());
    }
  }

  /** In the plan's order; of plantings whose day is free to be chosen. */
  public static List<Move> of(Season season) {
    Forecaster read = forecaster(season, SeasonWeather.of(season.climate()));
    Forecaster unread = forecaster(season, SeasonWeather.of(season.climate().unread()));
    List<Move> moves = new ArrayList<>();
    for (Planting planting : season.garden().plantings()) {
      Forecaster.Draft with = read.draft(planting);
      int without = unread.draft(planting).start();
      if (with.isFree() && with.start() != without) {
        moves.add(
            new Move(
                planting,
                season.climate().axis().dateOf(without),
                season.climate().axis().dateOf(with.start())));
      }
    }
    return moves;
  }

  private static Forecaster forecaster(Season season, SeasonWeather weather) {
    Learned learned = new Learned(season.garden(), FruitStory.all(season.garden().record()));
    return new Forecaster(season.garden(), weather, learned);
  }
}
