package slipday.output.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.garden.Bed;
import slipday.garden.Garden;
import slipday.output.report.BedLayout.Block;
import slipday.output.report.BedLayout.Dot;

class BedLayoutTest {
  private static BedLayout layout(String size, String... plantings) {
    Garden garden = Gardens.of(size, plantings);
    Bed bed = garden.beds().get(0);
    return BedLayout.of(bed.size().orElseThrow(), garden.plantings());
  }

  @Test
  void plantsStandAtTheirSpacingInThePlansOrder() {
    BedLayout layout = layout("12 m x 1.2 m", "5, 60 cm apart", "3, 1 m apart");
    assertThat(layout.squeezed()).isFalse();
    List<Block> blocks = layout.blocks();
    assertThat(blocks).hasSize(2);
    assertThat(blocks.get(0).length()).isEqualTo(3.0);
    assertThat(blocks.get(1).east()).isEqualTo(3.0);
    List<Dot> first = blocks.get(0).plants();
    assertThat(first).hasSize(5);
    for (int i = 1; i < first.size(); i++) {
      double apart = first.get(i).east() - first.get(i - 1).east();
      assertThat(apart).isCloseTo(0.6, org.assertj.core.data.Offset.offset(1e-9));
    }
    assertThat(first).allMatch(d -> d.north() == 0.6);
  }

  @Test
  void aBedTooShortForOneRowGetsMore() {
    BedLayout layout = layout("6 m x 2 m", "16, 60 cm apart");
    assertThat(layout.squeezed()).isFalse();
    assertThat(layout.blocks().get(0).plants().stream().map(Dot::north).distinct()).hasSize(2);
  }

  @Test
  void plantsThatDoNotFitAreDrawnCloserAndItIsSaid() {
    BedLayout layout = layout("3 m x 1 m", "60, 60 cm apart");
    assertThat(layout.squeezed()).isTrue();
    assertThat(layout.blocks().get(0).plants())
        .hasSize(60)
        .allMatch(d -> d.east() > 0 && d.east() < 3 && d.north() > 0 && d.north() < 1);
  }

  @Test
  void aBedThatRunsNorthIsPlantedNorthwards() {
    Block block = layout("1.2 m x 12 m", "5, 60 cm apart").blocks().get(0);
    assertThat(block.plants()).allMatch(d -> d.east() == 0.6);
    assertThat(block.width()).isEqualTo(3.0);
  }

  @Test
  void twoLinesNeverHaveTheSameInitials() {
    Garden garden = Gardens.of("12 m x 1.2 m", "5, 60 cm apart", "3, 60 cm apart");
    Initials initials = new Initials(garden.plantings());
    assertThat(garden.plantings().stream().map(initials::of)).containsExactly("LN", "LN2");
  }
}
