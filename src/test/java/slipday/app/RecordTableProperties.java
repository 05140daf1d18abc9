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
            "2027-08-19",
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

  @Property(tries = 300)
  void everyGoodRowComesThrough(@ForAll("rows") List<Integer> tags) {
    String rows =
        tags.stream()
            .map(t -> "2027-08-19," + t + "A,1.5," + t % 10 + " of 10\n")
            .collect(Collectors.joining());
    List<RecordBook.Wish> wishes = RecordTable.read(HEAD + rows, "picked", COLUMNS).value();
    assertThat(wishes)
        .extracting(RecordBook.Wish::text)
        .containsExactlyElementsOf(
            tags.stream()
                .map(t -> "2027-08-19 picked " + t + "A, 1.5 kg, flavour " + t % 10 + " of 10")
                .toList());
    assertThat(wishes)
        .extracting(RecordBook.Wish::from)
        .doesNotHaveDuplicates()
        .allMatch(f -> f.startsWith("line "));
  }

  @Provide
  Arbitrary<List<Integer>> rows() {
    return Arbitraries.integers().between(1, 500).list().ofMaxSize(30);
  }
}
