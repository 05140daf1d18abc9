package slipday.output.data;

import java.util.List;
import java.util.Optional;
import slipday.measure.Reason;

/**
 * A reason and those beneath it.
 *
 * @param basis {@code plan}, {@code record}, {@code crop-fact}, {@code weather}, {@code method},
 *     {@code default} or {@code derived}
 */
public record ReasonData(
    String says, String basis, Optional<PlaceData> place, List<ReasonData> from) {
  public static ReasonData of(Reason reason) {
    return new ReasonData(
        reason.says(),
        Ids.of(reason.basis()),
        reason.place().map(p -> PlaceData.of(p, "")),
        reason.from().stream().map(ReasonData::of).toList());
  }
}
