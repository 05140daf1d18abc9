package slipday.nextseason;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.garden.Garden;
import slipday.nextseason.NextSeason.Sown;

/** The search reckons what a move changes; the whole cost is held against it. */
class BedPlanProperties {
  private static final List<String> CROPS = List.of("muskmelon", "butternut", "tomato");

  @Property(tries = 200)
  void noMoveAndNoSwapIsBetterByTheWholeCost(
      @ForAll long seed,
      @ForAll @IntRange(min = 2, max = 6) int beds,
      @ForAll @IntRange(min = 1, max = 9) int lines) {
    BedPlan plan = plan(new Random(seed), beds, lines);
    int[] in = plan.search();
    double least = plan.cost(in) - 1e-6 * (1 + plan.cost(in) / 1e6);
    for (int g = 0; g < in.length; g++) {
      for (int b = 0; b < beds; b++) {
        int[] moved = in.clone();
        moved[g] = b;
        assertThat(plan.cost(moved)).isGreaterThanOrEqualTo(least);
      }
      for (int h = 0; h < g; h++) {
        int[] swapped = in.clone();
        swapped[g] = in[h];
        swapped[h] = in[g];
        assertThat(plan.cost(swapped)).isGreaterThanOrEqualTo(least);
      }
    }
  }

  private static BedPlan plan(Random random, int beds, int lines) {
    StringBuilder text = new StringBuilder("season 2026\nsite home\n  place 44 N, 72 W\n");
    text.append("  time zone America/New_York\n  last frost 18 May, 1 in 10 after 30 May\n");
    text.append("  first frost 27 September, 1 in 10 before 14 September\n");
    for (int b = 0; b < beds; b++) {
      text.append("bed bed-" + b + "\n  size " + (3 + random.nextInt(9)) + " m x 1.2 m\n");
    }
    for (int i = 0; i < lines; i++) {
      text.append("line line-" + i + "\n  is a " + CROPS.get(random.nextInt(3)) + "\n");
      text.append("lot lot-" + i + "\n  of line-" + i + "\n  seeds 400\n");
      text.append("grow lot-" + i + "\n  in bed-" + random.nextInt(beds) + "\n");
      text.append("  plants " + (1 + random.nextInt(12)) + "\n");
    }
    Garden garden =
        new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2026, 12, 31))
            .check(
                new ByteArrayInputStream(text.toString().getBytes(StandardCharsets.UTF_8)),
                "beds.season",
                Path.of("."))
            .garden()
            .orElseThrow();
    List<Sown> sown =
        garden.plantings().stream()
            .map(
                p ->
                    new Sown(
                        p.lot(),
                        p,
                        NextSeason.Role.values()[0],
                        p.bed(),
                        p.plants().orElseThrow().value(),
                        false,
                        0,
                        0,
                        true,
                        0,
                        Optional.empty(),
                        List.of()))
            .toList();
    return new BedPlan(garden, sown);
  }
}
