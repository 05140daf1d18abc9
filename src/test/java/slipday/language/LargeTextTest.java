package slipday.language;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import slipday.finding.Finding;
import slipday.finding.Folding;
import slipday.format.Formatter;

/** Texts that are too long, too deep or too wrong, each read in a few seconds. */
@Timeout(20)
class LargeTextTest {
  private static final int MEGA = 1 << 20;

  @Test
  void tenThousandLinesOfBracketsAreOneMessage() {
    var findings = Folding.fold(Texts.findings("{\n".repeat(10_000)));
    assertThat(findings)
        .singleElement()
        .satisfies(
            f ->
                assertThat(f.notes())
                    .containsExactly(
                        "The same stands on 9999 more lines: 2, 3, 4, 5, 6, 7, 8, 9 …"));
  }

  @Test
  void tenThousandLinesOfBracketsOfAllKindsAreOneMessage() {
    assertThat(Folding.fold(Texts.findings("{[(\n)]}\n".repeat(5_000)))).hasSize(1);
  }

  @Test
  void aLineOfFiveMillionCharactersIsOneMessage() {
    assertThat(Texts.findings("a".repeat(5 * MEGA))).hasSize(1);
    assertThat(Texts.findings("site a\n  frost risk 1 in " + "9 ".repeat(MEGA))).hasSize(1);
    assertThat(Texts.findings("{".repeat(MEGA))).hasSize(1);
    assertThat(Texts.findings("line a\n  looks \"" + "x ".repeat(2 * MEGA))).hasSize(1);
    assertThat(Texts.findings("lot a\n  seeds " + "9".repeat(MEGA))).hasSize(1);
    assertThat(Texts.findings("bed a\n" + "9 ".repeat(10 * MEGA) + "\n  size 1 kg"))
        .extracting(Finding::rule)
        .containsExactly("line-too-long", "unit-wrong");
  }

  @Test
  void aLongLineIsLeftAsItIs() {
    String text = "bed a\n" + "9 # \" ".repeat(MEGA) + "9\n\nbed b\n";
    assertThat(Formatter.format(Texts.parse(text)).value()).isEqualTo(text);
  }

  @Test
  void aLineOfManyWordsBinds() {
    assertThat(Texts.findings("neighbour a\n  grows a" + ", b".repeat(3000))).isEmpty();
  }

  @Test
  void twentyThousandWrongLinesTakeNoLongerThanTheyMust() {
    StringBuilder text = new StringBuilder("site a\n");
    for (int i = 0; i < 20_000; i++) {
      text.append("  qx").append(i).append(" 1 in 10\n");
    }
    assertThat(Texts.findings(text.toString())).hasSize(20_000);
  }

  @Test
  void aBlockOfAHundredThousandLinesBinds() {
    String text = "bed a\n" + "  grew squash in 2024\n".repeat(100_000) + "  size 3 m x 2 m\n";
    assertThat(Texts.bind(text).value().blocks().get(0).clauses()).hasSize(100_001);
  }
}
