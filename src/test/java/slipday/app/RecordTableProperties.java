package slipday.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import slipday.finding.Outcome;

/** Whatever a table holds, it becomes lines or is told of; it never ends in a fault. */
class RecordTableProperties {
  private static final String COLUMNS = "date=Day,tag=Fruit,weight=Gross kg,flavour=Taste";
  private static final String HEAD = "Day,Fruit,Gross kg,Taste\n";

  @Provide
  Arbitrary<String> table() {
    Arbitrary<String> cells =
        Arbitraries.of(
            "2026-08-19",
            "3A",
            "1.62",
            "8 of 10",
            "\"",
            "\"a, b\"",
            "#",
            "\n",
            "\r\n",
            ",",
            ";",
            "½",
            "\u0000",
            "\uFEFF",
            "=1+1",
            "",
            " ",
            "é");
    Arbitrary<String> near = cells.list().ofMaxSize(40).map(l -> HEAD + String.join("", l));
    return Arbitraries.oneOf(Arbitraries.strings().ofMaxLength(200), near);
  }

  @Property(tries = 1500)
  void anyTableIsReadOrToldOf(@ForAll("table") String text) {
    Outcome<List<RecordBook.Wish>> read = RecordTable.read(text, "picked", COLUMNS);
    assertThat(read.value().isEmpty() || read.findings().isEmpty()).isTrue();
    read.findings().forEach(f -> assertThat(f.message()).isNotBlank());
  }

  /** However its columns are parted, in whichever order, quoted or not, a table says the same. */
  @Property(tries = 300)
  void everyGoodRowComesThrough(
      @ForAll("rows") List<Integer> tags,
      @ForAll("delimiters") char delimiter,
      @ForAll boolean quoted,
      @ForAll boolean windows,
      @ForAll("orders") List<Integer> order) {
    String text = table(tags, delimiter, quoted, windows ? "\r\n" : "\n", order);
    List<RecordBook.Wish> wishes = RecordTable.read(text, "picked", COLUMNS).value();
    assertThat(wishes)
        .extracting(RecordBook.Wish::text)
        .containsExactlyElementsOf(
            tags.stream()
                .map(t -> "2026-08-19 picked " + t + "A, 1.5 kg, flavour " + t % 10 + " of 10")
                .toList());
    for (int i = 0; i < tags.size(); i++) {
      assertThat(wishes.get(i).from()).isEqualTo("line " + (i + 2));
    }
  }

  private static String table(
      List<Integer> tags, char delimiter, boolean quoted, String end, List<Integer> order) {
    String decimal = delimiter == ',' ? "1.5" : "1,5";
    StringBuilder text = new StringBuilder();
    text.append(row(List.of("Day", "Fruit", "Gross kg", "Taste"), delimiter, quoted, order));
    for (int t : tags) {
      List<String> cells = List.of("2026-08-19", t + "A", decimal, t % 10 + " of 10");
      text.append(end).append(row(cells, delimiter, quoted, order));
    }
    return text.append(end).toString();
  }

  private static String row(
      List<String> cells, char delimiter, boolean quoted, List<Integer> order) {
    return order.stream()
        .map(cells::get)
        .map(c -> quoted ? "\"" + c + "\"" : c)
        .collect(Collectors.joining(String.valueOf(delimiter)));
  }

  /** A good table with some of its characters lost, doubled or changed. */
  @Property(tries = 1500)
  void aSpoiltTableIsReadOrToldOf(
      @ForAll("rows") List<Integer> tags,
      @ForAll("delimiters") char delimiter,
      @ForAll("spoils") List<Spoil> spoils) {
    StringBuilder text = new StringBuilder(table(tags, delimiter, true, "\n", List.of(0, 1, 2, 3)));
    for (Spoil spoil : spoils) {
      int at = spoil.at % Math.max(1, text.length());
      text.replace(at, Math.min(text.length(), at + spoil.lost), spoil.put);
    }
    Outcome<List<RecordBook.Wish>> read = RecordTable.read(text.toString(), "picked", COLUMNS);
    assertThat(read.value().isEmpty() || read.findings().isEmpty()).isTrue();
    read.findings().forEach(f -> assertThat(f.message()).isNotBlank());
  }

  /**
   * @param lost how many characters go
   */
  record Spoil(int at, int lost, String put) {}

  @Provide
  Arbitrary<List<Spoil>> spoils() {
    Arbitrary<Integer> at = Arbitraries.integers().between(0, 5000);
    Arbitrary<Integer> lost = Arbitraries.integers().between(0, 12);
    Arbitrary<String> put =
        Arbitraries.of("", "\"", ";", ",", "\t", "\n", "\r", "\u0000", "\"\"", "½", "\uD800");
    return net.jqwik.api.Combinators.combine(at, lost, put).as(Spoil::new).list().ofMaxSize(8);
  }

  @Provide
  Arbitrary<Character> delimiters() {
    return Arbitraries.of(',', ';', '\t');
  }

  @Provide
  Arbitrary<List<Integer>> orders() {
    return Arbitraries.shuffle(0, 1, 2, 3);
  }

  @Provide
  Arbitrary<List<Integer>> rows() {
    return Arbitraries.integers().between(1, 500).list().ofMaxSize(30);
  }
}
