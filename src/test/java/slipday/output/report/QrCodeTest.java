package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Codes as drawn, read back by the reader of the library that laid them out. */
class QrCodeTest {
  private static final int QUIET = 4;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "55DN",
        "tern-amber-f3",
        "grüner-kürbis-2024",
        "жук-2024",
        "נחש-2024",
        "かぼちゃ-2024",
        "कद्दू-2024",
        "\uD83C\uDF48-2024"
      })
  void whatIsWrittenIsReadBack(String text) throws Exception {
    assertThat(new Decoder().decode(modules(QrCode.of(text).toString())).getText()).isEqualTo(text);
  }

  /**
   * As it was before other letters could be written, so that labels already printed still match.
   */
  @Test
  void lettersOfAsciiAloneNameNoCharacterSet() throws Exception {
    BitMatrix code = modules(QrCode.of("tern-amber-f3").toString());
    assertThat(code.getWidth()).isEqualTo(25);
    assertThat(new Decoder().decode(code).getSymbologyModifier())
        .as("no set is named")
        .isEqualTo(1);
    BitMatrix other = modules(QrCode.of("жук-2024").toString());
    assertThat(new Decoder().decode(other).getSymbologyModifier()).as("one is").isEqualTo(2);
  }

  private static BitMatrix modules(String svg) {
    String size = StringUtils.substringBetween(svg, "viewBox=\"0 0 ", " ");
    BitMatrix modules = new BitMatrix(Integer.parseInt(size) - 2 * QUIET);
    Matcher run = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1").matcher(svg);
    while (run.find()) {
      int left = Integer.parseInt(run.group(1)) - QUIET;
      int top = Integer.parseInt(run.group(2)) - QUIET;
      modules.setRegion(left, top, Integer.parseInt(run.group(3)), 1);
    }
    return modules;
  }
}
