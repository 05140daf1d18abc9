package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordCommandTest {
  /** 3 October 2026. */
  private static final Map<String, String> ENV = Map.of("SOURCE_DATE_EPOCH", "1822521600");

  private static final String PLAN =
      """
      season 2026
      include "record"
      site home
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed south
        size 8 m x 1.2 m
      line ember
        is a muskmelon
      lot ember-2024
        of ember
        generation F3
        seeds 40
        harvested 2024
      grow ember-2024
        in south
        plants 8, 60 cm apart
        start indoors, 3 weeks before planting out
        flowers cover the chosen
        pollinate self by hand, for 5 fruits
        seed saved
      """;

  @TempDir Path folder;

  @Test
  void linesAreCountedAsAnEditorCountsThem() throws IOException {
    Files.writeString(
        folder.resolve("p.csv"),
        "day,Tag,said\n\n2026-07-01,7Z,\"two\nlines\"\n2026-07-02,8Z,\n\n\n2026-07-03,9Z,\"x\ny\"");
    assertThat(record("--from", "p.csv", "--columns", "date=day,tag=Tag").err())
        .contains("p.csv, line 3: No fruit of 2026 carries the tag `7Z`.")
        .contains("p.csv, line 5: No fruit of 2026 carries the tag `8Z`.")
        .contains("p.csv, line 8: No fruit of 2026 carries the tag `9Z`.");
  }

  @BeforeEach
  void thePlan() throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN);
  }

  private Run record(String... more) {
    List<String> args = new ArrayList<>(List.of("record", "plan.season"));
    args.addAll(List.of(more));
    return Run.in(folder, new byte[0], ENV, false, args.toArray(String[]::new));
  }

  private String written(int year) throws IOException {
    return Files.readString(folder.resolve("record/" + year + ".season"));
  }

  @Test
  void aLineGoesIntoTheFileOfItsYear() throws IOException {
    Run run = record("2026-07-08", "selfed", "ember-2024", "plant", "3,", "tag", "3A");
    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    assertThat(run.out()).isEqualTo("recorded 2026-07-08 selfed ember-2024 plant 3, tag 3A\n");
    assertThat(record("2026-07-15  took   3A").exit()).isZero();
    assertThat(record("2025-05-15 sowed ember-2024").exit()).isZero();
    assertThat(written(2026))
        .isEqualTo("2026-07-08 selfed ember-2024 plant 3, tag 3A\n2026-07-15 took 3A\n");
    assertThat(written(2025)).isEqualTo("2025-05-15 sowed ember-2024\n");
  }

  @Test
  void aLabelThatDoesNotFollowIsRefused() throws IOException {
    record("2026-07-08 selfed ember-2024 plant 3, tag 3A");
    Run wrong = record("2026-08-20 saved 3A, 90 seeds, into ember-next, generation F3");
    assertThat(wrong.exit()).isEqualTo(Exit.FINDINGS);
    assertThat(wrong.err())
        .contains("The label of lot `ember-next` says `F3`, and by the record its seed is `F4`.");
    assertThat(written(2026)).doesNotContain("saved");
    assertThat(record("2026-08-20 saved 3A, 90 seeds, into ember-next, generation F4").exit())
        .isZero();
  }

  /** So that it can be read beside next year's plan. */
  @Test
  void aSowingNamesItsLot() throws IOException {
    Files.writeString(
        folder.resolve("plan.season"),
        PLAN.replace("grow ember-2024", "grow ember-2024 as early-ember"));
    assertThat(record("2026-05-15", "sowed", "early-ember,", "12", "seeds").out())
        .isEqualTo("recorded 2026-05-15 sowed ember-2024 as early-ember, 12 seeds\n");
    assertThat(record("2026-05-15 sowed ember-2024 as early-ember, 12 seeds").out())
        .startsWith("known already");
    assertThat(record("2026-05-15 sowed early-ember, 12 seeds").out()).startsWith("known already");
  }

  @Test
  void whatIsRecordedIsNotRecordedAgain() throws IOException {
    record("2026-07-08 selfed ember-2024 plant 3, tag 3A");
    Run again = record("2026-07-08 selfed  ember-2024 plant 3 , tag 3A");
    assertThat(again.exit()).isZero();
    assertThat(again.out())
        .isEqualTo("known already: 2026-07-08 selfed ember-2024 plant 3, tag 3A\n");
    assertThat(written(2026)).isEqualTo("2026-07-08 selfed ember-2024 plant 3, tag 3A\n");
  }

  @Test
  void aMistakeWritesNothing() {
    for (String wrong :
        List.of(
            "2026-07-08 selfed ember-2025 plant 3, tag 3A",
            "2026-07-08 slefed ember-2024 plant 3, tag 3A",
            "2026-07-15 took 3A",
            "2027-12-24 note \"snow\"",
            "selfed ember-2024 plant 3, tag 3A",
            "2026-07-08 note \"a\"\n2026-07-08 note \"b\"",
            "bed north",
            "# nothing")) {
      Run run = record(wrong);
      assertThat(run.exit()).as(wrong).isEqualTo(1);
      assertThat(run.out()).as(wrong).isEmpty();
      assertThat(run.err()).as(wrong).endsWith("Nothing is recorded.\n");
    }
    assertThat(folder.resolve("record")).doesNotExist();
  }

  @Test
  void aMistakeIsToldInFull() {
    assertThat(record("2026-07-08 selfed ember-2025 plant 3, tag 3A").err())
        .isEqualTo(
            "Nothing called `ember-2025` grows in 2026. Did you mean `ember-2024`?\n"
                + "  2026-07-08 selfed ember-2025 plant 3, tag 3A\n"
                + "Nothing is recorded.\n");
    record("2026-07-08 selfed ember-2024 plant 3, tag 3A");
    assertThat(record("2026-07-01 picked 3A").err())
        .startsWith("`3A` was picked on 2026-07-01, and pollinated only on 2026-07-08.");
  }

  @Test
  void aFactThatBreaksARuleOfTheTradeIsStillOne() {
    assertThat(record("2026-03-08 planted out ember-2024, 8 plants").exit()).isZero();
  }

  @Test
  void aPlanThatDoesNotTakeInItsRecordIsTold() throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN.replace("include \"record\"\n", ""));
    Run run = record("2026-05-15 sowed ember-2024");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).contains("Add the line `include \"record\"` to the plan.");
    assertThat(folder.resolve("record")).doesNotExist();
  }

  private void table(String text) throws IOException {
    Files.writeString(folder.resolve("picked.csv"), text);
    for (int i = 1; i <= 3; i++) {
      record("2026-07-0" + i + " selfed ember-2024 plant " + i + ", tag " + i + "A");
    }
  }

  private static final String COLUMNS =
      "date=Day,tag=Fruit,weight=Gross kg,less=Tare kg,sweetness=Brix,flavour=Taste";

  @Test
  void aTableOfPickingsIsTakenOnce() throws IOException {
    table(
        "Day,Fruit,Gross kg,Tare kg,Brix,Taste,Remark\r\n"
            + "2026-08-19,1A,1.62,0.17,12.4,8 of 10,\"sweet, and so on\"\r\n"
            + "\r\n"
            + "2026-08-20,2A,2 lb 3 oz,,,,\r\n"
            + ",,, ,,,\r\n");
    Run run = record("--from", "picked.csv", "--columns", COLUMNS);
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .isEqualTo(
            "recorded 2026-08-19 picked 1A, 1.62 kg less 0.17 kg, 12.4 brix, flavour 8 of 10\n"
                + "recorded 2026-08-20 picked 2A, 2 lb 3 oz\n"
                + "2 rows recorded, 0 known already, 0 refused.\n");
    String once = written(2026);
    assertThat(record("--from", "picked.csv", "--columns", COLUMNS).out())
        .startsWith("known already: ")
        .endsWith("0 rows recorded, 2 known already, 0 refused.\n");
    assertThat(written(2026)).isEqualTo(once);
  }

  @Test
  void everyBadRowIsToldWithItsLineAndNothingTaken() throws IOException {
    table(
        "Day,Fruit,Gross kg,Tare kg,Brix,Taste\n"
            + "2026-08-19,1A,1.62,,,\n"
            + "19.8.2027,2A,1.5,,,\n"
            + "2026-08-19,9Z,1.5,,,\n"
            + "2026-06-19,3A,1.5,,,\n");
    String before = written(2026);
    Run run = record("--from", "picked.csv", "--columns", COLUMNS);
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("picked.csv, line 3: `19.8.2027` is not how a date is written here.")
        .contains("picked.csv, line 4: No fruit of 2026 carries the tag `9Z`.")
        .contains("picked.csv, line 5: `3A` was picked on 2026-06-19, and pollinated only on")
        .doesNotContain("line 2:");
    assertThat(written(2026)).isEqualTo(before);
    Run skipping = record("--from", "picked.csv", "--columns", COLUMNS, "--skip-bad");
    assertThat(skipping.exit()).isEqualTo(1);
    assertThat(skipping.out()).endsWith("1 row recorded, 0 known already, 3 refused.\n");
    assertThat(skipping.err().lines().filter(l -> l.startsWith("picked.csv")))
        .extracting(l -> l.substring(0, "picked.csv, line 3".length()))
        .containsExactly("picked.csv, line 3", "picked.csv, line 4", "picked.csv, line 5");
    assertThat(written(2026)).isEqualTo(before + "2026-08-19 picked 1A, 1.62 kg\n");
  }

  @Test
  void aTableOfPollinations() throws IOException {
    Files.writeString(folder.resolve("p.csv"), "day;x\n".replace(';', ',') + "2026-07-08,\n");
    assertThat(record("--from", "p.csv", "--columns", "date=day,tag=Tag").err())
        .contains("The table has no column `Tag`.");
    Files.writeString(
        folder.resolve("p.csv"), "day,planting,plant,tag\n2026-07-08,ember-2024,3,3A\n");
    Run run =
        record(
            "--from",
            "p.csv",
            "--verb",
            "selfed",
            "--columns",
            "date=day,planting=planting,plant=plant,tag=tag");
    assertThat(run.out()).startsWith("recorded 2026-07-08 selfed ember-2024 plant 3, tag 3A\n");
  }

  /** Writers at once lose nothing. */
  @Test
  void manyWritersLoseNothing() throws Exception {
    ExecutorService writers = Executors.newFixedThreadPool(4);
    try {
      List<Future<Run>> runs = new ArrayList<>();
      for (int i = 1; i <= 8; i++) {
        String line = "2026-07-08 selfed ember-2024 plant " + i + ", tag " + i + "A";
        runs.add(writers.submit(() -> record(line)));
      }
      for (Future<Run> run : runs) {
        assertThat(run.get().exit()).isZero();
      }
    } finally {
      writers.shutdown();
    }
    assertThat(written(2026).lines()).hasSize(8);
  }

  /** What can't be read may hold a season's work: nothing is written over it. */
  @Test
  void aRecordThatIsNotUtf8IsLeftAsItIs() throws IOException {
    Files.createDirectories(folder.resolve("record"));
    Path file = folder.resolve("record/2026.season");
    byte[] before = "2026-05-20 note \"caf\u00e9\"\n".getBytes(StandardCharsets.ISO_8859_1);
    Files.write(file, before);
    Run run = record("2026-06-02 sowed ember-2024, 12 seeds");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).contains("record/2026.season").endsWith("Nothing is recorded.\n");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  /** What a rule finds at the new line is told while the fruit is still at hand. */
  @Test
  void aLineThatARuleDoubtsIsRecordedAndDoubted() {
    Run run = record("2026-08-05 picked ember-2024 plant 1, full slip, 158 kg");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).startsWith("recorded ");
    assertThat(run.err()).startsWith("warning: ").contains("158 kg");
  }
}
