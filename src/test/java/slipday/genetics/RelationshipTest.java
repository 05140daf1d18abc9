package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import slipday.genetics.Pedigree.Builder;
import slipday.genetics.Pedigree.Fruit;
import slipday.genetics.RelationshipInverse.Entry;
import slipday.genetics.RelationshipInverse.Term;

/** The relationships against the tabular method, and their inverse against them. */
class RelationshipTest {
  /** Eight animals, four of them founders: inverse read, worked out again. */
  @Test
  void inverseByRules() {
    Builder plants = Pedigree.begin(0);
    for (int i = 1; i <= 4; i++) {
      plants.founder("" + i, 0);
    }
    plants.offspring("5", 0, 1);
    plants.offspring("6", 0, 1);
    plants.offspring("7", 2, 3);
    plants.offspring("8", 4, 5);
    Pedigree pedigree = plants.build();
    assertThat(2 * pedigree.coancestry(7, 7)).isEqualTo(1.25);
    assertThat(2 * pedigree.coancestry(4, 7)).isEqualTo(.75);
    assertThat(2 * pedigree.coancestry(5, 7)).isEqualTo(.75);
    RelationshipInverse inverse = pedigree.inverse().value().orElseThrow();
    assertThat(dense(inverse)[4]).containsExactly(-1, -1, 0, 0, 2.5, .5, 0, -1);
  }

  /** Two F1 sibs of fully inbred parents are one genotype, and it is the mean of the parents. */
  @Test
  void settledGenotypes() {
    Builder plants = Pedigree.begin(0);
    int p1 = plants.founder("P1", 1);
    int p2 = plants.founder("P2", 1);
    int f1a = plants.offspring("F1a", p1, p2);
    int f1b = plants.offspring("F1b", p1, p2);
    plants.selfed("F2a", f1a);
    plants.selfed("F2b", f1b);
    int bc1 = plants.offspring("BC1", f1a, p1);
    plants.selfed("BC1S1", bc1);
    Pedigree pedigree = plants.build();
    assertThat(pedigree.inverse().refusal().orElseThrow())
        .startsWith("The genotype of `F1a` is settled by its fully inbred parents");
    RelationshipInverse reduced = pedigree.reducedInverse();
    // The rank of the whole matrix, worked out again, is 6.
    assertThat(reduced.free()).containsExactly(0, 1, 4, 5, 6, 7);
    assertThat(reduced.stands(f1a)).containsExactly(new Term(0, .5), new Term(1, .5));
    assertThat(reduced.stands(f1b)).isEqualTo(reduced.stands(f1a));
    assertInverse(pedigree, reduced);
  }

  @Test
  void aSelfedInbredPlantIsThatPlant() {
    Builder plants = Pedigree.begin(0);
    int line = plants.founder("line", 1);
    int again = plants.selfed("again", line);
    int sib = plants.offspring("sib", line, again);
    int other = plants.founder("other", 0);
    int made = plants.offspring("made", sib, other);
    Pedigree pedigree = plants.build();
    RelationshipInverse inverse = pedigree.inverse().value().orElseThrow();
    assertThat(inverse.free()).containsExactly(line, other, made);
    assertThat(inverse.stands(again)).containsExactly(new Term(0, 1));
    assertThat(inverse.stands(sib)).containsExactly(new Term(0, 1));
    assertInverse(pedigree, inverse);
  }

  @Property(tries = 300)
  void asTheTabularMethodHasIt(
      @ForAll long seed, @ForAll @IntRange(min = 3, max = 40) int size, @ForAll Descent.Way way) {
    Drawn drawn = Drawn.of(new Random(seed), size, way);
    for (int i = 0; i < size; i++) {
      assertThat(1 + drawn.pedigree.inbreeding(i)).isCloseTo(drawn.table[i][i], within(1e-9));
      for (int j = 0; j < i; j++) {
        assertThat(2 * drawn.pedigree.coancestry(i, j)).isCloseTo(drawn.table[i][j], within(1e-9));
      }
    }
    assertInverse(drawn.pedigree, drawn.pedigree.reducedInverse());
  }

  /**
   * The mean of a set is the mean of the pairs; coancestry of a pair is their seed's inbreeding.
   */
  @Property(tries = 60)
  void meansAndSeed(@ForAll long seed, @ForAll @IntRange(min = 3, max = 25) int size) {
    Drawn drawn = Drawn.of(new Random(seed), size);
    List<Integer> all = new ArrayList<>();
    double sum = 0;
    for (int i = 0; i < size; i++) {
      all.add(i);
      for (int j = 0; j < size; j++) {
        sum += drawn.table[i][j] / 2;
      }
    }
    assertThat(drawn.pedigree.meanCoancestry(all)).isCloseTo(sum / size / size, within(1e-9));
    assertThat(drawn.pedigree.inbreeding(size - 1)).isBetween(0.0, 1.0);
  }

