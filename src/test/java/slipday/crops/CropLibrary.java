package slipday.crops;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.BoundFile;
import slipday.language.Clause;
import slipday.language.CropClauses;
import slipday.language.Declaration;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** The crop files that ship with Slipday, as blocks. */
final class CropLibrary {
  private static final Path FOLDER = Path.of("src", "main", "resources", "slipday", "crops");

  private final List<Block> blocks = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  CropLibrary() {
    for (Path file : files()) {
      Source source = Source.builtIn(file.getFileName().toString(), read(file));
      Outcome<BoundFile> bound = SeasonParser.parse(source).then(Binder::bind);
      blocks.addAll(bound.value().blocks());
      findings.addAll(bound.findings());
    }
  }

  static List<Path> files() {
    try (Stream<Path> files = Files.list(FOLDER)) {
      return files.filter(f -> f.toString().endsWith(".season")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  List<Finding> findings() {
    return findings;
  }

  List<Block> all(Declaration declaration) {
    return blocks.stream().filter(b -> b.declaration() == declaration).toList();
  }

  List<String> names(Declaration declaration) {
    return all(declaration).stream().map(CropLibrary::name).toList();
  }

  /** Every fact of every species and crop. */
  Stream<BoundClause> facts() {
    return blocks.stream()
        .flatMap(b -> b.clauses().stream())
        .filter(c -> CropClauses.isFact(c.clause()));
  }

  static String name(Block block) {
    return block.head().orElseThrow().name("name").text();
  }

  Block species(String name) {
    return find(Declaration.SPECIES, name);
  }

  Block crop(String name) {
    return find(Declaration.CROP, name);
  }

  private Block find(Declaration declaration, String name) {
    return all(declaration).stream()
        .filter(b -> name(b).equals(name))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + declaration.word() + " " + name));
  }

  /** The values of a fact that the block states itself. */
  static Bound fact(Block block, Clause clause) {
    return block
        .find(clause)
        .orElseThrow(() -> new AssertionError(name(block) + " has no `" + clause.name() + "`"))
        .bound();
  }
}
