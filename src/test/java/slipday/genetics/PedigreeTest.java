package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.genetics.Pedigree.Builder;
import slipday.genetics.Pedigree.Fruit;

class PedigreeTest {
  private static final Offset<Double> EXACT = within(1e-12);

  /** Falconer and Mackay 1996, table 5.1 (from memory; the recurrences worked out again). */
  @Test
  void selfing() {
    Builder plants = Pedigree.begin(0);
    int plant = plants.founder("S0", 0);
    for (int s = 1; s <= 20; s++) {
      plant = plants.selfed("S" + s, plant);
    }
    Pedigree pedigree = plants.build();
    for (int s = 0; s <= 20; s++) {
      assertThat(pedigree.inbreeding(s)).isEqualTo(1 - Math.pow(0.5, s));
      assertThat(pedigree.heterozygosity(s)).isEqualTo(Math.pow(0.5, s));
    }
  }

  /** As above: full sibs 0, .25, .375, .5, .59375, .671875 and, worked out on, .734375, .785156. */
  @Test
  void fullSibs() {
    Builder plants = Pedigree.begin(0);
    int one = plants.founder("a", 0);
    int other = plants.founder("b", 0);
    for (int t = 0; t < 9; t++) {
      int child = plants.offspring("child", one, other);
      other = plants.offspring("sib", one, other);
      one = child;
    }
    Pedigree pedigree = plants.build();
    double[] expected = {0, .25, .375, .5, .59375, .671875, .734375, .78515625};
    for (int t = 0; t < expected.length; t++) {
      assertThat(pedigree.inbreeding(2 + 2 * t)).isCloseTo(expected[t], EXACT);
    }
  }

