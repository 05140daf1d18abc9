package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.app.Checked;
import slipday.finding.Finding;
import slipday.testing.Golden;

/** Pages are of one form, their examples do what they say, and the reference is made of them. */
class RulePageTest {
  private static final Path PAGES = Path.of("src/main/resources/slipday/rules");
  private static final String WITH_WEATHER =
      """
      season 2026

      site garden
        place          45 N, 73 W
        time zone      America/New_York
        weather        file "weather.csv"
      """;

  static Stream<RulePage> pages() {
    return RulePage.all().stream();
  }

  @Test
  void everyIdHasItsPageAndEveryPageItsId() throws IOException {
    Set<String> files = new TreeSet<>();
    try (Stream<Path> all = Files.list(PAGES)) {
      all.map(p -> p.getFileName().toString())
          .filter(n -> n.endsWith(".md"))
          .forEach(n -> files.add(n.substring(0, n.length() - 3)));
    }
    assertThat(files).isEqualTo(RuleCatalog.ids());
  }

  @ParameterizedTest
  @MethodSource("pages")
  void thePageIsOfTheOneForm(RulePage page) {
    assertThat(page.text()).startsWith("# " + page.id() + "\n").endsWith("\n");
    assertThat(page.headings()).isEqualTo(RulePage.HEADINGS);
    assertThat(RulePage.HEADINGS).allSatisfy(h -> assertThat(page.section(h)).isNotBlank());
    assertThat(page.sentence()).matches("[A-Z`].*\\.");
    assertThat(page.examples("Example")).hasSize(1);
    assertThat(page.examples("Instead")).hasSize(1);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void theExampleBreaksTheRule(RulePage page) {
    Checked checked = checked(page.examples("Example").get(0));
    assertThat(Plans.of(checked, page.id())).as(others(checked)).isNotEmpty();
    if (RuleCatalog.rule(page.id()).isPresent()) {
      assertThat(checked.season()).isPresent();
    } else if (checked.season().isEmpty()) {
      assertThat(checked.findings().size()).as(others(checked)).isLessThanOrEqualTo(2);
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void theOtherPlanDoesNot(RulePage page) {
    Checked checked = checked(page.examples("Instead").get(0));
    assertThat(Plans.of(checked, page.id())).as(others(checked)).isEmpty();
    assertThat(checked.season()).as(others(checked)).isPresent();
  }

  @Test
  void theReferenceIsMadeOfThePages() {
    Golden.check(Path.of("docs/rules.md"), RulePage.reference());
  }

  @Test
  void aPageThatIsNotThereIsEmpty() {
    assertThat(RulePage.of("no-such-rule")).isEmpty();
    assertThat(RulePage.of("beds-overlap")).isPresent();
  }

  private static Checked checked(RulePage.Example example) {
    return switch (example.kind()) {
      case "season" -> Plans.check(example.plan());
      case "csv" -> Plans.check(WITH_WEATHER, example.text());
      case "console" -> Plans.checkNothing(example.text().strip().replaceAll("^.* ", ""));
      case "text" ->
          Plans.check(RulePage.preamble() + "\nbed " + "south ".repeat(longLine(example)));
      default -> throw new IllegalArgumentException(example.kind());
    };
  }

  /** Words enough for a line of the length an example speaks of, which is too long to print. */
  private static int longLine(RulePage.Example example) {
    return Integer.parseInt(example.text().replaceAll("\\D", "")) / "south ".length() + 1;
  }

  private static String others(Checked checked) {
    List<Finding> findings = checked.findings();
    return findings.stream().map(Plans::shown).collect(Collectors.joining());
  }
}
