package slipday.crops;

import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.stream.Collectors.toSet;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.Clause;
import slipday.language.CropClauses;
import slipday.language.Declaration;
import slipday.language.KindClauses;
import slipday.measure.Range;

/** The crop files hold together: nothing misread, nothing unsourced, nothing missing. */
class CropFilesTest {
  private static final CropLibrary LIBRARY = new CropLibrary();

  @Test
  void everyLineIsUnderstood() {
    assertThat(LIBRARY.all(Declaration.SPECIES)).isNotEmpty();
    assertThat(LIBRARY.findings()).isEmpty();
  }

  @Test
  void everyFactSaysWhereItIsFrom() {
    assertThat(LIBRARY.facts().filter(f -> f.says().isEmpty()).map(f -> f.line().span().text()))
        .isEmpty();
  }

  @Test
  void sourcesNamedAndSourcesDeclaredAreTheSame() {
    Set<String> named =
        LIBRARY
            .facts()
            .flatMap(f -> f.says().stream())
            .flatMap(s -> s.source().stream())
            .map(n -> n.text())
            .collect(toSet());
    assertThat(LIBRARY.names(Declaration.SOURCE))
        .doesNotHaveDuplicates()
        .containsExactlyInAnyOrderElementsOf(named);
  }

  @Test
  void theSpeciesOfTheGardenAreAllThere() {
    assertThat(LIBRARY.all(Declaration.SPECIES).stream().map(b -> b.head().orElseThrow()))
        .extracting(h -> h.name("name").text() + " = " + h.text("latin"))
        .containsExactlyInAnyOrder(
            "melon = Cucumis melo",
            "moschata = Cucurbita moschata",
            "pepo = Cucurbita pepo",
            "maxima = Cucurbita maxima",
            "argyrosperma = Cucurbita argyrosperma",
            "watermelon = Citrullus lanatus",
            "cucumber = Cucumis sativus",
            "tomato = Solanum lycopersicum",
            "pepper = Capsicum annuum",
            "bean = Phaseolus vulgaris",
            "pea = Pisum sativum",
            "corn = Zea mays",
            "lettuce = Lactuca sativa",
            "okra = Abelmoschus esculentus",
            "eggplant = Solanum melongena",
            "sunflower = Helianthus annuus",
            "brassica = Brassica oleracea",
            "carrot = Daucus carota",
            "onion = Allium cepa",
            "beet = Beta vulgaris",
            "radish = Raphanus sativus",
            "spinach = Spinacia oleracea",
            "basil = Ocimum basilicum");
  }

  @Test
  void everyCropIsOfADeclaredSpeciesAndEverySpeciesHasCrops() {
    List<String> of =
        LIBRARY.all(Declaration.CROP).stream()
            .map(c -> CropLibrary.fact(c, KindClauses.OF).name("species").text())
            .toList();
    assertThat(LIBRARY.names(Declaration.CROP)).doesNotHaveDuplicates();
    assertThat(of).hasSameSizeAs(LIBRARY.all(Declaration.CROP));
    assertThat(Set.copyOf(of))
        .containsExactlyInAnyOrderElementsOf(LIBRARY.names(Declaration.SPECIES));
  }

  /** A word is told once of a crop, and means no crop or species by its own name. */
  @Test
  void otherWordsForCropsAreNoNames() {
    assertThat(LIBRARY.all(Declaration.CROP))
        .allSatisfy(c -> assertThat(otherWords(c)).doesNotHaveDuplicates());
    assertThat(LIBRARY.all(Declaration.CROP).stream().flatMap(c -> otherWords(c).stream()))
        .hasSizeGreaterThan(50)
        .doesNotContainAnyElementsOf(LIBRARY.names(Declaration.CROP))
        .doesNotContainAnyElementsOf(LIBRARY.names(Declaration.SPECIES));
  }

  private static List<String> otherWords(Block crop) {
    return crop.every(KindClauses.ALSO_CALLED).map(c -> c.bound().name("word").text()).toList();
  }

  static Stream<Block> species() {
    return LIBRARY.all(Declaration.SPECIES).stream();
  }

