package slipday.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import slipday.app.Checked;
import slipday.finding.Finding;
import slipday.garden.Planting;

/** Who stands in one cage, by whichever line names the other. */
class CagesTest {
  private static Checked garden(String first, String second, String third) {
    String plan =
        """
        season 2026
        site home
          place          44.21 N, 72.58 W
          time zone      America/New_York
          last frost     18 May, 1 in 10 after 30 May
          first frost    27 September, 1 in 10 before 14 September
        line ember
          is a muskmelon
        lot one
          of ember
        lot two
          of ember
        lot three
          of ember
        grow one
          plants 4
        %s
        grow two as second
          plants 4
        %s
        grow three
          plants 4
        %s
        """;
    return Plans.check(plan.formatted(first, second, third));
  }

  private static List<List<String>> cages(Checked checked) {
    return checked.garden().orElseThrow().plantings().stream()
        .map(Planting::flowers)
        .map(f -> f.cagedWith().stream().sorted().toList())
        .toList();
  }

  @Test
  void oneNamingTheOtherIsEnough() {
    Checked checked = garden("flowers caged with second", "flowers caged", "flowers caged");
    assertThat(cages(checked)).containsExactly(List.of("second"), List.of("one"), List.of());
    assertThat(Plans.of(checked, "cage-left-open")).isEmpty();
  }

  @Test
  void whatAThirdOneNamesIsInTheSameCage() {
    Checked checked =
        garden("flowers caged with second", "flowers caged with three", "flowers caged");
    assertThat(cages(checked))
        .containsExactly(
            List.of("second", "three"), List.of("one", "three"), List.of("one", "second"));
  }

  @Test
  void aCageIsNotSharedWithWhatStandsOpen() {
    Checked checked =
        garden("flowers caged with second", "seed saved", "flowers caged with nobody");
    assertThat(Plans.of(checked, "cage-left-open"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.message())
                  .isEqualTo("`one` shares a cage with `second`, which is not caged.");
              assertThat(f.place().orElseThrow().span().text()).isEqualTo("second");
              assertThat(f.others().get(0).span().text()).isEqualTo("grow two as second");
            });
    assertThat(Plans.of(checked, "unknown-name")).extracting(Finding::subject).hasSize(1);
  }
}
