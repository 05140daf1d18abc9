package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.testing.Golden;

/**
 * docs/methods.md names every publication that the code leans on, and no other. A formula's home is
 * the class that has it; the page is held to what is said there, author, year and place.
 */
class MethodsDocTest {
  private static final Path PAGE = Path.of("docs/methods.md");

  /** The author or two authors, the year, and what follows up to {@code volume:page} if it does. */
  private static final Pattern CITED =
      Pattern.compile(
          "(?:(?<first>\\p{Lu}[\\p{L}'’-]+) and (?:\\p{Lu}\\.[- ]?)*)?(?<who>\\p{Lu}[\\p{L}'’-]+) (?<year>(?:18|19|20)\\d\\d)(?=[,:;)])"
              + "(?:, (?<where>\\p{Lu}[^,;:()]*? \\d+:\\d+))?");

  private static final Pattern MONTH =
      Pattern.compile(
          "January|February|March|April|May|June|July|August|Sept?(ember)?|"
              + "October|November|December|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Oct|Nov|Dec");

  @Test
  void thePageHasThePublicationsOfTheCode() throws IOException {
    Map<String, String> code = new TreeMap<>();
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      for (Path file : files.filter(p -> p.toString().endsWith(".java")).sorted().toList()) {
        String text = plain(Golden.read(file));
        cited(text)
            .forEach(
                (key, where) -> {
                  String before = code.putIfAbsent(key, where);
                  if (before == null || before.isEmpty()) {
                    code.put(key, where);
                  } else if (!where.isEmpty()) {
                    assertThat(where).as(key + " in " + file).isEqualTo(before);
                  }
                });
      }
    }
    Map<String, String> page = cited(Golden.read(PAGE).replaceAll("\\s+", " "));
    assertThat(code).hasSizeGreaterThan(30);
    assertThat(new TreeSet<>(page.keySet())).isEqualTo(new TreeSet<>(code.keySet()));
    assertThat(page).isEqualTo(code);
  }

  @Test
  void whatIsFromMemoryIsSaidToBe() throws IOException {
    String page = Golden.read(PAGE).replaceAll("\\s+", " ");
    assertThat(page).contains("from memory");
    try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
      assertThat(files.filter(p -> p.toString().endsWith(".java")).map(p -> plain(Golden.read(p))))
          .filteredOn(t -> t.contains("7064:2003"))
          .hasSize(1);
    }
    assertThat(page).contains("ISO/IEC 7064:2003");
  }

  private static Map<String, String> cited(String text) {
    Map<String, String> found = new TreeMap<>();
    Matcher cited = CITED.matcher(text);
    while (cited.find()) {
      if (!MONTH.matcher(cited.group("who")).matches()) {
        String where = cited.group("where") == null ? "" : cited.group("where");
        String first = cited.group("first") == null ? "" : cited.group("first") + " and ";
        found.merge(
            first + cited.group("who") + " " + cited.group("year"),
            where,
            (a, b) -> a.isEmpty() ? b : a);
      }
    }
    return found;
  }

  /** Comments and texts as they read, without the marks of their lines. */
  private static String plain(String java) {
    return java.replaceAll("\"\\s*\\+\\s*\"", "")
        .replaceAll("\\n\\s*\\*\\s", " ")
        .replaceAll("\\s+", " ");
  }
}
