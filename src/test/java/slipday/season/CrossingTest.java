package slipday.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Who sheds on whom, and whose seed it spoils. The directions are those of the trade: common
 * practice, no source.
 */
class CrossingTest {
  private static final String FROSTS =
      Plans.SITE.replace(
          "bed one",
          "  last frost 1 May, 1 in 10 after 10 May\n  first frost 15 October, 1 in 10 before 1 October\nbed one");

  private static String planting(String name, String crop, String bed, String more) {
    return """
        line %1$s-line
          is a %2$s
        lot %1$s
          of %1$s-line
        grow %1$s
          in %3$s
          plants 6
          %4$s
        """
        .formatted(name, crop, bed, more.replace(";", "\n  "));
  }

  private static Season season(String... plantings) {
    return Plans.season(FROSTS + String.join("", plantings));
  }

  private static Optional<Exposure> exposure(Season season, String from, String to) {
    return season.exposures().stream()
        .filter(e -> e.source().name().equals(from) && e.receiver().name().equals(to))
        .findFirst();
  }

  @ParameterizedTest(name = "{0} sheds on an open neighbour: {1}; its own seed is open: {2}")
  @CsvSource({
    "flowers open, true, true",
    // Its marked seed is clean, and its other flowers shed all the same.
    "flowers cover the chosen, true, false",
    // A squash's anthers are all in its male flowers.
    "flowers males removed, false, true",
    "flowers caged, false, false",
  })
  void squashShedsAndReceivesByItsCare(String care, boolean sheds, boolean seedOpen) {
    Season season =
        season(
            planting("ours", "butternut", "one", care + ";seed saved"),
            planting("theirs", "cheese-pumpkin", "two", "seed saved"));
    assertThat(exposure(season, "ours", "theirs").map(Exposure::intoSeed).orElse(false))
        .isEqualTo(sheds);
    assertThat(exposure(season, "theirs", "ours").map(Exposure::intoSeed).orElse(false))
        .isEqualTo(seedOpen);
  }

  @Test
  void perfectFlowersShedThoughTheMalesAreRemoved() {
    Season season =
        season(
            planting("ours", "muskmelon", "one", "flowers males removed"),
            planting("theirs", "casaba", "two", "seed saved"));
    assertThat(exposure(season, "ours", "theirs").orElseThrow().intoSeed()).isTrue();
  }

  @Test
  void nothingShedsWhereAllFlowersAreRemoved() {
    Season season =
        season(
            planting("ours", "muskmelon", "one", "flowers all removed"),
            planting("theirs", "casaba", "two", "seed saved"));
    assertThat(season.exposures()).isEmpty();
  }

  @Test
  void removedFemalesStillShedAndBearNothing() {
    Season season =
        season(
            planting("ours", "butternut", "one", "flowers females removed"),
            planting("theirs", "cheese-pumpkin", "two", "seed saved"));
    assertThat(exposure(season, "ours", "theirs").orElseThrow().intoSeed()).isTrue();
    assertThat(exposure(season, "theirs", "ours")).isEmpty();
  }

  @Test
  void thoseInOneCageCrossEachOtherAndNobodyElse() {
    Season season =
        season(
            planting("a", "butternut", "one", "flowers caged with b;seed saved"),
            planting("b", "cheese-pumpkin", "one", "flowers caged;seed saved"),
            planting("c", "neck-squash", "two", "seed saved"));
    assertThat(exposure(season, "a", "b").orElseThrow().intoSeed()).isTrue();
    assertThat(exposure(season, "b", "a").orElseThrow().intoSeed()).isTrue();
    assertThat(exposure(season, "a", "c")).isEmpty();
    assertThat(exposure(season, "c", "a")).isEmpty();
  }

  @Test
  void anAllFemaleLineShedsNothingAndReceives() {
    Season season =
        season(
            planting("ours", "slicing-cucumber", "one", "seed saved")
                .replace("is a slicing-cucumber", "is a slicing-cucumber\n  sex all female"),
            planting("theirs", "pickling-cucumber", "two", "seed saved"));
    assertThat(exposure(season, "ours", "theirs")).isEmpty();
    assertThat(exposure(season, "theirs", "ours").orElseThrow().intoSeed()).isTrue();
  }

  @Test
  void withoutSeedKeptThereIsNothingToSpoil() {
    Season season =
        season(
            planting("ours", "butternut", "one", "seed not saved"),
            planting("theirs", "cheese-pumpkin", "two", "seed not saved"));
    assertThat(season.exposures()).isNotEmpty().noneMatch(Exposure::intoSeed);
  }

  @ParameterizedTest(name = "{0} on {1}: degree {2} to {3}")
  @CsvSource({
    // Within a species everything crosses.
    "casaba, muskmelon, 3, 3",
    "snake-melon, honeydew, 3, 3",
    "courgette, acorn-squash, 3, 3",
    "pepo-gourd, acorn-squash, 3, 3",
    // Wessel-Beaver 2000, Cucurbit Genetics Cooperative Report 23, from memory.
    "butternut, cushaw, 2, 3",
    "cushaw, butternut, 1, 1",
    // Erwin and Haber 1929, Iowa Agricultural Experiment Station Bulletin 263.
    "butternut, acorn-squash, 1, 2",
    "hubbard, acorn-squash, 0, 1",
  })
  void speciesCrossInDegrees(String donor, String receiver, double low, double high) {
    Season season =
        season(
            planting("donor", donor, "one", "seed not saved"),
            planting("receiver", receiver, "two", "seed saved"));
    Exposure found = exposure(season, "donor", "receiver").orElseThrow();
    assertThat(found.degree().low()).isEqualTo(low);
    assertThat(found.degree().high()).isEqualTo(high);
  }

  @ParameterizedTest(name = "{0} and {1} never cross")
  @CsvSource({
    // Robinson and Decker-Walters, Cucurbits, 1997, from memory.
    "muskmelon, slicing-cucumber",
    "muskmelon, butternut",
    "snake-melon, pickling-cucumber",
    "icebox-watermelon, muskmelon",
    "tomato, sweet-pepper",
  })
  void otherSpeciesDoNot(String a, String b) {
    Season season =
        season(planting("a", a, "one", "seed saved"), planting("b", b, "two", "seed saved"));
    assertThat(season.exposures()).isEmpty();
  }

  @Test
  void distanceIsFromEdgeToEdgeAndFarIsNoDanger() {
    Season season =
        season(
            planting("ours", "butternut", "one", "seed saved"),
            planting("near", "cheese-pumpkin", "two", "seed saved"),
            planting("gone", "neck-squash", "far", "seed saved"));
    assertThat(exposure(season, "near", "ours").orElseThrow().distance()).contains(4.0);
    assertThat(exposure(season, "gone", "ours")).isEmpty();
  }

  @Test
  void oneLineInTwoPlantingsIsNoCross() {
    Season season =
        season(
            planting("ours", "butternut", "one", "seed saved"),
            "grow ours as later\n  in two\n  seed saved\n");
    assertThat(season.exposures()).isEmpty();
  }

  @Test
  void aNeighboursCalendarIsUnknown() {
    Season season =
        season(
            planting("ours", "acorn-squash", "one", "seed saved"),
            "neighbour next-door\n  grows pepo-gourd, butternut\n  distance 60 m\n");
    List<Exposure> found =
        season.exposures().stream().filter(e -> e.source().name().equals("next-door")).toList();
    assertThat(found).hasSize(2).allMatch(e -> e.chance().isEmpty() && e.intoSeed());
    assertThat(found).anyMatch(e -> e.source().isBitter() && e.sameSpecies());
  }
}
