package slipday.season.chore;

import java.util.ArrayList;
import java.util.List;
import slipday.garden.Site;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;
import slipday.season.Season;

/** From a season to its chores. */
public final class Chores {
  private Chores() {}

  public static ChoreBook of(Season season) {
    Site site = season.garden().site();
    SeasonIndex index = new SeasonIndex(season);
    List<Chore> chores = new ArrayList<>();
    for (PlantingSeason planting : season.plantings()) {
      chores.addAll(
          SowingChores.of(planting, season.garden().season().year(), season.garden().units()));
      chores.addAll(WatchChores.of(index, planting));
      chores.addAll(ThinChores.of(index, planting));
      chores.addAll(FruitChores.of(index, planting));
    }
    PollinationChores pollinations = new PollinationChores(index);
    for (PollinationPlan plan : season.pollinations()) {
      chores.addAll(pollinations.of(plan));
    }
    chores.addAll(SeedChores.of(index));
    return new ChoreBook(
        season.garden().season().label(),
        site.name(),
        site.title(),
        site.zone(),
        season.garden().season().first(),
        chores);
  }
}
