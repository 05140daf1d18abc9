package slipday.app;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Nearest;
import slipday.finding.Outcome;
import slipday.measure.Dimension;
import slipday.measure.Unit;

/** Rows of a spreadsheet as lines of the record. */
public final class RecordTable {
  /** What a column can hold besides a trait. */
  public static final List<String> FIELDS =
      List.of(
          "date",
          "tag",
          "planting",
          "plant",
          "by",
          "by plant",
          "state",
          "weight",
          "less",
          "sweetness",
          "fault");

  private static final Set<String> FRUIT =
      Set.of("picked", "weighed", "sweetness", "scored", "measured");
  private static final Set<String> POLLINATIONS =
      Set.of("selfed", "sibbed", "crossed", "backcrossed");

  private static final Pattern LINE_END = Pattern.compile("\\r\\n?|\\n");
  private static final char[] DELIMITERS = {',', ';', '\t'};

  /** {@code Taste (of 10)}. */
  private static final Pattern OUT_OF = Pattern.compile("\\bof (\\d+)[)\\]]?$");

  private final String verb;
  private final Map<String, String> columns;

  private RecordTable(String verb, Map<String, String> columns) {
    this.verb = verb;
    this.columns = columns;
  }

  /**
   * @param verb what each row tells of, such as {@code picked}
   * @param columns which column holds what: {@code date=Day,tag=Fruit,weight=Gross kg}
   */
  public static Outcome<List<RecordBook.Wish>> read(String text, String verb, String columns) {
    if (!FRUIT.contains(verb) && !POLLINATIONS.contains(verb)) {
      return wrong(
          "A table can't tell what was `" + verb + "`.",
          "Say `picked`, `weighed`, `selfed`, `sibbed`, `crossed` or `backcrossed`.");
    }
    Map<String, String> mapping = new LinkedHashMap<>();
    for (String pair : columns.split(",", -1)) {
      int equals = pair.indexOf('=');
      if (equals < 1 || equals == pair.length() - 1) {
        return wrong(
            "`" + pair.strip() + "` does not say which column holds what.",
            "Write it as `date=Day,tag=Fruit`.");
      }
      mapping.put(
          pair.substring(0, equals).strip().toLowerCase(Locale.ROOT),
          pair.substring(equals + 1).strip());
    }
    return new RecordTable(verb, mapping).read(text);
  }

  private static Outcome<List<RecordBook.Wish>> wrong(String message, String help) {
    return new Outcome<>(
        List.of(),
        List.of(Finding.placeless("unusable-file", Level.ERROR, message).withHelp(help)));
  }

  private Outcome<List<RecordBook.Wish>> read(String text) {
    String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
    char delimiter = delimiter(bare);
    boolean decimalCommas = delimiter != ',';
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(delimiter)
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .setAllowMissingColumnNames(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(bare), format)) {
      List<String> names = parser.getHeaderNames();
      for (String column : columns.values()) {
        if (!names.contains(column)) {
          return wrong(
              "The table has no column `" + column + "`.", Nearest.help(column, names, "column"));
        }
      }
      List<RecordBook.Wish> wishes = new ArrayList<>();
      for (CSVRecord row : parser) {
        // Spreadsheets save rows that were never filled in.
        if (!row.stream().allMatch(String::isBlank)) {
          // The parser stands behind the row, which may have taken several lines.
          long line = parser.getCurrentLineNumber() - lineEnds(row);
          wishes.add(new RecordBook.Wish("line " + line, line(row, decimalCommas)));
        }
      }
      return Outcome.of(wishes);
    } catch (IOException
        | IllegalArgumentException
        | java.io.UncheckedIOException
        | IllegalStateException e) {
      return wrong(
          "The table can't be read: " + e.getMessage(),
          "Save it again as CSV, with names in its first line.");
    }
  }

  private static long lineEnds(CSVRecord row) {
    return row.stream().mapToLong(cell -> LINE_END.matcher(cell).results().count()).sum();
  }

  /** Spreadsheets also part columns by semicolons, where a decimal has a comma, and by tabs. */
  private char delimiter(String text) {
    String head = text.lines().findFirst().orElse("");
    char best = ',';
    long most = -1;
    for (char delimiter : DELIMITERS) {
      List<String> names =
          Arrays.stream(head.split(Pattern.quote(String.valueOf(delimiter)), -1))
              .map(n -> n.strip().replaceAll("^\"|\"$", ""))
              .toList();
      long found = columns.values().stream().filter(names::contains).count();
      if (found > most) {
        most = found;
        best = delimiter;
      }
    }
    return best;
  }

  private String line(CSVRecord row, boolean decimalCommas) {
    Function<String, Optional<String>> cell = field -> cell(row, field, decimalCommas);
    StringBuilder line = new StringBuilder();
    line.append(cell.apply("date").orElse("")).append(' ').append(verb).append(' ');
    if (POLLINATIONS.contains(verb)) {
      line.append(cell.apply("planting").orElse(""));
      cell.apply("plant").ifPresent(p -> line.append(" plant ").append(p));
      boolean sib = verb.equals("sibbed");
      cell.apply("by").filter(b -> !sib).ifPresent(b -> line.append(" by ").append(b));
      cell.apply("by plant").ifPresent(p -> line.append(sib ? " by plant " : " plant ").append(p));
      cell.apply("tag").ifPresent(t -> line.append(", tag ").append(t));
    } else {
      line.append(cell.apply("tag").or(() -> cell.apply("planting")).orElse(""));
      cell.apply("plant").ifPresent(p -> line.append(" plant ").append(p));
      cell.apply("state").ifPresent(s -> line.append(", ").append(s));
      cell.apply("weight").ifPresent(w -> line.append(", ").append(w));
      cell.apply("less").ifPresent(w -> line.append(" less ").append(w));
      cell.apply("sweetness").ifPresent(b -> line.append(", ").append(b));
      cell.apply("fault").ifPresent(f -> line.append(", fault ").append(f));
      columns.keySet().stream()
          .filter(k -> !FIELDS.contains(k))
          .forEach(
              k -> cell.apply(k).ifPresent(v -> line.append(", ").append(k).append(' ').append(v)));
    }
    return line.toString();
  }

  /** A cell with the unit or the scale its column's name ends with, if it has none of its own. */
  private Optional<String> cell(CSVRecord row, String field, boolean decimalCommas) {
    String column = columns.get(field);
    if (column == null || !row.isSet(column) || row.get(column).isBlank()) {
      return Optional.empty();
    }
    String cell = row.get(column).strip();
    String value = decimalCommas ? cell.replaceAll("(?<=\\d),(?=\\d)", ".") : cell;
    boolean bare = value.matches("\\d+(\\.\\d+)?");
    if (bare && field.equals("sweetness")) {
      return Optional.of(value + " brix");
    }
    Matcher scale = OUT_OF.matcher(column);
    if (bare && scale.find()) {
      return Optional.of(value + " of " + scale.group(1));
    }
    String last = column.replaceAll("[()\\[\\]]", " ").strip().replaceAll(".*\\s", "");
    boolean unit =
        Unit.named(last)
            .filter(u -> u.dimension() == Dimension.MASS || u.dimension() == Dimension.LENGTH)
            .isPresent();
    return Optional.of(bare && unit ? value + " " + last : value);
  }
}
