package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Pedigrees written as a plan and a record, and the figures {@code slipday descent --format json}
 * gives of them, against printed ones.
 */
class DescentFiguresTest {
  private static final double HAIR = 1e-12;
  private static final ObjectMapper JSON = new ObjectMapper();

  private static final String PLAN =
      """
      season 2027
      include "record"
      site somewhere
        place 44 N, 72 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      """;

  @TempDir Path folder;

  /** Lines and lots called {@code p1}, {@code p2} and so on, and what is recorded of them. */
  private void garden(int founders, String inbred, List<String> record) throws IOException {
    StringBuilder plan = new StringBuilder(PLAN);
    StringBuilder parents = new StringBuilder();
    for (int i = 1; i <= founders; i++) {
      plan.append("line p" + i + "\n  is a butternut\n  inbred " + inbred + "\n");
      parents.append("lot p" + i + "\n  of p" + i + "\n");
    }
    plan.append("line mix\n  is a butternut\n").append(parents);
    Files.writeString(folder.resolve("plan.season"), plan);
    Files.createDirectories(folder.resolve("record"));
    for (String line : record) {
      Files.writeString(
          folder.resolve("record/" + line.substring(0, 4) + ".season"),
          line + "\n",
          java.nio.file.StandardOpenOption.CREATE,
          java.nio.file.StandardOpenOption.APPEND);
    }
  }

  private JsonNode descent(String subject, String... more) throws IOException {
    List<String> args = new ArrayList<>(List.of("descent", "plan.season", "--format", "json"));
    args.addAll(List.of(subject.split(" ")));
    args.addAll(List.of(more));
    Run run = Run.in(folder, args.toArray(String[]::new));
    assertThat(run.err()).isEmpty();
    assertThat(run.exit()).isZero();
    return JSON.readTree(run.out());
  }

  private double inbreeding(String subject) throws IOException {
    return descent(subject).get("inbreeding").asDouble();
  }

  private double coancestry(String one, String other) throws IOException {
    return descent(one, "--with", other).get("other").get("coancestry").asDouble();
  }

  private String generation(String subject) throws IOException {
    JsonNode data = descent(subject);
    for (JsonNode ancestor : data.get("ancestors")) {
      if (ancestor.get("number").equals(data.get("subject"))) {
        return ancestor.get("generation").asText();
      }
    }
    throw new AssertionError(subject);
  }

  private static List<String> crossed(int year, String mother, String father, String lot) {
    return List.of(
        year + "-07-08 crossed " + mother + " by " + father + ", tag " + lot,
        year + "-09-20 saved " + lot + ", 50 seeds, into " + lot + ", of mix");
  }

  private static List<String> all(List<?>... parts) {
    List<String> lines = new ArrayList<>();
    for (List<?> part : parts) {
      part.forEach(line -> lines.add((String) line));
    }
    return lines;
  }

  /** Falconer and Mackay 1996, table 5.1 (from memory): 0, 1/2, 3/4, 7/8. */
  @Test
  void selfing() throws IOException {
    List<String> record = new ArrayList<>();
    String mother = "p1";
    for (int i = 1; i <= 4; i++) {
      record.add((2020 + i) + "-07-08 selfed " + mother + " plant 1, tag A");
      record.add((2020 + i) + "-09-20 saved A, 50 seeds, into s" + i);
      mother = "s" + i;
    }
    garden(1, "not at all", record);
    assertThat(inbreeding("p1")).isZero();
    assertThat(inbreeding("s1")).isEqualTo(0.5);
    assertThat(inbreeding("s2")).isEqualTo(0.75);
    assertThat(inbreeding("s3")).isEqualTo(0.875);
    assertThat(generation("s4")).isEqualTo("S4");
  }

  /** Falconer and Mackay 1996, table 5.1 (from memory). */
  @Test
  void fullSibs() throws IOException {
    List<String> record = new ArrayList<>(crossed(2020, "p1 plant 1", "p2 plant 1", "g0"));
    for (int i = 1; i <= 5; i++) {
      record.add((2020 + i) + "-07-08 sibbed g" + (i - 1) + " plant 1 by plant 2, tag A");
      record.add((2020 + i) + "-09-20 saved A, 50 seeds, into g" + i);
    }
    garden(2, "not at all", record);
    double[] printed = {0, 0.25, 0.375, 0.5, 0.59375, 0.671875};
    for (int i = 0; i < printed.length; i++) {
      assertThat(inbreeding("g" + i)).isCloseTo(printed[i], within(HAIR));
    }
  }

