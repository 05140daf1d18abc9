package slipday.app;

import java.util.List;
import slipday.language.Block;

/** The built-in crop blocks for tests of other packages. */
public final class BuiltInCropsForTests {
  private BuiltInCropsForTests() {}

  public static List<Block> blocks() {
    return BuiltInCrops.blocks();
  }
}
