package slipday.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.language.Clause;
import slipday.language.Clauses;
import slipday.language.Declaration;
import slipday.output.Json;
import slipday.testing.Golden;

/** The grammar that colours season files before a server answers is written from the table. */
class TextMateTest {
  private static final Path GRAMMAR =
      Path.of("docs/editors/vscode/syntaxes/season.tmLanguage.json");
  private static final String DATE = "\\d{4}-\\d{2}-\\d{2}";

  @Test
  void theGrammarIsInStepWithTheTable() {
    Golden.check(GRAMMAR, Json.text(grammar()));
    assertThat(Golden.read(GRAMMAR)).contains("|grow|").contains("seed\\\\s+parent");
  }

  private static Map<String, Object> grammar() {
    Map<String, Object> grammar = new LinkedHashMap<>();
    grammar.put("name", "Season");
    grammar.put("scopeName", "source.season");
    grammar.put("fileTypes", List.of("season"));
    grammar.put(
        "patterns",
        List.of(
            match("comment.line.number-sign", "(?:^|(?<=\\s))#(?:\\s.*)?$"),
            match("string.quoted.double", "[\"\u201c\u201d][^\"\u201c\u201d]*[\"\u201c\u201d]?"),
            match(
                "keyword.control",
                "(?i)^\\s*(?:" + any(Declaration.words().stream()) + ")(?=\\s|$)"),
            entry(),
            match("support.type.property-name", "(?i)^\\s*(?:" + any(names(false)) + ")(?=\\s|$)"),
            match("constant.numeric", "(?<![\\p{L}\\p{N}-])\\d+(?:\\.\\d+)?(?![\\p{L}\\p{N}-])")));
    return grammar;
  }

  private static Map<String, Object> match(String scope, String regex) {
    Map<String, Object> pattern = new LinkedHashMap<>();
    pattern.put("name", scope + ".season");
    pattern.put("match", regex);
    return pattern;
  }

  /** A line of the record: its date, and what was done. */
  private static Map<String, Object> entry() {
    Map<String, Object> pattern = new LinkedHashMap<>();
    pattern.put("match", "(?i)^\\s*(" + DATE + ")\\s+(" + any(names(true)) + ")(?=\\s|$)");
    pattern.put(
        "captures",
        new TreeMap<>(
            Map.of(
                "1", Map.of("name", "constant.other.date.season"),
                "2", Map.of("name", "entity.name.function.season"))));
    return pattern;
  }

  private static Stream<String> names(boolean dated) {
    return Clauses.all().stream().filter(c -> c.isDated() == dated).map(Clause::name).distinct();
  }

  /** Longer ones first, so that they are not cut short. */
  private static String any(Stream<String> words) {
    return words
        .sorted(Comparator.comparingInt(String::length).reversed().thenComparing(w -> w))
        .map(w -> w.replace(" ", "\\s+"))
        .collect(Collectors.joining("|"));
  }
}
