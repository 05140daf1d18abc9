package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A folder that holds the records of several years, read by the plan of one of them. */
class SeveralYearsTest {
  /** The end of 2029. */
  private static final Map<String, String> LATER = Map.of("SOURCE_DATE_EPOCH", "1924000000");

  private static final String GARDEN =
      """
      include "record"
      site somewhere
        place %s, 72 W
        time zone America/New_York
        last frost 18 %s
        first frost 27 %s
      bed south
        size 20 m x 1.2 m
      line rope
        is a muskmelon
        purpose to keep
      lot rope-2023
        of rope
        seeds 60
        harvested 2023
      """;

  private static final String GROW =
      """
      grow rope-2025 as rope
        in south
        plants 6, 60 cm apart
        flowers cover the chosen
        pollinate sib by hand, for 4 fruits
        seed saved
      """;

  private static final List<String> RECORD =
      List.of(
          "2025-05-10 sowed rope-2023 as old-rope, 12 seeds",
          "2025-07-08 sibbed old-rope plant 2 by plant 3, tag 3A",
          "2025-07-09 sibbed old-rope plant 4 by plant 3, tag 4A",
          "2025-08-25 picked 3A, full slip",
          "2026-01-08 saved 3A of 2025, 80 seeds, into rope-2025",
          "2025-09-08 saved 4A, 20 seeds, into rope-2025",
          "2026-02-01 given away rope-2025, 10 seeds, to a neighbour",
          "2026-05-12 sowed rope-2025 as rope, 14 seeds",
          "2026-05-20 emerged rope, 9 seedlings",
          "2026-07-10 sibbed rope plant 1 by plant 2, tag 3A",
          "2026-07-11 sibbed rope plant 4 by plant 2, tag 4A",
          "2026-08-28 picked 3A, full slip",
          "2026-08-28 picked 4A, full slip",
          "2026-08-30 saved 3A, 150 seeds, into rope-2026",
          "2026-08-30 saved 4A, 90 seeds, into rope-2026",
          "2027-01-20 given away rope-2026, 40 seeds",
          "2027-02-20 note 3A of 2026, \"the best of two years\"");

  @TempDir Path folder;

  private void garden(String season, String place, String more, List<String> record)
      throws IOException {
    Files.writeString(
        folder.resolve("plan.season"),
        "season " + season + "\n" + GARDEN.formatted(place, spring(place), autumn(place)) + more);
    Files.createDirectories(folder.resolve("record"));
    for (int year = 2023; year < 2029; year++) {
      String start = year + "-";
      String lines =
          String.join("\n", record.stream().filter(l -> l.startsWith(start)).toList()) + "\n";
      Files.writeString(folder.resolve("record/" + year + ".season"), lines);
    }
  }

  private static String spring(String place) {
    return place.endsWith("N") ? "May" : "November";
  }

  private static String autumn(String place) {
    return place.endsWith("N") ? "September" : "March";
  }

  private Run run(String... args) {
    return Run.in(folder, new byte[0], LATER, false, args);
  }

  private JsonNode lot(String name) throws IOException {
    Run run = run("lots", "plan.season", "--format", "json");
    assertThat(run.err()).isEmpty();
    for (JsonNode lot : new ObjectMapper().readTree(run.out()).get("lots")) {
      if (lot.get("name").asText().equals(name)) {
        return lot;
      }
    }
    throw new AssertionError(name);
  }

  @Test
  void aLotIsFollowedFromFruitToPacketToBedToFruit() throws IOException {
    garden("2026", "44 N", GROW, RECORD);
    assertThat(run("check", "plan.season").out()).doesNotContain("error");
    assertThat(lot("rope-2025").get("seedsLeft").asInt()).isEqualTo(100 - 10 - 14);
    assertThat(lot("rope-2025").get("harvested").asInt()).isEqualTo(2025);
    assertThat(lot("rope-2026").get("seedsLeft").asInt()).isEqualTo(240 - 40);
    assertThat(run("descent", "plan.season", "rope-2026").out())
        .contains("rope plant 1", "old-rope plant 2 of 2025", "old-rope plant 4 of 2025");
    assertThat(run("descent", "plan.season", "3A", "of", "2025").out())
        .contains("Descent of seed of 3A of 2025");
  }

