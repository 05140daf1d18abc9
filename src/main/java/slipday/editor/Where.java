package slipday.editor;

import java.net.URI;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import slipday.source.Source;
import slipday.source.Span;

/** Places as the protocol writes them: lines and UTF-16 columns from 0, files as URIs. */
final class Where {
  private static final String UNSAVED_SCHEME = "untitled";

  /** Where texts that were never saved are taken to lie: a folder that there is not. */
  private static final Path UNSAVED = Path.of("/slipday-unsaved").toAbsolutePath();

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

  /** Where a document lies; empty for one that is no file, such as an older state out of git. */
  static Optional<Path> path(String uri) {
    try {
      URI parsed = URI.create(uri);
      if (UNSAVED_SCHEME.equals(parsed.getScheme())) {
        String name = URLEncoder.encode(parsed.getRawSchemeSpecificPart(), StandardCharsets.UTF_8);
        return Optional.of(UNSAVED.resolve(name));
      }
      return "file".equals(parsed.getScheme())
          ? Optional.of(Path.of(parsed).toAbsolutePath().normalize())
          : Optional.empty();
    } catch (IllegalArgumentException | FileSystemNotFoundException e) {
      return Optional.empty();
    }
  }

  static String uri(Path path) {
    return UNSAVED.equals(path.getParent())
        ? UNSAVED_SCHEME
            + ":"
            + URLDecoder.decode(String.valueOf(path.getFileName()), StandardCharsets.UTF_8)
        : path.toUri().toString();
  }

  /** A path as sources are named. */
  static String name(Path path) {
    return path.toString().replace('\\', '/');
  }
}
