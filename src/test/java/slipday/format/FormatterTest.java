package slipday.format;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.language.Texts;
import slipday.testing.Golden;

class FormatterTest {
  private static final String SAMPLE =
      Golden.read(Path.of("src/test/resources/language/sample.season"));

  private static String format(String text) {
    return Formatter.format(Texts.parse(text)).value();
  }

  @Test
  void theSampleIsInCanonicalLayout() {
    assertThat(Texts.findings(SAMPLE)).isEmpty();
    assertThat(format(SAMPLE)).isEqualTo(SAMPLE);
  }

  @ParameterizedTest
  @MethodSource("slipday.language.Plans#files")
  void everyPlanAndCropFileIsInCanonicalLayout(Path file) {
    String text = Golden.read(file);
    assertThat(format(text)).isEqualTo(text);
  }

  @Test
  void layoutIsMadeFromNone() {
    String bare = SAMPLE.lines().map(FormatterTest::bare).collect(Collectors.joining("\r\n"));
    assertThat(bare).contains("\r\nplants 12, 60 cm apart\r\n");
    assertThat(format(bare)).isEqualTo(SAMPLE);
  }

  /** A line without its spaces, but for those in its comment. */
  private static String bare(String line) {
    int comment = line.indexOf('#') < 0 ? line.length() : line.indexOf('#');
    return line.substring(0, comment).strip().replaceAll(" +", " ") + line.substring(comment);
  }

  @Test
  void valuesStandInOneColumn() {
    assertThat(format("bed a\nsize 3 m x 1 m\n\tgrew   squash  in 2024"))
        .isEqualTo("bed a\n  size           3 m x 1 m\n  grew           squash in 2024\n");
    assertThat(format("site a\ncolder than the station by 1 C"))
        .isEqualTo("site a\n  colder than the station by 1 C\n");
  }

  @Test
  void wordsOfTheLanguageAreLowerCaseAndNamesStay() {
    assertThat(format("Line Tern\nIs A Muskmelon"))
        .isEqualTo("line Tern\n  is a           Muskmelon\n");
  }

  @Test
  void charactersTypedOnATelephoneBecomePlain() {
    assertThat(
            format(
                "\uFEFFsite o\u2019neill “Old yard”\r\n  frost\u00A0risk 10%\r\n  soil −1 °C on 8 May"))
        .isEqualTo(
            "site o'neill \"Old yard\"\n  frost risk     10 %\n  soil           -1 °C on 8 May\n");
  }

  @Test
  void aSourceIsNamedAlikeWithEitherApostrophe() {
    String curly = "crop c\n  ripe 35 days after pollination, says o\u2019neill";
    assertThat(Texts.meaning(format(curly))).isEqualTo(Texts.meaning(curly)).contains("o'neill");
  }

  @Test
  void commasStandCloseToWhatTheyFollow() {
    assertThat(format("site a\n  place 44.21 N ,72.58 W,310 m"))
        .isEqualTo("site a\n  place          44.21 N, 72.58 W, 310 m\n");
  }

  @Test
  void blocksArePartedByOneEmptyLine() {
    assertThat(
            format(
                "\n\nseason 2026\ninclude \"a\"\n\n\n\ninclude \"b\"\nbed a\nbed b\n\n\nbed c\n\n\n"))
        .isEqualTo("season 2026\ninclude \"a\"\n\ninclude \"b\"\n\nbed a\n\nbed b\n\nbed c\n");
  }

  @Test
  void anEmptyLineWithinABlockStays() {
    assertThat(format("lot a\n\n\n  seeds 3\n\n  harvested 2023"))
        .isEqualTo("lot a\n\n  seeds          3\n\n  harvested      2023\n");
  }

  @Test
  void aCommentGoesWithTheLineBelowIt() {
    assertThat(
            format(
                "  # first\nbed a\n# of the size\n  size 3 m x 1 m # wide enough\n  # of b\n  # again\nbed b # here\n# the end"))
        .isEqualTo(
            "# first\nbed a\n  # of the size\n  size           3 m x 1 m              # wide enough\n\n"
                + "# of b\n# again\nbed b                                   # here\n# the end\n");
  }

  @Test
  void aCommentAfterALongLineIsTwoSpacesAway() {
    assertThat(format("lot a\n  came from \"a swap with somebody who kept it for long\" # really"))
        .isEqualTo(
            "lot a\n  came from      \"a swap with somebody who kept it for long\"  # really\n");
  }

  @Test
  void aMistakenLineKeepsItsWords() {
    assertThat(format("bed a\n  sise   3 m x2,31 ½m ;\n  size 2 ,  31 m [x] 2 m\ngorw b\n  in  a"))
        .isEqualTo(
            "bed a\n  sise 3 m x2, 31 ½m ;\n  size           2, 31 m [x] 2 m\ngorw b\n  in a\n");
    assertThat(format("lot a\n  seeds 1,200\n  looks \"open  , # x  "))
        .isEqualTo("lot a\n  seeds          1,200\n  looks \"open  , # x\n");
  }

  @Test
  void datedLinesStandAtTheEdge() {
    assertThat(format("bed a\n  2026-08-19   picked 3A ,full slip,1.62 kg"))
        .isEqualTo("bed a\n2026-08-19 picked 3A, full slip, 1.62 kg\n");
  }

  @Test
  void nothingBecomesNothing() {
    assertThat(format("")).isEmpty();
    assertThat(format("\uFEFF\r\n \r\n")).isEmpty();
    assertThat(format("#  only  ")).isEqualTo("#  only\n");
  }

  @Test
  void mistakesAreToldOfWithTheLayout() {
    assertThat(Formatter.format(Texts.parse("bed a\n  sise 3 m x 2 m")).findings())
        .extracting(f -> f.rule())
        .containsExactly("unknown-clause");
  }
}
