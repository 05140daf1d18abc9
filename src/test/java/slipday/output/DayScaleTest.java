package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class DayScaleTest {
  private static String months(String first, String last, int widest) {
    return DayScale.over(LocalDate.parse(first), LocalDate.parse(last), widest).months();
  }

  @Test
  void aMonthStandsOverTheSignOfItsFirstDay() {
    String line = months("2026-06-01", "2026-08-30", 91);
    assertThat(line).startsWith("Jun ");
    assertThat(line.indexOf("Jul")).isEqualTo(30);
    assertThat(line.indexOf("Aug")).isEqualTo(61);
  }

  @Test
  void aRestOfAMonthThatIsTooShortGivesWayToTheNext() {
    assertThat(months("2026-11-28", "2026-12-20", 60)).isEqualTo("   Dec");
    assertThat(months("2026-11-25", "2026-12-20", 60)).isEqualTo("Nov   Dec");
  }

  @Test
  void aSignStandsForWholeDays() {
    DayScale scale = DayScale.over(LocalDate.of(2026, 6, 1), LocalDate.of(2026, 9, 8), 50);
    assertThat(scale.daysASign()).isEqualTo(2);
    assertThat(scale.signs()).isEqualTo(50);
    assertThat(scale.each()).isEqualTo("2 days");
  }
}
