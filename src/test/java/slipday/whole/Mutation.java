package slipday.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Ways to change a text a little, so that much of it still has a meaning. */
final class Mutation {
  private static final List<String> NUMBERS =
      List.of(
          "0",
          "1",
          "2",
          "3",
          "7",
          "29",
          "30",
          "31",
          "99",
          "365",
          "366",
          "1000",
          "99999",
          "2147483647",
          "2147483648",
          "999999999999999999999",
          "0.5",
          "0.0001",
          "12.75",
          "-1",
          "-40",
          "1e9");
  private static final List<String> WORDS =
      List.of(
          "open",
          "caged",
          "covered",
          "removed",
          "saved",
          "not",
          "outdoors",
          "indoors",
          "C",
          "F",
          "kg",
          "m",
          "cm",
          "days",
          "weeks",
          "%",
          "in",
          "of",
          "and",
          ",",
          "x",
          "29 February",
          "31 December",
          "1 January",
          "2025-02-29",
          "2026-06-31",
          "\"",
          "#",
          "south",
          "N",
          "S",
          "E",
          "W",
          "all",
          "unknown",
          "F1",
          "BC1F2",
          "\u00bd",
          "\u2212",
          "\u00b0",
          "\u00e9\ud83c\udf48",
          "\t",
          "\u0000");

  private final Random random;

  Mutation(long seed) {
    this.random = new Random(seed);
  }

  String of(String text, int times) {
    List<String> lines = new ArrayList<>(text.lines().toList());
    for (int i = 0; i < times && !lines.isEmpty(); i++) {
      once(lines);
    }
    return String.join("\n", lines) + "\n";
  }

  private void once(List<String> lines) {
    int at = random.nextInt(lines.size());
    String line = lines.get(at);
    switch (random.nextInt(10)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(random.nextInt(lines.size()), line);
      case 2 -> lines.set(at, cut(line));
      case 3 -> lines.set(at, without(line));
      case 4 -> lines.set(at, lines.get(random.nextInt(lines.size())));
      case 5 -> lines.set(at, withOther(line, anyOf(WORDS)));
      case 6 -> lines.set(at, withOther(line, wordOf(lines.get(random.nextInt(lines.size())))));
      default -> lines.set(at, otherNumber(line));
    }
  }

  private String cut(String line) {
    return line.substring(0, random.nextInt(line.length() + 1));
  }

  private String without(String line) {
    return withOther(line, "");
  }

  private String withOther(String line, String word) {
    String[] words = line.split("(?<= )|(?= )");
    words[random.nextInt(words.length)] = word;
    return String.join("", words);
  }

  private String wordOf(String line) {
    String[] words = line.strip().split(" +");
    return words[random.nextInt(words.length)];
  }

  /** Another number for one of the line's, if it has any. */
  private String otherNumber(String line) {
    List<Integer> starts = new ArrayList<>();
    for (int i = 0; i < line.length(); i++) {
      boolean first = i == 0 || !isNumber(line.charAt(i - 1));
      if (first && isNumber(line.charAt(i))) {
        starts.add(i);
      }
    }
    if (starts.isEmpty()) {
      return withOther(line, anyOf(NUMBERS));
    }
    int from = starts.get(random.nextInt(starts.size()));
    int to = from;
    while (to < line.length() && isNumber(line.charAt(to))) {
      to++;
    }
    return line.substring(0, from) + anyOf(NUMBERS) + line.substring(to);
  }

  private static boolean isNumber(char c) {
    return c == '.' || (c >= '0' && c <= '9');
  }

  String anyOf(List<String> words) {
    return words.get(random.nextInt(words.size()));
  }
}
