package slipday.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.language.Plans;
import slipday.source.Source;
import slipday.source.Span;
import slipday.testing.Golden;

/** Lines read by hand are those of the grammar. */
class PlainLinesProperties {
  private static final Path SAMPLE = Path.of("src/test/resources/language/sample.season");

  /** Every sign that the grammar names, a letter of each sort, and some that it does not know. */
  private static final String SIGNS =
      "aZ\u00E9\u00AA_09.5-+/'\u2019\u2013\u2212\u00B0#,%\"\u201C\u201D\u201E \t\u00A0\u2009\u202F"
          + "\uFEFF\n\r*(~\u00D7\u00BD";

  @Provide
  Arbitrary<String> signs() {
    return Arbitraries.strings().withChars(SIGNS.toCharArray()).ofMaxLength(60);
  }

  @Provide
  Arbitrary<String> anyText() {
    return Plans.anyText();
  }

  @Provide
  Arbitrary<String> mutated() {
    return Plans.mutated();
  }

  @Property(tries = 3000)
  void anyRowOfSignsGivesTheSameLines(@ForAll("signs") String text) {
    assertThat(plain(text)).isPresent();
    holds(text);
  }

  @Property
  void anyTextGivesTheSameLines(@ForAll("anyText") String text) {
    holds(text);
  }

  @Property(tries = 200)
  void anyMutationGivesTheSameLines(@ForAll("mutated") String text) {
    holds(text);
  }

  @Property(tries = 300)
  void partsGiveTheSameLines(@ForAll("signs") String text, @ForAll int seed) {
    Source source = Source.of("test.season", text);
    List<Span> parts = new ArrayList<>();
    for (int line = 1; line <= source.lineCount(); line++) {
      if ((seed >>> line % 32 & 1) == 1) {
        int end = line < source.lineCount() ? source.lineStart(line + 1) : text.length();
        parts.add(source.span(source.lineStart(line), end));
      }
    }
    same(PlainLines.parse(source, parts).orElseThrow(), GrammarLines.parse(source, parts));
  }

  /** Alone, first, last, and within a word, a number, a text and a comment. */
  @Example
  void anyCharacterIsTakenAsTheGrammarTakesIt() {
    for (int c = 0; c <= 0x3100; c++) {
      String sign = Character.toString(c);
      holds(
          sign + " " + sign + "a a" + sign + "a\n1" + sign + "2 -1" + sign + " 2026-05-18" + sign);
      holds("\"a" + sign + "b\" # " + sign + "\n#" + sign);
    }
  }

  @Example
  void theSamplePlanIsReadByHand() {
    assertThat(plain(Golden.read(SAMPLE))).isPresent();
  }

  @Example
  void aLetterBeyondTheLatinOnesIsLeftToTheGrammar() {
    assertThat(plain("\u043B\u0438\u043D\u0438\u044F")).isEmpty();
    assertThat(plain("# \u043B\u0438\u043D\u0438\u044F\nlooks \"\u043B\"")).isPresent();
  }

  private static Optional<Outcome<SeasonFile>> plain(String text) {
    Source source = Source.of("test.season", text);
    return PlainLines.parse(source, LongLines.of(source));
  }

  private static void holds(String text) {
    Source source = Source.of("test.season", text);
    LongLines tooLong = LongLines.of(source);
    PlainLines.parse(source, tooLong)
        .ifPresent(plain -> same(plain, GrammarLines.parse(source, tooLong)));
  }

  private static void same(Outcome<SeasonFile> plain, Outcome<SeasonFile> grammar) {
    String text = plain.value().source().text();
    assertThat(plain.value().lines()).as(text).isEqualTo(grammar.value().lines());
    assertThat(plain.value().comments()).as(text).isEqualTo(grammar.value().comments());
    assertThat(messages(plain)).as(text).isEqualTo(messages(grammar));
  }

  private static List<String> messages(Outcome<SeasonFile> outcome) {
    return outcome.findings().stream().map(Finding::message).toList();
  }
}
