package slipday.output.report;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import slipday.garden.Line;
import slipday.garden.Planting;

/** A few letters for each line, no two lines alike. */
final class Initials {
  private static final int MOST = 3;
  private final Map<String, String> byLine = new HashMap<>();
  private final Set<String> given = new HashSet<>();

  Initials(List<Planting> plantings) {
    plantings.forEach(p -> byLine.computeIfAbsent(p.line().name(), n -> free(p.line())));
  }

  String of(Planting planting) {
    return byLine.getOrDefault(planting.line().name(), "?");
  }

  private String free(Line line) {
    String letters = letters(line.title());
    String wanted = letters.isEmpty() ? letters(line.name()) : letters;
    String free = wanted;
    for (int n = 2; !given.add(free); n++) {
      free = wanted + n;
    }
    return free;
  }

  private static String letters(String words) {
    StringBuilder letters = new StringBuilder();
    for (String word : words.split("[\\s-]+", -1)) {
      if (letters.codePoints().count() < MOST
          && !word.isEmpty()
          && Character.isLetterOrDigit(word.codePointAt(0))) {
        letters.appendCodePoint(word.codePointAt(0));
      }
    }
    return letters.toString().toUpperCase(Locale.ROOT);
  }
}
