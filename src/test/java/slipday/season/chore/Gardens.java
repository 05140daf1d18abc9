package slipday.season.chore;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.season.Season;

/** Seasons reckoned from a few lines of plan; the gardens and lines are invented. */
public final class Gardens {
  private static final String NORTH =
      """
      season 2026
      site quince-end "Quince End"
        place 44.21 N, 72.58 W, 310 m
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed long-bed
        size 30 m x 2 m
        corner 0 m east, 0 m north
      """;

  private static final String SOUTH =
      """
      season 2026-27
      site kowhai-rise "Kowhai Rise"
        place 41.3 S, 173.2 E, 30 m
        time zone Pacific/Auckland
        last frost 20 October
        first frost 10 May
      bed long-bed
        size 30 m x 2 m
        corner 0 m east, 0 m north
      """;

  private Gardens() {}

  public static ChoreBook north(String plan) {
    return Chores.of(season(NORTH + plan));
  }

  public static ChoreBook south(String plan) {
    return Chores.of(season(SOUTH + plan));
  }

  /** A line with a lot of its own, 200 seeds tested the year before. */
  public static String lot(String name, String crop) {
    return """
        line %1$s
          is a %2$s
          purpose to keep
        lot %1$s-lot
          of %1$s
          seeds 200
        grow %1$s-lot as %1$s
          in long-bed
          plants 6, 60 cm apart
        """
        .formatted(name, crop);
  }

  public static Season season(String plan) {
    byte[] bytes = plan.getBytes(StandardCharsets.UTF_8);
    Checked checked =
        new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2035, 12, 31))
            .check(new ByteArrayInputStream(bytes), "plan.season", Path.of("."));
    List<Finding> errors =
        checked.findings().stream()
            .filter(f -> f.level() == Level.ERROR && checked.season().isEmpty())
            .toList();
    assertThat(errors).isEmpty();
    return checked.season().orElseThrow();
  }
}
