package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.garden.Bed;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Reasoned;

/**
 * Where the plants of a bed are drawn. A plan says in which bed, not where in it: plantings stand
 * in the plan's order along the bed's longer side, in as many rows as their crop has room for.
 *
 * @param blocks one for each planting that says how many plants
 * @param squeezed whether they are drawn nearer together than the plan has them, to fit
 */
record BedLayout(List<Block> blocks, boolean squeezed) {
  /** Where neither plan nor crop tells a spacing, m. */
  private static final double USUAL_SPACING = 0.5;

  private static final double HAIR = 1e-9;

  /**
   * The ground of one planting, in m from the bed's south-west corner.
   *
   * @param plants east and north of that corner
   */
  record Block(
      Planting planting,
      double east,
      double north,
      double length,
      double width,
      List<Dot> plants) {}

  /** A plant, m. */
  record Dot(double east, double north) {}

  private record Wish(Planting planting, int plants, double apart, int rows) {
    double length(int atLeastRows) {
      int columns = (plants + rows(atLeastRows) - 1) / rows(atLeastRows);
      return columns * apart;
    }

    int rows(int atLeast) {
      return Math.max(rows, atLeast);
    }
  }

  static BedLayout of(Bed.Size size, List<Planting> plantings) {
    boolean along = size.length() >= size.width();
    double length = along ? size.length() : size.width();
    double width = along ? size.width() : size.length();
    List<Wish> wishes = new ArrayList<>();
    plantings.forEach(p -> wish(p, width).ifPresent(wishes::add));
    double narrowest = wishes.stream().mapToDouble(Wish::apart).min().orElse(USUAL_SPACING);
    int most = (int) Math.max(1, Math.floor(width / narrowest + HAIR));
    int rows = 1;
    while (rows < most && length(wishes, rows) > length + HAIR) {
      rows++;
    }
    double wanted = length(wishes, rows);
    double scale = wanted > length + HAIR ? length / wanted : 1;
    List<Block> blocks = new ArrayList<>();
    double from = 0;
    for (Wish wish : wishes) {
      double takes = wish.length(rows) * scale;
      blocks.add(block(wish, wish.rows(rows), from, takes, width, along));
      from += takes;
    }
    return new BedLayout(blocks, scale < 1);
  }

  private static double length(List<Wish> wishes, int rows) {
    return wishes.stream().mapToDouble(w -> w.length(rows)).sum();
  }

  private static Optional<Wish> wish(Planting planting, double width) {
    Optional<CropFacts.Spacing> spacing =
        planting.facts().get(CropFacts.SPACING).map(Reasoned::value);
    double apart =
        planting
            .apart()
            .map(Reasoned::value)
            .or(() -> spacing.map(s -> s.inRow().low()))
            .filter(a -> a > 0)
            .orElse(USUAL_SPACING);
    double between = Math.max(apart, spacing.map(s -> s.betweenRows().low()).orElse(apart));
    int rows = (int) Math.max(1, Math.floor(width / between + HAIR));
    return planting
        .plants()
        .map(Reasoned::value)
        .filter(n -> n > 0)
        .map(n -> new Wish(planting, n, apart, Math.min(rows, n)));
  }

  private static Block block(
      Wish wish, int rows, double from, double takes, double width, boolean along) {
    int columns = (wish.plants() + rows - 1) / rows;
    List<Dot> plants = new ArrayList<>();
    for (int i = 0; i < wish.plants(); i++) {
      int column = i / rows;
      double at = from + takes * (column + 0.5) / columns;
      double across = width * (rows - i % rows - 0.5) / rows;
      plants.add(along ? new Dot(at, across) : new Dot(across, at));
    }
    return along
        ? new Block(wish.planting(), from, 0, takes, width, plants)
        : new Block(wish.planting(), 0, from, width, takes, plants);
  }
}
