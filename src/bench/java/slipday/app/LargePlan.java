package slipday.app;

import java.util.List;

/**
 * A plan of a wanted number of lines: many lines and lots, as years of breeding leave them, and
 * some of them grown.
 */
public final class LargePlan {
  private static final List<String> CROPS =
      List.of(
          "muskmelon",
          "casaba",
          "butternut",
          "acorn-squash",
          "hubbard",
          "icebox-watermelon",
          "pickling-cucumber",
          "tomato",
          "sweet-pepper",
          "snap-bean",
          "okra",
          "sunflower");

  private LargePlan() {}

  public static String of(int lines, int plantings) {
    StringBuilder plan =
        new StringBuilder(
            """
            season 2026

            site big
              place          44 N, 72 W
              time zone      America/New_York
              last frost     18 May, 1 in 10 after 30 May
              first frost    27 September, 1 in 10 before 14 September

            """);
    int written = 8;
    for (int i = 0; i < plantings; i++) {
      plan.append(
          """
          bed bed-%1$d
            size           12 m x 1.2 m
            corner         %2$d m east, %3$d m north
            grew           pea in 2025

          """
              .formatted(i, i % 20 * 14, i / 20 * 4));
      written += 5;
    }
    int lots = (lines - written - plantings * 8) / 12;
    for (int i = 0; i < lots; i++) {
      plan.append(
          """
          line line-%1$d
            is a           %2$s
            purpose        to keep
            looks          "the line of the number %1$d"

          lot lot-%1$d
            of             line-%1$d
            generation     F4
            seeds          140
            harvested      2025
            tested         44 of 50 in 2026

          """
              .formatted(i, CROPS.get(i % CROPS.size())));
    }
    for (int i = 0; i < plantings; i++) {
      plan.append(
          """
          grow lot-%1$d
            in             bed-%1$d
            plants         12, 60 cm apart
            start          indoors, 3 weeks before planting out
            flowers        cover the chosen
            pollinate      self by hand, for 8 fruits from 5 plants or more
            seed           saved

          """
              .formatted(i));
    }
    return plan.toString();
  }
}
