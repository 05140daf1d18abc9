package slipday.descent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.garden.Garden;
import slipday.garden.record.Subject;
import slipday.genetics.Purdy;

/** Descent as it is written in a record, against printed figures. */
class LineageTest {
  private static final double HAIR = 1e-12;

  private static final String OPEN_FOUNDERS = "";
  private static final String INBRED_FOUNDERS = "  generation inbred\n";

  private static Lineage lineage(Garden garden, String subject) {
    return Lineage.of(garden, find(garden, subject), Optional.empty());
  }

  private static Subject find(Garden garden, String subject) {
    return new Subjects(garden).find(subject).orElseThrow();
  }

  private static double inbreeding(Garden garden, String subject) {
    return lineage(garden, subject).inbreeding();
  }

  /** Twice the coancestry, as the tables print it. */
  private static double relationship(Garden garden, String one, String other) {
    return 2
        * Lineage.of(garden, find(garden, one), Optional.of(find(garden, other)))
            .other()
            .orElseThrow()
            .coancestry();
  }

  @Test
  void kindsThatDoNotCrossHaveNoSeedTogether() {
    Garden garden =
        Pedigrees.garden(
            "lot p-1\n"
                + "  of p\n"
                + "lot q-1\n"
                + "  of q\n"
                + "line corn\n"
                + "  is a sweet-corn\n"
                + "lot corn-1\n"
                + "  of corn\n",
            List.of());
    assertThat(together(garden, "p-1", "q-1").cross()).isTrue();
    assertThat(together(garden, "p-1", "corn-1").cross()).isFalse();
  }

  private static Lineage.Other together(Garden garden, String one, String other) {
    return Lineage.of(garden, find(garden, one), Optional.of(find(garden, other)))
        .other()
        .orElseThrow();
  }

  @Test
  void aFlowerThatDroppedHasNoSeed() {
    Garden garden =
        Pedigrees.garden(
            OPEN_FOUNDERS,
            "2020-02-01 selfed p-0 plant 1, tag 3",
            "2020-02-08 failed 3",
            "2020-02-01 selfed p-0 plant 1, tag 4",
            "2020-02-08 took 4",
            "2020-05-01 saved 4, 40 seeds, into four");
    assertThat(lineage(garden, "3 of 2020").assumed())
        .contains("`3` failed on 2020-02-08: there is no seed of it.");
    assertThat(lineage(garden, "4 of 2020").assumed()).noneMatch(s -> s.contains("failed"));
  }

  /** R. A. Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, table 2.1. */
  @Test
  void sixOfAPrintedPedigree() {
    Garden garden =
        Pedigrees.garden(
            OPEN_FOUNDERS,
            "2020-02-01 crossed p-0 plant 1 by q-0 plant 1, tag 3",
            "2020-04-01 saved 3, 50 seeds, into three, of mix",
            "2020-04-01 saved p-0 plant 1, 50 seeds, into four",
            "2020-06-01 crossed four plant 1 by three plant 1, tag 5",
            "2020-08-01 saved 5, 50 seeds, into five, of mix",
            "2020-10-01 crossed five plant 1 by q-0 plant 1, tag 6",
            "2020-12-01 saved 6, 50 seeds, into six, of mix");
    assertThat(inbreeding(garden, "five")).isCloseTo(0.125, within(HAIR));
    assertThat(inbreeding(garden, "six")).isCloseTo(0.125, within(HAIR));
    assertThat(relationship(garden, "three plant 1 of 2020", "six"))
        .isCloseTo(0.5625, within(HAIR));
    assertThat(relationship(garden, "four plant 1 of 2020", "five plant 1 of 2020"))
        .isCloseTo(0.625, within(HAIR));
    assertThat(relationship(garden, "five plant 1 of 2020", "six")).isCloseTo(0.6875, within(HAIR));
    assertThat(lineage(garden, "six").assumed())
        .anyMatch(s -> s.startsWith("The pollen parent of `four` is unknown"));
  }

