package slipday.genetics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.genetics.InheritedRatio.Grown;

class InheritedRatioTest {
  /** Looks by the dominants carried of two genes, 0 to 2 of each, as a class from 0. */
  private static Arguments genes(
      String says, BiFunction<Integer, Integer, Integer> looks, String selfed, String back) {
    return Arguments.of(says, looks, selfed, back);
  }

  static Stream<Arguments> ways() {
    return Stream.of(
        genes("one gene, the dominant hides the recessive", (a, b) -> a > 0 ? 0 : 1, "3:1", "1:1"),
        genes(
            "two genes, the dominants of both are needed",
            (a, b) -> a > 0 && b > 0 ? 0 : 1,
            "9:7",
            "1:3"),
        genes(
            "two genes, the dominant of either is enough",
            (a, b) -> a > 0 || b > 0 ? 0 : 1,
            "15:1",
            "3:1"),
        genes(
            "two genes, the dominant of one undoes that of the other",
            (a, b) -> a > 0 || b == 0 ? 0 : 1,
            "13:3",
            "3:1"),
        genes("one gene, and split plants show", (a, b) -> 2 - a, "1:2:1", "0:1:1"),
        genes(
            "two genes, the dominant of one covers the other gene",
            (a, b) -> a > 0 ? 0 : b > 0 ? 1 : 2,
            "12:3:1",
            "2:1:1"),
        genes(
            "two genes, either dominant does alike, both together more",
            (a, b) -> a > 0 && b > 0 ? 0 : a > 0 || b > 0 ? 1 : 2,
            "9:6:1",
            "1:2:1"),
        genes(
            "two genes, the recessive of one covers the other gene",
            (a, b) -> a == 0 ? 2 : b > 0 ? 0 : 1,
            "9:3:4",
            "1:1:2"),
        genes(
            "two genes, each on its own",
            (a, b) -> (a > 0 ? 0 : 2) + (b > 0 ? 0 : 1),
            "9:3:3:1",
            "1:1:1:1"),
        genes("two genes that add up alike", (a, b) -> 4 - a - b, "1:4:6:4:1", "0:0:1:2:1"),
        genes(
            "two genes, of one of which the split plants show",
            (a, b) -> (a > 0 ? 0 : 3) + 2 - b,
            "3:6:3:1:2:1",
            "0:1:1:0:1:1"),
        genes(
            "two genes, of both of which the split plants show",
            (a, b) -> 3 * (2 - a) + 2 - b,
            "1:2:1:2:4:2:1:2:1",
            "0:0:0:0:1:1:0:1:1"));
  }

  /**
   * The sixteen squares of two genes, each with two pollen and two egg kinds, drawn and counted.
   */
  @ParameterizedTest
  @MethodSource("ways")
  void ratiosAreThoseOfTheSixteenSquares(
      String says, BiFunction<Integer, Integer, Integer> looks, String selfed, String back) {
    Map<Integer, Integer> inF2 = new TreeMap<>();
    Map<Integer, Integer> inBackcross = new TreeMap<>();
    for (int egg = 0; egg < 4; egg++) {
      inBackcross.merge(looks.apply(egg / 2, egg % 2), 1, Integer::sum);
      for (int pollen = 0; pollen < 4; pollen++) {
        inF2.merge(looks.apply(egg / 2 + pollen / 2, egg % 2 + pollen % 2), 1, Integer::sum);
      }
    }
    InheritedRatio ratio =
        InheritedRatio.ofClasses(inF2.size()).stream()
            .filter(r -> r.says().equals(says) && r.grown() == Grown.SELFED)
            .findFirst()
            .orElseThrow();
    assertThat(InheritedRatio.text(ratio.parts())).isEqualTo(selfed);
    assertThat(InheritedRatio.text(ratio.backcrossed())).isEqualTo(back);
    assertThat(lowest(new ArrayList<>(inF2.values()))).isEqualTo(lowest(ratio.parts()));
    List<Integer> counted =
        inF2.keySet().stream().map(k -> inBackcross.getOrDefault(k, 0)).toList();
    assertThat(lowest(counted)).isEqualTo(lowest(ratio.backcrossed()));
  }

  /** In lowest terms: 12:4 is 3:1. */
  private static List<Integer> lowest(List<Integer> parts) {
    int divisor = parts.stream().reduce(0, InheritedRatioTest::gcd);
    return parts.stream().map(p -> p / divisor).toList();
  }

  private static int gcd(int a, int b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  @Test
  void everyWayRoundIsThereOnce() {
    List<InheritedRatio> four = InheritedRatio.ofClasses(4);
    assertThat(four).hasSize(13);
    assertThat(new HashSet<>(four)).hasSize(13);
    assertThat(four).extracting(r -> InheritedRatio.text(r.parts())).contains("3:9:1:3", "1:1:1:1");
    assertThat(InheritedRatio.ofClasses(2)).hasSize(13);
    assertThat(InheritedRatio.ofClasses(7)).isEmpty();
  }

  /** The classes of the backcross go with those of the selfed plants. */
  @Test
  void theBackcrossIsTurnedAlong() {
    InheritedRatio turned =
        InheritedRatio.ofClasses(2).stream()
            .filter(r -> InheritedRatio.text(r.parts()).equals("7:9"))
            .findFirst()
            .orElseThrow();
    assertThat(InheritedRatio.text(turned.backcrossed())).isEqualTo("3:1");
  }
}
