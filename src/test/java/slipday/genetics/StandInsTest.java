package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Selfing from an F1 of inbred parents, Falconer and Mackay 1996, chapter 5 (from memory): F is 1 −
 * ½ to the power n − 1; coancestry of plants of one selfed plant is (1 + F of it) ÷ 2, of plants
 * whose lines parted at the F1 always ½.
 */
class StandInsTest {
  @ParameterizedTest
  @CsvSource({
    "1, true, 0, 0.5",
    "1, false, 0, 0.5",
    "2, true, 0.5, 0.5",
    "4, true, 0.875, 0.875",
    "4, false, 0.875, 0.5",
    "8, false, 0.9921875, 0.5"
  })
  void plantsOfALot(int filial, boolean ofOnePlant, double inbreeding, double coancestry) {
    Pedigree.Builder pedigree = Pedigree.begin(0);
    List<Integer> plants = StandIns.add(pedigree, "old-lot", filial, 3, ofOnePlant);
    Pedigree built = pedigree.build();
    assertThat(plants).hasSize(3);
    assertThat(built.inbreeding(plants.get(2))).isCloseTo(inbreeding, within(1e-12));
    assertThat(built.coancestry(plants.get(0), plants.get(2))).isCloseTo(coancestry, within(1e-12));
    assertThat(built.name(plants.get(2))).isEqualTo("old-lot plant 3");
    assertThat(built.name(0)).endsWith("(stand-in)");
  }

  /** The series of Falconer and Mackay 1996, table 5.1 (from memory), begun at a selfed F1. */
  @ParameterizedTest
  @CsvSource({
    "F3, 0.75",
    "F2 sib 1, 0.5",
    "F2 sib 2, 0.625",
    "BC2F1, 0.75",
    "BC1F2, 0.75",
    "OP, 0"
  })
  void plantsOfALabel(String label, double inbreeding) {
    Pedigree.Builder pedigree = Pedigree.begin(0);
    StandIns.Parents cross =
        new StandIns.Parents(pedigree.founder("a", 1), pedigree.founder("b", 1));
    PlainGeneration generation = (PlainGeneration) Generation.parse(label).value().orElseThrow();
    int plant = StandIns.parents(pedigree, "lot", generation, cross).plant(pedigree, "plant");
    assertThat(pedigree.build().inbreeding(plant)).isCloseTo(inbreeding, within(1e-12));
  }

  @Test
  void whatCannotBe() {
    Pedigree.Builder pedigree = Pedigree.begin(0);
    assertThatThrownBy(() -> StandIns.add(pedigree, "lot", 0, 1, true))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> StandIns.add(pedigree, "lot", 2, 0, true))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
