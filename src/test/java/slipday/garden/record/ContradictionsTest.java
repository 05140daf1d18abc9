package slipday.garden.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.finding.Finding;
import slipday.testing.Golden;

/**
 * What can't be, each with exactly what is said of it: {@code contradictions.txt} holds records
 * (lines after {@code >}) of the garden of {@link Recorded}, and under each its findings.
 */
class ContradictionsTest {
  private static final Path TABLE = Path.of("src/test/resources/record/contradictions.txt");

  static Stream<String> sections() {
    return Stream.of(Golden.read(TABLE).split("\n\n")).filter(s -> s.contains(">"));
  }

  private static List<String> lines(String section) {
    return section
        .lines()
        .filter(l -> l.startsWith(">"))
        .map(l -> l.substring(2))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  @Test
  void everyRecordSaysWhatTheTableSays() {
    List<String> sections = List.of(Golden.read(TABLE).split("\n\n"));
    assertThat(sections).hasSizeGreaterThan(40);
    Golden.check(
        TABLE,
        sections.stream().map(ContradictionsTest::answered).collect(Collectors.joining("\n")));
  }

  private static String answered(String section) {
    String kept =
        section
            .lines()
            .filter(l -> l.startsWith(">") || l.startsWith("=="))
            .collect(Collectors.joining("\n"));
    if (!section.contains(">")) {
      return kept + "\n";
    }
    List<Finding> findings = Recorded.outcome(lines(section)).findings();
    String said =
        findings.isEmpty()
            ? "fine\n"
            : findings.stream().map(ContradictionsTest::shown).collect(Collectors.joining());
    return kept + "\n" + said;
  }

  private static String shown(Finding f) {
    var place = f.place().orElseThrow();
    String others =
        f.others().stream()
            .map(o -> "  see `" + o.span().text() + "`: " + o.text() + "\n")
            .collect(Collectors.joining());
    return f.level().name().toLowerCase(java.util.Locale.ROOT)
        + " "
        + f.rule()
        + " at `"
        + place.span().text()
        + "`\n  "
        + f.message()
        + "\n  "
        + f.help()
        + "\n"
        + others;
  }

  /** The order of the lines means nothing: the same is said of the same lines. */
  @ParameterizedTest
  @MethodSource("sections")
  void theOrderOfTheLinesMeansNothing(String section) {
    List<String> lines = lines(section);
    List<String> said = said(lines);
    Random random = new Random(27);
    for (int i = 0; i < 5; i++) {
      Collections.shuffle(lines, random);
      assertThat(said(lines)).containsExactlyInAnyOrderElementsOf(said);
    }
  }

  /** Files that two people kept and that were joined say what one said. */
  @ParameterizedTest
  @MethodSource("sections")
  void linesWrittenTwiceAreOneFact(String section) {
    List<String> lines = lines(section);
    List<String> twice = new ArrayList<>(lines);
    lines.forEach(l -> twice.add(l.replace(" ", "  ")));
    // A mistake of one line is told of for each of its copies, a contradiction of two but once.
    assertThat(new java.util.TreeSet<>(said(twice)))
        .isEqualTo(new java.util.TreeSet<>(said(lines)));
  }

  private static List<String> said(List<String> lines) {
    return Recorded.outcome(lines).findings().stream().map(ContradictionsTest::shown).toList();
  }

  @ParameterizedTest
  @MethodSource("sections")
  void everyMessageIsOneSentenceWithHelp(String section) {
    for (Finding finding : Recorded.outcome(lines(section)).findings()) {
      assertThat(finding.message()).matches("(?s)[A-Z`].*\\.");
      assertThat(finding.help()).matches("(?s)[A-Z`].*[.?]");
      assertThat(finding.rule()).matches("[a-z]+(-[a-z]+)*");
    }
  }
}