  /** Among the free plants, the matrix times its inverse is the identity. */
  private static void assertInverse(Pedigree pedigree, RelationshipInverse inverse) {
    double[][] found = dense(inverse);
    List<Integer> free = inverse.free();
    for (int i = 0; i < free.size(); i++) {
      for (int j = 0; j < free.size(); j++) {
        double sum = 0;
        for (int k = 0; k < free.size(); k++) {
          sum += 2 * pedigree.coancestry(free.get(i), free.get(k)) * found[k][j];
        }
        assertThat(sum).isCloseTo(i == j ? 1 : 0, within(1e-6));
      }
    }
    for (int i = 0; i < pedigree.size(); i++) {
      double own = 0;
      for (Term one : inverse.stands(i)) {
        for (Term other : inverse.stands(i)) {
          own +=
              one.share()
                  * other.share()
                  * 2
                  * pedigree.coancestry(free.get(one.free()), free.get(other.free()));
        }
      }
      assertThat(own).isCloseTo(1 + pedigree.inbreeding(i), within(1e-8));
    }
  }

  private static double[][] dense(RelationshipInverse inverse) {
    int size = inverse.free().size();
    double[][] dense = new double[size][size];
    for (Entry entry : inverse.entries()) {
      dense[entry.row()][entry.column()] = entry.value();
    }
    return dense;
  }

  /**
   * A random pedigree with its relationships by the tabular method (L. L. Cruden 1949, Journal of
   * Heredity 40:248, from memory), each bulk as the mean over its fruits.
   */
  private record Drawn(Pedigree pedigree, double[][] table) {
    static Drawn of(Random random, int size) {
      return of(random, size, Descent.Way.WHICHEVER_IS_QUICKER);
    }

    static Drawn of(Random random, int size, Descent.Way way) {
      Builder plants = Pedigree.begin(0);
      double[][] table = new double[size][size];
      List<Fruit> last = List.of();
      for (int i = 0; i < size; i++) {
        int kind = i < 2 ? 0 : random.nextInt(8);
        if (kind == 0) {
          double inbreeding = random.nextInt(3) / 2.0;
          plants.founder("founder", inbreeding);
          table[i][i] = 1 + inbreeding;
        } else {
          List<Fruit> fruits = new ArrayList<>();
          boolean again = !last.isEmpty() && random.nextInt(3) == 0;
          for (int k = kind == 1 ? 3 : 1; k > 0 && !again; k--) {
            fruits.add(fruit(random, i));
          }
          if (again) {
            fruits.addAll(last);
            kind = fruits.size() == 1 ? 2 : 1;
          }
          last = fruits;
          add(plants, kind, fruits);
          fill(table, i, fruits);
        }
      }
      return new Drawn(plants.build(way), table);
    }

    private static Fruit fruit(Random random, int before) {
      int seedParent = random.nextInt(before);
      return switch (random.nextInt(5)) {
        case 0 -> new Fruit(1 + random.nextInt(9), seedParent, OptionalInt.empty());
        case 1, 2 -> Fruit.selfed(1 + random.nextInt(9), seedParent);
        default ->
            new Fruit(1 + random.nextInt(9), seedParent, OptionalInt.of(random.nextInt(before)));
      };
    }

    private static void add(Builder plants, int kind, List<Fruit> fruits) {
      Fruit first = fruits.get(0);
      if (kind == 1) {
        plants.ofBulk("bulk", fruits);
      } else if (first.pollenParent().isPresent()) {
        plants.offspring("made", first.seedParent(), first.pollenParent().getAsInt());
      } else {
        plants.offspring("open", first.seedParent());
      }
    }

    private static void fill(double[][] table, int i, List<Fruit> fruits) {
      double seeds = fruits.stream().mapToDouble(Fruit::seeds).sum();
      table[i][i] = 1;
      for (Fruit fruit : fruits) {
        double weight = fruit.seeds() / seeds;
        int seedParent = fruit.seedParent();
        int pollenParent = fruit.pollenParent().orElse(-1);
        for (int j = 0; j < i; j++) {
          double half = table[j][seedParent];
          half += pollenParent < 0 ? 0 : table[j][pollenParent];
          table[i][j] += weight * half / 2;
          table[j][i] = table[i][j];
        }
        table[i][i] += pollenParent < 0 ? 0 : weight * table[seedParent][pollenParent] / 2;
      }
    }
  }
}