  /**
   * One father to several half-sisters of his and of one another: Falconer and Mackay 1996, table
   * 5.1 (from memory).
   */
  @Test
  void halfSibs() throws IOException {
    List<String> record = new ArrayList<>();
    int founders = 6;
    for (int generation = 1; generation <= 4; generation++) {
      int left = founders - generation;
      for (int i = 1; i <= left; i++) {
        String before = generation == 1 ? "p" : "h" + (generation - 1) + "-";
        record.addAll(
            crossed(
                2019 + generation,
                before + (i + 1) + " plant 1",
                before + "1 plant 1",
                "h" + generation + "-" + i));
      }
    }
    garden(founders, "not at all", record);
    double[] printed = {0, 0.125, 0.21875, 0.304688};
    for (int i = 0; i < printed.length; i++) {
      assertThat(inbreeding("h" + (i + 1) + "-1")).isCloseTo(printed[i], within(5e-7));
    }
  }

  /** Falconer and Mackay 1996, table 5.1 (from memory): 0, 1/2, 3/4 for a fully inbred parent. */
  @Test
  void backcrossesToAnInbredParent() throws IOException {
    garden(
        2,
        "fully",
        List.of(
            "2020-07-08 crossed p2 plant 1 by p1 plant 1, tag A",
            "2020-09-20 saved A, 50 seeds, into f1, of mix",
            "2021-07-08 backcrossed f1 plant 1 by p1 plant 4, tag A",
            "2021-09-20 saved A, 50 seeds, into bc1, of mix",
            "2022-07-08 backcrossed p1 plant 2 by bc1 plant 1, tag A",
            "2022-09-20 saved A, 50 seeds, into bc2, of mix"));
    assertThat(inbreeding("f1")).isZero();
    assertThat(inbreeding("bc1")).isEqualTo(0.5);
    assertThat(inbreeding("bc2")).isEqualTo(0.75);
    assertThat(generation("f1")).isEqualTo("F1");
    assertThat(generation("bc1")).isEqualTo("BC1F1, recurrent pollen parent");
    assertThat(generation("bc2")).isEqualTo("BC2F1, recurrent seed parent");
  }

  /** Coancestry of the two, which is the inbreeding of their seed: textbook figures. */
  @Test
  void cousins() throws IOException {
    garden(
        8,
        "not at all",
        all(
            crossed(2020, "p1 plant 1", "p2 plant 1", "a"),
            crossed(2020, "p3 plant 1", "p4 plant 1", "b"),
            crossed(2020, "p1 plant 1", "p5 plant 1", "half"),
            crossed(2021, "a plant 1", "p6 plant 1", "cousin1"),
            crossed(2021, "a plant 2", "p7 plant 1", "cousin2"),
            crossed(2021, "a plant 1", "b plant 1", "double1"),
            crossed(2021, "a plant 2", "b plant 2", "double2"),
            crossed(2022, "cousin1 plant 1", "p8 plant 1", "second1"),
            crossed(2022, "cousin2 plant 1", "p8 plant 2", "second2"),
            crossed(2023, "cousin1 plant 1", "cousin2 plant 1", "inbred-seed")));
    assertThat(coancestry("a", "half")).isEqualTo(1 / 8.0);
    assertThat(coancestry("cousin1", "cousin2")).isEqualTo(1 / 16.0);
    assertThat(coancestry("double1", "double2")).isEqualTo(1 / 8.0);
    assertThat(coancestry("second1", "second2")).isEqualTo(1 / 64.0);
    assertThat(inbreeding("inbred-seed")).isEqualTo(1 / 16.0);
  }

