package slipday.app;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.finding.Nearest;
import slipday.finding.Outcome;
import slipday.source.Source;
import slipday.source.Span;

/**
 * Texts of files, with a clear finding for each that cannot be used. Buffers that are open in an
 * editor come before the disk.
 */
public final class FileTexts {
  static final String RULE = "unusable-file";
  private static final char NOT_DECODED = '\uFFFD';
  private static final long LARGEST = 64L << 20;
  private static final int LOOKED_AT = 64;
  private static final String SAVE_AS_UTF_8 =
      "Save the file as UTF-8 in the editor it was written with.";

  private final Map<Path, String> overlays;
  private final Optional<Map<Path, byte[]>> kept;
  private final Set<Path> used = ConcurrentHashMap.newKeySet();

  private FileTexts(Map<Path, String> overlays, Optional<Map<Path, byte[]>> kept) {
    this.overlays = overlays;
    this.kept = kept;
  }

  public static FileTexts onDisk() {
    return new FileTexts(Map.of(), Optional.empty());
  }

  /**
   * Files as they once were; the disk is not looked at.
   *
   * @param kept absolute, normalised paths and the bytes of each
   */
  static FileTexts kept(Map<Path, byte[]> kept) {
    return new FileTexts(Map.of(), Optional.of(Map.copyOf(kept)));
  }

  /**
   * @param overlays absolute, normalised paths and the text that stands for each
   */
  public static FileTexts withOverlays(Map<Path, String> overlays) {
    return new FileTexts(Map.copyOf(overlays), Optional.empty());
  }

  /**
   * These, and one more buffer.
   *
   * @param path absolute and normalised
   */
  FileTexts and(Path path, String text) {
    Map<Path, String> more = new HashMap<>(overlays);
    more.put(path, text);
    return new FileTexts(Map.copyOf(more), kept);
  }

  /** Whether a path is a folder, on the disk or by a buffer that is open in it. */
  boolean isFolder(Path path) {
    if (kept.isPresent()) {
      return kept.get().keySet().stream().anyMatch(k -> path.equals(k.getParent()));
    }
    return Files.isDirectory(path)
        || overlays.keySet().stream().anyMatch(o -> path.equals(o.getParent()));
  }

