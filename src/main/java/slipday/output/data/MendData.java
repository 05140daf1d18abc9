package slipday.output.data;

import java.util.List;
import slipday.finding.Mend;

/**
 * What would mend a finding: edits that are to be made together.
 *
 * @param label what it does, in a few words
 * @param edits one or more; none overlaps another
 * @param toFillIn whether it leaves something to be written, and mends nothing before
 */
public record MendData(String label, boolean toFillIn, List<EditData> edits) {
  /**
   * A text in the place of another.
   *
   * @param place what goes; it begins where it ends where something is only put in
   * @param text what comes in its place
   */
  public record EditData(PlaceData place, String text) {
    static EditData of(Mend.Edit edit) {
      return new EditData(PlaceData.of(edit.place(), ""), edit.text());
    }
  }

  static MendData of(Mend mend) {
    return new MendData(
        mend.label(), mend.toFillIn(), mend.edits().stream().map(EditData::of).toList());
  }
}