  /**
   * The same crosses from founders of F = 0 and of F = 1. The figures were worked out by the
   * tabular method, by the rules for the inverse and by gene dropping; for inbred parents they are
   * the selfing and backcross series of Falconer and Mackay 1996, table 5.1 (from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "false, 0, 0.5, 0.75, 0.25, 0.625, 0.25, 0.75, 0.5",
    "true, 0, 0.5, 0.75, 0.5, 0.75, 0.5, 1, 1"
  })
  void selfingAndBackcrossing(
      boolean inbred,
      double f1,
      double f2,
      double f3,
      double bc1,
      double bc1s1,
      double sibs,
      double bc1WithF1,
      double twoF1) {
    Garden garden =
        Pedigrees.garden(
            inbred ? INBRED_FOUNDERS : OPEN_FOUNDERS,
            "2020-01-01 crossed p-0 plant 1 by q-0 plant 1, tag A",
            "2020-03-01 saved A, 50 seeds, into f1, of mix",
            "2020-05-01 selfed f1 plant 1, tag B",
            "2020-05-01 backcrossed f1 plant 1 by p-0 plant 1, tag C",
            "2020-05-01 sibbed f1 plant 1 by plant 2, tag D",
            "2020-07-01 saved B, 50 seeds, into f2",
            "2020-07-01 saved C, 50 seeds, into bc1, of mix",
            "2020-07-01 saved D, 50 seeds, into sibs",
            "2020-09-01 selfed f2 plant 1, tag E",
            "2020-09-01 selfed bc1 plant 1, tag F",
            "2020-11-01 saved E, 50 seeds, into f3",
            "2020-11-01 saved F, 50 seeds, into bc1s1");
    assertThat(inbreeding(garden, "f1")).isCloseTo(f1, within(HAIR));
    assertThat(inbreeding(garden, "f2")).isCloseTo(f2, within(HAIR));
    assertThat(inbreeding(garden, "f3")).isCloseTo(f3, within(HAIR));
    assertThat(inbreeding(garden, "bc1")).isCloseTo(bc1, within(HAIR));
    assertThat(inbreeding(garden, "bc1s1")).isCloseTo(bc1s1, within(HAIR));
    assertThat(inbreeding(garden, "sibs")).isCloseTo(sibs, within(HAIR));
    assertThat(relationship(garden, "bc1", "f1 plant 1 of 2020"))
        .isCloseTo(bc1WithF1, within(HAIR));
    assertThat(relationship(garden, "f1 plant 1 of 2020", "f1 plant 2 of 2020"))
        .isCloseTo(twoF1, within(HAIR));
    assertThat(relationship(garden, "f2", "f2 plant 1 of 2020")).isCloseTo(1, within(HAIR));
    assertThat(relationship(garden, "f2 plant 1 of 2020", "f2 plant 1 of 2020"))
        .isCloseTo(1.5, within(HAIR));
    assertThat(lineage(garden, "bc1s1").notation().map(Purdy::print)).contains("p/q//p");
  }

  /** Full sibs and half sibs, Falconer and Mackay 1996, table 5.1 (from memory). */
  @Test
  void sibMatings() {
    Garden garden =
        Pedigrees.garden(
            OPEN_FOUNDERS,
            "2020-07-01 crossed p-0 plant 1 by q-0 plant 1, tag A",
            "2020-07-01 crossed p-0 plant 1 by q-0 plant 2, tag B",
            "2020-09-01 saved A, 50 seeds, into g0, of mix",
            "2020-09-01 saved B, 50 seeds, into h0, of mix",
            "2021-07-01 sibbed g0 plant 1 by plant 2, tag A",
            "2021-07-01 crossed g0 plant 1 by h0 plant 1, tag B",
            "2021-09-01 saved A, 50 seeds, into g1",
            "2021-09-01 saved B, 50 seeds, into h1",
            "2022-07-01 sibbed g1 plant 1 by plant 2, tag A",
            "2022-09-01 saved A, 50 seeds, into g2",
            "2023-07-01 sibbed g2 plant 1 by plant 2, tag A",
            "2023-09-01 saved A, 50 seeds, into g3",
            "2024-07-01 sibbed g3, tag A",
            "2024-09-01 saved A, 50 seeds, into g4");
    assertThat(List.of("g0", "g1", "g2", "g3", "g4").stream().map(g -> inbreeding(garden, g)))
        .containsExactly(0.0, 0.25, 0.375, 0.5, 0.59375);
    assertThat(inbreeding(garden, "h1")).isCloseTo(0.125, within(HAIR));
    assertThat(lineage(garden, "g4").assumed())
        .contains(
            "The record names no one plant as parent of `A` of 2024; it is taken as a plant not"
                + " used elsewhere.");
    assertThat(lineage(garden, "g4").ancestors().get(0).name()).isEqualTo("g4");
  }

