package slipday.climate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class SeasonAxisTest {
  @Test
  void northernSeasonIsTheCalendarYear() {
    SeasonAxis axis = SeasonAxis.northern(2027);
    assertThat(axis.slotOf(LocalDate.of(2027, 1, 1))).isZero();
    assertThat(axis.slotOf(LocalDate.of(2027, 12, 31))).isEqualTo(364);
    assertThat(axis.dateOf(axis.midsummer())).isEqualTo("2027-08-01");
    assertThat(axis.dateOf(-1)).isEqualTo("2026-12-31");
    assertThat(axis.dateOf(365)).isEqualTo("2028-01-01");
    assertThat(axis.label()).isEqualTo("2027");
  }

  @Test
  void southernSeasonCrossesTheNewYear() {
    SeasonAxis axis = SeasonAxis.southern(2027);
    assertThat(axis.dateOf(0)).isEqualTo("2027-07-01");
    assertThat(axis.dateOf(364)).isEqualTo("2028-06-30");
    assertThat(axis.dateOf(axis.midsummer())).isEqualTo("2028-02-01");
    assertThat(axis.dateOf(axis.springWatchFrom())).isEqualTo("2027-09-01");
    assertThat(axis.dateOf(axis.autumnWatchTo())).isEqualTo("2028-05-31");
    assertThat(axis.label()).isEqualTo("2027-28");
    assertThat(SeasonAxis.southern(1999).label()).isEqualTo("1999-00");
  }

  @Test
  void leapDaySharesTheSlotOfTheDayBefore() {
    SeasonAxis axis = SeasonAxis.northern(2028);
    int slot = axis.slotOf(LocalDate.of(2028, 2, 28));
    assertThat(axis.slotOf(LocalDate.of(2028, 2, 29))).isEqualTo(slot);
    assertThat(axis.slotOf(LocalDate.of(2028, 3, 1))).isEqualTo(slot + 1);
    assertThat(axis.dateOf(slot)).isEqualTo("2028-02-28");
    assertThat(axis.dateOf(slot + 1)).isEqualTo("2028-03-01");
  }

  @Test
  void aDateFallsInTheSeasonThatHoldsIt() {
    LocalDate june = LocalDate.of(2028, 6, 30);
    assertThat(SeasonAxis.holding(Hemisphere.SOUTH, june).year()).isEqualTo(2027);
    assertThat(SeasonAxis.holding(Hemisphere.SOUTH, june.plusDays(1)).year()).isEqualTo(2028);
    assertThat(SeasonAxis.holding(Hemisphere.NORTH, june).year()).isEqualTo(2028);
  }

  @Property
  void everySlotHasItsDate(
      @ForAll Hemisphere hemisphere,
      @ForAll @IntRange(min = 1900, max = 2100) int year,
      @ForAll @IntRange(min = -800, max = 1200) int slot) {
    SeasonAxis axis = new SeasonAxis(hemisphere, year);
    assertThat(axis.slotOf(axis.dateOf(slot))).isEqualTo(slot);
    assertThat(axis.dateOf(slot)).isBefore(axis.dateOf(slot + 1));
  }
}
