package slipday.testing;

import java.util.List;

/** A plan of as many plantings as wanted, a third of them with flowers left open to their kin. */
public final class LargeGarden {
  private static final int PLANTINGS_A_BED = 10;
  private static final int BEDS_A_ROW = 5;
  private static final List<String> CROPS =
      List.of("muskmelon", "butternut", "acorn-squash", "casaba", "pickling-cucumber");

  private LargeGarden() {}

  public static String plan(int plantings) {
    StringBuilder plan =
        new StringBuilder(
            """
            season 2026
            site large "A large garden"
              place 44.21 N, 72.58 W
              time zone America/New_York
              last frost 18 May, 1 in 10 after 30 May
              first frost 27 September, 1 in 10 before 14 September
            """);
    for (int bed = 0; bed * PLANTINGS_A_BED < plantings; bed++) {
      plan.append("bed bed-%d\n  size 46 m x 1.2 m\n".formatted(bed));
      plan.append(
          "  corner %d m east, %d m north\n"
              .formatted(bed % BEDS_A_ROW * 50, bed / BEDS_A_ROW * 3));
    }
    for (int i = 0; i < plantings; i++) {
      plan.append(
          """
          line line-%1$d "Line of the number %1$d"
            is a %2$s
            purpose to keep
          lot lot-%1$d
            of line-%1$d
            generation F4
            seeds 200
            harvested 2025
          grow lot-%1$d
            in bed-%3$d
            plants 6, 70 cm apart
            start indoors, 3 weeks before planting out
            %4$s
            seed saved
          """
              .formatted(i, CROPS.get(i % CROPS.size()), i / PLANTINGS_A_BED, flowers(i)));
    }
    return plan.toString();
  }

  private static String flowers(int planting) {
    return planting % 3 == 0
        ? "flowers open"
        : "flowers cover the chosen\n  pollinate sib by hand, for 6 fruits from 4 plants or more";
  }
}
