package slipday.nextseason;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.NextPlan;
import slipday.app.Pipeline;
import slipday.choice.Chooser;
import slipday.choice.Chosen;
import slipday.choice.Wish;
import slipday.garden.Garden;
import slipday.garden.Line;

class NextSeasonTest {
  private static final Path FOLDER = Path.of("/garden");
  private static final LocalDate TODAY = LocalDate.of(2026, 12, 31);

  private static final String HEAD =
      """
      season 2026
      site home
        place 44.21 N, 72.58 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed east
        size 8 m x 2 m
      bed west
        size 8 m x 2 m
      line ember
        is a muskmelon
        purpose to keep
      lot ember-2024
        of ember
        seeds 60
        harvested 2024
        keep back 12 seeds
      line brine
        is a sweet-corn
        purpose to keep
      lot brine-2025
        of brine
        seeds 300
        harvested 2025
      """;

  private static final String EMBER =
      """
      grow ember-2024
        in east
        plants 6, 60 cm apart
        plant out on 5 June
        flowers cover the chosen
        pollinate sib by hand, for 3 fruits
        seed saved
      """;

  private static final String BRINE =
      """
      grow brine-2025
        in west
        plants 20, 30 cm apart
        sow on 20 May
        seed not saved
      """;

  private static NextPlan.Draft next(String plan) {
    return next(Map.of("plan.season", plan), "plan.season", "next.season");
  }

  private static NextPlan.Draft next(Map<String, String> files, String plan, String next) {
    Map<Path, String> overlays = new TreeMap<>();
    files.forEach((name, text) -> overlays.put(FOLDER.resolve(name), text));
    FileTexts texts = FileTexts.withOverlays(overlays);
    Checked checked = new Pipeline(texts, true, TODAY).check(FOLDER.resolve(plan), plan);
    assertThat(checked.season()).as(checked.findings().toString()).isPresent();
    return NextPlan.draft(
        texts,
        checked,
        new NextPlan.Place(FOLDER.resolve(plan), plan),
        new NextPlan.Place(FOLDER.resolve(next), next),
        true,
        TODAY);
  }

  /** The next plan has other beds, cages and neighbours. */
  @Test
  void whatKeptPollenOutIsToBeWrittenDown() {
    String open =
        EMBER
            .replace("cover the chosen", "caged")
            .replace("  pollinate sib by hand, for 3 fruits\n", "");
    String saved = "2026-09-01 saved ember-2024, 90 seeds, into ember-2026";
    String text = next(HEAD + open + saved + "\n").text();
    assertThat(text.replaceAll("\n# >", ""))
        .contains(
            "To decide: open flowers of `ember-2026` met no other pollen, since it stood in a cage"
                + " of its own. Only the plan of that season tells so: end its `saved` line in the"
                + " record with `, generation OP1, isolated`, or its pollen parent counts as"
                + " unknown.");
    assertThat(next(HEAD + open + saved + ", generation OP1, isolated\n").text())
        .doesNotContain("met no other pollen");
  }

  @Test
  void familiesChangePlaces() {
    String text = next(HEAD + EMBER + BRINE).text();
    assertThat(text).contains("grow ember-2024\n  in             west\n");
    assertThat(text).contains("grow brine-2025\n  in             east\n");
    assertThat(text).contains("  grew           muskmelon in 2026\n");
    assertThat(text).contains("  grew           sweet-corn in 2026\n");
    assertThat(text).doesNotContain("To decide: The family");
  }

  /** The very plants that the command chooses, each with its share. */
  @Test
  void familiesAreThoseThatAreChosen() {
    Path plan = Path.of("plans", "tern-hollow", "recorded.season").toAbsolutePath();
    Checked checked =
        new Pipeline(FileTexts.withOverlays(Map.of()), true, TODAY).check(plan, "recorded.season");
    Garden garden = checked.garden().orElseThrow();
    Line line =
        garden.lines().stream()
            .filter(l -> l.name().equals("tern-amber"))
            .findFirst()
            .orElseThrow();
    Chosen chosen = Chooser.choose(garden, line, Wish.none()).value().orElseThrow();
    List<String> families = new ArrayList<>();
    for (NextSeason.Sown sown : NextSeason.of(garden).plantings()) {
      if (sown.role() == NextSeason.Role.FAMILY) {
        families.add(sown.name() + " " + sown.plants());
        assertThat(sown.why()).anyMatch(w -> w.contains("`slipday choose` gives"));
      }
    }
    assertThat(families)
        .containsExactlyElementsOf(
            chosen.parts().stream()
                .map(p -> p.fruit().savedInto().get(0) + " " + p.plants())
                .toList())
        .hasSizeGreaterThan(2);
    assertThat(chosen.parts().get(0).plants()).isGreaterThan(chosen.parts().get(4).plants());
  }

