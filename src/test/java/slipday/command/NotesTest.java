package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was noted or photographed is told wherever its subject is. */
class NotesTest {
  private static final String PLAN =
      """
      season 2026
      site home
        place          45 N, 73 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September
      bed south
        size           12 m x 2 m
      line ropewalk
        is a           muskmelon
      lot ropewalk-2024
        of             ropewalk
        seeds          60
        harvested      2024
      grow ropewalk-2024 as rope
        in             south
        plants         6
        flowers        cover the chosen
        pollinate      self by hand, for 2 fruits
        seed           saved
      goal ropewalk
        raise          sweetness to 13 brix, matters 5

      2026-05-12 sowed rope, 12 seeds
      2026-06-05 planted out rope, 6 plants
      2026-07-08 selfed rope plant 3, tag 3A
      2026-07-09 selfed rope plant 4, tag 4A
      2026-07-15 took 3A
      2026-07-16 took 4A
      2026-07-20 note rope, "mildew from the west end"
      2026-07-21 note rope plant 3, "sets early"
      2026-07-22 note south, "drains badly"
      2026-07-23 note ropewalk, "asked for by the allotments"
      2026-07-24 note ropewalk-2024, "from the tin"
      2026-07-25 note "hail in the evening"
      2026-08-10 note 3A, "sunburnt"
      2026-08-11 photo 3A, file "photos/3A.jpg"
      """;

  private static final String LATER =
      """
      2026-08-22 picked 4A, full slip, 1.62 kg, 12.4 brix
      2026-08-23 picked 3A, full slip, 1.5 kg, 11.4 brix
      2026-08-24 saved 3A, 210 seeds, into rope-3A
      """;

  @TempDir Path folder;

  @BeforeEach
  void files() throws IOException {
    Files.writeString(folder.resolve("growing.season"), PLAN);
    Files.writeString(folder.resolve("picked.season"), PLAN + LATER);
    Files.createDirectory(folder.resolve("photos"));
    Files.writeString(folder.resolve("photos/3A.jpg"), "");
  }

  private String run(String... args) {
    Run run = Run.in(folder, args);
    assertThat(run.err()).isEmpty();
    return run.out();
  }

  private List<String> notes(String... subject) {
    List<String> words = new ArrayList<>(List.of("why", "growing.season"));
    words.addAll(List.of(subject));
    words.add("notes");
    return run(words.toArray(new String[0]))
        .lines()
        .filter(l -> l.contains("note ") || l.contains("photo "))
        .map(l -> l.replaceAll("^  - 2026-\\d\\d-\\d\\d | \\[.*", "").strip())
        .toList();
  }

  @Test
  void whyTellsThemOfTheirSubject() {
    assertThat(notes("3a"))
        .containsExactly("note 3A, \"sunburnt\"", "photo 3A, file \"photos/3A.jpg\"");
    assertThat(notes("rope", "plant", "3")).containsExactly("note rope plant 3, \"sets early\"");
    assertThat(notes("rope"))
        .containsExactly(
            "note rope, \"mildew from the west end\"", "note rope plant 3, \"sets early\"");
    assertThat(notes("south")).containsExactly("note south, \"drains badly\"");
    assertThat(notes("ropewalk")).containsExactly("note ropewalk, \"asked for by the allotments\"");
    assertThat(notes("ropewalk-2024")).containsExactly("note ropewalk-2024, \"from the tin\"");
    assertThat(notes("home")).containsExactly("note \"hail in the evening\"");
    assertThat(run("why", "growing.season", "3A")).contains("notes", "1 note, 1 photo", "ripe");
  }

  /** Of a picked fruit there is no date to ask after, but what was written of it. */
  @Test
  void whyTellsWhatBecameOfAFruit() {
    assertThat(run("why", "picked.season", "3A", "record").lines())
        .startsWith("3A, record: its seed is saved")
        .filteredOn(l -> l.startsWith("  - "))
        .extracting(l -> l.replaceAll(" *\\[.*", ""))
        .containsExactly(
            "  - 2026-07-08 selfed rope plant 3, tag 3A",
            "  - 2026-07-15 took 3A",
            "  - 2026-08-23 picked 3A, full slip, 1.5 kg, 11.4 brix",
            "  - 2026-08-24 saved 3A, 210 seeds, into rope-3A");
    assertThat(run("why", "growing.season", "4a", "record")).contains("4A, record: it took");
  }

  @Test
  void todayTellsWhatWasNotedOfARipeningFruit() {
    assertThat(run("today", "growing.season", "--date", "2026-08-25"))
        .containsPattern("- 3A, plant 3: 48 d[^\\n]*\\n(  [^\\n]*\\n)?  Noted: sunburnt\\n")
        .containsOnlyOnce("Noted");
  }

  @Test
  void candidatesTellThemOfThePlantAndItsFruits() {
    String text = run("candidates", "picked.season", "ropewalk");
    assertThat(text)
        .contains("noted: 2026-07-21 rope plant 3: sets early (picked.season:31)")
        .contains("noted: 2026-08-10 3A: sunburnt")
        .contains("noted: 2026-08-11 3A: photo photos/3A.jpg")
        .doesNotContain("mildew");
    assertThat(text.indexOf("noted")).isGreaterThan(text.indexOf("\nrope plant 3"));
  }

  @Test
  void lotsAndDescentTellThemOfTheSeed() {
    assertThat(run("lots", "picked.season", "rope-3A")).contains("2026-08-10 3A: sunburnt");
    assertThat(run("descent", "picked.season", "3A")).contains("2026-08-10 3A: sunburnt");
  }

  @Test
  void thePageTellsThemInItsReasons() {
    String page = run("report", "picked.season", "--date", "2026-08-30");
    assertThat(page).contains("sunburnt", "sets early", "mildew from the west end", "drains badly");
    assertThat(run("report", "growing.season", "--date", "2026-08-20")).contains("sunburnt");
  }
}