  /** As above: one male and females that are half sibs of him and of each other. */
  @Test
  void halfSibs() {
    Builder plants = Pedigree.begin(0);
    int male = plants.founder("male", 0);
    List<Integer> females = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      females.add(plants.founder("female", 0));
    }
    List<Integer> males = new ArrayList<>();
    while (females.size() > 1) {
      int father = male;
      List<Integer> young = new ArrayList<>();
      females.forEach(mother -> young.add(plants.offspring("young", mother, father)));
      male = young.remove(0);
      males.add(male);
      females = young;
    }
    Pedigree pedigree = plants.build();
    double[] expected = {0, .125, .21875, .3046875};
    for (int t = 0; t < expected.length; t++) {
      assertThat(pedigree.inbreeding(males.get(t))).isCloseTo(expected[t], EXACT);
    }
  }

  /** Crosses of F1, BC1, BC2 … to a fully inbred parent: as above. */
  @Test
  void backcrossing() {
    Builder plants = Pedigree.begin(1);
    int donor = plants.founder("donor", 1);
    int recurrent = plants.founder("recurrent", 1);
    int made = plants.offspring("F1", donor, recurrent);
    List<Integer> generations = new ArrayList<>(List.of(made));
    for (int n = 1; n < 6; n++) {
      made = plants.offspring("BC" + n, made, recurrent);
      generations.add(made);
    }
    Pedigree pedigree = plants.build();
    for (int n = 0; n < 6; n++) {
      assertThat(pedigree.inbreeding(generations.get(n))).isCloseTo(1 - Math.pow(0.5, n), EXACT);
      // The recurrent share: 1 − ½ to the power n + 1.
      assertThat(pedigree.coancestry(generations.get(n), recurrent))
          .isCloseTo(1 - Math.pow(0.5, n + 1), EXACT);
    }
  }

  /** S. Wright 1922, American Naturalist 56:330 (from memory). */
  @Test
  void cousinsAndHalfSibs() {
    Builder plants = Pedigree.begin(0);
    int a = plants.founder("a", 0);
    int b = plants.founder("b", 0);
    int c = plants.founder("c", 0);
    int d = plants.founder("d", 0);
    int ab1 = plants.offspring("ab1", a, b);
    int ab2 = plants.offspring("ab2", a, b);
    int ac = plants.offspring("ac", a, c);
    int cd1 = plants.offspring("cd1", c, d);
    int cd2 = plants.offspring("cd2", c, d);
    int e = plants.founder("e", 0);
    int f = plants.founder("f", 0);
    int cousin1 = plants.offspring("cousin1", ab1, e);
    int cousin2 = plants.offspring("cousin2", ab2, f);
    int double1 = plants.offspring("double1", ab1, cd1);
    int double2 = plants.offspring("double2", ab2, cd2);
    int second1 = plants.offspring("second1", cousin1, plants.founder("g", 0));
    int second2 = plants.offspring("second2", cousin2, plants.founder("h", 0));
    Pedigree pedigree = plants.build();
    assertThat(pedigree.coancestry(ab1, ac)).isEqualTo(1 / 8.0);
    assertThat(pedigree.coancestry(cousin1, cousin2)).isEqualTo(1 / 16.0);
    assertThat(pedigree.coancestry(double1, double2)).isEqualTo(1 / 8.0);
    assertThat(pedigree.coancestry(second1, second2)).isEqualTo(1 / 64.0);
  }

  /**
   * R. A. Mrode 2014, Linear Models for the Prediction of Animal Breeding Values, 3rd edition,
   * table 2.1 (pedigree and decomposition read, matrix worked out again).
   */
  @Test
  void oneParentUnknown() {
    Builder plants = Pedigree.begin(0);
    int one = plants.founder("1", 0);
    int two = plants.founder("2", 0);
    int three = plants.offspring("3", one, two);
    int four = plants.offspring("4", one);
    int five = plants.offspring("5", four, three);
    int six = plants.offspring("6", five, two);
    Pedigree pedigree = plants.build();
    assertThat(pedigree.inbreeding(five)).isEqualTo(.125);
    assertThat(pedigree.inbreeding(six)).isEqualTo(.125);
    assertThat(pedigree.inbreeding(four)).isZero();
    assertThat(2 * pedigree.coancestry(three, six)).isEqualTo(.5625);
    assertThat(2 * pedigree.coancestry(four, five)).isEqualTo(.625);
    assertThat(2 * pedigree.coancestry(five, six)).isEqualTo(.6875);
    double[] draws = {1, 1, .5, .75, .5, .46875};
    for (int i = 0; i < draws.length; i++) {
      assertThat(pedigree.descent().draw(i)).isEqualTo(draws[i]);
    }
  }

  /** Worked out by the tabular method, by the inverse and by 400,000 drops of genes. */
  @ParameterizedTest
  @CsvSource({
    "0, 0.5, 0.5, 0.75, 0.25, 0.625, 1, 1.5, 1, 1.75, 0.75, 0.25, 0.5",
    "1, 0.5, 0.5, 0.75, 0.5, 0.75, 1, 1.5, 1, 1.75, 1, 0.5, 1"
  })
  void withSelfing(
      double founders,
      double f2a,
      double f2b,
      double f3a,
      double bc1,
      double bc1s1,
      double aF1,
      double aF2,
      double aF2aF2b,
      double aF3,
      double aBc1F1,
      double sibs,
      double aSibs) {
    Builder plants = Pedigree.begin(0);
    int p1 = plants.founder("P1", founders);
    int p2 = plants.founder("P2", founders);
    int f1 = plants.offspring("F1", p1, p2);
    int selfedA = plants.selfed("F2a", f1);
    int selfedB = plants.selfed("F2b", f1);
    int twice = plants.selfed("F3a", selfedA);
    int back = plants.offspring("BC1", f1, p1);
    int backSelfed = plants.selfed("BC1S1", back);
    int f1b = plants.offspring("F1b", p1, p2);
    int sib = plants.offspring("sib", f1, f1b);
    Pedigree pedigree = plants.build();
    assertThat(pedigree.inbreeding(f1)).isZero();
    assertThat(pedigree.inbreeding(selfedA)).isCloseTo(f2a, EXACT);
    assertThat(pedigree.inbreeding(selfedB)).isCloseTo(f2b, EXACT);
    assertThat(pedigree.inbreeding(twice)).isCloseTo(f3a, EXACT);
    assertThat(pedigree.inbreeding(back)).isCloseTo(bc1, EXACT);
    assertThat(pedigree.inbreeding(backSelfed)).isCloseTo(bc1s1, EXACT);
    assertThat(2 * pedigree.coancestry(f1, f1)).isCloseTo(aF1, EXACT);
    assertThat(2 * pedigree.coancestry(selfedA, selfedA)).isCloseTo(aF2, EXACT);
    assertThat(2 * pedigree.coancestry(selfedA, selfedB)).isCloseTo(aF2aF2b, EXACT);
    assertThat(2 * pedigree.coancestry(twice, twice)).isCloseTo(aF3, EXACT);
    assertThat(2 * pedigree.coancestry(back, f1)).isCloseTo(aBc1F1, EXACT);
    assertThat(pedigree.inbreeding(sib)).isCloseTo(sibs, EXACT);
    assertThat(2 * pedigree.coancestry(f1, f1b)).isCloseTo(aSibs, EXACT);
  }

  /** One quarter of selfed seed of a, three of a by b: F is .25·.5, the share of a is .625. */
  @Test
  void aBulkIsTheMeanOfItsFruits() {
    Builder plants = Pedigree.begin(0);
    int a = plants.founder("a", 0);
    int b = plants.founder("b", 0);
    List<Fruit> fruits = List.of(Fruit.selfed(50, a), new Fruit(150, a, OptionalInt.of(b)));
    int one = plants.ofBulk("one", fruits);
    int other = plants.ofBulk("other", fruits);
    int seed = plants.offspring("seed", one, other);
    int open = plants.ofBulk("open", List.of(new Fruit(1, a, OptionalInt.empty())));
    Pedigree pedigree = plants.build();
    assertThat(pedigree.inbreeding(one)).isEqualTo(.125);
    assertThat(pedigree.coancestry(one, a)).isEqualTo(.3125);
    assertThat(pedigree.coancestry(one, b)).isEqualTo(.1875);
    assertThat(pedigree.coancestry(one, one)).isEqualTo((1 + .125) / 2);
    // .625² of a with itself and .375² of b with itself, each ½.
    assertThat(pedigree.coancestry(one, other)).isCloseTo((.625 * .625 + .375 * .375) / 2, EXACT);
    assertThat(pedigree.inbreeding(seed)).isCloseTo(pedigree.coancestry(one, other), EXACT);
    assertThat(pedigree.coancestry(open, a)).isEqualTo(.25);
    assertThat(pedigree.inbreeding(open)).isZero();
  }

  @Test
  void aBulkOfOneFruitIsThatFruit() {
    Builder plants = Pedigree.begin(0);
    int a = plants.founder("a", .5);
    int b = plants.offspring("b", a);
    int plain = plants.offspring("plain", a, b);
    int bulked = plants.ofBulk("bulked", List.of(new Fruit(7, a, OptionalInt.of(b))));
    Pedigree pedigree = plants.build();
    assertThat(pedigree.inbreeding(bulked)).isEqualTo(pedigree.inbreeding(plain));
    assertThat(pedigree.descent().draw(bulked)).isCloseTo(pedigree.descent().draw(plain), EXACT);
  }

  /** Four unrelated founders kept alike lose one eighth; used as .4 .3 .2 .1, Σc² ÷ 2 = .15. */
  @Test
  void diversityOfASet() {
    Builder plants = Pedigree.begin(0);
    List<Integer> founders = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      founders.add(plants.founder("founder", 0));
    }
    Pedigree pedigree = plants.build();
    assertThat(pedigree.diversityKept(founders)).isEqualTo(1 - 1 / 8.0);
    assertThat(pedigree.meanCoancestry(Map.of(0, 4.0, 1, 3.0, 2, 2.0, 3, 1.0)))
        .isCloseTo(.15, EXACT);
    assertThatThrownBy(() -> pedigree.meanCoancestry(List.of()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void whatIsAssumedIsTold() {
    Builder plants = Pedigree.begin(.25);
    plants.founder("stated", 0);
    int assumed = plants.founder("old-kind");
    Pedigree pedigree = plants.build();
    assertThat(pedigree.assumedFounders()).containsExactly("old-kind");
    assertThat(pedigree.inbreeding(assumed)).isEqualTo(.25);
    assertThat(pedigree.name(assumed)).isEqualTo("old-kind");
  }

  @Test
  void parentsComeFirst() {
    Builder plants = Pedigree.begin(0);
    int a = plants.founder("a", 0);
    assertThatThrownBy(() -> plants.selfed("b", a + 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> plants.founder("c", 1.5)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> plants.ofBulk("d", List.of()))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Fruit(0, a, OptionalInt.empty()))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
