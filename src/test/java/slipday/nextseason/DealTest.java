package slipday.nextseason;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DealTest {
  private static Map<String, Integer> weights(Object... pairs) {
    Map<String, Integer> weights = new LinkedHashMap<>();
    for (int i = 0; i < pairs.length; i += 2) {
      weights.put((String) pairs[i], (Integer) pairs[i + 1]);
    }
    return weights;
  }

  @Test
  void sharesThatComeToAllThePlantsAreKept() {
    Map<String, Integer> weights = weights("a", 2, "b", 1, "c", 3);
    assertThat(Deal.out(6, weights, 1, t -> 6)).isEqualTo(weights);
  }

  @Test
  void eachThatHasAnyHasTheLeast() {
    assertThat(Deal.out(6, weights("a", 2, "b", 1, "c", 1, "d", 1, "e", 1), 2, t -> 6))
        .isEqualTo(weights("a", 2, "b", 2, "c", 2));
    assertThat(Deal.out(1, weights("a", 1, "b", 1), 2, t -> 6)).isEqualTo(weights("a", 1));
  }

  @Test
  void whatOneHasNoSeedForTheOthersGet() {
    assertThat(Deal.out(6, weights("a", 3, "b", 3), 1, t -> t.equals("a") ? 1 : 6))
        .isEqualTo(weights("a", 1, "b", 5));
    assertThat(Deal.out(6, weights("a", 3, "b", 3), 1, t -> t.equals("a") ? 0 : 2))
        .isEqualTo(weights("b", 2));
    assertThat(Deal.out(6, weights("a", 3), 1, t -> 0)).isEmpty();
  }

  /** Too little seed for sibs is better than none. */
  @Test
  void oneThatHasLessThanTheLeastGoesAloneOnly() {
    assertThat(Deal.out(4, weights("a", 5, "b", 1), 2, t -> t.equals("a") ? 1 : 4))
        .isEqualTo(weights("b", 4));
    assertThat(Deal.out(4, weights("a", 5), 2, t -> 1)).isEqualTo(weights("a", 1));
  }
}
