package slipday.app;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Files of a folder as git keeps them at a revision; git's own program reads them. */
public final class Revision {
  private static final String NAME_ONE = "Name a revision of the repository the plan lies in.";
  private static final String TWO_FILES =
      "Two files are compared without git: slipday changes OLD NEW.";

  private final Path folder;

  /**
   * @param folder somewhere in a git repository
   */
  public Revision(Path folder) {
    this.folder = folder.toAbsolutePath().normalize();
  }

  /** Why git would not do it, in its own words where it has any. */
  public static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    private final String help;

    Refused(String message, String help) {
      super(message);
      this.help = help;
    }

    /** What to do instead. */
    public String help() {
      return help;
    }
  }

  /**
   * The files under the folder, or those of the whole repository, at a revision.
   *
   * @param revision as git takes it, such as {@code HEAD~1}, a branch or a tag
   * @throws Refused where there is no git, no repository or no such revision
   */
  public FileTexts at(String revision, boolean wholeRepository) throws Refused {
    if (revision.startsWith("-")) {
      throw new Refused("`" + revision + "` is no revision.", NAME_ONE);
    }
    Path top = Path.of(line("rev-parse", "--show-toplevel"));
    String commit = line("rev-parse", "--verify", "--quiet", revision + "^{commit}");
    if (commit.isEmpty()) {
      throw new Refused("git knows no revision `" + revision + "` here.", NAME_ONE);
    }
    // The folder as git knows it: behind a symbolic link its path is another.
    String below = wholeRepository ? "" : line("rev-parse", "--show-prefix");
    Path root = wholeRepository ? top : folder;
    return FileTexts.kept(contents(entries(commit, below), root, below));
  }

  private record Entry(String blob, String path) {}

  private List<Entry> entries(String commit, String below) throws Refused {
    List<String> command = new ArrayList<>(List.of("ls-tree", "-r", "-z", "--full-tree", commit));
    if (!below.isEmpty()) {
      command.addAll(List.of("--", below));
    }
    List<Entry> entries = new ArrayList<>();
    String listed = new String(run(command, ""), StandardCharsets.UTF_8);
    for (String entry : listed.split("\0", -1)) {
      int tab = entry.indexOf('\t');
      String[] words = entry.substring(0, Math.max(0, tab)).split(" ", -1);
      if (words.length == 3 && words[1].equals("blob")) {
        entries.add(new Entry(words[2], entry.substring(tab + 1)));
      }
    }
    return entries;
  }

  private Map<Path, byte[]> contents(List<Entry> entries, Path root, String below) throws Refused {
    StringBuilder asked = new StringBuilder();
    entries.forEach(e -> asked.append(e.blob).append('\n'));
    byte[] told = run(List.of("cat-file", "--batch"), asked.toString());
    Map<Path, byte[]> files = new LinkedHashMap<>();
    int at = 0;
    for (Entry entry : entries) {
      int end = at;
      while (told[end] != '\n') {
        end++;
      }
      String head = new String(told, at, end - at, StandardCharsets.UTF_8);
      int size = Integer.parseInt(head.substring(head.lastIndexOf(' ') + 1));
      byte[] bytes = new byte[size];
      System.arraycopy(told, end + 1, bytes, 0, size);
      files.put(root.resolve(entry.path.substring(below.length())).normalize(), bytes);
      at = end + 1 + size + 1;
    }
    return files;
  }

  private String line(String... command) throws Refused {
    return new String(run(List.of(command), ""), StandardCharsets.UTF_8).stripTrailing();
  }

  private byte[] run(List<String> command, String input) throws Refused {
    List<String> whole = new ArrayList<>(List.of("git", "-C", folder.toString()));
    whole.addAll(command);
    try {
      ProcessBuilder builder = new ProcessBuilder(whole);
      // Its complaints are read, so they must be in the one language that never changes.
      builder.environment().put("LC_ALL", "C");
      Process git = builder.start();
      Thread asking = new Thread(() -> ask(git, input));
      asking.start();
      ByteArrayOutputStream complaint = new ByteArrayOutputStream();
      Thread listening = new Thread(() -> drain(git.getErrorStream(), complaint));
      listening.start();
      byte[] told = git.getInputStream().readAllBytes();
      asking.join();
      listening.join();
      if (git.waitFor() == 0 || command.contains("--quiet")) {
        return told;
      }
      throw refused(complaint);
    } catch (IOException e) {
      throw new Refused("git can't be started; it must be on the PATH.", TWO_FILES);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new Refused("git was interrupted.", "Try again.");
    }
  }

  private static Refused refused(ByteArrayOutputStream complaint) {
    Optional<String> said = complaint.toString(StandardCharsets.UTF_8).lines().findFirst();
    if (said.filter(l -> l.contains("not a git repository")).isPresent()) {
      return new Refused("the plan's folder is not kept in git.", TWO_FILES);
    }
    return new Refused(
        said.map(l -> "git says: " + l.replaceFirst("^fatal: ", "")).orElse("git could not do it."),
        NAME_ONE);
  }

  private static void ask(Process git, String input) {
    try (OutputStream in = git.getOutputStream()) {
      in.write(input.getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      // It left early; its exit code tells why.
    }
  }

  private static void drain(InputStream from, ByteArrayOutputStream to) {
    try {
      from.transferTo(to);
    } catch (IOException e) {
      // Nothing more is to be heard.
    }
  }
}
