package slipday.output.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class ContentLinesTest {
  /** RFC 5545, 3.1: at most 75 octets without the line end, folded with CRLF and one space. */
  @Test
  void linesHaveAtMost75Octets() {
    assertThat(octets("SUMMARY:" + "a".repeat(67))).containsExactly(75);
    assertThat(octets("SUMMARY:" + "a".repeat(68))).containsExactly(75, 2);
    assertThat(octets("SUMMARY:" + "ü".repeat(60))).containsExactly(74, 55);
    assertThat(octets("")).containsExactly(0);
  }

  @Test
  void aCharacterOfFourOctetsStaysWhole() {
    assertThat(octets("SUMMARY:" + "\uD83C\uDF48".repeat(17))).containsExactly(72, 5);
  }

  @Property
  void foldingIsUndoneByTakingTheFoldsOut(@ForAll @StringLength(max = 400) String text) {
    String line = text.replaceAll("[\r\n]", "").replaceAll("[\\uD800-\\uDFFF]", "?");
    String folded = ContentLines.folded(List.of(line));
    assertThat(folded).endsWith("\r\n");
    assertThat(folded.substring(0, folded.length() - 2).replace("\r\n ", "")).isEqualTo(line);
    assertThat(octets(line)).allMatch(n -> n <= 75);
  }

  @Test
  void nameAndValueOfALine() {
    assertThat(ContentLines.name("dtstart;TZID=\"a:b\":20260508")).isEqualTo("DTSTART");
    assertThat(ContentLines.value("dtstart;TZID=\"a:b\":20260508")).isEqualTo("20260508");
    assertThat(ContentLines.value("SUMMARY:a: b")).isEqualTo("a: b");
    assertThat(ContentLines.isLine("X-MOON:full")).isTrue();
    assertThat(ContentLines.isLine("no line")).isFalse();
    assertThat(ContentLines.isLine("SUMMARY")).isFalse();
    assertThat(ContentLines.isLine(":value")).isFalse();
  }

  private static List<Integer> octets(String line) {
    String folded = ContentLines.folded(List.of(line));
    return Arrays.stream(folded.split("\r\n", -1))
        .limit(folded.split("\r\n", -1).length - 1)
        .map(l -> l.getBytes(StandardCharsets.UTF_8).length)
        .toList();
  }
}
