package slipday.crops;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.language.Binder;
import slipday.language.BoundFile;
import slipday.language.CropClauses;
import slipday.measure.Range;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** A single figure before a {@code to} that belongs to the sentence and not to a range. */
class SingleFigureTest {
  private static Outcome<BoundFile> bind(String clause) {
    String text = "species corn \"Zea mays\"\n  " + clause + "\n";
    return SeasonParser.parse(Source.of("corn.season", text)).then(Binder::bind);
  }

  @Test
  void aSingleFigureMayStandWhereARangeMay() {
    var bound = bind("population 10 for seed, 50 to keep the line, 200 for all its diversity");
    assertThat(bound.findings()).isEmpty();
    assertThat(
            CropLibrary.fact(bound.value().blocks().get(0), CropClauses.POPULATION).range("keep"))
        .isEqualTo(Range.of(50));
  }

  @Test
  void aRangeWithoutItsSecondFigureIsStillAskedForIt() {
    assertThat(bind("fruits a plant 2 to many").findings())
        .singleElement()
        .extracting(Finding::message)
        .asString()
        .isEqualTo(
            "`fruits a plant` wants a whole number, or two such as `2 to 4` where `many` stands.");
  }
}
