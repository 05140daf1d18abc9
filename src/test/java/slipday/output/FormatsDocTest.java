package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slipday.command.CommandRuns;
import slipday.testing.Golden;

/**
 * The reference in docs/formats.md is written from the records of slipday.output.data and what
 * their comments say of each field, so that it can't fall behind them.
 */
class FormatsDocTest {
  private static final Path PAGE = Path.of("docs/formats.md");
  private static final Path DATA = Path.of("src/main/java/slipday/output/data");
  private static final Pattern RECORD =
      Pattern.compile(
          "(?s)(/\\*\\*(?:(?!\\*/).)*\\*/\\s*)?(?:public )?record (\\w+)\\((.*?)\\)\\s*\\{");
  private static final Pattern PARAM = Pattern.compile("(?s)@param (\\w+) (.*?)(?=@param|$)");
  private static final Properties GLOSSARY = glossary();
  private static final Pattern FORMAT = Pattern.compile("Head\\.of\\(\"([a-z-]+)\"\\)");

  private record Field(String name, String type, String says) {}

  private record Described(String name, String says, List<Field> fields) {}

  @Test
  void theReferenceIsInStep() throws IOException {
    String page = Golden.read(PAGE);
    String told = between(page, "documents", documents());
    Golden.check(PAGE, between(told, "tables", tables()));
  }

  private static String between(String page, String mark, String text) {
    String begin = "<!-- " + mark + " -->\n";
    String end = "<!-- end of " + mark + " -->";
    int from = page.indexOf(begin) + begin.length();
    int to = page.indexOf(end);
    assertThat(from).as(mark).isLessThanOrEqualTo(to);
    return page.substring(0, from) + text + page.substring(to);
  }

  private static String tables() {
    StringBuilder out = new StringBuilder("| command | columns |\n| --- | --- |\n");
    for (String command : List.of("check", "schedule", "bloom", "climate", "lots", "labels")) {
      out.append(row(command, command + " plans/tern-hollow/plan.season --format csv"));
    }
    out.append(
        row("candidates", "candidates plans/tern-hollow/recorded.season tern-amber --format csv"));
    out.append(
        row("progress", "progress plans/tern-hollow/recorded.season tern-amber --format csv"));
    out.append(
        row("store", "store src/test/resources/cases/command/store/plan.season --format csv"));
    out.append(row("choose", "choose plans/tern-hollow/recorded.season tern-amber --format csv"));
    out.append(row("crops", "crops --format csv"));
    out.append(row("crops NAME", "crops muskmelon --format csv"));
    return out.toString();
  }

  private static String row(String shown, String command) {
    String header = CommandRuns.out(command.split(" ")).lines().findFirst().orElseThrow();
    return "| `slipday " + shown + "` | `" + header.replace(",", "`, `") + "` |\n";
  }

  private static String documents() throws IOException {
    Map<String, String> formats = new TreeMap<>();
    Map<String, Described> records = new LinkedHashMap<>();
    try (Stream<Path> files = Files.list(DATA)) {
      for (Path file : files.sorted().toList()) {
        String source = Golden.read(file);
        List<Described> described = describe(source);
        described.forEach(d -> records.put(d.name(), d));
        Matcher format = FORMAT.matcher(source);
        if (format.find()) {
          String top =
              described.stream()
                  .filter(d -> d.fields().stream().anyMatch(f -> f.type().equals("Head")))
                  .findFirst()
                  .orElseThrow()
                  .name();
          formats.put(format.group(1), top);
        }
      }
    }
    return pages(formats, records);
  }

  private static String pages(Map<String, String> formats, Map<String, Described> records) {
    StringBuilder out = new StringBuilder();
    formats.forEach((format, top) -> out.append(table("### `" + format + "`", records.get(top))));
    out.append("\n### Parts of documents\n");
    records.values().stream()
        .filter(d -> !formats.containsValue(d.name()))
        .filter(d -> !d.fields().isEmpty())
        .sorted(java.util.Comparator.comparing(Described::name))
        .forEach(d -> out.append(table("#### " + shown(d.name()), d)));
    return out.append('\n').toString();
  }

  private static String table(String title, Described described) {
    StringBuilder out = new StringBuilder("\n" + title + "\n\n");
    if (!described.says().isEmpty()) {
      out.append(described.says()).append("\n\n");
    }
    out.append("| field | is | means |\n| --- | --- | --- |\n");
    for (Field field : described.fields()) {
      out.append("| `").append(field.name()).append("` | ").append(kind(field.type()));
      out.append(" | ").append(meaning(described, field)).append(" |\n");
    }
    return out.toString();
  }

  /** What the record's own comment says of a field, or else the glossary. */
  private static String meaning(Described described, Field field) {
    if (!field.says().isEmpty()) {
      return field.says();
    }
    String own = shown(described.name()) + "." + field.name();
    String means = GLOSSARY.getProperty(own, GLOSSARY.getProperty(field.name(), ""));
    assertThat(means)
        .as("what `%s` means; src/test/resources/formats has no word of it", own)
        .isNotEmpty();
    return means;
  }

  private static Properties glossary() {
    Properties words = new Properties();
    try (Reader in =
        Files.newBufferedReader(Path.of("src/test/resources/formats/fields.properties"))) {
      words.load(in);
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String shown(String record) {
    return record.endsWith("Data") ? record.substring(0, record.length() - 4) : record;
  }

  private static String kind(String type) {
    Matcher generic = Pattern.compile("(\\w+)<(.*)>").matcher(type);
    if (generic.matches()) {
      return switch (generic.group(1)) {
        case "Optional" -> kind(generic.group(2)) + " or null";
        case "List" -> "list of " + kind(generic.group(2));
        default -> "object of " + generic.group(2);
      };
    }
    return switch (type) {
      case "String" -> "text";
      case "int", "Integer" -> "whole number";
      case "double", "Double", "BigDecimal" -> "number";
      case "boolean", "Boolean" -> "true or false";
      case "LocalDate" -> "date";
      default -> shown(type);
    };
  }

  private static List<Described> describe(String source) {
    List<Described> found = new ArrayList<>();
    Matcher record = RECORD.matcher(source);
    while (record.find()) {
      String comment = record.group(1) == null ? "" : plain(record.group(1));
      Map<String, String> params = new LinkedHashMap<>();
      Matcher param = PARAM.matcher(comment);
      while (param.find()) {
        params.put(param.group(1), param.group(2).strip());
      }
      int at = comment.indexOf("@param");
      String says = (at < 0 ? comment : comment.substring(0, at)).strip();
      found.add(new Described(record.group(2), says, fields(record.group(3), params)));
    }
    return found;
  }

  private static String plain(String comment) {
    return comment
        .replaceAll("/\\*\\*|\\*/", "")
        .replaceAll("(?m)^\\s*\\* ?", "")
        .replaceAll("\\s+", " ")
        .replaceAll("\\{@(?:code|link) ([^}]*)}", "`$1`")
        .replace("|", "\\|")
        .replace("<p>", "")
        .strip();
  }

  private static List<Field> fields(String components, Map<String, String> params) {
    List<Field> fields = new ArrayList<>();
    for (String component : components.split(",(?![^<]*>)")) {
      String[] words = component.strip().split("\\s+(?=\\w+$)");
      if (words.length == 2) {
        fields.add(new Field(words[1], words[0], params.getOrDefault(words[1], "")));
      }
    }
    return fields;
  }
}
