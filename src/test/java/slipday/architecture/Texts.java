package slipday.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slipday.testing.Golden;

/** The project's own text files, and what's quoted in them. */
final class Texts {
  private static final Path HERE = Path.of("");
  private static final Set<String> NOT_OURS = Set.of(".git", "target", "node_modules", ".idea");

  /** What opens first wins: a comment hides a quote in it, and a quote hides a comment. */
  private static final Pattern JAVA_PIECES =
      Pattern.compile(
          "//[^\\n]*|/\\*.*?\\*/|'(?:\\\\.|[^'\\\\])+'"
              + "|\"\"\"(?<block>(?:\\\\.|[^\\\\])*?)\"\"\"|\"(?<line>(?:\\\\.|[^\"\\\\\\n])*)\"",
          Pattern.DOTALL);

  private Texts() {}

  /** Every text file of the project by its path, with slashes, from the project's folder. */
  static TreeMap<String, String> all() {
    TreeMap<String, String> texts = new TreeMap<>();
    try {
      Files.walkFileTree(
          HERE.toAbsolutePath(),
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
              return NOT_OURS.contains(folder.getFileName().toString())
                  ? FileVisitResult.SKIP_SUBTREE
                  : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
                throws IOException {
              Path inside = HERE.toAbsolutePath().relativize(file);
              if (!NOT_OURS.contains(inside.toString())) {
                read(file, inside.toString().replace('\\', '/'), texts);
              }
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return texts;
  }

  private static void read(Path file, String name, TreeMap<String, String> texts)
      throws IOException {
    try {
      texts.put(name, Files.readString(file));
    } catch (CharacterCodingException e) {
      // no text
    }
  }

  /** The Java sources under a folder, by path. */
  static TreeMap<String, String> java(String folder) {
    TreeMap<String, String> sources = new TreeMap<>();
    if (!Files.isDirectory(Path.of(folder))) {
      return sources;
    }
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      files
          .filter(f -> f.toString().endsWith(".java"))
          .forEach(f -> sources.put(f.toString().replace('\\', '/'), Golden.read(f)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return sources;
  }

  /** The string literals and text blocks of a Java source, as written, comments left out. */
  static List<String> literals(String javaSource) {
    List<String> literals = new ArrayList<>();
    Matcher piece = JAVA_PIECES.matcher(javaSource);
    while (piece.find()) {
      if (piece.group("block") != null) {
        literals.add(piece.group("block"));
      } else if (piece.group("line") != null) {
        literals.add(piece.group("line"));
      }
    }
    return literals;
  }
}