  /** Whether there is a file to look at; of files as they once were, pictures are not kept. */
  boolean isFile(Path folder, String path) {
    try {
      return kept.isPresent() || Files.isRegularFile(folder.resolve(path));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  /** The files of a folder by name, buffers among them. */
  List<Path> in(Path folder) throws IOException {
    Set<Path> all = new TreeSet<>();
    overlays.keySet().stream().filter(o -> folder.equals(o.getParent())).forEach(all::add);
    kept.stream()
        .flatMap(k -> k.keySet().stream())
        .filter(k -> folder.equals(k.getParent()))
        .forEach(all::add);
    if (kept.isEmpty() && Files.isDirectory(folder)) {
      try (Stream<Path> entries = Files.list(folder)) {
        entries.forEach(all::add);
      }
    }
    return List.copyOf(all);
  }

  /** A file's text under the name people know it by; empty, with a finding, if it can't be used. */
  public Outcome<Optional<Source>> read(Path path, String name) {
    String overlay = overlays.get(path.toAbsolutePath().normalize());
    if (overlay != null) {
      return Outcome.of(Optional.of(Source.of(name, overlay)));
    }
    if (kept.isPresent()) {
      byte[] bytes = kept.get().get(path.toAbsolutePath().normalize());
      return bytes == null
          ? unusable("There was no file `" + name + "` then.", "")
          : decoded(bytes, name);
    }
    used.add(path);
    try {
      if (Files.isDirectory(path)) {
        return unusable("`" + name + "` is a folder, not a file.", "Name a file in it.");
      }
      if (Files.size(path) > LARGEST) {
        return tooLarge(name);
      }
      return decoded(Files.readAllBytes(path), name);
    } catch (NoSuchFileException e) {
      return unusable("There is no file `" + name + "`.", help(path, name));
    } catch (IOException e) {
      return unusable("`" + name + "` can't be read: " + e.getMessage() + ".", "");
    }
  }

  /** Whether a file is one of those read from the disk, by whatever name. */
  public boolean hasRead(Path file) {
    return Files.exists(file) && used.stream().anyMatch(u -> isSame(u, file));
  }

  private static boolean isSame(Path one, Path other) {
    try {
      return Files.isSameFile(one, other);
    } catch (IOException e) {
      return false;
    }
  }

  /** What comes in on a stream, such as standard input. */
  public static Outcome<Optional<Source>> read(InputStream in, String name) {
    try {
      byte[] bytes = in.readNBytes((int) LARGEST + 1);
      return bytes.length > LARGEST ? tooLarge(name) : decoded(bytes, name);
    } catch (IOException e) {
      return unusable("`" + name + "` can't be read: " + e.getMessage() + ".", "");
    }
  }

  private static Outcome<Optional<Source>> tooLarge(String name) {
    return unusable(
        "`" + name + "` is larger than " + (LARGEST >> 20) + " MB.",
        "A season file is a text of some kilobytes.");
  }

  private String help(Path path, String name) {
    int folder = name.length() - String.valueOf(path.getFileName()).length();
    return nearest(path)
        .map(n -> Nearest.meant(name.substring(0, folder) + n))
        .orElse("Look for a slip in the path.");
  }

  /**
   * What reading a file said, told where a plan names the file. Where the name is nearly that of
   * another, that one is offered.
   *
   * @param at the place in the plan, which holds the file's name
   */
  Finding named(String rule, Span at, Path path, Finding said) {
    Finding finding = Finding.error(rule, at, said.message()).withHelp(said.help());
    String written = at.text();
    String name = String.valueOf(path.getFileName());
    int from = written.lastIndexOf(name);
    return nearest(path)
        .filter(near -> from >= 0 && !near.equals(name))
        .map(near -> written.substring(0, from) + near + written.substring(from + name.length()))
        .map(finding::writing)
        .orElse(finding);
  }

  /** What is there by the name of a file or folder, or by nearly that. */
  Optional<String> nearest(Path path) {
    Path folder = path.toAbsolutePath().normalize().getParent();
    if (folder == null) {
      return Optional.empty();
    }
    try {
      List<String> names = in(folder).stream().map(p -> String.valueOf(p.getFileName())).toList();
      return Nearest.to(String.valueOf(path.getFileName()), names);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static Outcome<Optional<Source>> decoded(byte[] bytes, String name) {
    if (isUtf16(bytes)) {
      return unusable("`" + name + "` is saved as UTF-16, and Slipday reads UTF-8.", SAVE_AS_UTF_8);
    }
    // Quicker by far than a decoder, but what is not UTF-8 becomes a mark that may stand there.
    String text = new String(bytes, StandardCharsets.UTF_8);
    if (text.indexOf('\0') >= 0) {
      return unusable("`" + name + "` is not a text.", "Name a text file.");
    }
    try {
      if (text.indexOf(NOT_DECODED) >= 0) {
        text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      }
      return Outcome.of(Optional.of(Source.of(name, text)));
    } catch (CharacterCodingException e) {
      return unusable(
          "Line " + lineOfFirstBad(bytes) + " of `" + name + "` is not UTF-8.", SAVE_AS_UTF_8);
    }
  }

  /** By its byte order mark, or by every other byte of its beginning being zero. */
  private static boolean isUtf16(byte[] bytes) {
    if (bytes.length < 2) {
      return false;
    }
    boolean marked = (bytes[0] & bytes[1] & 0xFF) == 0xFE && (bytes[0] ^ bytes[1]) == 1;
    boolean everyOther = true;
    int zero = bytes[0] == 0 ? 0 : 1;
    for (int i = 0; i < Math.min(bytes.length, LOOKED_AT); i++) {
      everyOther &= (bytes[i] == 0) == (i % 2 == zero);
    }
    return marked || everyOther;
  }

  /** The 1-based line of the first byte that is not UTF-8. */
  private static int lineOfFirstBad(byte[] bytes) {
    var decoder = StandardCharsets.UTF_8.newDecoder();
    ByteBuffer in = ByteBuffer.wrap(bytes);
    decoder.decode(in, java.nio.CharBuffer.allocate(bytes.length + 1), true);
    int line = 1;
    for (int i = 0; i < in.position(); i++) {
      line += bytes[i] == '\n' ? 1 : 0;
    }
    return line;
  }

  private static Outcome<Optional<Source>> unusable(String message, String help) {
    return new Outcome<>(
        Optional.empty(), List.of(Finding.placeless(RULE, Level.ERROR, message).withHelp(help)));
  }
}
