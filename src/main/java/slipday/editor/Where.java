package slipday.editor;

import java.net.URI;
import java.nio.file.Path;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import slipday.source.Source;
import slipday.source.Span;

/** Places as the protocol writes them: lines and UTF-16 columns from 0, files as URIs. */
final class Where {
  private Where() {}

  static Position position(Source source, int offset) {
    int line = source.lineOf(offset);
    return new Position(line - 1, offset - source.lineStart(line));
  }

  static Range range(Span span) {
    return new Range(position(span.source(), span.start()), position(span.source(), span.end()));
  }

  static Location location(Span span) {
    return new Location(uri(path(span.source())), range(span));
  }

  /** The offset of a position; one past the end of a line is its end. */
  static int offset(Source source, Position position) {
    int line = Math.min(Math.max(position.getLine(), 0), source.lineCount() - 1) + 1;
    int start = source.lineStart(line);
    boolean beyond = position.getLine() >= source.lineCount();
    int within = beyond ? Integer.MAX_VALUE - start : Math.max(position.getCharacter(), 0);
    return start + Math.min(within, source.line(line).length());
  }

  /** Where a source of the user's lies; sources are named by their paths here. */
  static Path path(Source source) {
    return Path.of(source.name()).normalize();
  }

  static Path path(String uri) {
    return Path.of(URI.create(uri)).toAbsolutePath().normalize();
  }

  static String uri(Path path) {
    return path.toUri().toString();
  }

  /** A path as sources are named. */
  static String name(Path path) {
    return path.toString().replace('\\', '/');
  }
}
