package slipday.crops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.BoundClause;
import slipday.language.CropClauses;
import slipday.measure.Unit;

/**
 * Days to emergence and the share that came up, by soil temperature: Harrington and Minges 1954, as
 * printed in Knott's Handbook for Vegetable Growers, 4th edition, 1997.
 */
class EmergenceFactsTest {
  private static final CropLibrary LIBRARY = new CropLibrary();
  private static final int[] COLUMNS = {32, 41, 50, 59, 68, 77, 86, 95, 104};

  /** One cell a column; a dash where nothing came up, or nothing was measured. */
  @ParameterizedTest
  @CsvSource({
    "bean,       - - - 16/97 11/90 8/97 6/47 6/39 -",
    "beet,       - 42/53 17/72 10/88 6/90 5/97 5/89 5/35 -",
    "brassica,   - - 15/78 9/93 6 5/99 4 - -",
    "carrot,     - 51/48 17/93 10/95 7/96 6/96 6/95 9/74 -",
    "corn,       - - 22/47 12/97 7/97 4/98 4/91 3/88 -",
    "cucumber,   - - - 13/95 6/99 4/99 3/99 3/99 -",
    "eggplant,   - - - - 13/21 8/53 5/60 - -",
    "lettuce,    49/98 15/98 7/98 4/99 3/99 2/99 3/12 - -",
    "melon,      - - - - 8/38 4/94 3/90 - -",
    "okra,       - - - 27/74 17/89 13/92 7/88 6/85 7/35",
    "onion,      136/90 31/98 13/98 7/98 5/98 4/97 4/91 13/73 -",
    "pea,        - 36/89 14/94 9/93 8/93 6/94 6/86 - -",
    "pepper,     - - - 25/70 13/96 8/98 8/95 9/70 -",
    "radish,     - 29/42 11/76 6/97 4/95 4/97 3/95 - -",
    "spinach,    63/83 23/96 12/91 7/82 6/52 5/28 6/32 - -",
    "tomato,     - - 43/82 14/98 8/98 6/97 6/83 9/46 -",
    "watermelon, - - - - 12/94 5/90 4/92 3/96 -",
  })
  void rowsAreThoseOfTheTable(String species, String row) {
    List<String> told = new ArrayList<>();
    for (BoundClause fact : emergence(species).toList()) {
      assertThat(fact.says().orElseThrow().source().orElseThrow().text())
          .isEqualTo("harrington-minges");
      told.add(cell(fact.bound()));
    }
    List<String> printed = new ArrayList<>();
    String[] cells = row.strip().split(" ");
    assertThat(cells).hasSameSizeAs(COLUMNS);
    for (int i = 0; i < cells.length; i++) {
      if (!cells[i].equals("-")) {
        printed.add(COLUMNS[i] + " F: " + cells[i]);
      }
    }
    assertThat(told).containsExactlyElementsOf(printed);
  }

  private static String cell(Bound fact) {
    double fahrenheit = Unit.FAHRENHEIT.fromBase(fact.base("temperature"));
    String share =
        fact.has("share")
            ? String.format(Locale.ROOT, "/%.0f", 100 * fact.share("share").share())
            : "";
    return String.format(Locale.ROOT, "%.0f F: %.0f%s", fahrenheit, fact.base("time"), share);
  }

  private static Stream<BoundClause> emergence(String species) {
    return LIBRARY.species(species).every(CropClauses.EMERGES);
  }

  private static List<Double> days(String species) {
    return emergence(species).map(f -> f.bound().base("time")).toList();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "bean",
        "beet",
        "brassica",
        "carrot",
        "corn",
        "cucumber",
        "eggplant",
        "lettuce",
        "melon",
        "okra",
        "onion",
        "pea",
        "pepper",
        "radish",
        "spinach",
        "tomato",
        "watermelon"
      })
  void daysFallToTheBestTemperatureAndRiseBeyondIt(String species) {
    List<Double> days = days(species);
    double fewest = days.stream().mapToDouble(d -> d).min().orElseThrow();
    int best = days.indexOf(fewest);
    for (int i = 1; i < days.size(); i++) {
      if (i <= best) {
        assertThat(days.get(i)).isLessThanOrEqualTo(days.get(i - 1));
      } else {
        assertThat(days.get(i)).isGreaterThanOrEqualTo(days.get(i - 1));
      }
    }
  }

  /** Tomato takes 6 days at 86 °F and 9 at 95 °F, onion 4 and 13. */
  @Test
  void tooWarmIsSlowerAgain() {
    assertThat(days("tomato")).endsWith(6.0, 9.0);
    assertThat(days("onion")).endsWith(4.0, 13.0);
  }

  /** Squash and pumpkin are not in the table; cucumber stands in for them and says so. */
  @ParameterizedTest
  @ValueSource(strings = {"moschata", "pepo", "maxima", "argyrosperma"})
  void squashHasNoTableOfItsOwn(String species) {
    Block block = LIBRARY.species(species);
    assertThat(block.find(CropClauses.EMERGES)).isEmpty();
    assertThat(CropLibrary.fact(block, CropClauses.EMERGES_LIKE).name("species").text())
        .isEqualTo("cucumber");
  }

  /** Neither is in the table, and neither may claim to be. */
  @ParameterizedTest
  @ValueSource(strings = {"sunflower", "basil"})
  void cropsOutsideTheTableClaimNoPublication(String species) {
    assertThat(emergence(species))
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.says().orElseThrow().source()).isEmpty());
  }

  /** Knott's Handbook 1997, soil temperatures for germination (from memory). */
  @ParameterizedTest
  @CsvSource({"melon,60,100", "watermelon,60,105", "cucumber,60,105", "tomato,50,95", "pea,40,85"})
  void seedComesUpBetweenTheTemperaturesOfTheHandbook(String species, double low, double high) {
    var range =
        CropLibrary.fact(LIBRARY.species(species), CropClauses.GERMINATES)
            .range("temperature-range");
    assertThat(Unit.FAHRENHEIT.fromBase(range.low())).isCloseTo(low, within(1e-9));
    assertThat(Unit.FAHRENHEIT.fromBase(range.high())).isCloseTo(high, within(1e-9));
  }
}
