package slipday.language;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.testing.Golden;

/** The pages for readers are in step with the language. */
class ReferenceTest {
  private static final Path PAGE = Path.of("docs/language.md");

  /** Its examples break rules, and its own test runs them. */
  private static final Path RULES = Path.of("docs/rules.md");

  private static final String BEGIN = "<!-- reference: begin -->\n";
  private static final String END = "<!-- reference: end -->\n";
  private static final Pattern FENCED = Pattern.compile("```season\n(.*?)```", Pattern.DOTALL);

  /** {@code -Dupdate} writes the page's reference anew. */
  @Test
  void theReferenceOnThePageIsThatOfTheTables() {
    String page = Golden.read(PAGE);
    String before = StringUtils.substringBefore(page, BEGIN);
    String after = StringUtils.substringAfter(page, END);
    assertThat(page).contains(BEGIN).contains(END);
    Golden.check(PAGE, before + BEGIN + "\n" + Reference.text() + "\n" + END + after);
  }

  @Test
  void theReferenceHasEveryClause() {
    List<String> rows = Reference.text().lines().toList();
    for (Clause clause : Clauses.all()) {
      boolean fact = CropClauses.isFact(clause);
      assertThat(rows.stream().filter(r -> r.startsWith("| `" + clause.name() + "` | ")))
          .as(clause.name())
          .filteredOn(r -> r.contains(clause.sentence()) && r.contains(clause.example()))
          .hasSize(fact || clause.isDated() ? 1 : clause.where().size());
    }
    assertThat(Declaration.values())
        .allSatisfy(
            d ->
                assertThat(Reference.text()).contains("### `" + d.word() + "`\n\n" + d.sentence()));
  }

  @Test
  void everyClauseOfAPlanSaysWhatHoldsWithoutIt() {
    for (Clause clause : Clauses.all()) {
      boolean ofPlan = !CropClauses.isFact(clause) && !clause.isDated();
      boolean ofCropFiles =
          ofPlan && clause.where().stream().allMatch(d -> CropClauses.ALL.contains(clause));
      assertThat(Unsaid.of(clause).isPresent()).as(clause.name()).isEqualTo(ofPlan && !ofCropFiles);
    }
  }

  @Test
  void everyRowOfATableHasAsManyCellsAsItsHead() {
    int cells = 0;
    for (String line : Reference.text().lines().toList()) {
      int here = line.replace("\\|", "").split("\\|", -1).length;
      if (cells > 1 && here > 1) {
        assertThat(here).as(line).isEqualTo(cells);
      }
      cells = here;
    }
  }

  @Test
  void thePageNamesEveryDeclarationWord() {
    String introduction = StringUtils.substringBefore(Golden.read(PAGE), BEGIN);
    assertThat(Declaration.words())
        .allSatisfy(w -> assertThat(introduction).contains("`" + w + "`"));
  }

  static Stream<Arguments> examples() throws IOException {
    try (Stream<Path> pages = Files.walk(Path.of("docs"))) {
      List<Path> all =
          Stream.concat(Stream.of(Path.of("README.md")), pages)
              .filter(p -> p.toString().endsWith(".md") && !p.equals(RULES))
              .sorted()
              .toList();
      return all.stream().flatMap(ReferenceTest::examplesOf);
    }
  }

  private static Stream<Arguments> examplesOf(Path page) {
    return FENCED.matcher(Golden.read(page)).results().map(r -> Arguments.of(page, r.group(1)));
  }

  @ParameterizedTest(name = "{0} [{index}]")
  @MethodSource("examples")
  void everyExampleOnThePagesIsFreeOfMistakes(Path page, String example) {
    assertThat(Texts.findings(example)).as(page.toString()).isEmpty();
  }

  @Test
  void thereAreExamples() throws IOException {
    assertThat(examples()).hasSizeGreaterThan(5);
  }
}
