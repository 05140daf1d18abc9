package slipday.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TablesTest {
  private static String cell(Object value) {
    String table = Tables.table(List.of("a"), Stream.of(List.of(value)));
    return table.lines().skip(1).findFirst().orElseThrow();
  }

  @Test
  void wordsAreNeverAFormula() {
    assertThat(cell("=1+1")).isEqualTo("'=1+1");
    assertThat(cell(Optional.of("@SUM(A1)"))).isEqualTo("'@SUM(A1)");
    assertThat(cell("+a")).isEqualTo("'+a");
    assertThat(cell("-1-1")).isEqualTo("'-1-1");
    assertThat(cell(" =1")).contains("' =1");
    assertThat(cell("tern-amber = good")).isEqualTo("tern-amber = good");
  }

  @Test
  void numbersStayNumbers() {
    assertThat(cell(-1.5)).isEqualTo("-1.5");
    assertThat(cell(-3)).isEqualTo("-3");
    assertThat(cell("-0.25")).isEqualTo("-0.25");
    assertThat(cell("+3")).isEqualTo("+3");
  }

  @Test
  void marksThatTurnTheReadingAroundAreLeftOut() {
    assertThat(cell("a \u202Eback\u202C\u0007")).isEqualTo("a back\uFFFD");
  }
}