  @Test
  void theYearAfterReadsTheSameRecords() throws IOException {
    garden("2027", "44 N", GROW.replace("rope-2025", "rope-2026"), RECORD);
    assertThat(run("check", "plan.season").out()).doesNotContain("error");
    assertThat(lot("rope-2025").get("seedsLeft").asInt()).isEqualTo(100 - 10 - 14);
    assertThat(lot("rope-2026").get("seedsLeft").asInt()).isEqualTo(240 - 40);
  }

  @Test
  void whatOnlyAnOldPlanKnewIsAskedFor() throws IOException {
    List<String> record = new java.util.ArrayList<>(RECORD);
    record.replaceAll(l -> l.replace("sowed rope-2025 as rope", "sowed rope"));
    garden("2026", "44 N", GROW, record);
    assertThat(run("check", "plan.season").out())
        .contains("planting-known-here-only", "`2026-05-12 sowed rope-2025 as rope, 14 seeds`");
    garden("2027", "44 N", GROW.replace("rope-2025", "rope-2026"), record);
    assertThat(run("check", "plan.season").out())
        .contains("Nothing called `rope` grows in 2026.", "`sowed LOT as rope`");
  }

  @Test
  void aTagBelongsToItsSeason() throws IOException {
    List<String> record = new java.util.ArrayList<>(RECORD);
    record.add("2027-03-01 looked at 3A, sound");
    garden("2026", "44 N", GROW, record);
    assertThat(run("check", "plan.season").out())
        .contains("No fruit of 2027 carries the tag `3A`.", "Write `3A of 2026`.");
    record.add("2027-08-20 looked at 3A, sound");
    garden("2026", "44 N", GROW, record);
    assertThat(run("check", "plan.season").out())
        .contains("If the year of the line is wrong, write `2026-08-20`; if not, write");
  }

  @Test
  void inTheSouthASeasonCrossesTheNewYear() throws IOException {
    garden(
        "2026-27",
        "44 S",
        GROW,
        List.of(
            "2025-11-10 sowed rope-2023 as old-rope, 12 seeds",
            "2026-01-08 sibbed old-rope plant 2 by plant 3, tag 3A",
            "2026-03-25 picked 3A, full slip",
            "2026-08-08 saved 3A of 2025-26, 80 seeds, into rope-2025",
            "2026-11-12 sowed rope-2025 as rope, 14 seeds",
            "2027-01-10 sibbed rope plant 1 by plant 2, tag 3A",
            "2027-08-01 given away rope-2025, 6 seeds"));
    assertThat(run("check", "plan.season").out()).doesNotContain("error");
    assertThat(lot("rope-2025").get("seedsLeft").asInt()).isEqualTo(80 - 14 - 6);
    assertThat(run("descent", "plan.season", "3A", "of", "2025-26").out())
        .contains("old-rope plant 2 of 2025-26");
  }

  @Test
  void moreCannotBeSownThanWasSavedTheYearBefore() throws IOException {
    List<String> record = new java.util.ArrayList<>(RECORD);
    record.remove("2026-05-12 sowed rope-2025 as rope, 14 seeds");
    record.add("2026-05-12 sowed rope-2025 as rope, 91 seeds");
    garden("2026", "44 N", GROW, record);
    assertThat(run("check", "plan.season").out())
        .contains("`rope-2025` had 90 seeds left, and 91 were taken from it.");
  }

  /** The next tags that {@code slipday tags --check} gives hold, and a slip in one shows. */
  @Test
  void aSlipInACheckedTagShows() throws IOException {
    garden("2026", "44 N", GROW, RECORD.subList(0, 8));
    Run tags = run("tags", "plan.season", "--check", "--count", "4");
    List<String> free =
        List.of(tags.out().lines().skip(1).findFirst().orElseThrow().trim().split(" +"));
    // ISO/IEC 7064, mod 37,36: worked out by another program.
    assertThat(free).containsExactly("rope", "1AD", "1BB", "1C9", "1D7");
    List<String> record = new java.util.ArrayList<>(RECORD.subList(0, 8));
    for (String tag : List.of("1AD", "1BB", "1C9")) {
      record.add("2026-07-10 sibbed rope plant 1 by plant 2, tag " + tag);
    }
    garden("2026", "44 N", GROW, record);
    assertThat(run("check", "plan.season").out()).doesNotContain("tag-check-wrong");
    record.add("2026-07-11 sibbed rope plant 1 by plant 2, tag 1D8");
    garden("2026", "44 N", GROW, record);
    assertThat(run("check", "plan.season").out())
        .contains("tag-check-wrong", "`1D8`", "`1D7` would be right");
  }
}
