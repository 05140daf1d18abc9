package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.genetics.Mating.Backcrossing;
import slipday.genetics.Mating.Crossing;
import slipday.genetics.Mating.HybridFruit;
import slipday.genetics.Mating.Open;
import slipday.genetics.Mating.Selfing;
import slipday.genetics.Mating.Sibbing;
import slipday.genetics.Purdy.Side;

/** What label follows from what was done: common practice, no source. */
class MatingTest {
  private static final Optional<Generation> NONE = Optional.empty();

  @Test
  void theSeedOfASelfedF4PlantIsF5() {
    Mating selfing = new Selfing();
    assertThat(selfing.follows(read("F5"), read("F4"), NONE).value()).hasValue(read("F5"));
    assertThat(selfing.follows(read("F4"), read("F4"), NONE).refusal())
        .hasValue("The seed of a selfed `F4` plant is `F5`, and the label says `F4`.");
  }

  @Test
  void sibs() {
    assertThat(new Sibbing().seed(read("F3"), Optional.of(read("F3"))).value())
        .hasValue(read("F3 sib 1"));
    assertThat(new Sibbing().seed(read("F3"), Optional.of(read("F4"))).refusal()).isPresent();
    assertThat(new Sibbing().follows(read("F4"), read("F3"), NONE).refusal())
        .hasValue("The seed of two `F3` sibs is `F3 sib 1`, and the label says `F4`.");
  }

  @Test
  void crosses() {
    Mating sure = new Crossing(true);
    Optional<Generation> f4 = Optional.of(read("F4"));
    assertThat(sure.seed(read("OP2"), f4).value()).hasValue(read("F1, segregating"));
    assertThat(sure.follows(read("F1"), read("OP2"), f4).refusal())
        .hasValue(
            "The seed of `OP2` crossed by `F4` is `F1, segregating`, and the label says `F1`.");
    assertThat(sure.seed(read("OP2"), NONE).refusal()).isPresent();
    Mating anthersLeft = new Crossing(false);
    assertThat(anthersLeft.seed(read("F4"), f4).value())
        .hasValue(read("self (F5) or cross (F1, segregating), to be proved"));
    assertThat(anthersLeft.follows(read("F1, segregating"), read("F4"), f4).refusal()).isPresent();
    assertThat(anthersLeft.follows(read("self or cross, to be proved"), read("F4"), f4).value())
        .isPresent();
    assertThat(anthersLeft.seed(read("self or cross, to be proved"), f4).refusal()).isPresent();
  }

  @Test
  void backcrosses() {
    Mating ontoSeedParent = new Backcrossing(Side.SEED_PARENT);
    assertThat(ontoSeedParent.seed(read("inbred"), Optional.of(read("F1"))).value())
        .hasValue(read("BC1F1, recurrent seed parent"));
    Mating ontoPollenParent = new Backcrossing(Side.POLLEN_PARENT);
    assertThat(ontoPollenParent.seed(read("BC1F1"), Optional.of(read("inbred"))).value())
        .hasValue(read("BC2F1, recurrent pollen parent"));
    assertThat(
            ontoPollenParent.follows(read("BC2"), read("BC1"), Optional.of(read("inbred"))).value())
        .isPresent();
    assertThat(ontoPollenParent.seed(read("inbred"), Optional.of(read("F1"))).refusal())
        .isPresent();
  }

  @Test
  void bees() {
    assertThat(new Open(false).seed(read("F4"), NONE).value()).hasValue(read("OP1"));
    assertThat(new Open(true).seed(read("OP2"), NONE).value()).hasValue(read("OP3, isolated"));
    assertThat(new Open(false).follows(read("F5"), read("F4"), NONE).refusal())
        .hasValue("The seed of an open flower of `F4` is `OP1`, and the label says `F5`.");
  }

  @Test
  void aBoughtFruit() {
    assertThat(new HybridFruit().seed(read("F1"), NONE).value()).hasValue(read("F2, probable"));
    assertThat(new HybridFruit().follows(read("F2"), read("F1"), NONE).refusal()).isPresent();
    assertThat(new HybridFruit().seed(read("F3"), NONE).refusal()).isPresent();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unknown | F5 | true",
        "unknown | self (F5) or cross (F1), to be proved | true",
        "F3 | F3 of a four-way F1 | true",
        "F3 of a four-way F1 | F3 | false",
        "F1 | F1, four-way | false",
        "F3 | F3 sib 1 | false",
        "BC1 | BC1F1, recurrent seed parent | true",
        "BC1F1, recurrent seed parent | BC1F1, recurrent pollen parent | false",
        "OP | OP3, isolated | true",
        "OP3, isolated | OP3 | false",
        "OP2 | OP3 | false",
        "F5 bulk | F5 | true",
        "bulk of F4 and F5 | F5 | false",
        "bulk of F4 and F5 | bulk of F5 and F4 | true",
        "F2, probable | F2 | true",
        "F2 | F2, probable | false",
        "S1 | S2 | false",
        "inbred | F9 | false"
      })
  void whatALabelCovers(String label, String fact, boolean covers) {
    assertThat(read(label).covers(read(fact))).isEqualTo(covers);
  }

  private static Generation read(String label) {
    return GenerationTest.read(label);
  }
}
