package slipday.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Seeds in and out of each lot, read off the lines of plan and record with nothing of Slipday's.
 */
final class SeedLedger {
  private static final Pattern LOT = Pattern.compile("(?m)^lot (\\S+)\\n((?:  .*\\n)*)");
  private static final Pattern SEEDS = Pattern.compile("(?m)^  seeds +(\\d+)");
  private static final Pattern SAVED = Pattern.compile("saved .*, (\\d+) seeds, into ([^ ,]+).*");
  private static final Pattern SOWED = Pattern.compile("sowed (\\S+), (\\d+) seeds");
  private static final Pattern GIVEN = Pattern.compile("given away (\\S+), (\\d+) seeds.*");
  private static final Pattern TESTED = Pattern.compile("tested (\\S+), \\d+ of (\\d+) seeds");
  private static final Pattern COUNTED = Pattern.compile("counted (\\S+), (\\d+) seeds");

  private final Map<String, Integer> left = new HashMap<>();

  void declared(String plan) {
    Matcher lot = LOT.matcher(plan);
    while (lot.find()) {
      Matcher seeds = SEEDS.matcher(lot.group(2));
      if (seeds.find()) {
        left.put(lot.group(1), Integer.parseInt(seeds.group(1)));
      }
    }
  }

  /** All lines by date; seed is taken before it is used, and counts come last in a day. */
  void recorded(Path record, int lastYear) throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(record)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".season")).toList()) {
        Files.readString(file).lines().filter(l -> l.matches("\\d{4}-.*")).forEach(lines::add);
      }
    }
    lines.stream()
        .filter(l -> Integer.parseInt(l.substring(0, 4)) <= lastYear)
        .sorted()
        .forEach(l -> entry(l.substring(11)));
  }

  private void entry(String text) {
    Matcher saved = SAVED.matcher(text);
    Matcher counted = COUNTED.matcher(text);
    if (saved.matches()) {
      left.merge(saved.group(2), Integer.parseInt(saved.group(1)), Integer::sum);
    } else if (counted.matches()) {
      left.put(counted.group(1), Integer.parseInt(counted.group(2)));
    }
    for (Pattern use : List.of(SOWED, GIVEN, TESTED)) {
      Matcher used = use.matcher(text);
      if (used.matches()) {
        left.merge(used.group(1), -Integer.parseInt(used.group(2)), Integer::sum);
      }
    }
  }

  Map<String, Integer> left() {
    return left;
  }
}
