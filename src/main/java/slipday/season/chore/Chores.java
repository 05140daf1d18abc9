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
    List<Chore> chores = new ArrayList<>();
    for (PlantingSeason planting : season.plantings()) {
      chores.addAll(SowingChores.of(planting));
      chores.addAll(WatchChores.of(season, planting));
      chores.addAll(ThinChores.of(season, planting));
      chores.addAll(FruitChores.of(season, planting));
    }
    PollinationChores pollinations = new PollinationChores(site, season.climate()::sun);
    for (PollinationPlan plan : season.pollinations()) {
      chores.addAll(pollinations.of(plan));
    }
    chores.addAll(SeedChores.of(season));
    return new ChoreBook(
        season.garden().season().label(),
        site.name(),
        site.title(),
        site.zone(),
        season.garden().season().first(),
        chores);
  }
}
