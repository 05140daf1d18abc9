package slipday.output.data;

import java.util.List;
import java.util.Optional;
import slipday.finding.Finding;

/** One finding. Texts are full sentences; {@code subject} and {@code help} may be empty. */
public record FindingData(
    String rule,
    String level,
    String message,
    String subject,
    Optional<PlaceData> place,
    List<PlaceData> others,
    List<String> notes,
    String help,
    Optional<String> allowedBecause,
    List<MendData> mends) {
  static FindingData of(Finding f) {
    return new FindingData(
        f.rule(),
        f.level().word(),
        f.message(),
        f.subject(),
        f.place().map(PlaceData::of),
        f.others().stream().map(PlaceData::of).toList(),
        f.notes(),
        f.help(),
        f.allowed(),
        f.mends().stream().map(MendData::of).toList());
  }
}
