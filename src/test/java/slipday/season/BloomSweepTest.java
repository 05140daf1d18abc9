package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class BloomSweepTest {
  @Provide
  Arbitrary<List<BloomSweep.Window>> windows() {
    Arbitrary<Integer> days = Arbitraries.integers().between(0, 60);
    // Some windows run backwards: a planting that never flowers.
    return Combinators.combine(days, days).as(BloomSweep.Window::new).list().ofMaxSize(40);
  }

  @Property
  void findsWhatComparingAllPairsFinds(@ForAll("windows") List<BloomSweep.Window> windows) {
    List<Set<Integer>> swept = new ArrayList<>();
    BloomSweep.sweep(windows, (a, b) -> swept.add(Set.of(a, b)));
    Set<Set<Integer>> all = new HashSet<>();
    for (int a = 0; a < windows.size(); a++) {
      for (int b = a + 1; b < windows.size(); b++) {
        if (meet(windows.get(a), windows.get(b))) {
          all.add(Set.of(a, b));
        }
      }
    }
    assertThat(swept).doesNotHaveDuplicates();
    assertThat(new HashSet<>(swept)).isEqualTo(all);
  }

  private static boolean meet(BloomSweep.Window a, BloomSweep.Window b) {
    boolean both = a.from() <= a.to() && b.from() <= b.to();
    return both && a.from() <= b.to() && b.from() <= a.to();
  }
}
