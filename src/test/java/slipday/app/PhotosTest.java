package slipday.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slipday.finding.Finding;
import slipday.output.Ink;
import slipday.output.LotsText;
import slipday.output.data.LotsData;
import slipday.season.Season;
import slipday.seed.SeedBox;

/** Notes and photos of the record: shown with the lot, and told of where the file is not there. */
class PhotosTest {
  private static final String PLAN =
      """
      season 2026
      include "record"
      site home
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      line ember
        is a muskmelon
      lot ember-2024
        of ember
        seeds 60
        harvested 2024
      lot brine-2024
        of ember
        seeds 60
        harvested 2024
      """;

  @TempDir Path folder;

  @BeforeEach
  void write() throws IOException {
    Files.createDirectories(folder.resolve("record/pictures"));
    Files.writeString(folder.resolve("plan.season"), PLAN);
    Files.writeString(
        folder.resolve("record/2026.season"),
        """
        2026-02-01 photo ember-2024, file "pictures/packet.jpg"
        2026-02-02 photo ember-2024, file "photos/seed.jpg"
        2026-02-03 note ember-2024, "smells of dust"
        2026-02-04 note brine-2024, "not of this lot"
        """);
  }

  private Checked check() {
    return new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2026, 12, 31))
        .check(folder.resolve("plan.season"), "plan.season");
  }

  private List<Finding> missing() {
    return check().findings().stream().filter(f -> f.rule().equals("photo-missing")).toList();
  }

  @Test
  void aPhotoIsLookedForBesideTheRecordAndBesideThePlan() throws IOException {
    assertThat(missing()).hasSize(2);
    assertThat(missing().get(1).message()).isEqualTo("There is no photo `photos/seed.jpg`.");
    Files.writeString(folder.resolve("record/pictures/packet.jpg"), "a picture");
    assertThat(missing()).hasSize(1);
    Files.createDirectories(folder.resolve("photos"));
    Files.writeString(folder.resolve("photos/seed.jpg"), "a picture");
    assertThat(missing()).isEmpty();
  }

  @Test
  void aLotIsShownWithWhatWasNotedOfIt() {
    Season season = check().season().orElseThrow();
    LotsData data =
        LotsData.of("plan.season", season, SeedBox.lots(season.garden(), OptionalInt.empty()));
    String ember = new LotsText(data, true, false, Ink.of(false)).text().split("\nember-2024\n")[1];
    assertThat(ember)
        .contains("2026-02-01 ember-2024: photo pictures/packet.jpg (record/2026.season:1)")
        .contains("2026-02-03 ember-2024: smells of dust (record/2026.season:3)")
        .doesNotContain("not of this lot");
  }
}
