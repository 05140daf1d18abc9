package slipday.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slipday.finding.Outcome;
import slipday.garden.CropBook;
import slipday.garden.Resolver;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.source.Source;
import slipday.syntax.Line;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** The crop files that ship with Slipday. */
public final class BuiltInCrops {
  private static final String FOLDER = "/slipday/crops/";

  private BuiltInCrops() {}

  /** Every species and crop that ships with Slipday. */
  public static CropBook book() {
    return Kept.BOOK;
  }

  /** The blocks of every crop file, in the order of the folder's list. */
  static List<Block> blocks() {
    return Kept.BLOCKS;
  }

  /** Read when first needed, and once: the files that ship do not change while we run. */
  private static final class Kept {
    static final List<Block> BLOCKS = read();
    static final CropBook BOOK = Resolver.crops(BLOCKS).value();
  }

  private static List<Block> read() {
    List<Block> blocks = new ArrayList<>();
    files().forEach(file -> blocks.addAll(bound(SeasonParser.parse(file))));
    return List.copyOf(blocks);
  }

  /** The blocks that a plan's words call for, and those that these lean on, in the same order. */
  static List<Block> neededBy(List<SeasonFile> plan) {
    CropParts crops = parts();
    Set<String> names = new HashSet<>();
    for (SeasonFile file : plan) {
      for (Line line : file.lines()) {
        List<Word> words = line.words();
        for (int i = 1; i < words.size(); i++) { // no line begins with a name
          Word word = words.get(i);
          if (word.is(WordKind.WORD) && crops.has(word.text())) {
            names.add(word.text());
          }
        }
      }
    }
    List<Block> blocks = new ArrayList<>();
    crops
        .neededBy(names)
        .forEach((file, parts) -> blocks.addAll(bound(SeasonParser.parse(file, parts))));
    return blocks;
  }

  /** The crop files cut into parts; a plan is read with these alone, without the whole book. */
  static CropParts parts() {
    return Cut.PARTS;
  }

  private static final class Cut {
    static final CropParts PARTS = new CropParts(files());
  }

  private static List<Block> bound(Outcome<SeasonFile> parsed) {
    Outcome<BoundFile> bound = parsed.then(Binder::bind);
    if (!bound.findings().isEmpty()) {
      throw new IllegalStateException("built-in crop file: " + bound.findings().get(0));
    }
    return bound.value().blocks();
  }

  private static List<Source> files() {
    return text("files.txt").lines().map(f -> Source.builtIn("crops/" + f, text(f))).toList();
  }

  private static String text(String name) {
    try (InputStream in = BuiltInCrops.class.getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new IllegalStateException("no built-in crop file " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
