package slipday.garden;

import java.util.Optional;
import java.util.function.Function;
import slipday.language.Bound;
import slipday.language.Clause;
import slipday.language.CropClauses;
import slipday.language.Value;
import slipday.measure.Dimension;
import slipday.measure.Range;

/**
 * Every fact a crop can have, each under a typed key. Lengths in m, areas in m², masses in kg,
 * temperatures in °C, times in days, heat sums in °C-days, shares from 0 to 1.
 */
public final class CropFacts {
  public static final FactKey<String> FAMILY = key(CropClauses.FAMILY, b -> b.name("name").text());
  public static final FactKey<Boolean> BIENNIAL =
      key(CropClauses.LIFE_CYCLE, b -> b.choice("cycle").equals("biennial"));
  public static final FactKey<Sex> SEX = key(CropClauses.SEX, b -> Sex.of(b.choice("sex")));
  public static final FactKey<String> POLLEN_BY =
      key(CropClauses.POLLEN_BY, b -> b.choice("vector"));
  public static final FactKey<Range> OUTCROSSES =
      key(CropClauses.OUTCROSSES, b -> b.shares("share-range"));
  public static final FactKey<String> INBREEDING =
      key(CropClauses.INBREEDING, b -> b.choice("harm"));
  public static final FactKey<Range> ISOLATION =
      key(CropClauses.ISOLATION, b -> b.range("length-range"));
  public static final FactKey<Population> POPULATION =
      key(
          CropClauses.POPULATION,
          b -> new Population(b.count("seed"), b.range("keep"), b.count("all")));
  public static final FactKey<CrossDegree> CROSSES_WITH =
      key(
          CropClauses.CROSSES_WITH,
          b -> new CrossDegree(b.name("species").text(), b.range("count-range")));
  public static final FactKey<Boolean> KERNELS_SHOW = key(CropClauses.KERNELS, b -> true);
  public static final FactKey<String> KERNEL_TYPE =
      key(CropClauses.KERNEL_TYPE, b -> b.name("name").text());
  public static final FactKey<Boolean> BITTER =
      key(CropClauses.BITTER, b -> b.choice("fruit").startsWith("bitter"));

  public static final FactKey<EmergenceRow> EMERGES =
      key(
          CropClauses.EMERGES,
          b ->
              new EmergenceRow(
                  b.base("time"),
                  b.base("temperature"),
                  b.has("share") ? Optional.of(b.share("share").share()) : Optional.empty()));
  public static final FactKey<String> EMERGES_LIKE =
      key(CropClauses.EMERGES_LIKE, b -> b.name("species").text());
  public static final FactKey<Range> GERMINATES =
      key(CropClauses.GERMINATES, b -> b.range("temperature-range"));
  public static final FactKey<Double> SOW_AT = degrees(CropClauses.SOW_AT);
  public static final FactKey<Double> SET_OUT_AT = degrees(CropClauses.SET_OUT_AT);
  public static final FactKey<Double> NIGHTS = degrees(CropClauses.NIGHTS);
  public static final FactKey<Double> CHILLED_BELOW = degrees(CropClauses.CHILLED);
  public static final FactKey<Double> KILLED_AT = degrees(CropClauses.KILLED);
  public static final FactKey<Boolean> STARTED_INDOORS =
      key(CropClauses.STARTED, b -> b.choice("where").equals("indoors"));
  public static final FactKey<Range> SEEDLING_AGE = days(CropClauses.SEEDLING_AGE);
  public static final FactKey<Range> HARDENED_FOR = days(CropClauses.HARDENED);
  public static final FactKey<Range> STANDS_STILL = days(CropClauses.CHECKED);
  public static final FactKey<Range> POTTED_ON_AT = days(CropClauses.POTTED_ON);

  public static final FactKey<GrowthLimits> GROWTH =
      key(
          CropClauses.GROWTH,
          b ->
              new GrowthLimits(
                  b.base("base"),
                  b.has("limit") ? Optional.of(b.base("limit")) : Optional.empty()));
  public static final FactKey<Double> REFERENCE = degrees(CropClauses.REFERENCE);
  public static final FactKey<FirstFlowers> FIRST_FLOWERS =
      key(CropClauses.FIRST_FLOWERS, CropFacts::firstFlowers);
  public static final FactKey<Range> MALES_EARLIER = days(CropClauses.MALES_EARLIER);
  public static final FactKey<Range> BLOOMS_FOR = days(CropClauses.BLOOMS);
  public static final FactKey<Boolean> SHORT_DAYS = key(CropClauses.SHORT_DAYS, b -> true);
  public static final FactKey<HeatLimits> HEAT =
      key(CropClauses.HEAT, b -> new HeatLimits(b.base("hinders"), b.base("ends")));

  public static final FactKey<TakeRate> TAKE = key(CropClauses.TAKE, CropFacts::take);
  public static final FactKey<TakeRate> TAKE_EMASCULATED =
      key(CropClauses.TAKE_EMASCULATED, CropFacts::take);
  public static final FactKey<Range> FLOWERS_A_WEEK =
      key(CropClauses.FLOWERS_A_WEEK, b -> b.range("count-range"));
  public static final FactKey<Boolean> BAGGED =
      key(CropClauses.COVERED_WITH, b -> b.choice("with").equals("bagged"));
  public static final FactKey<FlowerNames> CALLED =
      key(
          CropClauses.CALLED,
          b ->
              new FlowerNames(
                  b.name("male").text(),
                  b.name("female").text(),
                  b.has("bearer") ? b.name("bearer").text() : b.name("female").text()));
  public static final FactKey<String> BUD_SIGN = text(CropClauses.BUD_SIGN, "text");
  public static final FactKey<String> OPENS = text(CropClauses.OPENS, "text");
  public static final FactKey<String> HOW_TO_COVER = text(CropClauses.HOW_TO_COVER, "text");
  public static final FactKey<String> HOW_TO_POLLINATE = text(CropClauses.HOW_TO_POLLINATE, "text");
  public static final FactKey<Range> COVER_STAYS = days(CropClauses.COVER_STAYS);
  public static final FactKey<Range> MALES_PER_FLOWER =
      key(CropClauses.MALES_PER_FEMALE, b -> b.range("count-range"));

