package slipday.climate;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.measure.Units;

/** Everything a season asks of its site: weather years, frost, soil and sun, with their reasons. */
public final class Climate {
  private static final double COOL_JULY = 20;
  private static final double HOT_JULY = 25;

  private final SiteClimateInput input;
  private final Optional<WeatherYears> years;
  private final Map<FrostThreshold, FrostLaw> spring = new EnumMap<>(FrostThreshold.class);
  private final Map<FrostThreshold, FrostLaw> autumn = new EnumMap<>(FrostThreshold.class);
  private final SoilTemperature soil;
  private final ReadSoil readSoil;
  private final IdentityHashMap<WeatherYear, double[]> soilOfYears = new IdentityHashMap<>();
  private final Optional<Reason> weatherReason;
  private final List<Reason> reasons;

  private Climate(SiteClimateInput input) {
    this.input = input;
    this.years = input.record().map(r -> WeatherYears.of(atTheGarden(r), hemisphere()));
    years.ifPresent(this::findFrosts);
    input.lastFrost().ifPresent(law -> spring.put(law.threshold(), law));
    input.firstFrost().ifPresent(law -> autumn.put(law.threshold(), law));
    this.soil =
        years
            .map(y -> SoilTemperature.read(input.soilReadings(), y.meanLows(), y.meanHighs()))
            .orElseGet(SoilTemperature::unread);
    this.readSoil = new ReadSoil(input.soilReadings(), axis());
    years.stream()
        .flatMap(y -> y.usable().stream())
        .forEach(y -> soilOfYears.put(y, soil.estimate(y.lows(), y.highs())));
    this.weatherReason = years.map(Climate::weatherReason);
    this.reasons = reasonsOf();
  }

  /** The same but for the soil, of which the gardener read nothing. */
  private Climate(Climate read) {
    this.input = read.input.unread();
    this.years = read.years;
    this.spring.putAll(read.spring);
    this.autumn.putAll(read.autumn);
    this.soil = SoilTemperature.unread();
    this.readSoil = new ReadSoil(List.of(), axis());
    usableYears().forEach(y -> soilOfYears.put(y, soil.estimate(y.lows(), y.highs())));
    this.weatherReason = read.weatherReason;
    this.reasons = reasonsOf();
  }

  public static Climate of(SiteClimateInput input) {
    return new Climate(input);
  }

  private Hemisphere hemisphere() {
    return input.place().hemisphere();
  }

  private WeatherRecord atTheGarden(WeatherRecord station) {
    double all = input.offset().map(Reasoned::value).orElse(0.0);
    double nights = input.nightOffset().map(Reasoned::value).orElse(0.0);
    return all == 0 && nights == 0 ? station : station.shifted(all + nights, all);
  }

  private void findFrosts(WeatherYears weather) {
    for (FrostThreshold threshold : FrostThreshold.values()) {
      FrostDates.law(weather, axis(), FrostSide.SPRING, threshold, input.units())
          .ifPresent(law -> spring.put(threshold, law));
      FrostDates.law(weather, axis(), FrostSide.AUTUMN, threshold, input.units())
          .ifPresent(law -> autumn.put(threshold, law));
    }
  }

  public SitePlace place() {
    return input.place();
  }

  public ZoneId zone() {
    return input.zone();
  }

  /** The units its gardener is answered in. */
  public Units units() {
    return input.units();
  }

  /** The days of the season planned. */
  public SeasonAxis axis() {
    return input.axis();
  }

  /** The seasons of the record, at the garden's own offset; empty without a record. */
  public Optional<WeatherYears> years() {
    return years;
  }

  /** The seasons to walk a planting through; none without a record. */
  public List<WeatherYear> usableYears() {
    return years.map(WeatherYears::usable).orElse(List.of());
  }

  /**
   * The frost a season lies behind or before. What the gardener states wins over the record; it
   * speaks of {@link FrostThreshold#TENDER} only. Empty where neither says anything.
   */
  public Optional<FrostLaw> frost(FrostSide side, FrostThreshold threshold) {
    return Optional.ofNullable((side == FrostSide.SPRING ? spring : autumn).get(threshold));
  }

  public Optional<FrostLaw> lastSpringFrost() {
    return frost(FrostSide.SPRING, FrostThreshold.TENDER);
  }

  public Optional<FrostLaw> firstAutumnFrost() {
    return frost(FrostSide.AUTUMN, FrostThreshold.TENDER);
  }

  public SoilTemperature soil() {
    return soil;
  }

  /** The soil as the gardener read it, for a site without weather years. */
  public ReadSoil readSoil() {
    return readSoil;
  }

  /** The gardener's readings, of the season planned or of any before. */
  public List<SoilReading> soilReadings() {
    return input.soilReadings();
  }

