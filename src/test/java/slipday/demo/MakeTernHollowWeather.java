package slipday.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Makes the invented weather record of the example garden, the same bytes every time. Run its
 * {@code main} in the project's folder to write the file anew.
 *
 * <p>With c the cosine of the day's distance from 22 July in the year and c₂ that of twice it:
 *
 * <pre>
 * low  = 0.1 + 13.3 c + 0.8 c₂ + year + 0.90 s air + 2.4 night,
 *        in the warm half (c above 0.5) no more than a quarter as far below 13 (c - 0.6) - 2.2
 * high = 13.0 + 14.4 c + year + 1.05 s air + 1.6 day, and at least low + 1
 * s    = 3.9 − c                 the air's spread, wider in winter
 * year = 0.5 z                   once a year
 * air, night                     z smoothed from day to day, correlation 0.72 and 0.35, spread 1
 * day  = z
 * </pre>
 *
 * <p>z is the sum of twelve uniform numbers less six, which is near a standard normal and the same
 * on every Java. Cosines and roots are {@link StrictMath}'s. Values are rounded to 0.1 °C. The days
 * of {@link #GAPS} are left empty.
 */
public final class MakeTernHollowWeather {
  /** Where the record lies. */
  public static final Path FILE = Path.of("plans/tern-hollow/weather/tern-hollow.csv");

  private static final long SEED = 7258;
  private static final LocalDate FIRST = LocalDate.of(1996, 1, 1);
  private static final LocalDate LAST = LocalDate.of(2025, 12, 31);
  private static final int PEAK_DAY_OF_YEAR = 203;
  private static final double AIR_MEMORY = 0.72;
  private static final double NIGHT_MEMORY = 0.35;

  /** Days nobody read the thermometer; that of 2008 costs its season. */
  private static final List<Gap> GAPS =
      List.of(
          new Gap("1999-01-06", 4),
          new Gap("2003-08-12", 3),
          new Gap("2008-05-02", 16),
          new Gap("2012-02-28", 2),
          new Gap("2017-07-02", 1),
          new Gap("2021-12-24", 12));

  private final SplittableRandom random = new SplittableRandom(SEED);
  private double year;
  private double air;
  private double night;

  private MakeTernHollowWeather() {}

  private record Gap(LocalDate first, int days) {
    Gap(String first, int days) {
      this(LocalDate.parse(first), days);
    }

    boolean holds(LocalDate date) {
      return !date.isBefore(first) && date.isBefore(first.plusDays(days));
    }
  }

  /** The whole file. */
  public static String text() {
    return new MakeTernHollowWeather().make();
  }

  public static void main(String[] args) throws IOException {
    Files.createDirectories(FILE.getParent());
    Files.writeString(FILE, text());
  }

  private String make() {
    StringBuilder text = new StringBuilder();
    text.append("# Invented weather of an invented place, Tern Hollow, 44.21 N, 310 m.\n");
    text.append("# Made by a program, not measured anywhere: see README.md beside this file.\n");
    text.append("date,low C,high C\n");
    FIRST.datesUntil(LAST.plusDays(1)).forEach(date -> add(date, text));
    return text.toString();
  }

  private void add(LocalDate date, StringBuilder text) {
    if (date.getDayOfYear() == 1) {
      year = 0.5 * normal();
    }
    air = smoothed(air, AIR_MEMORY);
    night = smoothed(night, NIGHT_MEMORY);
    double day = normal();
    double angle = 2 * StrictMath.PI * (date.getDayOfYear() - PEAK_DAY_OF_YEAR) / 365.25;
    double c = StrictMath.cos(angle);
    double spread = 3.9 - c;
    double low =
        0.1 + 13.3 * c + 0.8 * StrictMath.cos(2 * angle) + year + 0.9 * spread * air + 2.4 * night;
    low = noSummerFrost(low, c);
    double high = 13.0 + 14.4 * c + year + 1.05 * spread * air + 1.6 * day;
    text.append(date);
    if (GAPS.stream().anyMatch(g -> g.holds(date))) {
      text.append(",,\n");
    } else {
      text.append(String.format(Locale.ROOT, ",%.1f,%.1f\n", low, Math.max(high, low + 1)));
    }
  }

  /** A summer night as cold as a bell's tail makes it would be out of any hill garden's memory. */
  private static double noSummerFrost(double low, double c) {
    double usualColdest = 13 * (c - 0.6) - 2.2;
    return c > 0.5 && low < usualColdest ? usualColdest + 0.25 * (low - usualColdest) : low;
  }

  private double smoothed(double before, double memory) {
    return memory * before + StrictMath.sqrt(1 - memory * memory) * normal();
  }

  private double normal() {
    double sum = 0;
    for (int i = 0; i < 12; i++) {
      sum += (random.nextLong() >>> 11) * 0x1.0p-53;
    }
    return sum - 6;
  }
}
