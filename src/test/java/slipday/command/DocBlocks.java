package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pages a reader is given, and the fenced blocks in them. */
final class DocBlocks {
  private static final String FENCE = "```";

  /**
   * A fenced block, or the text between two.
   *
   * @param kind the word after the fence; empty for text
   * @param comment the line right above a block, without which it does not mean the same
   * @param lines what is inside the fences, or the text itself
   */
  record Part(boolean fenced, String kind, String comment, List<String> lines) {
    Part {
      lines = List.copyOf(lines);
    }

    /** With its fences. */
    List<String> whole() {
      return fenced
          ? Stream.of(Stream.of(FENCE + kind), lines.stream(), Stream.of(FENCE))
              .flatMap(s -> s)
              .toList()
          : lines;
    }

    String text() {
      return lines.stream().map(l -> l + "\n").collect(Collectors.joining());
    }
  }

  private DocBlocks() {}

  /** README.md, DEVELOPERS.md and every page under docs. */
  static List<Path> pages() {
    try (Stream<Path> docs = Files.walk(Path.of("docs"))) {
      return Stream.concat(
              Stream.of(Path.of("DEVELOPERS.md"), Path.of("README.md")),
              docs.filter(p -> p.toString().endsWith(".md")).sorted())
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Part> blocks(String page) {
    return parts(page).stream().filter(Part::fenced).toList();
  }

  /** All of a page, in order. */
  static List<Part> parts(String page) {
    List<Part> parts = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    String opened = "";
    String above = "";
    boolean inside = false;
    for (String line : page.lines().toList()) {
      if (!inside && line.startsWith(FENCE)) {
        above = lines.isEmpty() ? "" : lines.get(lines.size() - 1);
        parts.add(new Part(false, "", "", lines));
        lines.clear();
        opened = line.substring(FENCE.length());
        inside = true;
      } else if (inside && line.equals(FENCE)) {
        parts.add(new Part(true, opened, above, lines));
        lines.clear();
        inside = false;
      } else {
        lines.add(line);
      }
    }
    assertThat(inside).as("a block is left open").isFalse();
    parts.add(new Part(false, "", "", lines));
    return parts;
  }
}
