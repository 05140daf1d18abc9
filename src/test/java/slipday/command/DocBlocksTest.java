package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.command.DocBlocks.Part;
import slipday.testing.Golden;

/**
 * No block in the docs goes unread: each is of a kind that some test runs, on a page that this test
 * takes up. A new page with a block, or a new kind of block on a page, fails here until a test does
 * what it shows.
 */
class DocBlocksTest {
  /** The tests that take up blocks, by page and kind of block. */
  private static final Map<String, Map<String, String>> RUN_BY =
      Map.of(
          "README.md", Map.of("season", "ReferenceTest", "sh", "DocBlocksTest"),
          "DEVELOPERS.md", Map.of("", "FloorsTest"),
          "docs/first-season.md", Map.of("season", "DocsTest", "console", "DocsTest"),
          "docs/tour.md",
              Map.of("season", "ReferenceTest", "console", "DocsTest", "csv", "DocsTest"),
          "docs/language.md", Map.of("season", "ReferenceTest"),
          "docs/rules.md",
              Map.of(
                  "season", "RulePageTest",
                  "csv", "RulePageTest",
                  "console", "RulePageTest",
                  "text", "RulePageTest"),
          "docs/git.md", Map.of("sh", "GitDocTest", "text", "GitDocTest"),
          "docs/editors/neovim.md", Map.of("lua", "RealEditorsTest"),
          "docs/editors/vscode/README.md", Map.of("sh", "RealEditorsTest"));

  /** Set-ups of editors that no test runs; that they name our command and files is held here. */
  private static final Map<String, Set<String>> ONLY_READ =
      Map.of(
          "docs/editors/emacs.md", Set.of("elisp"),
          "docs/editors/helix.md", Set.of("toml"),
          "docs/editors/kate.md", Set.of("json", "xml"));

  private static final Pattern NAMED =
      Pattern.compile("`(?:[^`\n]*/)?slipday ([a-z][a-z-]*)\\b[^`\n]*`");

  private static final Pattern LINK =
      Pattern.compile("\\]\\((?![a-z]+:)([^)#\\s]*)(?:#([^)]+))?\\)");

  private static final Pattern OPTION = Pattern.compile("(?<= )--[a-z][a-z-]+");

  @Test
  void everyBlockIsTakenUpByATest() {
    Map<String, Set<String>> there = new TreeMap<>();
    Map<String, Set<String>> takenUp = new TreeMap<>(ONLY_READ);
    RUN_BY.forEach((page, kinds) -> takenUp.put(page, kinds.keySet()));
    for (Path page : DocBlocks.pages()) {
      Set<String> kinds =
          DocBlocks.blocks(Golden.read(page)).stream()
              .map(Part::kind)
              .collect(Collectors.toCollection(TreeSet::new));
      if (!kinds.isEmpty()) {
        there.put(page.toString(), kinds);
      }
    }
    assertThat(there).isEqualTo(takenUp);
  }

