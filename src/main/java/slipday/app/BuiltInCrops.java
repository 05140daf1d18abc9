package slipday.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import slipday.finding.Outcome;
import slipday.garden.CropBook;
import slipday.garden.Resolver;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** The crop files that ship with Slipday. */
public final class BuiltInCrops {
  private static final String FOLDER = "/slipday/crops/";

  private BuiltInCrops() {}

  /** Every species and crop that ships with Slipday. */
  public static CropBook book() {
    return Resolver.crops(blocks()).value();
  }

  /** The blocks of every crop file, in the order of the folder's list. */
  static List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    for (String name : text("files.txt").lines().toList()) {
      Source source = Source.builtIn("crops/" + name, text(name));
      Outcome<BoundFile> bound = SeasonParser.parse(source).then(Binder::bind);
      if (!bound.findings().isEmpty()) {
        throw new IllegalStateException("built-in crop file: " + bound.findings().get(0));
      }
      blocks.addAll(bound.value().blocks());
    }
    return blocks;
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
