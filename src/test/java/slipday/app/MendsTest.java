package slipday.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.finding.Finding;
import slipday.finding.Mend;
import slipday.testing.Cases;

/** What a finding offers to write does mend it, wherever it is found. */
class MendsTest {
  private static final Path MISTAKES =
      Path.of("src/test/resources/cases/command/mistakes/plan.season");
  private static final String GARDEN =
      """
      season 2026
      site hill "Hill"
        place          44.21 N, 72.58 W, 310 m
        time zone      America/New_York
        last frost     18 May, 1 in 10 after 30 May
        first frost    27 September, 1 in 10 before 14 September
      bed long
        size           12 m x 1.2 m
      line amber
        is a           muskmelon
        purpose        to fix
      lot amber-f3
        of             amber
        generation     F3
        seeds          140
        harvested      2025
      """;

  /** Each plan that breaks a rule, and one full of mistakes. */
  static Stream<Path> plans() {
    Stream<Path> cases = Cases.in("rules").flatMap(c -> seasons(c.folder()));
    return Stream.concat(cases, Stream.of(MISTAKES));
  }

  private static Stream<Path> seasons(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(f -> f.getFileName().toString().startsWith("fires")).toList().stream()
          .filter(f -> f.toString().endsWith(".season"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Checked check(Path plan, Map<Path, String> edited) {
    return new Pipeline(FileTexts.withOverlays(edited), true, LocalDate.of(2026, 12, 31))
        .check(plan, plan.toString());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void eachMendMends(Path plan) {
    List<Finding> findings = check(plan, Map.of()).findings();
    for (Finding finding : findings) {
      for (Mend mend : finding.mends()) {
        if (mend.toFillIn()) {
          continue;
        }
        List<Finding> after = check(plan, edited(mend)).findings();
        assertThat(after.stream().map(Finding::message))
            .as("%s of %s", mend, finding)
            .doesNotContain(finding.message());
      }
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void anAllowanceAllowsOnceItsReasonIsWritten(Path plan) {
    for (Finding finding : check(plan, Map.of()).findings()) {
      for (Mend mend : finding.mends()) {
        if (mend.toFillIn()) {
          Map<Path, String> edited = edited(mend);
          edited.replaceAll((path, text) -> text.replace("\"\"", "\"we know\""));
          assertThat(check(plan, edited).findings())
              .filteredOn(f -> f.rule().equals(finding.rule()))
              .filteredOn(f -> f.subject().equals(finding.subject()))
              .as("%s", finding)
              .isNotEmpty()
              .allSatisfy(f -> assertThat(f.allowed()).contains("we know"));
        }
      }
    }
  }

  private static Map<Path, String> edited(Mend mend) {
    Map<Path, String> texts = new HashMap<>();
    mend.edits().stream()
        .sorted(Comparator.comparing(Mend.Edit::place).reversed())
        .forEach(
            e -> {
              Path path = Path.of(e.place().source().name()).toAbsolutePath().normalize();
              String text = texts.getOrDefault(path, e.place().source().text());
              texts.put(
                  path,
                  text.substring(0, e.place().start())
                      + e.text()
                      + text.substring(e.place().end()));
            });
    return texts;
  }

  /** Labels of what is offered for the only mistake of a garden with these lines below it. */
  private static List<String> offered(String lines) {
    Path plan = Path.of("nowhere/plan.season").toAbsolutePath();
    Map<Path, String> texts = new HashMap<>();
    texts.put(plan, GARDEN + lines);
    return new Pipeline(FileTexts.withOverlays(texts), false, LocalDate.of(2026, 12, 31))
        .check(plan, "plan.season").findings().stream()
            .filter(f -> !f.mends().isEmpty())
            .flatMap(f -> f.mends().stream())
            .map(Mend::label)
            .toList();
  }

  @Test
  void namesWordsUnitsAndFormsAreOffered() {
    assertThat(offered("grow amber-f4\n")).containsExactly("Write `amber-f3`");
    assertThat(offered("gorw amber-f3\n")).containsExactly("Write `grow`");
    assertThat(offered("grow amber-f3\n  polinate self by hand, for 2 fruits\n"))
        .containsExactly("Write `pollinate`");
    assertThat(offered("grow amber-f3\n  flowers cover the choosen\n"))
        .containsExactly("Write `chosen`");
    assertThat(offered("grow amber-f3\n  plants 6, 60 apart\n"))
        .containsExactly("Write `60 m`", "Write `60 cm`", "Write `60 ft`", "Write `60 inch`");
    assertThat(offered("grow amber-f3\n  plants 6, 60 mettre apart\n"))
        .containsExactly("Write `metre`");
    assertThat(offered("grow amber-f3\n  plants 6, 60mettre apart\n"))
        .containsExactly("Write `60 metre`");
    assertThat(offered("grow amber-f3\n  plants 6, 18in apart\n"))
        .containsExactly("Write `18 inch`");
    assertThat(offered("grow amber-f3\n  sow on 3 Mai\n")).containsExactly("Write `May`");
    assertThat(offered("bed b\n  size 12mx1.2m\n")).containsExactly("Write `12 m x 1.2 m`");
    assertThat(offered("2026-07-08 selfd amber-f3, tag 1A\n")).containsExactly("Write `selfed`");
    assertThat(offered("allow bed-overful\n  in long\n  because \"x\"\n"))
        .containsExactly("Write `bed-overfull`");
  }

  /** Both days move, or the seedlings would be of another age. */
  @Test
  void aDayOfSowingMovesByAsMuchAsThatOfPlantingOut() {
    String lines =
        "grow amber-f3\n  in long\n  plants 6, 60 cm apart\n  start indoors\n  sow on 1 April\n"
            + "  plant out on 20 April\n";
    Path plan = Path.of("nowhere/plan.season").toAbsolutePath();
    Checked checked = check(plan, Map.of(plan, GARDEN + lines));
    Mend shift =
        checked.findings().stream()
            .flatMap(f -> f.mends().stream())
            .filter(m -> m.label().startsWith("Shift"))
            .findFirst()
            .orElseThrow();
    assertThat(shift.edits()).hasSize(2);
    List<String> texts = new ArrayList<>(shift.edits().stream().map(Mend.Edit::text).toList());
    assertThat(day(texts.get(1)) - day(texts.get(0))).isEqualTo(19);
  }

  /** The day of the year in the last two words of a line. */
  private static int day(String line) {
    String[] words = line.split("\\s+");
    int last = words.length - 1;
    return LocalDate.parse(
            "2026 " + words[last - 1] + " " + words[last],
            java.time.format.DateTimeFormatter.ofPattern("yyyy d MMMM", java.util.Locale.ENGLISH))
        .getDayOfYear();
  }
}
