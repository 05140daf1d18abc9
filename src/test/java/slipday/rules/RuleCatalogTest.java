package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.finding.Level;

/** The one list is complete and in order. */
class RuleCatalogTest {
  private static final Path SOURCES = Path.of("src/main/java/slipday");
  private static final Path CASES = Path.of("src/test/resources/cases/rules");

  /** An id as findings and mistakes are given it: the first literal of the call. */
  private static final Pattern GIVEN =
      Pattern.compile(
          "(?:Finding\\.(?:error|warning|note|at|placeless)|Mistake|\\.error|\\.mistake)\\(\\s*"
              + "\"([a-z]+(?:-[a-z]+)+)\"");

  private static final Pattern CONSTANT = Pattern.compile("String RULE = \"([a-z]+(?:-[a-z]+)+)\"");

  @Test
  void theListsAreSortedById() {
    assertThat(RuleCatalog.rules()).extracting(Rule::id).isSorted().doesNotHaveDuplicates();
    assertThat(RuleCatalog.mistakes()).isSorted().doesNotHaveDuplicates();
    assertThat(RuleCatalog.ids())
        .hasSize(RuleCatalog.rules().size() + RuleCatalog.mistakes().size());
  }

  @Test
  void idsAreKebabCase() {
    assertThat(RuleCatalog.ids()).allMatch(id -> id.matches("[a-z]+(-[a-z]+)+"));
  }

  @Test
  void everyRuleClassIsListed() {
    JavaClasses classes =
        new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("slipday.rules");
    Set<String> rules =
        classes.stream()
            .filter(c -> c.isAssignableTo(Rule.class) && !isAbstract(c))
            .map(JavaClass::getName)
            .collect(Collectors.toSet());
    assertThat(RuleCatalog.rules().stream().map(r -> r.getClass().getName()))
        .containsExactlyInAnyOrderElementsOf(rules);
  }

  @Test
  void theMilderLevelIsMilder() {
    assertThat(RuleCatalog.rules())
        .allSatisfy(r -> assertThat(r.milderLevel()).isLessThanOrEqualTo(r.level()));
    assertThat(RuleCatalog.rules()).extracting(Rule::level).contains(Level.values());
  }

  @Test
  void everyIdGivenInTheSourcesIsListed() throws IOException {
    Set<String> given = new TreeSet<>();
    for (Path file : sources()) {
      String text = Files.readString(file);
      GIVEN.matcher(text).results().forEach(m -> given.add(m.group(1)));
      CONSTANT.matcher(text).results().forEach(m -> given.add(m.group(1)));
    }
    assertThat(given).hasSizeGreaterThan(20);
    assertThat(RuleCatalog.mistakes()).containsAll(given);
  }

  @Test
  void everyListedMistakeIsGivenSomewhere() throws IOException {
    StringBuilder all = new StringBuilder();
    for (Path file : sources()) {
      if (!file.endsWith("RuleCatalog.java")) {
        all.append(Files.readString(file));
      }
    }
    assertThat(RuleCatalog.mistakes())
        .allSatisfy(id -> assertThat(all.indexOf("\"" + id + "\"")).as(id).isPositive());
  }

  @Test
  void everyRuleHasItsCases() throws IOException {
    Set<String> folders = new TreeSet<>();
    try (Stream<Path> all = Files.list(CASES)) {
      all.map(p -> p.getFileName().toString()).forEach(folders::add);
    }
    Set<String> wanted = new TreeSet<>(List.of("allow-not-possible", "allow-without-reason"));
    wanted.add("idle-allow");
    RuleCatalog.rules().forEach(r -> wanted.add(r.id()));
    assertThat(folders).isEqualTo(wanted);
  }

  private static boolean isAbstract(JavaClass type) {
    return type.getModifiers().contains(JavaModifier.ABSTRACT);
  }

  private static List<Path> sources() throws IOException {
    try (Stream<Path> all = Files.walk(SOURCES)) {
      return all.filter(p -> p.toString().endsWith(".java")).toList();
    }
  }
}
