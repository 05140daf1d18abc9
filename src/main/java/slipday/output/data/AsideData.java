package slipday.output.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.garden.record.Asides;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Subject;

/**
 * A note or a photo out of the record.
 *
 * @param about the fruit, plant, planting or lot that it is of
 * @param text a note's words; null for a photo
 * @param photo a photo's file as written; null for a note
 */
public record AsideData(
    LocalDate date, String about, Optional<String> text, Optional<String> photo, PlaceData place) {
  static List<AsideData> of(GardenRecord record, Subject subject) {
    return of(new Asides(record).of(subject));
  }

  static List<AsideData> of(List<Asides.Aside> asides) {
    return asides.stream()
        .map(
            a ->
                new AsideData(a.date(), a.about(), a.text(), a.photo(), PlaceData.of(a.span(), "")))
        .toList();
  }

  /** As a line for people, with where it stands. */
  public String words() {
    return date
        + " "
        + about
        + ": "
        + text.orElseGet(() -> "photo " + photo.orElse(""))
        + " ("
        + place.file()
        + ":"
        + place.line()
        + ")";
  }
}