  @ParameterizedTest
  @MethodSource("species")
  void aSpeciesHasWhatEveryPlantingNeeds(Block species) {
    List<Clause> needed =
        List.of(
            CropClauses.FAMILY,
            CropClauses.LIFE_CYCLE,
            CropClauses.SEX,
            CropClauses.POLLEN_BY,
            CropClauses.OUTCROSSES,
            CropClauses.INBREEDING,
            CropClauses.ISOLATION,
            CropClauses.POPULATION,
            CropClauses.GERMINATES,
            CropClauses.SOW_AT,
            CropClauses.KILLED,
            CropClauses.STARTED,
            CropClauses.GROWTH,
            CropClauses.REFERENCE,
            CropClauses.SPACING,
            CropClauses.ROTATION,
            CropClauses.SEED_KEEPS,
            CropClauses.LEAST_GERMINATION,
            CropClauses.SEEDS_PER_GRAM,
            CropClauses.SEED_TAKEN);
    assertThat(species.clauses()).extracting(BoundClause::clause).containsAll(needed);
    assertThat(species.clauses())
        .extracting(BoundClause::clause)
        .containsAnyOf(CropClauses.EMERGES, CropClauses.EMERGES_LIKE);
  }

  /** What is raised indoors needs an age, hardening and soil to be set out by. */
  @ParameterizedTest
  @MethodSource("species")
  void whatIsStartedIndoorsCanBePlantedOut(Block species) {
    if (CropLibrary.fact(species, CropClauses.STARTED).choice("where").equals("indoors")) {
      assertThat(species.clauses())
          .extracting(BoundClause::clause)
          .contains(
              CropClauses.SEEDLING_AGE,
              CropClauses.HARDENED,
              CropClauses.SET_OUT_AT,
              CropClauses.CHECKED);
    }
  }

  /** An annual flowers in its season; a biennial's flowers are for the year after. */
  @ParameterizedTest
  @MethodSource("species")
  void onlyAnnualsTellWhenTheyFlower(Block species) {
    boolean annual =
        CropLibrary.fact(species, CropClauses.LIFE_CYCLE).choice("cycle").equals("annual");
    assertThat(species.find(CropClauses.FIRST_FLOWERS).isPresent()).isEqualTo(annual);
    assertThat(species.find(CropClauses.BLOOMS).isPresent()).isEqualTo(annual);
  }

  /** Male flowers of their own: the plan must know how much earlier they open. */
  @ParameterizedTest
  @MethodSource("species")
  void separateMalesHaveAStartOfTheirOwn(Block species) {
    boolean separate = !CropLibrary.fact(species, CropClauses.SEX).choice("sex").equals("perfect");
    assertThat(species.find(CropClauses.MALES_EARLIER).isPresent()).isEqualTo(separate);
  }

  /**
   * Charts for seed savers differ tenfold, so a low and a high are kept; selfers stand in feet,
   * insect- and wind-pollinated crops in hundreds of feet and more (common practice, no source).
   */
  @ParameterizedTest
  @MethodSource("species")
  void isolationHasAHomeAndAStrictFigure(Block species) {
    Range metres = CropLibrary.fact(species, CropClauses.ISOLATION).range("length-range");
    boolean selfs =
        CropLibrary.fact(species, CropClauses.POLLEN_BY).choice("vector").equals("itself");
    assertThat(metres.low()).isLessThan(metres.high());
    assertThat(metres.low()).isBetween(selfs ? 3.0 : 45.0, selfs ? 15.0 : 900.0);
    assertThat(metres.high()).isBetween(selfs ? 6.0 : 400.0, selfs ? 50.0 : 8100.0);
  }

  @Test
  void growthStopsAboveItsBase() {
    assertThat(LIBRARY.facts().filter(f -> f.clause() == CropClauses.GROWTH))
        .hasSize(24)
        .allSatisfy(
            f -> {
              if (f.bound().has("limit")) {
                assertThat(f.bound().base("limit")).isGreaterThan(f.bound().base("base") + 15);
              }
            });
  }

  @Test
  void heatHindersBeforeItEndsFruitSet() {
    assertThat(LIBRARY.facts().filter(f -> f.clause() == CropClauses.HEAT))
        .hasSizeGreaterThan(10)
        .allSatisfy(f -> assertThat(f.bound().base("hinders")).isLessThan(f.bound().base("ends")));
  }

  /** The list that the program reads names every file of the folder, and nothing else. */
  @Test
  void theListOfFilesIsComplete() throws IOException {
    List<String> there = CropLibrary.files().stream().map(f -> f.getFileName().toString()).toList();
    try (InputStream list = getClass().getResourceAsStream("/slipday/crops/files.txt")) {
      assertThat(list).isNotNull();
      assertThat(new String(list.readAllBytes(), UTF_8).lines())
          .containsExactlyInAnyOrderElementsOf(there);
    }
  }
}
