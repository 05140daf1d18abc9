package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** What programs are told of candidates beside what people read. */
class CandidatesDataTest {
  private static JsonNode figure(String garden, int plant, int trait) throws IOException {
    Path folder = Path.of("src/test/resources/cases/command", garden).toAbsolutePath();
    Run run = Run.in(folder, "candidates", "plan.season", "slate-gold", "--format", "json");
    return new ObjectMapper()
        .readTree(run.out())
        .get("candidates")
        .get(plant)
        .get("figures")
        .get(trait);
  }

  /** The figures that {@code why family-1 plant 3 sweetness} prints of the same garden. */
  @Test
  void aTraitValuedTogetherTellsWhatItIsAloneToo() throws IOException {
    JsonNode sweetness = figure("together", 4, 0);
    assertThat(sweetness.get("trait").asText()).isEqualTo("sweetness");
    assertThat(sweetness.get("value").asDouble()).isCloseTo(11.3, within(0.05));
    assertThat(sweetness.get("accuracy").asDouble()).isCloseTo(0.48, within(0.005));
    JsonNode alone = sweetness.get("alone");
    assertThat(alone.get("value").asDouble()).isCloseTo(11.2, within(0.05));
    assertThat(alone.get("accuracy").asDouble()).isCloseTo(0.44, within(0.005));
    assertThat(alone.get("low").asDouble()).isLessThan(alone.get("value").asDouble());
    assertThat(alone.get("high").asDouble()).isGreaterThan(alone.get("value").asDouble());
  }

  @Test
  void aTraitValuedByItselfHasNoOtherValue() throws IOException {
    assertThat(figure("choosing", 0, 0).get("alone").isNull()).isTrue();
  }
}
