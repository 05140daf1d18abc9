package slipday.language;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.measure.Dimension;

/** What a placeholder of a shape takes, and how a message names it. */
public enum Kind {
  COUNT("count", "a whole number"),
  NUMBER("number", "a number"),
  COUNT_RANGE("count-range", "a whole number or two, as in `2 to 4`"),
  NUMBER_RANGE("number-range", "a number or two, as in `2 to 4`"),
  LENGTH("length", Dimension.LENGTH),
  LENGTH_RANGE("length-range", Dimension.LENGTH),
  AREA("area", Dimension.AREA),
  MASS("mass", Dimension.MASS),
  MASS_RANGE("mass-range", Dimension.MASS),
  TEMPERATURE("temperature", Dimension.TEMPERATURE),
  TEMPERATURE_RANGE("temperature-range", Dimension.TEMPERATURE),
  WARMTH("warmth", Dimension.TEMPERATURE),
  TIME("time", Dimension.TIME),
  TIME_RANGE("time-range", Dimension.TIME),
  HEAT_OR_TIME_RANGE(
      "heat-or-time-range", "a time or a heat sum, in days, weeks, C-days or F-days"),
  BRIX_RANGE("brix-range", Dimension.SWEETNESS),
  SHARE("share", "a share, as `15 %`, `1 in 10` or `44 of 50`"),
  SHARE_RANGE("share-range", "a share or two, as in `5 to 70 %`"),
  COUNTS("counts", "counts, as in `44 of 50`"),
  LATITUDE("latitude", "a latitude, as in `44.21 N`"),
  LONGITUDE("longitude", "a longitude, as in `72.58 W`"),
  DAY("day", "a day, as in `14 May`"),
  YEAR("year", "a year, as in `2026`"),
  SEASON("season", "a season, as in `2027`, or `2027-28` in the south"),
  TEXT("text", "a text in quotes"),
  ZONE("zone", "a time zone, as in `Europe/Berlin`"),
  AMOUNT("amount", "a number with its unit"),
  PHRASE("phrase", "some words"),
  NAME("name", "a name"),
  BED("bed", "a bed"),
  LINE("line", "a line"),
  LOT("lot", "a seed lot"),
  PLANTING("planting", "a planting"),
  CROP("crop", "a crop"),
  SPECIES("species", "a species"),
  RULE("rule", "a rule"),
  SOURCE("source", "a source");

  private static final Map<String, Kind> BY_WORD =
      Arrays.stream(values()).collect(Collectors.toMap(k -> k.word, k -> k));

  private static final Set<Kind> REFERENCES = EnumSet.range(BED, SOURCE);

  private final String word;
  private final String expected;
  private final Optional<Dimension> dimension;

  Kind(String word, String expected) {
    this.word = word;
    this.expected = expected;
    this.dimension = Optional.empty();
  }

  Kind(String word, Dimension dimension) {
    this.word = word;
    this.expected = dimension.withArticle() + " in " + dimension.fittingUnits();
    this.dimension = Optional.of(dimension);
  }

  static Kind named(String word) {
    Kind kind = BY_WORD.get(word);
    if (kind == null) {
      throw new IllegalArgumentException("no placeholder is called <" + word + ">");
    }
    return kind;
  }

  public String word() {
    return word;
  }

  /** As a message says what it wanted. */
  public String expected() {
    return expected;
  }

  public Optional<Dimension> dimension() {
    return dimension;
  }

  /** Whether it names something declared elsewhere. */
  public boolean isReference() {
    return REFERENCES.contains(this);
  }
}
