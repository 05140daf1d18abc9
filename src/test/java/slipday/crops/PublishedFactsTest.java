package slipday.crops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.garden.CropFacts;
import slipday.garden.FactKey;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.Clause;
import slipday.language.CropClauses;
import slipday.language.Declaration;
import slipday.measure.Range;

/** Figures of the crop files against the publications they are from. */
class PublishedFactsTest {
  private static final CropLibrary LIBRARY = new CropLibrary();
  private static final List<String> SQUASH = List.of("pepo", "moschata", "maxima", "argyrosperma");

  private static Bound species(String name, Clause clause) {
    return CropLibrary.fact(LIBRARY.species(name), clause);
  }

  private static Bound crop(String name, Clause clause) {
    return CropLibrary.fact(LIBRARY.crop(name), clause);
  }

  /** 7 CFR 201.31: cucumber 80 %, melon 75 %, pumpkin 75 %; the others from memory. */
  @ParameterizedTest
  @CsvSource({
    "cucumber,0.80", "melon,0.75", "pepo,0.75", "moschata,0.75", "maxima,0.75",
    "watermelon,0.70", "pepper,0.55", "carrot,0.55", "okra,0.50", "onion,0.70"
  })
  void leastGerminationIsTheFederalOne(String species, double share) {
    assertThat(species(species, CropClauses.LEAST_GERMINATION).share("share").share())
        .isCloseTo(share, within(1e-9));
  }

  /**
   * Jenni and others 1996: planting out to the first perfect flower, 335 to 391 °C-days over 6.8.
   */
  @Test
  void melonFlowersAfterItsHeatSum() {
    Bound fact = species("melon", CropClauses.FIRST_FLOWERS);
    assertThat(fact.range("after")).isEqualTo(new Range(335, 391));
    assertThat(fact.base("base")).isEqualTo(6.8);
    assertThat(fact.choice("event")).isEqualTo("planting out");
  }

  /** Baker and Reddy 2001, Annals of Botany 87:605: leaves of melon from 10 °C, best at 34 °C. */
  @Test
  void melonGrowsBetweenItsBaseAndItsBest() {
    Bound fact = species("melon", CropClauses.GROWTH);
    assertThat(fact.base("base")).isEqualTo(10);
    assertThat(fact.base("limit")).isEqualTo(34);
  }

  /**
   * Souza and others 2017, Agrociencia Uruguay 21(2): base 12 °C, upper 35 °C, first female flower
   * at 858.6 °C-days, male at 832.5; in days 63.0 and 60.9.
   */
  @Test
  void tropicalPumpkinFlowersAfterItsHeatSum() {
    Bound flowers = crop("tropical-pumpkin", CropClauses.FIRST_FLOWERS);
    assertThat(flowers.range("after")).isEqualTo(Range.of(858.6));
    assertThat(flowers.base("base")).isEqualTo(12);
    assertThat(flowers.base("limit")).isEqualTo(35);
    assertThat(crop("tropical-pumpkin", CropClauses.MALES_EARLIER).range("time-range").middle())
        .isCloseTo(63.0 - 60.9, within(0.2));
  }

  /** Kumar, Dia and Wehner 2013, HortScience 48:960: 31, 35, 46 and 53 % by spacing. */
  @Test
  void watermelonOutcrossesAsMeasured() {
    Range share = species("watermelon", CropClauses.OUTCROSSES).shares("share-range");
    assertThat(share.low()).isCloseTo(0.31, within(1e-9));
    assertThat(share.high()).isCloseTo(0.53, within(1e-9));
  }

  /**
   * Wehner and Horton 1989, Cucurbit Genetics Cooperative 12:16: nine lots, 904 to 1291 an ounce.
   */
  @Test
  void cucumberSeedsToTheGram() {
    double gramsAnOunce = 28.349523125;
    Range gram = species("cucumber", CropClauses.SEEDS_PER_GRAM).range("number-range");
    assertThat(gram.low()).isCloseTo(904 / gramsAnOunce, within(0.5));
    assertThat(gram.high()).isCloseTo(1291 / gramsAnOunce, within(0.5));
  }

  /** Knott's Handbook 1997: how many years seed keeps. */
  @ParameterizedTest
  @CsvSource({
    "onion,1",
    "corn,2",
    "pepper,2",
    "bean,3",
    "carrot,3",
    "pea,3",
    "spinach,3",
    "beet,4",
    "brassica,4",
    "eggplant,4",
    "pepo,4",
    "moschata,4",
    "maxima,4",
    "tomato,4",
    "watermelon,4",
    "melon,5",
    "cucumber,5",
    "radish,5",
    "lettuce,6"
  })
  void seedKeepsAsTheHandbookSays(String species, double years) {
    assertThat(species(species, CropClauses.SEED_KEEPS).range("count-range"))
        .isEqualTo(Range.of(years));
  }

  /** Knott's Handbook 1997, days from pollination to market maturity (from memory). */
  @ParameterizedTest
  @CsvSource({
    "courgette,3,4",
    "scallop,4,5",
    "straightneck,5,6",
    "crookneck,6,7",
    "acorn-squash,55,60",
    "buttercup,60,70",
    "hubbard,80,90",
    "banana-squash,70,80",
    "carving-pumpkin,65,75",
    "sweet-corn,18,23"
  })
  void ripensAsTheHandbookSays(String crop, double low, double high) {
    assertThat(crop(crop, CropClauses.RIPE).range("heat-or-time-range"))
        .isEqualTo(new Range(low, high));
  }

  /**
   * Handbooks put butternut at 45 to 60, at least 50 to 55, and 60 to 70 days: 45 to 70 holds all.
   */
  @Test
  void butternutsRangeHoldsEverySource() {
    assertThat(LIBRARY.crop("butternut").find(CropClauses.RIPE)).isEmpty();
    assertThat(species("moschata", CropClauses.RIPE).range("heat-or-time-range"))
        .isEqualTo(new Range(45, 70));
  }

