package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against ISO/IEC 7064:2003. */
class CheckCharacterTest {
  private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  /** Worked out again with three other libraries; 0794 → 5 from memory of the standard. */
  @ParameterizedTest
  @CsvSource({
    "MOD_37_36, CUC2026001, P",
    "MOD_37_36, cuc2026001, P",
    "MOD_37_36, B18, 3",
    "MOD_37_36, ABC, Z",
    "MOD_37_36, 0, 2",
    "MOD_11_10, 0794, 5",
    "MOD_11_10, 79462, 3"
  })
  void knownCheckCharacters(CheckCharacter system, String text, char check) {
    assertThat(system.of(text)).hasValue(check);
    assertThat(system.holds(text + check)).isTrue();
    assertThat(system.holds(text + (check == '7' ? '8' : '7'))).isFalse();
  }

  @Test
  void whatHasNoCheckCharacter() {
    assertThat(CheckCharacter.MOD_37_36.of("")).isEmpty();
    assertThat(CheckCharacter.MOD_37_36.of("3A-1")).isEmpty();
    assertThat(CheckCharacter.MOD_11_10.of("3A")).isEmpty();
    assertThat(CheckCharacter.MOD_37_36.holds("P")).isFalse();
    assertThat(CheckCharacter.MOD_37_36.holds("3A-P")).isFalse();
  }

  @Property(tries = 400)
  void everySingleWrongCharacterIsCaught(
      @ForAll("tags") String tag, @ForAll @IntRange(max = 35) int other, @ForAll int where) {
    String whole = tag + CheckCharacter.MOD_37_36.of(tag).orElseThrow();
    int at = Math.floorMod(where, whole.length());
    char wrong = ALPHABET.charAt(other);
    Assume.that(whole.charAt(at) != wrong);
    assertThat(CheckCharacter.MOD_37_36.holds(whole)).isTrue();
    assertThat(CheckCharacter.MOD_37_36.holds(whole.toLowerCase(Locale.ROOT))).isTrue();
    assertThat(
            CheckCharacter.MOD_37_36.holds(
                whole.substring(0, at) + wrong + whole.substring(at + 1)))
        .isFalse();
  }

  /** The hybrid systems let few exchanges of neighbours pass; all pairs after all beginnings. */
  @ParameterizedTest
  @CsvSource({"MOD_37_36, 36, 0.998", "MOD_11_10, 10, 0.975"})
  void nearlyAllExchangesOfNeighboursAreCaught(CheckCharacter system, int letters, double share) {
    int exchanges = 0;
    int caught = 0;
    for (int before = 0; before < letters; before++) {
      for (int a = 0; a < letters; a++) {
        for (int b = 0; b < letters; b++) {
          if (a != b) {
            String tag = "" + ALPHABET.charAt(before) + ALPHABET.charAt(a) + ALPHABET.charAt(b);
            char check = system.of(tag).orElseThrow();
            exchanges++;
            String exchanged = "" + tag.charAt(0) + tag.charAt(2) + tag.charAt(1) + check;
            caught += system.holds(exchanged) ? 0 : 1;
          }
        }
      }
    }
    assertThat((double) caught / exchanges).isBetween(share, 1.0);
  }

  @Provide
  Arbitrary<String> tags() {
    return Arbitraries.strings().withChars(ALPHABET).ofMinLength(1).ofMaxLength(16);
  }
}
