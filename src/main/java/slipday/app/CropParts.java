package slipday.app;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipday.source.Source;
import slipday.source.Span;

/**
 * The crop files cut into their blocks by a look at the beginnings of lines, far quicker than
 * parsing: so that a plan has only those blocks parsed that it needs.
 */
final class CropParts {
  /** Words at the beginning of a line after which the name of a species stands. */
  private static final List<String> BEFORE_SPECIES =
      List.of("of ", "crosses with ", "emerges like ");

  /** The same before another word for the crop. */
  private static final String BEFORE_WORD = "also called ";

  private static final String BEFORE_SOURCE = " says ";
  private static final String BITTER = "bitter";

  private final List<Part> parts = new ArrayList<>();
  private final Map<String, List<Part>> byName = new HashMap<>();

  /** Parts that tell of something bitter, by the names they lean on. */
  private final Map<String, List<Part>> bitterOf = new HashMap<>();

  /** One block of a crop file, with the names it leans on. */
  private static final class Part {
    private final String name;
    private final Source source;
    private final int start;
    private int end;
    private boolean bitter;
    private final Set<String> needs = new HashSet<>();

    Part(String name, Source source, int start) {
      this.name = name;
      this.source = source;
      this.start = start;
    }
  }

  CropParts(List<Source> files) {
    files.forEach(this::cut);
    for (Part part : parts) {
      if (part.bitter) {
        part.needs.forEach(n -> bitterOf.computeIfAbsent(n, x -> new ArrayList<>(1)).add(part));
      }
    }
  }

  /** Whether something is declared under a name, or called by it. */
  boolean has(String name) {
    return byName.containsKey(name);
  }

  private void cut(Source file) {
    String text = file.text();
    Part open = null;
    for (int line = 1; line <= file.lineCount(); line++) {
      int start = file.lineStart(line);
      int end = line < file.lineCount() ? file.lineStart(line + 1) : text.length();
      int first = start;
      while (first < end && text.charAt(first) == ' ') {
        first++;
      }
      boolean empty = first == end || text.charAt(first) == '\n' || text.charAt(first) == '#';
      if (!empty && first == start) {
        open = new Part(word(text, text.indexOf(' ', start)), file, start);
        parts.add(open);
        name(open.name, open);
      } else if (!empty && open != null) {
        look(text, first, end, open);
      }
      if (open != null) {
        open.end = end;
      }
    }
  }

  private void name(String name, Part part) {
    byName.computeIfAbsent(name, n -> new ArrayList<>(1)).add(part);
  }

  private void look(String text, int first, int end, Part part) {
    if (text.startsWith(BEFORE_WORD, first)) {
      name(word(text, first + BEFORE_WORD.length()), part);
      return;
    }
    for (String before : BEFORE_SPECIES) {
      if (text.startsWith(before, first)) {
        part.needs.add(word(text, first + before.length()));
      }
    }
    String line = text.substring(first, end);
    int says = line.lastIndexOf(BEFORE_SOURCE);
    if (says >= 0) {
      part.needs.add(word(line, says + BEFORE_SOURCE.length()));
    }
    part.bitter |= line.contains(BITTER);
  }

  /** The word at or after an offset. */
  private static String word(String text, int from) {
    int start = from;
    while (start < text.length() && text.charAt(start) == ' ') {
      start++;
    }
    int end = start;
    while (end < text.length() && text.charAt(end) > ' ' && text.charAt(end) != ',') {
      end++;
    }
    return text.substring(start, end);
  }

  /**
   * The places of the blocks that some names need: theirs, those of the species they are of or
   * cross with, the bitter kin of those, and the sources cited. By file, in the files' order.
   */
  Map<Source, List<Span>> neededBy(Set<String> names) {
    Set<Part> needed = new HashSet<>();
    Deque<String> open = new ArrayDeque<>();
    names.forEach(open::push);
    Set<String> seen = new HashSet<>(names);
    while (!open.isEmpty()) {
      String name = open.pop();
      for (Part part : byName.getOrDefault(name, List.of())) {
        needed.add(part);
        part.needs.stream().filter(seen::add).forEach(open::push);
      }
      bitterOf.getOrDefault(name, List.of()).stream()
          .map(p -> p.name)
          .filter(seen::add)
          .forEach(open::push);
    }
    Map<Source, List<Span>> places = new LinkedHashMap<>();
    for (Part part : parts) {
      if (needed.contains(part)) {
        places
            .computeIfAbsent(part.source, s -> new ArrayList<>())
            .add(part.source.span(part.start, part.end));
      }
    }
    return places;
  }
}