  /** One inbred line is one genotype over the years: F of backcrosses to it is 0, 1/2, 3/4. */
  @Test
  void backcrossesOverTheYears() {
    Garden garden =
        Pedigrees.garden(
            INBRED_FOUNDERS,
            "2020-07-01 crossed q-0 plant 1 by p-0 plant 1, tag A",
            "2020-09-01 saved A, 50 seeds, into f1, of mix",
            "2021-07-01 backcrossed f1 plant 1 by p-0 plant 4, tag A",
            "2021-09-01 saved A, 50 seeds, into bc1, of mix",
            "2022-07-01 backcrossed bc1 plant 1 by p-0 plant 2, tag A",
            "2022-09-01 saved A, 50 seeds, into bc2, of mix");
    assertThat(inbreeding(garden, "bc1")).isCloseTo(0.5, within(HAIR));
    assertThat(inbreeding(garden, "bc2")).isCloseTo(0.75, within(HAIR));
    Lineage lineage = lineage(garden, "bc2");
    assertThat(lineage.notation().map(Purdy::print)).contains("q/3*p");
    assertThat(lineage.subject().generation()).contains("BC2F1, recurrent pollen parent");
    assertThat(lineage.heterozygosity()).isCloseTo(0.25, within(HAIR));
  }

  /** Falconer and Mackay 1996, chapter 5 (from memory), for labels without a pedigree. */
  @ParameterizedTest
  @CsvSource({
    "F4, 0.875, 0.875, mix-1/mix-2",
    "BC1F2, 0.75, 0.75, mix-1/2*mix-2",
    "S2, 0.75, 0.75, other",
    "inbred, 1, 1, other",
    "OP3, 0, 0, other"
  })
  void labelsWithoutAPedigree(String label, double inbreeding, double sibs, String cross) {
    String line =
        "line other\n  is a butternut\n"
            + (cross.equals("other") ? "" : "  began 2020, from mix-1 by mix-2\n")
            + "line mix-1\n  is a butternut\nline mix-2\n  is a butternut\n";
    String lot = "lot old\n  of other\n  generation " + label + "\n";
    Lineage lineage = lineage(Pedigrees.garden(line + lot, List.of()), "old");
    assertThat(lineage.inbreeding()).isCloseTo(inbreeding, within(HAIR));
    assertThat(lineage.sibs().orElseThrow()).isCloseTo(sibs, within(HAIR));
    assertThat(lineage.notation().map(Purdy::print)).contains(cross);
    assertThat(lineage.assumed()).isNotEmpty();
  }

  @Test
  void aBulkIsTheMeanOfItsFruitsBySeed() {
    Garden garden =
        Pedigrees.garden(
            OPEN_FOUNDERS,
            "2020-07-01 selfed p-0 plant 1, tag A",
            "2020-07-01 sibbed p-0 plant 1 by plant 2, tag B",
            "2020-09-01 saved A, 75 seeds, into next",
            "2020-09-01 saved B, 25 seeds, into next");
    Lineage lineage = lineage(garden, "next");
    assertThat(lineage.inbreeding()).isCloseTo(0.75 * 0.5, within(HAIR));
    assertThat(lineage.notation().map(Purdy::print)).contains("p");
    assertThat(lineage.assumed())
        .contains("`next` is of several fruits; its figures are means over them by their seed.");
  }