  @Test
  void aMovedPlantingIsRotatedFromWhereItStoodLast() {
    String text = next(HEAD + EMBER + "2026-06-12 moved ember-2024, to west\n").text();
    assertThat(text).contains("  grew           muskmelon in 2026\n");
    assertThat(text.split("grew +muskmelon in 2026", -1)).hasSize(2);
    assertThat(text).contains("grow ember-2024\n  in             east\n");
    assertThat(text).contains("Moved on from west.");
  }

  @Test
  void aMovedPlantTakesItsFamilyToAnotherBed() {
    String text = next(HEAD + EMBER + "2026-06-12 moved ember-2024 plant 2, to west\n").text();
    assertThat(text.split("grew +muskmelon in 2026", -1)).hasSize(3);
    assertThat(text).contains("grow ember-2024\n  in             east\n");
  }

  @Test
  void whatCanNotMoveStaysAndSaysSo() {
    String small = HEAD.replaceFirst("bed west\n  size 8 m x 2 m", "bed west\n  size 1 m x 1 m");
    NextPlan.Draft draft = next(small + EMBER);
    assertThat(draft.text()).contains("grow ember-2024\n  in             east\n");
    assertThat(draft.open())
        .extracting(f -> f.rule())
        .contains("same-family-again")
        .doesNotContain("bed-overfull");
    assertThat(draft.text()).contains("# > To decide: The family `cucurbits` comes back");
  }

  /** Where it would come back as soon, it stays. */
  @Test
  void nothingMovesWithoutGain() {
    String years = HEAD.replaceFirst("bed west\n", "bed west\n  grew muskmelon in 2026\n");
    assertThat(next(years + EMBER).text()).contains("grow ember-2024\n  in             east\n");
  }

  @Test
  void daysOfThisSeasonAreNotFixedForTheNext() {
    assertThat(next(HEAD + EMBER + BRINE).text()).doesNotContain("plant out on", "sow on");
  }

  /** 60 less 10 sown are 50, of which 12 are kept back. */
  @Test
  void seedIsCountedAndSomeKeptBack() {
    NextPlan.Draft draft = next(HEAD + EMBER + "2026-05-20 sowed ember-2024, 10 seeds\n");
    assertThat(draft.text()).contains("  seeds          50\n");
    NextSeason.Sown sown = draft.next().plantings().get(0);
    assertThat(sown.plants()).isEqualTo(6);
    assertThat(sown.remnant()).contains(50 - sown.toSow());
    NextPlan.Draft little = next(HEAD + EMBER + "2026-05-20 sowed ember-2024, 42 seeds\n");
    NextSeason.Sown fewer = little.next().plantings().get(0);
    assertThat(fewer.plants()).isBetween(1, 5);
    assertThat(fewer.remnant().orElseThrow()).isGreaterThanOrEqualTo(12);
    NextPlan.Draft none = next(HEAD + EMBER + "2026-05-20 sowed ember-2024, 50 seeds\n");
    assertThat(none.next().plantings()).isEmpty();
    assertThat(none.text()).contains("# > ember-2024: no seed of it can be spared.");
  }

  /** What the next season's record already took is taken off by its own plan, not twice. */
  @Test
  void seedOfTheNextSeasonIsNotTakenOffTwice() {
    NextPlan.Draft draft = next(HEAD + EMBER + "2027-02-10 tested ember-2024, 9 of 10 seeds\n");
    assertThat(draft.text()).contains("  seeds          60\n");
  }

  @Test
  void linesGoOnFromTheSeedThatWasSaved() {
    String record =
        """
        2026-07-08 sibbed ember-2024 plant 1 by plant 2, tag 1A
        2026-08-15 picked 1A, full slip
        2026-08-18 saved 1A, 200 seeds, into ember-2026
        """;
    NextPlan.Draft draft = next(HEAD + EMBER + record);
    assertThat(draft.next().plantings()).extracting(NextSeason.Sown::name).contains("ember-2026");
    assertThat(draft.text())
        .contains("grow ember-2026\n", "# --- Recorded in plan.season")
        .contains("2026-08-18 saved 1A, 200 seeds, into ember-2026\n")
        .doesNotContain("grow ember-2024");
  }

