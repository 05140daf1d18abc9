package slipday.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URL;
import java.net.URLConnection;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * The list of libraries that goes with the package, held to what each library's own project file
 * says of its licence, or that of its parents.
 */
class LicencesTest {
  private static final Path LIST = Path.of("src/dist/licences/libraries.txt");
  private static final Pattern ITS_WORDS =
      Pattern.compile("(META-INF/)?[^/]*(LICEN[CS]E|NOTICE|about)[^/]*", Pattern.CASE_INSENSITIVE);

  private record Row(String name, String licence, String holder) {
    static Row of(String line) {
      String[] parts = line.strip().split("\\s+", 3);
      return new Row(parts[0], parts[1], parts[2]);
    }

    /** Those who want to be named wherever the library goes. */
    boolean mustBeNamed() {
      return licence.startsWith("BSD") || licence.equals("MIT");
    }

    List<String> holders() {
      return List.of(holder.replaceFirst("^Copyright [\\d-]+ ", "").split(" and "));
    }
  }

  private static List<Row> rows() throws IOException {
    return Files.readAllLines(LIST).stream().map(Row::of).toList();
  }

  /** The jars this runs with that have a row: those of tests alone have none. */
  private static Set<Path> jars() throws IOException {
    Set<Path> jars = new TreeSet<>();
    ClassLoader loader = LicencesTest.class.getClassLoader();
    for (URL manifest : Collections.list(loader.getResources("META-INF/MANIFEST.MF"))) {
      URLConnection connection = manifest.openConnection();
      if (connection instanceof JarURLConnection jar) {
        jars.add(Path.of(jar.getJarFile().getName()));
      }
    }
    return jars;
  }

  private static Optional<Row> row(Path jar) throws IOException {
    String name = jar.getFileName().toString();
    return rows().stream()
        .filter(r -> name.startsWith(r.name()))
        .max(Comparator.comparingInt(r -> r.name().length()));
  }

  @Test
  void everyRowSaysWhatTheLibraryItselfSays() throws Exception {
    Set<Row> met = new HashSet<>();
    for (Path jar : jars()) {
      Optional<Row> row = row(jar);
      if (row.isEmpty()) {
        continue;
      }
      met.add(row.get());
      List<Element> projects = projects(jar);
      assertThat(licences(projects)).as("%s", jar).contains(row.get().licence());
      if (row.get().mustBeNamed()) {
        String words = words(jar, projects);
        assertThat(row.get().holders())
            .as("%s", jar)
            .allMatch(h -> words.contains(h.toLowerCase(Locale.ROOT)));
      }
    }
    assertThat(met).containsExactlyInAnyOrderElementsOf(rows());
  }

  /** The project file beside a jar in the repository of the build, and its parents'. */
  private static List<Element> projects(Path jar) throws Exception {
    Path pom = jar.resolveSibling(jar.getFileName().toString().replaceFirst("\\.jar$", ".pom"));
    List<Element> projects = new ArrayList<>();
    Optional<Element> project = Optional.of(project(pom));
    Path repository = repository(pom, project.get());
    while (project.isPresent()) {
      projects.add(project.get());
      Optional<Element> parent = child(project.get(), "parent");
      project = parent.isPresent() ? Optional.of(project(file(repository, parent.get()))) : parent;
    }
    return projects;
  }

  private static Element project(Path pom) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(pom.toFile())
        .getDocumentElement();
  }

  /** The folder that the group's folders lie in. */
  private static Path repository(Path pom, Element project) {
    String group =
        text(project, "groupId")
            .or(() -> child(project, "parent").flatMap(p -> text(p, "groupId")))
            .orElseThrow();
    Path folder = pom.getParent().getParent().getParent();
    for (int i = 0; i < group.split("\\.").length; i++) {
      folder = folder.getParent();
    }
    return folder;
  }

  private static Path file(Path repository, Element parent) {
    String name = text(parent, "artifactId").orElseThrow();
    String version = text(parent, "version").orElseThrow();
    return repository
        .resolve(text(parent, "groupId").orElseThrow().replace('.', '/'))
        .resolve(name)
        .resolve(version)
        .resolve(name + "-" + version + ".pom");
  }

  /** The licences of the nearest project that names any, by the short names of SPDX. */
  private static Set<String> licences(List<Element> projects) {
    for (Element project : projects) {
      Optional<Element> licences = child(project, "licenses");
      if (licences.isPresent()) {
        return children(licences.get(), "license").stream()
            .map(l -> shortName(text(l, "name").orElse("") + " " + text(l, "url").orElse("")))
            .collect(Collectors.toSet());
      }
    }
    return Set.of();
  }

  private static String shortName(String says) {
    String words = says.toLowerCase(Locale.ROOT);
    if (words.contains("apache") && words.contains("2.0")) {
      return "Apache-2.0";
    }
    if (words.contains("bsd")) {
      boolean three = words.contains("3-clause") || words.contains("(new)");
      return three ? "BSD-3-Clause" : "BSD, which is not told";
    }
    if (words.contains("epl") || words.contains("eclipse public")) {
      return words.contains("2.0") ? "EPL-2.0" : "EPL-1.0";
    }
    return words.startsWith("mit") ? "MIT" : says;
  }

  private static String words(Path jar, List<Element> projects) throws IOException {
    StringBuilder words = new StringBuilder();
    for (Element project : projects) {
      // Whole, for the holder may be named in a comment.
      words.append(
          Files.readString(Path.of(URI.create(project.getOwnerDocument().getDocumentURI()))));
    }
    try (JarFile open = new JarFile(jar.toFile())) {
      for (var entry : Collections.list(open.entries())) {
        if (ITS_WORDS.matcher(entry.getName()).matches()) {
          words.append(
              new String(open.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    return words.toString().replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
  }

  private static Optional<Element> child(Element of, String name) {
    return children(of, name).stream().findFirst();
  }

  private static List<Element> children(Element of, String name) {
    List<Element> children = new ArrayList<>();
    for (Node n = of.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element element && element.getTagName().equals(name)) {
        children.add(element);
      }
    }
    return children;
  }

  private static Optional<String> text(Element of, String name) {
    return child(of, name).map(e -> e.getTextContent().strip());
  }
}