  /** What is known without the gardener's own readings of the soil. */
  public Climate unread() {
    return new Climate(this);
  }

  /**
   * °C that the soil of a day is at by the air alone, in the mean of the years, if there are any.
   */
  public OptionalDouble soilByAir(int slot) {
    if (usableYears().isEmpty()) {
      return OptionalDouble.empty();
    }
    WeatherYears weather = years.orElseThrow();
    double at = SoilTemperature.ofAir(weather.meanLows(), weather.meanHighs(), slot);
    return Double.isNaN(at) ? OptionalDouble.empty() : OptionalDouble.of(at);
  }

  /** °C that the garden is told to be warmer than a station. */
  public Optional<Reasoned<Double>> offset() {
    return input.offset();
  }

  /**
   * Soil temperature by slot in a usable year, °C, without any mulch. Shared: not to be changed.
   *
   * @throws IllegalArgumentException for a year that is not one of {@link #usableYears}
   */
  public double[] soil(WeatherYear year) {
    double[] found = soilOfYears.get(year);
    if (found == null) {
      throw new IllegalArgumentException(year.label() + " is not a usable year of this climate");
    }
    return found;
  }

  /** The sun of a local day at the site. */
  public SunTimes sun(LocalDate date) {
    return SunTimes.at(place(), date, zone());
  }

  /** Where all this is from: record, seasons used and left out, offset, frosts. */
  public List<Reason> reasons() {
    return reasons;
  }

  /** What a walk through the season rests on: the record and its offset, or the stated frosts. */
  public List<Reason> walkReasons() {
    List<Reason> all = new ArrayList<>();
    if (years.isEmpty()) {
      lastSpringFrost().ifPresent(law -> all.add(law.reason()));
      firstAutumnFrost().ifPresent(law -> all.add(law.reason()));
      if (readSoil.isKnown()) {
        all.add(readSoil.reason(input.units()));
      }
      all.add(summers());
      return all;
    }
    tellRecord(all);
    all.add(soil.reason(input.units()));
    return all;
  }

  /** How wide of the mark calendar days are; the test of open data measures it. */
  private Reason summers() {
    return Reason.method(
        "Calendar days take every summer for a usual one: where July is cool ("
            + units().temperature(COOL_JULY)
            + ") fruit comes up to two weeks later, in some years three; where it is hot ("
            + units().temperature(HOT_JULY)
            + ") one to four weeks sooner.");
  }

  private void tellRecord(List<Reason> all) {
    weatherReason.ifPresent(all::add);
    input.offset().ifPresent(o -> all.add(offsetReason(o, units(), "day and night")));
    input.nightOffset().ifPresent(o -> all.add(offsetReason(o, units(), "at night")));
  }

  private List<Reason> reasonsOf() {
    List<Reason> all = new ArrayList<>();
    tellRecord(all);
    spring.values().forEach(law -> all.add(law.reason()));
    autumn.values().forEach(law -> all.add(law.reason()));
    if (years.isPresent()) {
      all.add(soil.reason(input.units()));
    }
    return List.copyOf(all);
  }

  private static Reason weatherReason(WeatherYears weather) {
    WeatherRecord record = weather.record();
    List<Reason> from = new ArrayList<>();
    weather.leftOut().forEach(y -> y.leftOut().map(Reason::weather).ifPresent(from::add));
    if (record.missingDays() > 0) {
      String gaps =
          "Days missing from "
              + record.first()
              + " to "
              + record.last()
              + ": "
              + record.missingDays()
              + ", in "
              + record.gaps().size()
              + " gaps.";
      from.add(Reason.weather(gaps));
    }
    if (weather.filledDays() > 0) {
      from.add(
          Reason.weather(
              "Missing days filled in, to walk through the seasons used: "
                  + weather.filledDays()
                  + ". Frost dates are of measured days only."));
    }
    if (record.droppedByQuality() > 0) {
      from.add(
          Reason.weather(
              "Values left out because the station's own checks flagged them: "
                  + record.droppedByQuality()
                  + "."));
    }
    String says =
        "`"
            + record.name()
            + "` is "
            + record.layout()
            + ": "
            + weather.usable().size()
            + " seasons are used ("
            + WeatherYears.span(weather.usable())
            + ") and "
            + weather.leftOut().size()
            + " left out.";
    return new Reason(says, Basis.WEATHER, Optional.empty(), from);
  }

  private static Reason offsetReason(Reasoned<Double> offset, Units units, String when) {
    double by = offset.value();
    return Reason.derived(
        "The garden is taken to be "
            + units.difference(Math.abs(by))
            + (by < 0 ? " colder" : " warmer")
            + " than the station "
            + when
            + ".",
        offset.reason());
  }
}
