package slipday.language;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.measure.Dimension;
import slipday.measure.Listed;
import slipday.measure.Unit;

/** What a placeholder of a shape takes, and how a message names it. */
public enum Kind {
  COUNT("count", "a whole number"),
  NUMBER("number", "a number"),
  COUNT_RANGE("count-range", "a whole number, or two such as `2 to 4`"),
  NUMBER_RANGE("number-range", "a number, or two such as `2 to 4`"),
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
      "heat-or-time-range",
      "a time or a heat sum in days, weeks, C-days or F-days",
      Dimension.TIME,
      Dimension.DEGREE_DAYS),
  BRIX("brix", Dimension.SWEETNESS),
  BRIX_RANGE("brix-range", Dimension.SWEETNESS),
  SHARE("share", "a share such as `15 %` or `1 in 10`"),
  SHARE_RANGE("share-range", "a share such as `15 %` or `5 to 70 %`"),
  COUNTS("counts", "counts such as `44 of 50`"),
  SCORE("score", "points such as `8 of 10`"),
  LATITUDE("latitude", "a latitude such as `44.21 N`"),
  LONGITUDE("longitude", "a longitude such as `72.58 W`"),
  DAY("day", "a day such as `14 May`"),
  YEAR("year", "a year such as `2025`"),
  SEASON("season", "a season such as `2026` (in the south `2026-27`)"),
  TEXT("text", "a text in quotes"),
  ZONE("zone", "a time zone such as `Europe/Berlin`"),
  AMOUNT("amount", "a number with its unit"),
  PHRASE("phrase", "some words"),
  GENERATION("generation", "a generation such as `F2`, `BC1F2`, `F2 sib 1` or `OP 2`"),
  NAME("name", "a name"),
  TAG("tag", "a tag such as `3A`"),
  BED("bed", "a bed"),
  LINE("line", "a line"),
  LOT("lot", "a seed lot"),
  PLANTING("planting", "a planting"),
  CROP("crop", "a crop"),
  SPECIES("species", "a species"),
  RULE("rule", "a rule");

  private static final Map<String, Kind> BY_WORD =
      Arrays.stream(values()).collect(Collectors.toMap(k -> k.word, k -> k));

  private static final Set<Kind> REFERENCES = EnumSet.range(BED, RULE);

  private final String word;
  private final String expected;
  private final Set<Dimension> dimensions;

  Kind(String word, String expected, Dimension... dimensions) {
    this.word = word;
    this.expected = expected;
    this.dimensions = Set.of(dimensions);
  }

  Kind(String word, Dimension dimension) {
    this(word, dimension.withArticle() + " in " + dimension.fittingUnits(), dimension);
  }

  static Kind named(String word) {
    Kind kind = BY_WORD.get(word);
    if (kind == null) {
      throw new IllegalArgumentException("no placeholder is called <" + word + ">");
    }
    return kind;
  }

  /** The kind that a message names so. */
  static Optional<Kind> expectedAs(String expected) {
    return Arrays.stream(values()).filter(k -> k.expected.equals(expected)).findFirst();
  }

  public String word() {
    return word;
  }

  /** As a message says what it wanted. */
  public String expected() {
    return expected;
  }

  /** What its unit measures, where only one thing fits. */
  public Optional<Dimension> dimension() {
    return dimensions.size() == 1 ? Optional.of(dimensions.iterator().next()) : Optional.empty();
  }

  /** Whether a unit may stand after its number. */
  boolean takes(Unit unit) {
    return this == AMOUNT || dimensions.contains(unit.dimension());
  }

  /** Every word of every unit it takes. */
  public List<String> unitWords() {
    return Arrays.stream(Unit.values())
        .filter(this::takes)
        .map(Unit::dimension)
        .distinct()
        .flatMap(d -> Unit.words(d).stream())
        .toList();
  }

  /** The units it takes, as a message lists them. */
  String fittingUnits() {
    return switch (this) {
      case AMOUNT -> String.join(", ", usualUnits()) + " or another unit";
      case HEAT_OR_TIME_RANGE -> Listed.either(usualUnits());
      default -> dimension().map(Dimension::fittingUnits).orElse("a unit");
    };
  }

  /** The units most often meant where one is missing. */
  List<String> usualUnits() {
    return switch (this) {
      case AMOUNT -> List.of("kg", "m", "C", "days", "brix");
      case HEAT_OR_TIME_RANGE -> List.of("days", "weeks", "C-days", "F-days");
      default -> dimension().map(Dimension::usualUnits).orElse(List.of());
    };
  }

  /** Whether it names something declared elsewhere. */
  public boolean isReference() {
    return REFERENCES.contains(this);
  }
}
