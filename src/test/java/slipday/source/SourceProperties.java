package slipday.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class SourceProperties {
  @Provide
  Arbitrary<String> textsOfLines() {
    return Arbitraries.strings().withChars('\r', '\n', 'a').ofMaxLength(12);
  }

  /** Splitting the text gives the same lines. */
  @Property
  void linesEndWhereTheTextIsSplit(@ForAll("textsOfLines") String text) {
    Source source = Source.of("a", text);
    List<String> lines =
        IntStream.rangeClosed(1, source.lineCount()).mapToObj(source::line).toList();
    assertThat(lines).containsExactly(text.split("\r\n|\r|\n", -1));
    for (int line = 1; line <= source.lineCount(); line++) {
      assertThat(source.lineOf(source.lineStart(line))).isEqualTo(line);
      assertThat(source.columnOf(source.lineStart(line))).isEqualTo(1);
    }
  }

  @Example
  void columnsCountWhatPeopleSee() {
    Source source = Source.of("a", "ab\n\uD83C\uDF48x");
    assertThat(source.columnOf(5)).isEqualTo(2);
    assertThat(source.lineOf(5)).isEqualTo(2);
  }
}