  @Test
  void theTestsNamedAreThereAndTakeUpThePage() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("src/test/java"))) {
      Map<String, String> tests = new TreeMap<>();
      files
          .filter(p -> p.toString().endsWith("Test.java"))
          .forEach(p -> tests.put(p.getFileName().toString(), Golden.read(p)));
      RUN_BY.forEach(
          (page, kinds) ->
              kinds
                  .values()
                  .forEach(
                      test ->
                          assertThat(tests.get(test + ".java"))
                              .as(test + " of " + page)
                              .satisfiesAnyOf(
                                  t -> assertThat(t).contains('"' + page + '"'),
                                  t -> assertThat(t).contains("Path.of(\"docs\")"),
                                  t -> assertThat(t).contains("docs/editors/vscode"))));
    }
  }

  static List<Path> pages() {
    return DocBlocks.pages();
  }

  /** In running text, too: what is called a command is one, with options that it has. */
  @ParameterizedTest
  @MethodSource("pages")
  void everyCommandNamedIsThere(Path page) {
    Matcher named = NAMED.matcher(Golden.read(page));
    while (named.find()) {
      Run help = Run.in(Path.of(""), named.group(1), "--help");
      assertThat(help.exit()).as(named.group()).isZero();
      OPTION
          .matcher(named.group())
          .results()
          .forEach(o -> assertThat(help.out()).as(named.group()).contains(o.group()));
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void everyLinkLeadsSomewhere(Path page) {
    Path folder = page.toAbsolutePath().getParent();
    Matcher link = LINK.matcher(Golden.read(page));
    while (link.find()) {
      Path to = link.group(1).isEmpty() ? page : folder.resolve(link.group(1)).normalize();
      assertThat(to).as(link.group()).exists();
      if (link.group(2) != null) {
        assertThat(Golden.read(to).lines().filter(l -> l.startsWith("#")).map(l -> anchor(l)))
            .as(link.group())
            .contains(link.group(2));
      }
    }
  }

  /** The name by which common readers of Markdown lead to a heading. */
  private static String anchor(String heading) {
    String words = heading.replaceAll("^#+ ", "").toLowerCase(Locale.ROOT);
    return words.replaceAll("[^a-z0-9 -]", "").replace(' ', '-');
  }

  /** From the README every page can be reached in one step or by the page of its folder. */
  @Test
  void theReadmeNamesEveryPage() {
    String readme = Golden.read(Path.of("README.md"));
    assertThat(DocBlocks.pages())
        .filteredOn(p -> Path.of("docs").equals(p.getParent()))
        .allSatisfy(p -> assertThat(readme).contains("](" + p + ")"));
    String editors = Golden.read(Path.of("docs/editors/README.md"));
    assertThat(DocBlocks.pages())
        .filteredOn(p -> p.startsWith("docs/editors") && !p.endsWith("editors/README.md"))
        .allSatisfy(
            p -> assertThat(editors).contains("](" + Path.of("docs/editors").relativize(p) + ")"));
  }

  @Test
  void theReadmeBuildsAndChecksAsTheServersDo() {
    List<Part> shell =
        DocBlocks.blocks(Golden.read(Path.of("README.md"))).stream()
            .filter(b -> b.kind().equals("sh"))
            .toList();
    String[] steps = shell.get(0).text().strip().split(" && ");
    assertThat(steps[0]).isEqualTo("mvn -B -q -DskipTests package");
    String[] words = steps[1].split(" ");
    assertThat(words[0]).isEqualTo("target/slipday/bin/slipday");
    assertThat(Golden.read(Path.of("pom.xml"))).contains("src/dist/folder.xml");
    Run run = Run.in(Path.of(""), List.of(words).subList(1, words.length).toArray(String[]::new));
    assertThat(run.exit()).isZero();
    assertThat(run.out()).startsWith("Schedule ");
    assertThat(Golden.read(Path.of(".ci/run"))).contains(shell.get(1).text());
  }

  @Test
  void thePackedExtensionIsNamedByItsVersion() {
    String page = Golden.read(Path.of("docs/editors/vscode/README.md"));
    Matcher version =
        Pattern.compile("\"version\": \"([^\"]+)\"")
            .matcher(Golden.read(Path.of("docs/editors/vscode/package.json")));
    assertThat(version.find()).isTrue();
    assertThat(page).contains("cd docs/editors/vscode\n", "slipday-" + version.group(1) + ".vsix");
  }

  @ParameterizedTest
  @ValueSource(strings = {"emacs", "helix", "kate"})
  void aSetUpStartsTheServer(String editor) {
    String page = Golden.read(Path.of("docs/editors/" + editor + ".md"));
    String blocks =
        DocBlocks.blocks(page).stream().map(Part::text).collect(Collectors.joining("\n"));
    assertThat(blocks).containsPattern("slipday\\W+(args\\W+)?language-server");
    assertThat(Run.in(Path.of(""), "language-server", "--help").exit()).isZero();
  }
}
