package slipday.language;

import java.util.List;
import java.util.stream.Stream;
import slipday.syntax.Line;

/**
 * What a file says.
 *
 * @param entries lines of the record
 * @param unread lines of the record that are mistaken, so that nobody is blamed for relying on them
 */
public record BoundFile(List<Block> blocks, List<Entry> entries, List<Line> unread) {
  public static final BoundFile EMPTY = new BoundFile(List.of(), List.of(), List.of());

  public BoundFile {
    blocks = List.copyOf(blocks);
    entries = List.copyOf(entries);
    unread = List.copyOf(unread);
  }

  /** This file and then another, as one. */
  public BoundFile and(BoundFile next) {
    return new BoundFile(
        join(blocks, next.blocks), join(entries, next.entries), join(unread, next.unread));
  }

  private static <T> List<T> join(List<T> first, List<T> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }
}