  @Test
  void aDroppedLineIsLeftOutUntilItIsSownAgain() {
    String dropped = "2026-10-01 dropped ember, \"no taste\"\n";
    NextPlan.Draft draft = next(HEAD + EMBER + BRINE + dropped);
    assertThat(draft.text())
        .doesNotContain("grow ember-2024")
        .contains("# > ember-2024: the line was dropped on 2026-10-01: no taste.");
    String earlier = dropped.replace("2026", "2025");
    assertThat(next(HEAD + EMBER + earlier).text()).contains("grow ember-2024");
    assertThat(next(HEAD + BRINE + earlier).text()).doesNotContain("ember: 60 seeds");
    assertThat(next(HEAD + BRINE).text()).contains("# > ember: 60 seeds of ember-2024 rest");
  }

  @Test
  void aCrossThatWasNotMadeIsPlannedAgain() {
    String cross =
        """
        line slate
          is a muskmelon
          purpose on trial
        lot slate-2025
          of slate
          seeds 90
          harvested 2025
        grow slate-2025
          in west
          plants 3, 60 cm apart
          bloom apart from ember-2024
        cross ember-slate
          seed parent ember-2024
          pollen parent slate-2025
          fruits 2
        """;
    String record =
        """
        2026-07-08 sibbed ember-2024 plant 1 by plant 2, tag 1A
        2026-08-15 picked 1A, full slip
        2026-08-18 saved 1A, 200 seeds, into ember-2026
        """;
    String text = next(HEAD + EMBER + cross + record).text();
    assertThat(text)
        .contains(
            "cross ember-slate\n"
                + "  seed parent    ember-2026\n"
                + "  pollen parent  slate-2025\n"
                + "  fruits         2\n")
        .contains("  bloom apart from ember-2026\n");
    String made =
        """
        line emberslate
          is a muskmelon
          began 2026, from ember by slate
        2026-07-10 emasculated ember-2024 plant 3
        2026-07-11 crossed ember-2024 plant 3 by slate-2025 plant 1, tag 3A
        2026-08-18 picked 3A, full slip
        2026-08-20 saved 3A, 150 seeds, into es-f1, of emberslate
        """;
    String grown = next(HEAD + EMBER + cross + record + made).text();
    assertThat(grown).doesNotContain("cross ember-slate").contains("grow es-f1\n");
  }

  @Test
  void theGardenersWordsGoOnAndTheProgramsDoNot() {
    String remarked =
        HEAD.replace("bed east\n", "# by the water\n# > said by a program\nbed east\n") + EMBER;
    String text = next(remarked).text();
    assertThat(text).contains("# by the water\nbed east\n").doesNotContain("said by a program");
  }

  /** Seen from another folder, the record and the weather lie elsewhere. */
  @Test
  void pathsAreSeenFromTheNewFile() {
    String plan =
        HEAD.replace("season 2026\n", "season 2026\ninclude \"record\"\ninclude \"own.season\"\n")
            .replaceAll("(?m)^  (last|first) frost.*\n", "")
            .replace("  time zone", "  weather file \"w.csv\"\n  time zone");
    StringBuilder weather = new StringBuilder("date,low C,high C\n");
    LocalDate.of(2010, 1, 1)
        .datesUntil(LocalDate.of(2025, 1, 1))
        .forEach(
            d -> {
              long warm = Math.round(-20 * Math.cos(2 * Math.PI * d.getDayOfYear() / 365.0));
              weather.append(d).append(',').append(warm - 3).append(',').append(warm + 8);
              weather.append('\n');
            });
    Map<String, String> files =
        Map.of(
            "a/plan.season",
            plan + EMBER,
            "a/own.season",
            "trait dents\n  scale 0 to 5\n",
            "a/w.csv",
            weather.toString(),
            "a/record/2026.season",
            "2026-05-20 sowed ember-2024, 10 seeds\n");
    String text = next(files, "a/plan.season", "b/next.season").text();
    assertThat(text)
        .contains("include \"../a/record\"\n", "weather        file \"../a/w.csv\"\n")
        .contains("trait dents\n")
        .doesNotContain("own.season");
  }

  @Test
  void aSouthernSeasonIsFollowedByOne() {
    String south =
        HEAD.replace("season 2026", "season 2026-27")
            .replace("44.21 N", "44.21 S")
            .replace("America/New_York", "Pacific/Auckland")
            .replace("18 May, 1 in 10 after 30 May", "18 October, 1 in 10 after 1 November")
            .replace(
                "27 September, 1 in 10 before 14 September", "20 April, 1 in 10 before 1 April");
    String text = next(south + EMBER.replace("5 June", "20 November")).text();
    assertThat(text).contains("season 2027-28\n").contains("grew           muskmelon in 2026\n");
  }
}
