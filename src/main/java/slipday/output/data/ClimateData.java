package slipday.output.data;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import slipday.climate.Climate;
import slipday.climate.ClimateFigures;
import slipday.climate.DegreeDayKind;
import slipday.climate.FrostLaw;
import slipday.climate.FrostSide;
import slipday.climate.FrostThreshold;
import slipday.climate.RecordedFrost;
import slipday.climate.SunTimes;
import slipday.climate.WeatherRecord;
import slipday.climate.WeatherYears;
import slipday.garden.Garden;
import slipday.garden.Site;
import slipday.season.Season;

/** The climate of a site and what it is from. */
public record ClimateData(
    Head slipday,
    String plan,
    SeasonData season,
    SiteData place,
    String timeZone,
    double warmerThanStation,
    Optional<RecordData> record,
    List<FrostData> frost,
    Optional<HeatData> heat,
    List<YearData> years,
    List<MonthData> soil,
    double soilWidth,
    SunData sun) {

  /** Degrees north and east, metres above the sea. */
  public record SiteData(double latitude, double longitude, Optional<Double> height) {
    static SiteData of(Site.Place place) {
      return new SiteData(place.latitude(), place.longitude(), place.height());
    }
  }

  /**
   * A weather record.
   *
   * @param leftOut why seasons are left out, a sentence each
   * @param filledDays missing days that are filled in for walking plantings through the years
   * @param flagged values left out because the station's own checks flagged them
   */
  public record RecordData(
      String file,
      String layout,
      LocalDate first,
      LocalDate last,
      int seasonsUsed,
      List<String> leftOut,
      int missingDays,
      List<GapData> gaps,
      int filledDays,
      int flagged) {
    static RecordData of(WeatherYears years) {
      WeatherRecord r = years.record();
      return new RecordData(
          r.name(),
          r.layout(),
          r.first(),
          r.last(),
          years.usable().size(),
          years.leftOut().stream().flatMap(y -> y.leftOut().stream()).toList(),
          r.missingDays(),
          r.gaps().stream().map(g -> new GapData(g.first(), g.last(), g.days())).toList(),
          years.filledDays(),
          r.droppedByQuality());
    }
  }

  /** Days in a row without a low or without a high. */
  public record GapData(LocalDate first, LocalDate last, int days) {}

  /**
   * The last frost of spring or the first of autumn. One and nine in ten are the shares of years
   * with a frost later (spring) or earlier (autumn) than the day.
   *
   * @param side {@code spring} or {@code autumn}
   * @param threshold {@code ground}, {@code tender} or {@code hard}
   * @param celsius the low at screen height at or below which it is such a frost
   * @param from {@code record}, or {@code plan} where the gardener states it
   * @param counted whether the chances are counted over the years, not read off a curve
   * @param normalUsual the same from the normal curve through the dates; none with too few
   * @param without the share of years without such a frost
   */
  public record FrostData(
      String side,
      String threshold,
      String words,
      double celsius,
      String from,
      boolean counted,
      Optional<LocalDate> nineInTen,
      Optional<LocalDate> usual,
      Optional<LocalDate> oneInTen,
      Optional<LocalDate> normalUsual,
      Optional<LocalDate> normalOneInTen,
      double without) {
    static FrostData of(FrostLaw law) {
      Optional<RecordedFrost> recorded =
          law instanceof RecordedFrost counted ? Optional.of(counted) : Optional.empty();
      Optional<RecordedFrost> fitted = recorded.filter(r -> r.normal().isPresent());
      double beyond = law.side() == FrostSide.SPRING ? 0.9 : 0.1;
      return new FrostData(
          Ids.of(law.side()),
          Ids.of(law.threshold()),
          law.threshold().word(),
          law.threshold().celsius(),
          recorded.isPresent() ? "record" : "plan",
          recorded.map(RecordedFrost::isCounted).orElse(false),
          day(law, law.slotAtRisk(0.9)),
          law.chanceNone() < 1 ? day(law, OptionalDouble.of(law.median())) : Optional.empty(),
          day(law, law.slotAtRisk(0.1)),
          fitted.flatMap(r -> day(r, OptionalDouble.of(r.normalQuantile(0.5)))),
          fitted.flatMap(r -> day(r, OptionalDouble.of(r.normalQuantile(beyond)))),
          law.chanceNone());
    }

    private static Optional<LocalDate> day(FrostLaw law, OptionalDouble slot) {
      return slot.isPresent()
          ? Optional.of(law.axis().dateOf((int) Math.round(slot.getAsDouble())))
          : Optional.empty();
    }
  }

  /** What the degree-days of the years are sums of; the base in °C. */
  public record HeatData(double base, String method, String from, String to) {
    static HeatData of(DegreeDayKind<?> kind) {
      return new HeatData(
          kind.base(), kind.method().words(), kind.span().start(), kind.span().end());
    }
  }

  /**
   * One year: its last and first frost (0 °C), none where there was none.
   *
   * @param degreeDays °C-days
   */
  public record YearData(
      String year,
      Optional<LocalDate> lastSpringFrost,
      Optional<LocalDate> firstAutumnFrost,
      double degreeDays) {}

  /** The mean soil temperature of a month at sowing depth, an estimate. */
  public record MonthData(int month, double celsius) {}

  /** The sun of the longest day, in the garden's clock time; none where the sun does not. */
  public record SunData(
      LocalDate date,
      Optional<String> dawn,
      Optional<String> sunrise,
      String noon,
      Optional<String> sunset,
      Optional<String> dusk,
      long dayMinutes) {
    static SunData of(SunTimes sun) {
      return new SunData(
          sun.date(),
          sun.dawn().map(SunData::clock),
          sun.sunrise().map(SunData::clock),
          clock(sun.noon()),
          sun.sunset().map(SunData::clock),
          sun.dusk().map(SunData::clock),
          sun.dayLength().toMinutes());
    }

    private static String clock(ZonedDateTime time) {
      LocalTime t = time.plusSeconds(30).toLocalTime();
      return String.format(Locale.ROOT, "%02d:%02d", t.getHour(), t.getMinute());
    }
  }

  public static ClimateData of(String plan, Season season) {
    return of(plan, season.garden(), season.climate());
  }

  private static ClimateData of(String plan, Garden garden, Climate climate) {
    ClimateFigures figures = new ClimateFigures(climate);
    Stream<FrostLaw> laws =
        Stream.of(FrostSide.values())
            .flatMap(
                side ->
                    Stream.of(FrostThreshold.values())
                        .flatMap(threshold -> climate.frost(side, threshold).stream()));
    return new ClimateData(
        Head.of("climate"),
        plan,
        SeasonData.of(garden, climate),
        SiteData.of(garden.site().place().value()),
        climate.zone().getId(),
        garden.site().warmerThanStation(),
        climate.years().map(RecordData::of),
        laws.map(FrostData::of).toList(),
        climate.years().map(y -> HeatData.of(figures.heatKind())),
        figures.years().stream()
            .map(
                y ->
                    new YearData(
                        y.season(), y.lastSpring(), y.firstAutumn(), y.heat().celsiusDays()))
            .toList(),
        figures.soil().entrySet().stream()
            .map(e -> new MonthData(e.getKey().getValue(), e.getValue()))
            .toList(),
        climate.soil().width(),
        SunData.of(figures.midsummerSun()));
  }
}
