package slipday.descent;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.garden.Garden;

class TagsTest {
  private static final String PLAN =
      "lot one\n  of p\nlot two\n  of q\nlot three\n  of q\n"
          + "grow one\n  in south\n  plants 2, 1 m apart\n  seed saved\n"
          + "grow two\n  in south\n  plants 2, 1 m apart\n  seed saved\n"
          + "grow three\n  in south\n  plants 2, 1 m apart\n  seed not saved\n";

  private static List<List<String>> free(int howMany, boolean check, String... record) {
    Garden garden = Pedigrees.garden(PLAN, List.of(record));
    return Tags.free(garden, howMany, check).stream().map(Tags.Free::tags).toList();
  }

  @Test
  void eachPlantingKeptForSeedHasItsOwnNumber() {
    assertThat(free(3, false))
        .containsExactly(List.of("1A", "1B", "1C"), List.of("2A", "2B", "2C"));
  }

  @Test
  void usedTagsAreLeftOutAndTheLastNumberGoesOn() {
    assertThat(
            free(
                2,
                false,
                "2027-07-08 selfed one plant 2, tag 2A",
                "2027-07-09 selfed one plant 2, tag 2c",
                "2026-07-09 selfed one plant 2, tag 2B"))
        .containsExactly(List.of("2B", "2D"), List.of("1A", "1B"));
  }

  @Test
  void afterTheLetterZComesANewNumber() {
    assertThat(free(27, false).get(0)).endsWith("1Z", "2A");
  }

  /** By ISO/IEC 7064, mod 37,36. */
  @ParameterizedTest
  @ValueSource(ints = {1, 40})
  void checkedTagsHold(int howMany) {
    assertThat(free(howMany, true).stream().flatMap(List::stream))
        .hasSize(2 * howMany)
        .doesNotHaveDuplicates()
        .allMatch(slipday.genetics.CheckCharacter.MOD_37_36::holds);
  }

  @Test
  void aCheckedTagInUseIsUsed() {
    String first = free(1, true).get(0).get(0);
    assertThat(free(1, true, "2027-07-08 selfed one plant 1, tag " + first).get(0).get(0))
        .startsWith("1B");
  }
}
