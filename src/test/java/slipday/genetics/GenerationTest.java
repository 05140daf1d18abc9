package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.genetics.PlainGeneration.Filial;
import slipday.genetics.PlainGeneration.Origin;
import slipday.genetics.Purdy.Side;

/** Labels of generations: common practice of the trade, with no one standard. */
class GenerationTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "F3 | F3",
        " f3  SIB 2 | F3 sib 2",
        "F3 sib | F3 sib 1",
        "BC1F2 | BC1F2",
        "BC2 | BC2F1",
        "bc1 f1 , recurrent seed parent | BC1F1, recurrent seed parent",
        "BC1F1 sib, recurrent pollen parent | BC1F1 sib 1, recurrent pollen parent",
        "OP2 | OP2",
        "op 2 | OP2",
        "OP | OP",
        "open-pollinated | OP",
        "OP3 sib 1, isolated | OP3 sib 1, isolated",
        "S1 | S1",
        "S0 | S0",
        "S2 sib 3 | S2 sib 3",
        "F1, segregating | F1, segregating",
        "segregating F1 | F1, segregating",
        "F1 four-way | F1, four-way",
        "F2 of a four-way F1 | F2 of a four-way F1",
        "inbred | inbred",
        "Unknown | unknown",
        "F2, probable | F2, probable",
        "F2 probable | F2, probable",
        "F4 bulk | bulk of F4",
        "bulk of F4 and F5 | bulk of F4 and F5",
        "bulk of F4 and F4 | bulk of F4",
        "self or cross, to be proved | self or cross, to be proved",
        "self (F5) or cross (F1, segregating), to be proved"
            + " | self (F5) or cross (F1, segregating), to be proved"
      })
  void whatIsUnderstood(String label, String printed) {
    assertThat(read(label).print()).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "F0 | begin with F1",
        "BC0F1 | begin with BC1F1",
        "BC1F0 | begin with BC1F1",
        "F1 sib 2 | their seed is F2",
        "F | is no generation",
        "G2 | is no generation",
        "F2.5 | is no generation",
        "F99999 | is no generation",
        "F4 and F5 | is no generation",
        "bulk of F4 and | is no generation",
        "'' | is no generation"
      })
  void whatIsNot(String label, String why) {
    assertThat(Generation.parse(label).refusal().orElseThrow()).contains(why).endsWith(".");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "F4 | F5 | F4 sib 1 | OP1",
        "F1 | F2 | F2 | OP1",
        "F3 sib 2 | F4 | F3 sib 3 | OP1",
        "F1, segregating | F2 of a segregating F1 | F1 sib 1 of a segregating F1 | OP1",
        "BC1F1 | BC1F2 | BC1F1 sib 1 | OP1",
        "S0 | S1 | S0 sib 1 | OP1",
        "OP2 | S1 | OP2 sib 1 | OP3",
        "OP | S1 | OP sib 1 | OP",
        "inbred | inbred | inbred | OP1",
        "unknown | S1 | unknown | OP1",
        "bulk of F4 and F5 | bulk of F5 and F6 | bulk of F4 sib 1 and F5 sib 1 | bulk of OP1",
        "F2, probable | F3, probable | F2 sib 1, probable | OP1, probable",
        "self (F5) or cross (F1), to be proved | self (F6) or cross (F2), to be proved"
            + " | self (F5 sib 1) or cross (F2), to be proved"
            + " | self (OP1) or cross (OP1), to be proved"
      })
  void selfedSibbedAndOpen(String plant, String selfed, String sibbed, String open) {
    assertThat(read(plant).selfed().print()).isEqualTo(selfed);
    assertThat(read(plant).sibbed().print()).isEqualTo(sibbed);
    assertThat(read(plant).openPollinated(false).print()).isEqualTo(open);
  }

  /** One is told without a pattern, the other with. */
  @Test
  void aPlainFilialIsTheSameHoweverItIsRead() {
    for (int n = 0; n < 1000; n++) {
      assertThat(Generation.parse("F" + n)).isEqualTo(Generation.parse("F " + n));
      assertThat(Generation.parse("f0" + n % 100)).isEqualTo(Generation.parse("f 0" + n % 100));
    }
  }

  @Test
  void anIsolatedBlockOfOneLine() {
    assertThat(read("OP2").openPollinated(true).print()).isEqualTo("OP3, isolated");
    assertThat(read("F4").openPollinated(true).print()).isEqualTo("OP1, isolated");
    assertThat(read("inbred").openPollinated(true).print()).isEqualTo("inbred");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inbred | inbred | F1",
        "inbred | F8 | F1",
        "inbred | F4 | F1, segregating",
        "F1 | F1 | F1, four-way",
        "F1 | inbred | F1, segregating",
        "OP2 | F4 | F1, segregating",
        "unknown | inbred | F1, segregating"
      })
  void crossed(String seedParent, String pollenParent, String made) {
    assertThat(read(seedParent).crossed(read(pollenParent)).print()).isEqualTo(made);
    assertThat(read(pollenParent).crossed(read(seedParent)).print()).isEqualTo(made);
  }

  @Test
  void backcrossed() {
    Generation first = read("F1").backcrossed(Side.SEED_PARENT).value().orElseThrow();
    assertThat(first.print()).isEqualTo("BC1F1, recurrent seed parent");
    assertThat(first.selfed().print()).isEqualTo("BC1F2, recurrent seed parent");
    assertThat(first.backcrossed(Side.POLLEN_PARENT).value().orElseThrow().print())
        .isEqualTo("BC2F1, recurrent pollen parent");
    assertThat(read("F2, probable").backcrossed(Side.SEED_PARENT).value().orElseThrow().print())
        .isEqualTo("BC1F1, recurrent seed parent, probable");
    for (String none : List.of("OP2", "inbred", "F1, four-way", "S1", "unknown")) {
      assertThat(read(none).backcrossed(Side.SEED_PARENT).refusal().orElseThrow())
          .contains("`" + none + "`");
    }
  }

  @Test
  void bulks() {
    assertThat(bulk("F4", "F4")).isEqualTo("bulk of F4");
    assertThat(bulk("F4 bulk", "F5")).isEqualTo("bulk of F4 and F5");
    assertThat(bulk("F2, probable", "F2")).isEqualTo("bulk of F2, probable");
    assertThat(Generation.bulk(List.of(read("self or cross, to be proved"))).refusal()).isPresent();
    assertThat(Generation.bulk(List.of()).refusal()).isPresent();
  }

  @Test
  void whatCannotBe() {
    assertThatThrownBy(() -> new Filial(0, 0, Origin.FOUR_WAY))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Generation.Probable(read("F2, probable")))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Generation.Bulk(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * Falconer and Mackay 1996, table 5.1 (from memory): halved by selfing, by backcrossing to an
   * inbred parent; full sibs of a selfed plant 1, 1, .75, .625, .5 of it.
   */
  @ParameterizedTest
  @CsvSource({
    "F1, 1",
    "F2, 0.5",
    "F3, 0.25",
    "F4, 0.125",
    "F8, 0.0078125",
    "F3 sib 1, 0.25",
    "F3 sib 2, 0.1875",
    "F3 sib 3, 0.15625",
    "F2 sib 4, 0.25",
    "BC1F1, 0.5",
    "BC2F1, 0.25",
    "BC1F2, 0.25",
    "BC2F3, 0.0625",
    "S0, 1",
    "S2, 0.25",
    "inbred, 0",
    "F4 bulk, 0.125"
  })
  void heterozygosity(String label, double left) {
    assertThat(read(label).heterozygosity().orElseThrow()).isCloseTo(left, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"OP2", "unknown", "bulk of F3 and F4", "BC1F1 sib 1", "S0 sib 1"})
  void heterozygosityThatALabelDoesNotTell(String label) {
    assertThat(read(label).heterozygosity()).isEmpty();
  }

  /** The label says what the pedigree says. */
  @Property(tries = 60)
  void asThePedigreeHasIt(
      @ForAll @IntRange(max = 4) int backcrosses, @ForAll @IntRange(max = 5) int selfings) {
    Pedigree.Builder plants = Pedigree.begin(0);
    int one = plants.founder("one", 1);
    int other = plants.founder("other", 1);
    int plant = plants.offspring("F1", one, other);
    Generation label = read("F1");
    for (int i = 0; i < backcrosses; i++) {
      plant = plants.offspring("back", plant, other);
      label = label.backcrossed(Side.POLLEN_PARENT).value().orElseThrow();
    }
    for (int i = 0; i < selfings; i++) {
      plant = plants.selfed("selfed", plant);
      label = label.selfed();
    }
    assertThat(label.heterozygosity().orElseThrow())
        .isCloseTo(plants.build().heterozygosity(plant), within(1e-12));
  }

  /** The same with sibs of a selfed plant. */
  @Property(tries = 30)
  void sibsAsThePedigreeHasThem(
      @ForAll @IntRange(min = 1, max = 4) int selfings, @ForAll @IntRange(max = 5) int sibs) {
    Pedigree.Builder plants = Pedigree.begin(0);
    int mother = plants.offspring("F1", plants.founder("one", 1), plants.founder("other", 1));
    Generation label = read("F1");
    int one = mother;
    int other = mother;
    for (int i = 0; i < selfings; i++) {
      mother = one;
      one = plants.selfed("selfed", mother);
      other = plants.selfed("selfed", mother);
      label = label.selfed();
    }
    for (int i = 0; i < sibs; i++) {
      int young = plants.offspring("sib", one, other);
      other = plants.offspring("sib", one, other);
      one = young;
      label = label.sibbed();
    }
    assertThat(label.heterozygosity().orElseThrow())
        .isCloseTo(plants.build().heterozygosity(one), within(1e-12));
  }

  @Property(tries = 300)
  void whatIsPrintedIsReadAgain(@ForAll("generations") Generation made) {
    assertThat(read(made.print())).isEqualTo(made);
    assertThat(made.covers(made)).isTrue();
    assertThat(read(made.selfed().print())).isEqualTo(made.selfed());
    assertThat(read(made.sibbed().print())).isEqualTo(made.sibbed());
    made.heterozygosity().ifPresent(share -> assertThat(share).isBetween(0.0, 1.0));
  }

  @Property(tries = 500)
  void noTextBreaksTheReader(@ForAll("scribbles") String text) {
    Answer<Generation> read = Generation.parse(text);
    assertThat(read.value().isPresent()).isNotEqualTo(read.refusal().isPresent());
    read.value().ifPresent(made -> assertThat(read(made.print())).isEqualTo(made));
  }

  @Provide
  Arbitrary<String> scribbles() {
    return Arbitraries.of(
            "F1",
            "f",
            "BC",
            "S",
            "OP",
            "2",
            "0",
            " sib",
            " ",
            ", ",
            "probable",
            "bulk of ",
            "and ",
            " bulk",
            "self (",
            ") or cross (",
            "), to be proved",
            "segregating",
            " of a ",
            "isolated")
        .list()
        .ofMaxSize(7)
        .map(parts -> String.join("", parts));
  }

  @Provide
  Arbitrary<Generation> generations() {
    Arbitrary<Integer> few = Arbitraries.integers().between(0, 9);
    Arbitrary<PlainGeneration> filial =
        Combinators.combine(few, few, Arbitraries.of(Origin.class))
            .as((n, sib, origin) -> new Filial(n + 2, sib, origin));
    Arbitrary<PlainGeneration> back =
        Combinators.combine(few, few, few, Arbitraries.of(Side.class).optional())
            .as((n, f, sib, side) -> new PlainGeneration.Backcross(n + 1, f + 1, sib, side));
    Arbitrary<PlainGeneration> selfed =
        Combinators.combine(few, few).as(PlainGeneration.Selfed::new);
    Arbitrary<PlainGeneration> open =
        Combinators.combine(few, Arbitraries.of(true, false), few)
            .as(PlainGeneration.OpenPollinated::new);
    Arbitrary<PlainGeneration> plain = Arbitraries.oneOf(filial, back, selfed, open);
    Arbitrary<Generation> bulk = plain.list().ofMinSize(1).ofMaxSize(3).map(Generation.Bulk::new);
    Arbitrary<Generation> single = Arbitraries.oneOf(plain.map(p -> (Generation) p), bulk);
    Arbitrary<Generation> likely = Arbitraries.oneOf(single, single.map(Generation.Probable::new));
    return Arbitraries.oneOf(
        likely, Combinators.combine(likely, likely).as(Generation.SelfOrCross::new));
  }

  private static String bulk(String... labels) {
    List<Generation> parts = Arrays.stream(labels).map(GenerationTest::read).toList();
    return Generation.bulk(parts).value().map(Generation::print).orElse("refused");
  }

  static Generation read(String label) {
    Answer<Generation> read = Generation.parse(label);
    assertThat(read.refusal()).as(label).isEqualTo(Optional.empty());
    return read.value().orElseThrow();
  }
}
