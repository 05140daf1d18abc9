package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slipday.testing.Golden;

/** What the templates may put on a page unescaped: what is made here, and no more. */
class TemplateTest {
  private static final Path FOLDER = Path.of("src/main/resources/slipday/report");

  @Test
  void onlyOurOwnMarkupIsLetThroughUnescaped() {
    Set<String> raw = new TreeSet<>();
    for (String name : templates()) {
      Matcher unescaped =
          Pattern.compile("\\{\\{\\{(\\w+)}}}|\\{\\{&\\s*(\\w+)}}")
              .matcher(Golden.read(FOLDER.resolve(name)));
      while (unescaped.find()) {
        raw.add(unescaped.group());
      }
    }
    assertThat(raw)
        .containsExactlyInAnyOrder(
            "{{{svg}}}",
            "{{{signs}}}",
            "{{{sign}}}",
            "{{{months}}}",
            "{{{lines}}}",
            "{{{code}}}",
            "{{{scale}}}",
            "{{{style}}}",
            "{{{script}}}",
            "{{{data}}}",
            "{{{head}}}",
            "{{{under}}}",
            "{{{written}}}",
            "{{{bar}}}");
  }

  @Test
  void noElementHasStyleOrScriptOfItsOwn() {
    for (String name : templates()) {
      assertThat(Golden.read(FOLDER.resolve(name)))
          .as("the policy would bar them")
          .doesNotContainPattern("\\sstyle=|\\son\\w+=|javascript:");
    }
  }

  private static Set<String> templates() {
    String[] names = FOLDER.toFile().list((folder, name) -> name.endsWith(".html"));
    assertThat(names).isNotEmpty();
    return Set.of(names);
  }
}
