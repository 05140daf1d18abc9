package slipday.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.ModuleVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Lays the tool and all its libraries into one folder as one open module. A runtime image takes
 * named modules only, which not every library is; and the class-data archive of an image that holds
 * everything fits wherever the image is moved, where one of jars fits only their first place.
 */
public final class OneModule {
  private static final String SERVICES = "META-INF/services/";
  private static final String MODULE = "module-info.class";

  /** What a library says of its licence. */
  private static final Pattern WORDS =
      Pattern.compile(
          "(META-INF/)?([^/]*LICEN[CS]E|NOTICE|about[_.])[^/]*", Pattern.CASE_INSENSITIVE);

  private final Path folder;
  private final Path licences;

  /** Where each file came from. */
  private final Map<String, Path> origins = new TreeMap<>();

  private final Map<String, Set<String>> provided = new TreeMap<>();
  private final Set<String> used = new TreeSet<>();

  private OneModule(Path folder, Path licences) {
    this.folder = folder;
    this.licences = licences;
  }

  /**
   * @param args the folder of jars; the folder to make; a folder for what the libraries say of
   *     their licences; the version; the package to export; then the modules of Java the whole
   *     requires
   */
  public static void main(String[] args) throws IOException {
    OneModule module = new OneModule(Path.of(args[1]), Path.of(args[2]));
    List<Path> jars;
    try (Stream<Path> all = Files.list(Path.of(args[0]))) {
      jars = all.filter(f -> f.toString().endsWith(".jar")).sorted().toList();
    }
    for (Path jar : jars) {
      module.add(jar);
    }
    module.describe(args[3], args[4], Arrays.asList(args).subList(5, args.length));
  }

  private void add(Path jar) throws IOException {
    try (JarFile open =
        new JarFile(jar.toFile(), false, JarFile.OPEN_READ, Runtime.Version.parse("17"))) {
      // Of a jar for several Javas, what 17 would see.
      for (JarEntry entry : (Iterable<JarEntry>) open.versionedStream()::iterator) {
        if (!entry.isDirectory()) {
          add(entry.getName(), jar, bytes(open, entry));
        }
      }
    }
  }

  private static byte[] bytes(JarFile jar, JarEntry entry) throws IOException {
    try (InputStream in = jar.getInputStream(entry)) {
      return in.readAllBytes();
    }
  }

  private void add(String name, Path jar, byte[] content) throws IOException {
    if (WORDS.matcher(name).matches()) {
      String library = jar.getFileName().toString().replaceFirst("\\.jar$", "");
      write(licences.resolve(library).resolve(name.substring(name.indexOf('/') + 1)), content);
    } else if (name.equals(MODULE)) {
      readUses(content);
    } else if (name.startsWith(SERVICES)) {
      readProviders(name.substring(SERVICES.length()), content);
    } else if (!name.startsWith("META-INF/") && name.contains("/")) {
      Path before = origins.put(name, jar);
      if (before != null) {
        throw new IOException(name + " is both in " + before + " and in " + jar);
      }
      write(folder.resolve(name), content);
    }
  }

  private static void write(Path file, byte[] content) throws IOException {
    Files.createDirectories(file.getParent());
    Files.write(file, content);
  }

  private void readUses(byte[] content) {
    new ClassReader(content)
        .accept(
            new ClassVisitor(Opcodes.ASM9) {
              @Override
              public ModuleVisitor visitModule(String name, int access, String version) {
                return new ModuleVisitor(Opcodes.ASM9) {
                  @Override
                  public void visitUse(String service) {
                    used.add(service);
                  }
                };
              }
            },
            0);
  }

  private void readProviders(String service, byte[] content) {
    Matcher name =
        Pattern.compile("^\\s*([\\w.$]+)", Pattern.MULTILINE)
            .matcher(new String(content, StandardCharsets.UTF_8));
    while (name.find()) {
      provided
          .computeIfAbsent(service.replace('.', '/'), s -> new TreeSet<>())
          .add(name.group(1).replace('.', '/'));
    }
  }

  private void describe(String version, String exported, List<String> required) {
    ClassWriter writer = new ClassWriter(0);
    writer.visit(Opcodes.V17, Opcodes.ACC_MODULE, "module-info", null, null, null);
    ModuleVisitor module = writer.visitModule("slipday", Opcodes.ACC_OPEN, version);
    module.visitRequire("java.base", Opcodes.ACC_MANDATED, null);
    required.forEach(name -> module.visitRequire(name, 0, null));
    module.visitExport(exported.replace('.', '/'), 0);
    Set<String> uses = new TreeSet<>(used);
    uses.addAll(provided.keySet());
    uses.forEach(module::visitUse);
    provided.forEach((service, by) -> module.visitProvide(service, by.toArray(String[]::new)));
    module.visitEnd();
    writer.visitEnd();
    try {
      Files.write(folder.resolve(MODULE), writer.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
