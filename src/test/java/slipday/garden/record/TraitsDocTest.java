package slipday.garden.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.Test;
import slipday.testing.Golden;

/** The page of the language names every trait that is known. */
class TraitsDocTest {
  private static final Path PAGE = Path.of("docs/language.md");
  private static final String BEGIN = "<!-- traits: begin -->\n";
  private static final String END = "<!-- traits: end -->\n";

  @Test
  void thePageNamesEveryTrait() {
    String page = Golden.read(PAGE);
    assertThat(page).contains(BEGIN).contains(END);
    Golden.check(
        PAGE,
        StringUtils.substringBefore(page, BEGIN)
            + BEGIN
            + "\n| given | for example | traits |\n| --- | --- | --- |\n"
            + row("points, out of how many", Traits.SCORES, " 8 of 10")
            + row("a length", Traits.LENGTHS, " 21 cm")
            + "\n"
            + END
            + StringUtils.substringAfter(page, END));
  }

  /** What a goal can aim at besides is named by hand. */
  @Test
  void thePageNamesWhatElseCanBeAimedAt() {
    String introduction = StringUtils.substringBefore(Golden.read(PAGE), "## Reference");
    assertThat(KnownTraits.of(List.of()).names())
        .filteredOn(t -> !Traits.SCORES.contains(t) && !Traits.LENGTHS.contains(t))
        .hasSizeGreaterThan(3)
        .allSatisfy(t -> assertThat(introduction).contains(t));
  }

  private static String row(String given, List<String> traits, String figure) {
    return "| "
        + given
        + " | `"
        + traits.get(0)
        + figure
        + "` | "
        + String.join(", ", traits.stream().map(t -> "`" + t + "`").toList())
        + " |\n";
  }
}
