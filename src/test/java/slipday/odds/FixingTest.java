package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FixingTest {
  /** 31 of 32 genes in F6: R. W. Allard 1960, Principles of Plant Breeding (from memory). */
  @Test
  void genesInAPlant() {
    Reckoning r = Fixing.reckon(0.95, 1);
    assertThat(r.answer()).hasValue(6);
    assertThat(r.says()).startsWith("F6 is").contains("95 % or more of the genes", "5 selfings");
    assertThat(r.steps()).anyMatch(s -> s.contains("F6: 96.88 %; F5: 93.75 %"));
  }

  @Test
  void plantsFixedAtAllOfSeveral() {
    Reckoning r = Fixing.reckon(0.9, 5);
    assertThat(r.answer()).hasValue(7);
    assertThat(r.says()).contains("plants are fixed at all 5 genes");
    assertThat(r.generations()).extracting(Reckoning.Generation::number).startsWith(2).endsWith(9);
  }

  @Test
  void whatNoGenerationReachesIsSaid() {
    Reckoning r = Fixing.reckon(1 - 1e-16, 10_000);
    assertThat(r.answer()).isEmpty();
    assertThat(r.says()).startsWith("No generation");
  }
}