  /** Mid-Atlantic Commercial Vegetable Production Recommendations, table A-4: weeks to grow. */
  @ParameterizedTest
  @CsvSource({
    "melon,2,4",
    "pepo,2,4",
    "cucumber,2,4",
    "watermelon,3,4",
    "tomato,5,6",
    "pepper,7,9",
    "eggplant,6,9",
    "lettuce,4,6",
    "brassica,6,7",
    "onion,9,12"
  })
  void youngPlantsAreAsOldAsTheTableSays(String species, double low, double high) {
    assertThat(species(species, CropClauses.SEEDLING_AGE).range("time-range"))
        .isEqualTo(new Range(7 * low, 7 * high));
  }

  /**
   * Which squash species take whose pollen: Erwin and Haber 1929; Baggett 1979; Karaagac and
   * Balkaya 2013; Wessel-Beaver 2000 (from memory). The scale is Slipday's own.
   */
  @Test
  void squashSpeciesCrossByDegrees() {
    Map<String, Range> degrees = new TreeMap<>();
    for (String mother : SQUASH) {
      LIBRARY
          .species(mother)
          .every(CropClauses.CROSSES_WITH)
          .forEach(
              f ->
                  degrees.put(
                      mother + " by " + f.bound().name("species").text(),
                      f.bound().range("count-range")));
    }
    assertThat(degrees).hasSize(12);
    assertThat(degrees.get("argyrosperma by moschata")).isEqualTo(new Range(2, 3));
    assertThat(degrees.get("moschata by argyrosperma")).isEqualTo(Range.of(1));
    assertThat(degrees.get("pepo by maxima")).isEqualTo(new Range(0, 1));
    assertThat(degrees.get("maxima by pepo")).isEqualTo(new Range(0, 1));
    assertThat(degrees.get("pepo by moschata")).isEqualTo(degrees.get("moschata by pepo"));
    assertThat(degrees.entrySet())
        .filteredOn(e -> e.getValue().high() > 2)
        .extracting(Map.Entry::getKey)
        .containsExactly("argyrosperma by moschata");
  }

  /**
   * Melon, watermelon and cucumber cross with no other species here (common practice, no source).
   */
  @Test
  void onlySquashCrossesBetweenSpecies() {
    assertThat(LIBRARY.all(Declaration.SPECIES))
        .filteredOn(b -> b.find(CropClauses.CROSSES_WITH).isPresent())
        .extracting(CropLibrary::name)
        .containsExactlyInAnyOrderElementsOf(SQUASH);
  }

  /**
   * The kin whose pollen makes the next generation's fruit a danger (common practice, no source).
   */
  @Test
  void bitterKinIsMarked() {
    assertThat(LIBRARY.all(Declaration.CROP))
        .filteredOn(b -> b.find(CropClauses.BITTER).isPresent())
        .allSatisfy(
            b ->
                assertThat(CropLibrary.fact(b, CropClauses.BITTER).choice("fruit"))
                    .isEqualTo("bitter and poisonous"))
        .extracting(CropLibrary::name)
        .containsExactlyInAnyOrder("pepo-gourd", "citron-melon", "wild-melon", "wild-cucumber");
  }

  /**
   * University of California, Davis, on cantaloupe and honeydew: the first comes off at full slip,
   * the second never slips. The other types: common practice, no source.
   */
  @ParameterizedTest
  @CsvSource({
    "muskmelon,full",
    "galia,full",
    "charentais,half",
    "honeydew,none",
    "casaba,none",
    "canary,none",
    "crenshaw,none"
  })
  void melonsSlipOrDoNot(String crop, String slip) {
    assertThat(crop(crop, CropClauses.SLIPS).choice("slip")).isEqualTo(slip);
  }

  /** Only corn shows its pollen parent in the season's own fruit (common practice, no source). */
  @Test
  void onlyCornsKernelsShowThePollenParent() {
    assertThat(LIBRARY.all(Declaration.SPECIES))
        .filteredOn(b -> b.find(CropClauses.KERNELS).isPresent())
        .extracting(CropLibrary::name)
        .containsExactly("corn");
  }

  /** Every fact can be read under the key that the garden knows it by. */
  @Test
  void everyFactCanBeRead() {
    List<FactKey<?>> keys =
        Arrays.stream(CropFacts.class.getFields())
            .filter(f -> Modifier.isStatic(f.getModifiers()) && f.getType() == FactKey.class)
            .<FactKey<?>>map(PublishedFactsTest::value)
            .toList();
    assertThat(LIBRARY.facts())
        .isNotEmpty()
        .allSatisfy(
            fact ->
                assertThat(keys)
                    .filteredOn(k -> k.clause() == fact.clause())
                    .singleElement()
                    .satisfies(k -> assertThat(k.reader().apply(fact.bound())).isNotNull()));
  }

  private static FactKey<?> value(java.lang.reflect.Field field) {
    try {
      return (FactKey<?>) field.get(null);
    } catch (IllegalAccessException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void biennialsAreThoseThatNeedAWinter() {
    assertThat(LIBRARY.all(Declaration.SPECIES))
        .filteredOn(PublishedFactsTest::biennial)
        .extracting(CropLibrary::name)
        .containsExactlyInAnyOrder("brassica", "carrot", "onion", "beet");
    assertThat(biennial(LIBRARY.crop("broccoli"))).isFalse();
  }

  private static boolean biennial(Block block) {
    return CropLibrary.fact(block, CropClauses.LIFE_CYCLE).choice("cycle").equals("biennial");
  }
}
