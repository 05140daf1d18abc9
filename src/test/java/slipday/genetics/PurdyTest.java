package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.genetics.Purdy.Backcross;
import slipday.genetics.Purdy.Cross;
import slipday.genetics.Purdy.Parent;
import slipday.genetics.Purdy.Side;

/** Against L. H. Purdy and others 1968, Crop Science 8:405 (from memory). */
class PurdyTest {
  private static final Parent A = new Parent("A");
  private static final Parent B = new Parent("B");
  private static final Parent C = new Parent("C");

  @Test
  void theSeedParentComesFirstAndTheLatestCrossIsHighest() {
    assertThat(read("A/B")).isEqualTo(new Cross(A, B));
    assertThat(read("A/B//C")).isEqualTo(new Cross(new Cross(A, B), C));
    assertThat(read("C//A/B")).isEqualTo(new Cross(C, new Cross(A, B)));
    assertThat(read("A/B//C/D"))
        .isEqualTo(new Cross(new Cross(A, B), new Cross(C, new Parent("D"))));
    assertThat(read(" A / B // C /3/ tern amber "))
        .isEqualTo(new Cross(new Cross(new Cross(A, B), C), new Parent("tern amber")));
  }

  /** The star counts doses of the recurrent parent: n of BCn is doses − 1. */
  @Test
  void dosesAndBackcrosses() {
    Purdy second = read("A/3*B");
    assertThat(read("A/B*3")).isEqualTo(second);
    assertThat(second).isEqualTo(new Backcross(A, B, 3, Side.POLLEN_PARENT));
    assertThat(((Backcross) second).backcrosses()).isEqualTo(2);
    assertThat(second.inFull()).isEqualTo(read("A/B//B///B"));
    assertThat(second.inFull().print()).isEqualTo("A/B//B/3/B");
    assertThat(read("B*3/A").inFull().print()).isEqualTo("B/3/B//B/A");
  }

  @Test
  void crossingAgainIsWrittenAsABackcross() {
    Purdy f1 = Purdy.cross(A, B);
    assertThat(f1.print()).isEqualTo("A/B");
    Purdy first = Purdy.cross(f1, B);
    assertThat(first.print()).isEqualTo("A/2*B");
    assertThat(Purdy.cross(first, B).print()).isEqualTo("A/3*B");
    assertThat(Purdy.cross(A, f1).print()).isEqualTo("A*2/B");
    assertThat(Purdy.cross(B, f1).print()).isEqualTo("B//A/B");
    assertThat(Purdy.cross(B, first).print()).isEqualTo("B//A/2*B");
  }

  /** Inside a longer line the doses stand on the side of the cross that was repeated. */
  @ParameterizedTest
  @CsvSource({"A/3*B//C, A/3*B//C", "C//B*3/A, C//B*3/A", "3*B/A, B*3/A", "A/B*3, A/3*B"})
  void starsInALongerLine(String written, String printed) {
    assertThat(read(written).print()).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A//B | is number 1",
        "A/B/C | stands there twice",
        "A//B/C//D | stands there twice",
        "A/ | parent is missing",
        "/A | parent is missing",
        "A/B*1 | two doses or more",
        "A/B*3//C | could mean either",
        "C//3*B/A | could mean either",
        "B*2 | crossed with nothing",
        "A/B*x | between a name and its doses",
        "A/*3 | between a name and its doses",
        "A/12 | more than digits",
        "A/B/4/C | is number 2"
      })
  void whatIsNotANotation(String text, String why) {
    assertThat(Purdy.parse(text).refusal().orElseThrow()).contains(why).endsWith(".");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " A", "A/B", "A*2", "A\nB", "42"})
  void whatIsNoName(String name) {
    assertThatThrownBy(() -> new Parent(name)).isInstanceOf(IllegalArgumentException.class);
  }

  @Property(tries = 300)
  void whatIsPrintedIsReadAgain(@ForAll("pedigrees") Purdy made) {
    assertThat(read(made.print())).isEqualTo(made);
    assertThat(read(made.inFull().print())).isEqualTo(made.inFull());
    assertThat(made.inFull().inFull()).isEqualTo(made.inFull());
  }

  @Property(tries = 300)
  void noTextBreaksTheReader(@ForAll("scribbles") String text) {
    Answer<Purdy> read = Purdy.parse(text);
    assertThat(read.value().isPresent()).isNotEqualTo(read.refusal().isPresent());
  }

  @Provide
  Arbitrary<Purdy> pedigrees() {
    Arbitrary<Purdy> parents = Arbitraries.of("A", "B", "C", "tern-amber", "x9").map(Parent::new);
    return Arbitraries.recursive(() -> parents, PurdyTest::crossed, 0, 5);
  }

  private static Arbitrary<Purdy> crossed(Arbitrary<Purdy> parts) {
    Arbitrary<Purdy> crosses = Combinators.combine(parts, parts).as(Purdy::cross);
    Arbitrary<Purdy> backcrosses =
        Combinators.combine(
                parts,
                Arbitraries.of("B", "recurrent"),
                Arbitraries.integers().between(2, 7),
                Arbitraries.of(Side.class))
            .as((donor, name, doses, side) -> new Backcross(donor, new Parent(name), doses, side));
    return Arbitraries.oneOf(crosses, backcrosses);
  }

  @Provide
  Arbitrary<String> scribbles() {
    return Arbitraries.strings().withChars("AB /*239\n").ofMaxLength(24);
  }

  private static Purdy read(String text) {
    return Purdy.parse(text).match(made -> made, why -> fail(text, why));
  }

  private static Purdy fail(String text, String why) {
    throw new AssertionError(text + ": " + why);
  }
}
