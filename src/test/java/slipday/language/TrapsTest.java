package slipday.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.finding.Finding;
import slipday.finding.Folding;
import slipday.finding.Label;
import slipday.testing.Golden;

/**
 * The mistakes people make, each with exactly what is said of it: {@code traps.txt} holds texts
 * (lines after {@code >}, with Java's escapes for what can't be seen) and under each its findings.
 */
class TrapsTest {
  private static final Path TABLE = Path.of("src/test/resources/language/traps.txt");
  private static final int LONGEST_LIST = 200;

  @Test
  void everyTrapSaysWhatTheTableSays() {
    String table = Golden.read(TABLE);
    List<String> sections = List.of(table.split("\n\n"));
    assertThat(sections).hasSizeGreaterThan(100);
    Golden.check(TABLE, sections.stream().map(this::answered).collect(Collectors.joining("\n")));
  }

  /** The section with its findings as they are now; headings stay. */
  private String answered(String section) {
    List<String> kept = new ArrayList<>();
    List<String> text = new ArrayList<>();
    for (String line : section.lines().toList()) {
      if (line.startsWith(">")) {
        text.add(line.replaceFirst("^> ?", "").translateEscapes());
        kept.add(line);
      } else if (line.startsWith("==")) {
        kept.add(line);
      }
    }
    if (text.isEmpty()) {
      return String.join("\n", kept) + "\n";
    }
    List<Finding> findings = Folding.fold(Texts.findings(unescape(String.join("\n", text))));
    String said =
        findings.isEmpty()
            ? "fine\n"
            : findings.stream().map(TrapsTest::shown).collect(Collectors.joining());
    return String.join("\n", kept) + "\n" + said;
  }

  /** Java's {@code translateEscapes} leaves out the ones by number. */
  private static String unescape(String text) {
    StringBuilder plain = new StringBuilder();
    int at = 0;
    for (int next = text.indexOf("U+"); next >= 0; next = text.indexOf("U+", at)) {
      plain.append(text, at, next);
      plain.appendCodePoint(Integer.parseInt(text.substring(next + 2, next + 6), 16));
      at = next + 6;
    }
    return plain.append(text.substring(at)).toString();
  }

  private static String shown(Finding finding) {
    Label place = finding.place().orElseThrow();
    String mark =
        place.span().text().isEmpty() ? "the end" : "`" + visible(place.span().text()) + "`";
    String notes =
        finding.notes().stream().map(n -> "  note: " + n + "\n").collect(Collectors.joining());
    String others =
        finding.others().stream()
            .map(o -> "  see " + o.span().line() + ": " + o.text() + "\n")
            .collect(Collectors.joining());
    return finding.rule()
        + " at "
        + place.span().line()
        + ", "
        + mark
        + "\n  "
        + finding.message()
        + "\n  "
        + finding.help()
        + "\n"
        + notes
        + others;
  }

  private static String visible(String text) {
    return text.codePoints()
        .mapToObj(
            c ->
                Character.isISOControl(c) || Character.getType(c) == Character.FORMAT
                    ? String.format("U+%04X", c)
                    : Character.toString(c))
        .collect(Collectors.joining());
  }

  static Stream<Finding> everyFinding() {
    return Stream.of(Golden.read(TABLE).split("\n\n"))
        .flatMap(
            s ->
                Texts.findings(
                    unescape(
                        s.lines()
                            .filter(l -> l.startsWith(">"))
                            .map(l -> l.replaceFirst("^> ?", ""))
                            .map(String::translateEscapes)
                            .collect(Collectors.joining("\n"))))
                    .stream());
  }

  @ParameterizedTest
  @MethodSource("everyFinding")
  void everyMessageIsOneSentenceWithHelp(Finding finding) {
    assertThat(finding.message()).matches("(?s)[A-Z`].*\\.");
    assertThat(finding.help()).matches("(?s)[A-Z`].*[.?]").hasSizeLessThan(LONGEST_LIST);
    assertThat(finding.rule()).matches("[a-z]+(-[a-z]+)*");
    assertThat(StringUtils.countMatches(finding.message(), '`') % 2).isZero();
  }
}