  /**
   * R. A. Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, 3rd edition,
   * table 2.1; its A is twice the coancestry. The unknown parent of 4 is open pollination.
   */
  @Test
  void aPrintedPedigree() throws IOException {
    garden(
        2,
        "not at all",
        all(
            crossed(2020, "p1 plant 1", "p2 plant 1", "three"),
            List.of("2020-09-20 saved p1 plant 1, 50 seeds, into four"),
            crossed(2021, "four plant 1", "three plant 1", "five"),
            crossed(2022, "five plant 1", "p2 plant 1", "six")));
    assertThat(inbreeding("five")).isCloseTo(0.125, within(HAIR));
  }

  /** Eight individuals, 1 to 4 founders; the same book, from memory of the page, recomputed. */
  @Test
  void eightIndividuals() throws IOException {
    garden(
        4,
        "not at all",
        all(
            crossed(2020, "p1 plant 1", "p2 plant 1", "five"),
            crossed(2020, "p1 plant 1", "p2 plant 1", "six"),
            crossed(2020, "p3 plant 1", "p4 plant 1", "seven"),
            crossed(2021, "five plant 1", "six plant 1", "eight")));
    assertThat(1 + inbreeding("eight")).isEqualTo(1.25);
    assertThat(2 * coancestry("five plant 1 of 2021", "eight")).isEqualTo(0.75);
    assertThat(2 * coancestry("six plant 1 of 2021", "eight")).isEqualTo(0.75);
    assertThat(2 * coancestry("seven", "eight")).isZero();
  }

  private void selfedAndBackcrossed(String inbred) throws IOException {
    garden(
        2,
        inbred,
        List.of(
            "2020-01-08 crossed p1 plant 1 by p2 plant 1, tag A",
            "2020-03-08 saved A, 50 seeds, into f1, of mix",
            "2020-05-08 selfed f1 plant 1, tag B",
            "2020-05-08 backcrossed f1 plant 1 by p1 plant 1, tag C",
            "2020-05-08 sibbed f1 plant 1 by plant 2, tag D",
            "2020-07-08 saved B, 50 seeds, into f2",
            "2020-07-08 saved C, 50 seeds, into bc1, of mix",
            "2020-07-08 saved D, 50 seeds, into sibs",
            "2020-09-08 selfed f2 plant 1, tag E",
            "2020-09-08 selfed f2 plant 2, tag G",
            "2020-09-08 selfed bc1 plant 1, tag F",
            "2020-11-08 saved E, 50 seeds, into f3",
            "2020-11-08 saved G, 50 seeds, into f3-2",
            "2020-11-08 saved F, 50 seeds, into bc1s1"));
  }

  /**
   * With selfing, worked out by the tabular method, by the rules for the inverse and by gene
   * dropping: figures that no book prints.
   */
  @ParameterizedTest
  @CsvSource({"not at all, 0.25, 0.625, 0.25, 0.5", "fully, 0.5, 0.75, 0.5, 1"})
  void foundersInbreedingMatters(String inbred, double bc1, double bc1s1, double sibs, double twoF1)
      throws IOException {
    selfedAndBackcrossed(inbred);
    assertThat(inbreeding("f1")).isZero();
    assertThat(inbreeding("f2")).isCloseTo(0.5, within(HAIR));
    assertThat(inbreeding("f3")).isCloseTo(0.75, within(HAIR));
    assertThat(inbreeding("bc1")).isCloseTo(bc1, within(HAIR));
    assertThat(inbreeding("bc1s1")).isCloseTo(bc1s1, within(HAIR));
    assertThat(inbreeding("sibs")).isCloseTo(sibs, within(HAIR));
    assertThat(2 * coancestry("f1 plant 1 of 2020", "f1 plant 1 of 2020"))
        .isCloseTo(1, within(HAIR));
    assertThat(2 * coancestry("f2 plant 1 of 2020", "f2 plant 1 of 2020"))
        .isCloseTo(1.5, within(HAIR));
    assertThat(2 * coancestry("f2 plant 1 of 2020", "f2 plant 2 of 2020"))
        .isCloseTo(1, within(HAIR));
    assertThat(2 * coancestry("f1 plant 1 of 2020", "f1 plant 2 of 2020"))
        .isCloseTo(twoF1, within(HAIR));
  }

