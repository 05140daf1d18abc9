package slipday.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** Writes files whole or not at all: beside the place they are for, then moved there. */
final class FileWriting {
  private static final int MOST_LINKS = 40;

  private FileWriting() {}

  /**
   * @param name the file as the user named it, for the message
   * @throws CommandFailure if it can't be written; what was there is then untouched
   */
  static void replace(Path file, String name, String text) {
    if (Files.isDirectory(file)) {
      throw new CommandFailure("`" + name + "` is a folder, not a file.", "Name a file in it.");
    }
    Path beside = null;
    try {
      Path target = target(file);
      if (Files.exists(target) && !Files.isRegularFile(target)) {
        // A pipe or a device takes what is written; nothing can take its place.
        Files.write(target, text.getBytes(StandardCharsets.UTF_8), StandardOpenOption.WRITE);
        return;
      }
      beside = Files.createTempFile(target.getParent(), ".slipday", ".tmp");
      // On the disk before it takes its place: after a crash the place holds the one or the other.
      Files.write(
          beside,
          text.getBytes(StandardCharsets.UTF_8),
          StandardOpenOption.WRITE,
          StandardOpenOption.SYNC);
      keepPermissions(target, beside);
      move(beside, target);
    } catch (IOException e) {
      discard(beside);
      throw new CommandFailure("`" + name + "` can't be written: " + reason(e) + ".", "");
    }
  }

  /** What a path leads to, also where that is yet to be made. */
  private static Path target(Path file) throws IOException {
    Path target = file.toAbsolutePath();
    for (int links = 0; links < MOST_LINKS && Files.isSymbolicLink(target); links++) {
      target = target.resolveSibling(Files.readSymbolicLink(target));
    }
    return Files.exists(target) ? target.toRealPath() : target;
  }

  /**
   * Writes a new file, whole or not at all, and never over another.
   *
   * @throws CommandFailure if there is one by that name, or it can't be written
   */
  static void create(Path file, String name, String text) {
    Path beside = null;
    try {
      Path target = file.toAbsolutePath();
      beside = Files.createTempFile(target.getParent(), ".slipday", ".tmp");
      Files.write(
          beside,
          text.getBytes(StandardCharsets.UTF_8),
          StandardOpenOption.WRITE,
          StandardOpenOption.SYNC);
      keepPermissions(target, beside);
      link(beside, target);
    } catch (FileAlreadyExistsException e) {
      throw thereAlready(name);
    } catch (IOException e) {
      throw new CommandFailure("`" + name + "` can't be written: " + reason(e) + ".", "");
    } finally {
      discard(beside);
    }
  }

  /**
   * A second name for what is written fails where the name is taken; a move might not. Disks that
   * know no second names, as memory sticks do, say so in one way or the other: there it is moved.
   */
  private static void link(Path from, Path to) throws IOException {
    try {
      Files.createLink(to, from);
    } catch (FileAlreadyExistsException e) {
      throw e;
    } catch (UnsupportedOperationException | FileSystemException e) {
      Files.move(from, to);
    }
  }

  static CommandFailure thereAlready(String name) {
    return new CommandFailure(
        "`" + name + "` is there already, and is left as it is.",
        "Name a file that is not there yet.");
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A temporary file is its owner's alone; a file that was there keeps who may read it. */
  private static void keepPermissions(Path target, Path beside) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(beside, PosixFileAttributeView.class);
    if (view == null) {
      return;
    }
    view.setPermissions(
        Files.exists(target)
            ? Files.getPosixFilePermissions(target)
            : java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
  }

  private static String reason(IOException e) {
    String message = String.valueOf(e.getMessage());
    return e instanceof java.nio.file.NoSuchFileException
        ? "there is no folder for it"
        : e instanceof java.nio.file.AccessDeniedException ? "it is not allowed" : message;
  }

  private static void discard(@org.jspecify.annotations.Nullable Path beside) {
    try {
      if (beside != null) {
        Files.deleteIfExists(beside);
      }
    } catch (IOException e) {
      // What can't be written can hardly be cleared up; the message of the first failure counts.
    }
  }
}
