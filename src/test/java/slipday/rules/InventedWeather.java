package slipday.rules;

import java.time.LocalDate;
import java.util.Locale;

/**
 * A weather record that nobody measured: twenty years of a continental climate, a yearly wave with
 * made-up spells of warm and cold on it. The same on every run.
 */
final class InventedWeather {
  private static final int FIRST_YEAR = 2003;
  private static final int YEARS = 20;
  private static final double MEAN = 8;
  private static final double SWING = 14;
  private static final double HALF_DAY = 6;
  private static final double WARMEST_DAY = 202;

  private long state = 20260514;
  private double spell;

  private InventedWeather() {}

  static String csv() {
    return new InventedWeather().table();
  }

  private String table() {
    StringBuilder rows = new StringBuilder("date,low (C),high (C)\n");
    LocalDate end = LocalDate.of(FIRST_YEAR + YEARS, 1, 1);
    for (LocalDate day = LocalDate.of(FIRST_YEAR, 1, 1); day.isBefore(end); day = day.plusDays(1)) {
      double wave = Math.cos(2 * Math.PI * (day.getDayOfYear() - WARMEST_DAY) / 365.25);
      spell = 0.7 * spell + 2.2 * between();
      double mean = MEAN + SWING * wave + spell;
      double half = HALF_DAY + between();
      rows.append(String.format(Locale.ROOT, "%s,%.1f,%.1f%n", day, mean - half, mean + half));
    }
    return rows.toString().replace("\r", "");
  }

  /** Between −1.5 and 1.5; a linear congruential generator (Knuth's MMIX constants). */
  private double between() {
    state = state * 6364136223846793005L + 1442695040888963407L;
    return ((state >>> 33) / (double) (1L << 31) - 0.5) * 3;
  }
}