  /** Fully inbred founders give one F1 genotype, and a matrix of rank 6 for 8 plants. */
  @ParameterizedTest
  @CsvSource({"not at all, 8", "fully, 6"})
  void theSingularCase(String inbred, int rank) throws IOException {
    selfedAndBackcrossed(inbred);
    List<String> plants =
        List.of(
            "p1 plant 1 of 2020",
            "p2 plant 1 of 2020",
            "f1 plant 1 of 2020",
            "f1 plant 2 of 2020",
            "f2 plant 1 of 2020",
            "f2 plant 2 of 2020",
            "bc1 plant 1 of 2020",
            "bc1s1");
    double[][] matrix = new double[plants.size()][plants.size()];
    for (int i = 0; i < plants.size(); i++) {
      for (int j = 0; j < plants.size(); j++) {
        boolean seedWithItself = i == j && plants.get(i).equals("bc1s1");
        matrix[i][j] =
            seedWithItself
                ? 1 + inbreeding(plants.get(i))
                : 2 * coancestry(plants.get(i), plants.get(j));
      }
    }
    assertThat(rank(matrix)).isEqualTo(rank);
  }

  private static int rank(double[][] matrix) {
    int rank = 0;
    for (int column = 0; column < matrix.length; column++) {
      int pivot = rank;
      for (int i = rank; i < matrix.length; i++) {
        pivot = Math.abs(matrix[i][column]) > Math.abs(matrix[pivot][column]) ? i : pivot;
      }
      if (rank == matrix.length || Math.abs(matrix[pivot][column]) < 1e-9) {
        continue;
      }
      double[] row = matrix[pivot];
      matrix[pivot] = matrix[rank];
      matrix[rank] = row;
      for (int i = rank + 1; i < matrix.length; i++) {
        double times = matrix[i][column] / row[column];
        for (int j = 0; j < matrix.length; j++) {
          matrix[i][j] -= times * row[j];
        }
      }
      rank++;
    }
    return rank;
  }

  @Test
  void howInbredTheFoundersAreIsToldWhereItIsNot() throws IOException {
    garden(2, "unknown", crossed(2020, "p1 plant 1", "p2 plant 1", "f1"));
    assertThat(descent("f1").get("assumed").toString())
        .contains("How inbred plants of `p1`, `p2` are is not told".replace(", ", " and "));
    garden(2, "75 %", List.of());
    assertThat(inbreeding("p1 plant 1 of 2020")).isEqualTo(0.75);
    assertThat(descent("f1").get("assumed").toString()).doesNotContain("is not told");
  }

  /** Labels without a pedigree: Falconer and Mackay 1996, chapter 5 (from memory). */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "F1 | F1 | 0 | 0.5",
        "F4 | F4 | 0.875 | 0.875",
        "F4 bulk | bulk of F4 | 0.875 | 0.5",
        "F2, probable | F2, probable | 0.5 | 0.5",
        "F2 sib 1 | F2 sib 1 | 0.5 | 0.625",
        "BC1F2 | BC1F2 | 0.75 | 0.75",
        "BC2F1, recurrent seed parent | BC2F1, recurrent seed parent | 0.75 | 0.8125",
        "S2 | S2 | 0.75 | 0.75",
        "F1 segregating | F1, segregating | 0 | 0.25",
        "F2 of a segregating F1 | F2 of a segregating F1 | 0.5 | 0.5",
        "four-way F1 | F1, four-way | 0 | 0.25",
        "F2 of a four-way F1 | F2 of a four-way F1 | 0.5 | 0.5",
        "OP 2 | OP2 | 0 | 0",
        "inbred | inbred | 1 | 1"
      })
  void labels(String row) throws IOException {
    String[] cells = row.split(" \\| ");
    garden(2, cells[0].equals("F1 segregating") ? "unknown" : "fully", List.of());
    Files.writeString(
        folder.resolve("record/lots.season"),
        "line own\n  is a butternut\n  began 2020, from p1 by p2\n"
            + "lot old\n  of own\n  generation "
            + cells[0]
            + "\n");
    JsonNode data = descent("old");
    assertThat(generation("old")).isEqualTo(cells[1]);
    assertThat(data.get("inbreeding").asDouble())
        .isCloseTo(Double.parseDouble(cells[2]), within(HAIR));
    assertThat(data.get("sibs").asDouble()).isCloseTo(Double.parseDouble(cells[3]), within(HAIR));
  }
}