  @Test
  void aCrossThatProvedASelfIsOne() {
    Garden garden =
        Pedigrees.garden(
            OPEN_FOUNDERS,
            "2020-07-01 crossed p-0 plant 1 by q-0 plant 2, tag A",
            "2020-09-01 saved A, 75 seeds, into next, of mix",
            "2021-08-01 grown out next, a self");
    assertThat(inbreeding(garden, "next")).isCloseTo(0.5, within(HAIR));
  }

  @Test
  void manyGenerationsAreNoTrouble() {
    List<String> record = new java.util.ArrayList<>();
    record.add("1700-07-01 selfed p-0 plant 1, tag A");
    record.add("1700-09-01 saved A, 50 seeds, into g1");
    for (int i = 1; i < 300; i++) {
      record.add((1700 + i) + "-07-01 sibbed g" + i + " plant 1 by plant 2, tag A");
      record.add((1700 + i) + "-09-01 saved A, 50 seeds, into g" + (i + 1));
    }
    Garden garden = Pedigrees.garden(OPEN_FOUNDERS, record.toArray(new String[0]));
    assertThat(inbreeding(garden, "g300")).isCloseTo(1, within(1e-9));
  }

  @Test
  void namesAreLotsTagsAndPlants() {
    Garden garden =
        Pedigrees.garden(
            OPEN_FOUNDERS,
            "2020-07-01 selfed p-0 plant 1, tag 3A",
            "2021-07-01 selfed q-0 plant 1, tag 3A");
    assertThat(lineage(garden, "3a").subject().name()).isEqualTo("seed of 3A of 2021");
    assertThat(lineage(garden, "3A of 2020").subject().line()).contains("p");
    assertThat(new Subjects(garden).find("3A of 2019")).isEmpty();
    assertThat(new Subjects(garden).find("p-0 plant 0 of 2020")).isEmpty();
    assertThat(new Subjects(garden).help("p-1")).isEqualTo("Did you mean `p-0`?");
  }

  /** Crossed with a parent of its own cross it is a backcross, whatever the record calls it. */
  @Test
  void aCrossWithItsParentIsABackcross() {
    String crossed = "2021-07-01 crossed f1 plant 1 by %s plant 4, tag A";
    List<String> record =
        List.of(
            "2020-06-29 emasculated p-0 plant 1",
            "2020-07-01 crossed p-0 plant 1 by q-0 plant 1, tag A",
            "2020-09-01 saved A, 50 seeds, into f1, of mix",
            "2021-09-01 saved A of 2021, 50 seeds, into next, of mix");
    for (String with : List.of("p-0", "q-0")) {
      List<String> all = new java.util.ArrayList<>(record);
      all.add(3, String.format(crossed, with));
      Garden garden = Pedigrees.garden(INBRED_FOUNDERS, all.toArray(String[]::new));
      assertThat(lineage(garden, "next").subject().generation())
          .contains("BC1F1, recurrent pollen parent");
    }
  }

  @Test
  void plantsOfOneFounderLotAreSaidToBeTakenAsUnrelated() {
    Garden garden =
        Pedigrees.garden(
            OPEN_FOUNDERS,
            "2020-07-01 sibbed p-0 plant 1 by plant 2, tag A",
            "2020-09-01 saved A, 50 seeds, into p-1",
            "2020-07-02 selfed p-0 plant 3, tag B",
            "2020-09-02 saved B, 50 seeds, into p-2");
    String sentence = "Founders are taken as not related to one another: plants of `p-0`.";
    assertThat(lineage(garden, "p-1").assumed()).contains(sentence);
    assertThat(lineage(garden, "p-2").assumed()).doesNotContain(sentence);
  }
}
