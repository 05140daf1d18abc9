package slipday.season.chore;

import java.time.LocalDate;
import java.util.List;
import slipday.garden.CropFacts;
import slipday.measure.Reason;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;

/**
 * Unmarked young fruit comes off, once for a planting however many pollinations are done on it: a
 * fruit that grows already makes the vine drop later ones (common practice, no source).
 */
final class ThinChores {
  private static final int DAYS_TO_SHOW = 7;

  private ThinChores() {}

  static List<Chore> of(SeasonIndex season, PlantingSeason planting) {
    List<LocalDate> mornings = season.mornings(planting.planting());
    boolean counted = planting.planting().facts().get(CropFacts.CALLED).isPresent();
    if (mornings.isEmpty() || counted) { // an ear is no fruit that holds back the next
      return List.of();
    }
    String name = planting.name();
    Draft draft =
        new Draft(ChoreKind.THIN, name, "Take unmarked young fruit off " + name)
            .says(
                "Until the marked ones have set: a fruit that grows already makes the vine drop the"
                    + " flowers you pollinate. Afterwards unmarked fruit may stay, for the"
                    + " kitchen.");
    LocalDate last = mornings.get(mornings.size() - 1).plusDays(DAYS_TO_SHOW);
    return List.of(
        draft.due(
            new ChoreTime.Days(mornings.get(0), last),
            season.on(planting.planting()).stream()
                .map(PollinationPlan::reason)
                .toArray(Reason[]::new)));
  }
}
