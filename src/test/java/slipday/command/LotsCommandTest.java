package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How seed ages, from the gardener's words to what is told. */
class LotsCommandTest {
  private static final String PLAN =
      """
      season 2026
      site home
        place          45 N, 73 W
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September
      line ropewalk
        is a           %s
      lot seed
        of             ropewalk
        seeds          100
        harvested      %d
      """;

  @TempDir Path folder;

  private Run run(String crop, int harvested, String record, String... more) throws IOException {
    Files.writeString(folder.resolve("plan.season"), PLAN.formatted(crop, harvested) + record);
    String[] args = new String[more.length + 2];
    args[0] = "lots";
    args[1] = "plan.season";
    System.arraycopy(more, 0, args, 2, more.length);
    Run run = Run.in(folder, args);
    assertThat(run.err()).isEmpty();
    return run;
  }

  private JsonNode seed(String crop, int harvested, String record) throws IOException {
    String json = run(crop, harvested, record, "--format", "json").out();
    return new ObjectMapper().readTree(json).get("lots").get(0);
  }

  /**
   * Storage lives in years: Knott's Handbook for Vegetable Growers, 1997, table of seed storage.
   * Untested seed as old as that is told to come up at one half.
   */
  @ParameterizedTest
  @CsvSource({
    "muskmelon, 5",
    "pickling-cucumber, 5",
    "butternut, 4",
    "acorn-squash, 4",
    "icebox-watermelon, 4"
  })
  void asOldAsItsLifeHalfComesUp(String crop, int life) throws IOException {
    JsonNode seed = seed(crop, 2026 - life, "");
    assertThat(seed.get("age").asInt()).isEqualTo(life);
    assertThat(seed.get("germination").get("usual").asDouble()).isCloseTo(0.5, within(1e-9));
    assertThat(seed.get("reckoning").get(0).asText())
        .contains("such seed keeps " + life + " years");
    assertThat(seed.get("facts").get(0).get("says").asText()).contains("seed keeps", "Knott");
    assertThat(run(crop, 2026 - life, "").out()).contains(" " + life + " y  50 % (");
  }

  /**
   * 44 of 50 two years ago, of a kind that keeps 5 years. By R 4: {@code
   * pnorm(qnorm(qbeta(p,44.5,6.5)) - 2/(life/qnorm(.95)))}, of p = 0.1, 0.5 and 0.9 with half, the
   * whole and twice the life.
   */
  @Test
  void aTestAgesFromItsYear() throws IOException {
    JsonNode seed = seed("muskmelon", 2023, "2024-02-10 tested seed, 44 of 50 seeds\n");
    assertThat(seed.get("germination").get("low").asDouble())
        .isCloseTo(0.331451544, within(5.1e-5));
    assertThat(seed.get("germination").get("usual").asDouble())
        .isCloseTo(0.692964857, within(5.1e-5));
    assertThat(seed.get("germination").get("high").asDouble())
        .isCloseTo(0.871379636, within(5.1e-5));
    // The plan's count is of the season's beginning, after that test.
    assertThat(seed.get("seedsLeft").asInt()).isEqualTo(100);
    String text = run("muskmelon", 2023, "2024-02-10 tested seed, 44 of 50 seeds\n", "seed").out();
    assertThat(text)
        .contains("69 % (33 to 87)")
        .contains("44 of 50 came up in its test of 2024; 2 years since")
        .containsPattern("(?s)seed keeps 5 years — .*Knott.*crops/melon\\.season");
  }

  /** Least germination for sale: 7 CFR 201.31. Sowing waits for no seed under it. */
  @ParameterizedTest
  @CsvSource({"muskmelon, 75", "pickling-cucumber, 80", "butternut, 75"})
  void grownOnBeforeItFallsUnderTheLeastForSale(String crop, int percent) throws IOException {
    JsonNode fresh = seed(crop, 2026, "2026-02-10 tested seed, 95 of 100 seeds\n");
    int by = fresh.get("growOnBy").asInt();
    assertThat(fresh.get("reckoning").get(1).asText()).contains("under " + percent + " %");
    int ages = by - 2026;
    String then = "%d-02-10 tested seed, 95 of 100 seeds\n";
    assertThat(usual(crop, then.formatted(2026 - ages))).isGreaterThanOrEqualTo(percent / 100.0);
    assertThat(usual(crop, then.formatted(2026 - ages - 1))).isLessThan(percent / 100.0);
    assertThat(run(crop, 2020, then.formatted(2026 - ages - 1)).out()).contains(" now\n");
  }

  private double usual(String crop, String record) throws IOException {
    return seed(crop, 2020, record).get("germination").get("usual").asDouble();
  }
}