  public static final FactKey<Range> FRUITS_PER_PLANT =
      key(CropClauses.FRUITS_PER_PLANT, b -> b.range("count-range"));
  public static final FactKey<RipeAfter> RIPE =
      key(
          CropClauses.RIPE,
          b -> new RipeAfter(b.range("heat-or-time-range"), isHeat(b, "heat-or-time-range")));
  public static final FactKey<Range> SEED_RIPE = days(CropClauses.SEED_RIPE);
  public static final FactKey<Range> SEED_RESTS = days(CropClauses.SEED_REST);
  public static final FactKey<String> SEED_TAKEN = text(CropClauses.SEED_TAKEN, "how");
  public static final FactKey<String> SLIP = key(CropClauses.SLIPS, b -> b.choice("slip"));
  public static final FactKey<String> SIGN = text(CropClauses.SIGN, "text");
  public static final FactKey<String> ONCE_CUT = text(CropClauses.ONCE_CUT, "text");
  public static final FactKey<Range> FRUIT_WEIGHT =
      key(CropClauses.WEIGHT, b -> b.range("mass-range"));
  public static final FactKey<Range> SOLUBLE_SOLIDS =
      key(CropClauses.SUGAR, b -> b.range("brix-range"));

  public static final FactKey<Spacing> SPACING =
      key(CropClauses.SPACING, b -> new Spacing(b.range("row"), b.range("rows")));
  public static final FactKey<Double> AREA = key(CropClauses.AREA, b -> b.base("area"));
  public static final FactKey<Range> ROTATION =
      key(CropClauses.ROTATION, b -> b.range("count-range"));

  public static final FactKey<Range> SEED_KEEPS =
      key(CropClauses.SEED_KEEPS, b -> b.range("count-range"));
  public static final FactKey<Double> LEAST_GERMINATION =
      key(CropClauses.LEAST_GERMINATION, b -> b.share("share").share());
  public static final FactKey<Range> SEEDS_PER_FRUIT =
      key(CropClauses.SEEDS_PER_FRUIT, b -> b.range("count-range"));
  public static final FactKey<Range> SEEDS_PER_GRAM =
      key(CropClauses.SEEDS_PER_GRAM, b -> b.range("number-range"));

  private CropFacts() {}

  /** Seed plants: the least for any seed, to keep the line, and to keep all its diversity. */
  public record Population(int forSeed, Range toKeep, int forDiversity) {}

  /**
   * What the trade calls the kind's male and female flowers: tassels and silks.
   *
   * @param bearer what the female ones are counted by, one of it: ear
   */
  public record FlowerNames(String male, String female, String bearer) {}

  /** How readily a species takes another's pollen, 0 (never) to 3 (readily). */
  public record CrossDegree(String species, Range degree) {}

  /** Days from sowing to seedlings at a soil temperature (°C), and the share that comes up. */
  public record EmergenceRow(double days, double soil, Optional<Double> share) {}

  /** Base and limit of growing degree-days, °C. */
  public record GrowthLimits(double base, Optional<Double> limit) {}

  /**
   * When the first fruiting flower opens.
   *
   * @param after days, or °C-days where {@code heat}
   * @param event {@code sowing}, {@code emergence} or {@code planting out}
   * @param limits the base and limit these degree-days are counted with, where not the crop's own
   */
  public record FirstFlowers(
      Range after, boolean heat, String event, Optional<GrowthLimits> limits) {}

  /** From pollination to ripe: days, or °C-days where {@code heat}. */
  public record RipeAfter(Range after, boolean heat) {}

  /** The day's high (°C) at which fruit set suffers, and at which it ends. */
  public record HeatLimits(double hinders, double ends) {}

  /** The share of pollinations that take, and how many flowers' experience it is worth. */
  public record TakeRate(double share, int worth) {}

  /** In the row and between rows, m. */
  public record Spacing(Range inRow, Range betweenRows) {}

  private static <T> FactKey<T> key(Clause clause, Function<Bound, T> reader) {
    return new FactKey<>(clause, reader);
  }

  private static FactKey<Double> degrees(Clause clause) {
    return key(clause, b -> b.base("temperature"));
  }

  private static FactKey<Range> days(Clause clause) {
    return key(clause, b -> b.range("time-range"));
  }

  private static FactKey<String> text(Clause clause, String name) {
    return key(clause, b -> b.text(name));
  }

  private static TakeRate take(Bound b) {
    return new TakeRate(b.share("share").share(), b.count("flowers"));
  }

  private static FirstFlowers firstFlowers(Bound b) {
    Optional<GrowthLimits> limits =
        b.has("base")
            ? Optional.of(
                new GrowthLimits(
                    b.base("base"),
                    b.has("limit") ? Optional.of(b.base("limit")) : Optional.empty()))
            : Optional.empty();
    return new FirstFlowers(b.range("after"), isHeat(b, "after"), b.choice("event"), limits);
  }

  private static boolean isHeat(Bound b, String name) {
    return b.find(name)
        .map(Value.Between.class::cast)
        .flatMap(Value.Between::unit)
        .filter(u -> u.dimension() == Dimension.DEGREE_DAYS)
        .isPresent();
  }
}
