package slipday.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** What several people wrote down, a file each, by date. */
final class Diary {
  private final Map<String, List<Note>> pages = new TreeMap<>();

  private record Note(LocalDate date, String text) {}

  /**
   * @param who whose file it goes into
   * @param text with places for {@code values}, decimals with a point
   */
  void add(String who, LocalDate date, String text, Object... values) {
    String line = values.length == 0 ? text : String.format(Locale.ROOT, text, values);
    pages.computeIfAbsent(who, w -> new ArrayList<>()).add(new Note(date, line));
  }

  int size() {
    return pages.values().stream().mapToInt(List::size).sum();
  }

  /** The text of each file, by whose it is. */
  Map<String, String> texts() {
    Map<String, String> texts = new LinkedHashMap<>();
    pages.forEach(
        (who, notes) -> {
          StringBuilder text = new StringBuilder();
          notes.stream()
              .sorted(Comparator.comparing(Note::date))
              .forEach(n -> text.append(n.date).append(' ').append(n.text).append('\n'));
          texts.put(who, text.toString());
        });
    return texts;
  }
}
