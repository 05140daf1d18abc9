package slipday.odds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

  /**
   * 1 ÷ (2·(1 − 0.9^0.1)) = 47.7, worked out by hand, as are (3·47.7 + 2) ÷ 4 with equal seed of
   * each mother, and (2·47.7 + 2) ÷ 4 with fathers alike as well.
   */
  @Test
  void heterozygosity() {
    Reckoning r = new Keeping(0.05, 0.9, 10, 0.95).reckon(Optional.empty(), Optional.empty());
    assertThat(row(r, "90 % of heterozygosity left after 10 generations")).hasValue(48);
    assertThat(row(r, "the same, with as much seed")).hasValue(37);
    assertThat(row(r, "the same, each as often father")).hasValue(25);
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

  /**
   * What is told, grown on in a simulation: plants of their own two genes each, ten generations.
   */
  @ParameterizedTest
  @CsvSource({"37, false, 0.90", "25, true, 0.90", "25, false, 0.86"})
  void keepsAsMuchAsItSays(int plants, boolean fathersAlike, double left) {
    Random random = new Random(20260501);
    int runs = 3000;
    double alike = 0;
    for (int run = 0; run < runs; run++) {
      int[][] genes = new int[plants][];
      for (int i = 0; i < plants; i++) {
        genes[i] = new int[] {2 * i, 2 * i + 1};
      }
      for (int generation = 0; generation < 10; generation++) {
        genes = next(genes, fathersAlike, random);
      }
      double[] shares = new double[2 * plants];
      for (int[] plant : genes) {
        shares[plant[0]] += 0.5 / plants;
        shares[plant[1]] += 0.5 / plants;
      }
      alike += DoubleStream.of(shares).map(s -> s * s).sum() / runs;
    }
    assertThat((1 - alike) / (1 - 0.5 / plants)).isCloseTo(left, within(0.006));
  }

  /** One seed of each mother; the father any plant, or each once, in a new order every time. */
  private static int[][] next(int[][] genes, boolean fathersAlike, Random random) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < genes.length; i++) {
      order.add(i);
    }
    Collections.shuffle(order, random);
    int[][] next = new int[genes.length][];
    for (int i = 0; i < genes.length; i++) {
      int father = fathersAlike ? order.get(i) : random.nextInt(genes.length);
      next[i] = new int[] {genes[i][random.nextInt(2)], genes[father][random.nextInt(2)]};
    }
    return next;
  }
}
