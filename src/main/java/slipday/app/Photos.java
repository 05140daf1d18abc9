package slipday.app;

import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.garden.record.Fact;
import slipday.garden.record.GardenRecord;

/** The photos that the record names, looked for beside its files and beside the plan. */
final class Photos {
  private Photos() {}

  /** A finding for each that is not there; it changes nothing else. */
  static List<Finding> missing(GardenRecord record, PlanSource plan, FileTexts texts) {
    return record.every(Fact.Photo.class).flatMap(p -> missing(p, plan, texts).stream()).toList();
  }

  private static Optional<Finding> missing(Fact.Photo photo, PlanSource plan, FileTexts texts) {
    String beside = plan.seenFromPlan(photo.span().source(), photo.path());
    if (texts.isFile(plan.folder(), photo.path()) || texts.isFile(plan.folder(), beside)) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.warning("photo-missing", photo.span(), "There is no photo `" + photo.path() + "`.")
            .withHelp("A path is told from the record's folder or from the plan's."));
  }
}
