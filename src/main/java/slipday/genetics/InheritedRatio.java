package slipday.genetics;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A ratio that one or two genes, not linked, can give, by the textbooks of genetics (W. Bateson
 * 1909, Mendel's Principles of Heredity, from memory; worked out again from the sixteen squares).
 *
 * @param parts the shares of the classes
 * @param grown what was sown
 * @param says by what genes
 * @param backcrossed the same genes' shares of the same classes, where the F1 is crossed back to
 *     the parent recessive in all of them (or, with one gene of which the split plants show, to one
 *     parent); empty for what is a backcross itself
 */
public record InheritedRatio(
    List<Integer> parts, Grown grown, String says, List<Integer> backcrossed) {

  /** What was sown. */
  public enum Grown {
    /** Seed of selfed or sibbed F1 plants. */
    SELFED,
    /** Seed of F1 plants crossed back to the recessive parent. */
    BACKCROSS
  }

  /** Up to so many classes it is tried which class is which; beyond, they are taken in order. */
  public static final int MOST_ARRANGED = 4;

  private static final List<InheritedRatio> ALL =
      List.of(
          selfed("one gene, the dominant hides the recessive", of(1, 1), 3, 1),
          selfed("one gene, and pure dominants do not live", of(1, 1), 2, 1),
          selfed("two genes, the dominants of both are needed", of(1, 3), 9, 7),
          selfed("two genes, the dominant of either is enough", of(3, 1), 15, 1),
          selfed("two genes, the dominant of one undoes that of the other", of(3, 1), 13, 3),
          backcross("one gene", 1, 1),
          backcross("two genes, the dominants of both are needed, or either is enough", 3, 1),
          selfed("one gene, and split plants show", of(0, 1, 1), 1, 2, 1),
          selfed("two genes, the dominant of one covers the other gene", of(2, 1, 1), 12, 3, 1),
          selfed("two genes, either dominant does alike, both together more", of(1, 2, 1), 9, 6, 1),
          selfed("two genes, the recessive of one covers the other gene", of(1, 1, 2), 9, 3, 4),
          backcross("two genes, one of which covers the other", 2, 1, 1),
          selfed("two genes, each on its own", of(1, 1, 1, 1), 9, 3, 3, 1),
          backcross("two genes, each on its own", 1, 1, 1, 1),
          selfed("two genes that add up alike", of(0, 0, 1, 2, 1), 1, 4, 6, 4, 1),
          selfed(
              "two genes, of one of which the split plants show",
              of(0, 1, 1, 0, 1, 1),
              3,
              6,
              3,
              1,
              2,
              1),
          selfed(
              "two genes, of both of which the split plants show",
              of(0, 0, 0, 0, 1, 1, 0, 1, 1),
              1,
              2,
              1,
              2,
              4,
              2,
              1,
              2,
              1));

  public InheritedRatio {
    parts = List.copyOf(parts);
    backcrossed = List.copyOf(backcrossed);
  }

  private static List<Integer> of(int... parts) {
    return IntStream.of(parts).boxed().toList();
  }

  private static InheritedRatio selfed(String says, List<Integer> backcrossed, int... parts) {
    return new InheritedRatio(of(parts), Grown.SELFED, says, backcrossed);
  }

  private static InheritedRatio backcross(String says, int... parts) {
    return new InheritedRatio(of(parts), Grown.BACKCROSS, says, List.of());
  }

  /** Every ratio of so many classes, laid to the classes in every way that differs. */
  public static List<InheritedRatio> ofClasses(int classes) {
    List<InheritedRatio> found = new ArrayList<>();
    for (InheritedRatio ratio : ALL) {
      if (ratio.parts.size() == classes) {
        found.addAll(ratio.arrangements());
      }
    }
    return found;
  }

  /** The most classes that any ratio has. */
  public static int mostClasses() {
    return ALL.stream().mapToInt(r -> r.parts.size()).max().orElseThrow();
  }

  private List<InheritedRatio> arrangements() {
    if (parts.size() > MOST_ARRANGED) {
      return List.of(this);
    }
    List<InheritedRatio> found = new ArrayList<>();
    for (int[] order : orders(parts.size())) {
      InheritedRatio turned =
          new InheritedRatio(turned(parts, order), grown, says, turned(backcrossed, order));
      if (found.stream().noneMatch(f -> f.parts.equals(turned.parts))) {
        found.add(turned);
      }
    }
    return found;
  }

  private static List<Integer> turned(List<Integer> list, int[] order) {
    return list.isEmpty() ? list : IntStream.of(order).mapToObj(list::get).toList();
  }

  /** Every order of n things, the given one first. */
  private static List<int[]> orders(int n) {
    List<int[]> orders = new ArrayList<>();
    orders.add(new int[0]);
    for (int k = 0; k < n; k++) {
      List<int[]> longer = new ArrayList<>();
      for (int[] order : orders) {
        for (int next = 0; next < n; next++) {
          int candidate = next;
          if (IntStream.of(order).noneMatch(o -> o == candidate)) {
            longer.add(IntStream.concat(IntStream.of(order), IntStream.of(next)).toArray());
          }
        }
      }
      orders = longer;
    }
    return orders;
  }

  /** {@code 9:3:3:1}. */
  public static String text(List<Integer> parts) {
    return String.join(":", parts.stream().map(String::valueOf).toList());
  }
}
