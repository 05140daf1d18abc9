package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slipday.garden.CropFacts.Population;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

class KeepingTest {
  private static final Reasoned<Population> FIGURE =
      new Reasoned<>(
          new Population(1, new Range(5, 10), 25), Reason.byDefault("a figure of somebody's"));

  private static OptionalInt row(Reckoning r, String demand) {
    return r.rows().stream()
        .filter(d -> d.demand().startsWith(demand))
        .findFirst()
        .orElseThrow()
        .number();
  }

  /**
   * 59 genes hold an allele of 5 % with a chance of 95 %: D. R. Marshall and A. H. D. Brown 1975
   * (from memory), and so do 30 plants of two genes each.
   */
  @Test
  void rareAlleles() {
    Reckoning r = new Keeping(0.05, 0.9, 10, 0.95).reckon(Optional.empty(), Optional.empty());
    assertThat(row(r, "the same, of inbred plants")).hasValue(59);
    assertThat(row(r, "no allele of 5 %")).hasValue(30);
  }

  /** 1 ÷ (2·(1 − 0.9^0.1)) = 47.7, worked out by hand; half of one more with equal seed. */
  @Test
  void heterozygosity() {
    Reckoning r = new Keeping(0.05, 0.9, 10, 0.95).reckon(Optional.empty(), Optional.empty());
    assertThat(row(r, "90 % of heterozygosity left after 10 generations")).hasValue(48);
    assertThat(row(r, "the same, with as much seed")).hasValue(25);
    assertThat(r.answer()).hasValue(48);
    assertThat(String.join(" ", r.steps())).contains("47.7");
  }

  @Test
  void theStricterDemandDecidesWhereNoCropIsAsked() {
    Reckoning r = new Keeping(0.01, 0.9, 2, 0.95).reckon(Optional.empty(), Optional.empty());
    assertThat(r.answer()).isEqualTo(row(r, "no allele of 1 %"));
    assertThat(r.answer().orElseThrow()).isGreaterThan(100);
  }

  @Test
  void theTradesFigureComesFirstWithItsSource() {
    Reckoning r =
        new Keeping(0.05, 0.9, 10, 0.95).reckon(Optional.of("gourd"), Optional.of(FIGURE));
    assertThat(r.answer()).hasValue(5);
    assertThat(r.says()).contains("line of gourd", "5 to 10 plants", "of 25");
    assertThat(r.sources()).contains("a figure of somebody's.");
  }

  @Test
  void aCropWithoutAFigureIsSaidToHaveNone() {
    Reckoning r = new Keeping(0.05, 0.9, 10, 0.95).reckon(Optional.of("gourd"), Optional.empty());
    assertThat(r.says()).startsWith("No figure is known for gourd");
  }
}
