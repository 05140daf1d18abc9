package slipday.output;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import slipday.measure.Quantity;
import slipday.output.data.BloomData;
import slipday.output.data.CheckData;
import slipday.output.data.ClimateData;
import slipday.output.data.CropsData;
import slipday.output.data.FindingData;
import slipday.output.data.LabelsData;
import slipday.output.data.LotsData;
import slipday.output.data.PlaceData;
import slipday.output.data.ScheduleData;
import slipday.output.data.StoreData;

/**
 * Results as tables of comma-separated values: a line of headings, dates as 2026-05-14, shares from
 * 0 to 1, nothing where there is none.
 */
public final class Tables {
  private static final Pattern FORMULA = Pattern.compile("\\s*[=+@＝＋－＠-]");
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?(E[+-]?\\d+)?");
  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180.builder().setRecordSeparator("\n").get();

  private Tables() {}

  public static String of(CheckData data) {
    return table(
        List.of(
            "level",
            "rule",
            "file",
            "line",
            "column",
            "subject",
            "message",
            "help",
            "allowed_because"),
        data.findings().stream().map(Tables::finding));
  }

  private static List<Object> finding(FindingData f) {
    return List.of(
        f.level(),
        f.rule(),
        f.place().map(PlaceData::file),
        f.place().map(PlaceData::line),
        f.place().map(PlaceData::column),
        f.subject(),
        f.message(),
        f.help(),
        f.allowedBecause());
  }

  public static String of(ScheduleData data) {
    return table(
        List.of("planting", "crop", "event", "early", "usual", "late", "never", "decided", "model"),
        data.plantings().stream()
            .flatMap(
                p ->
                    p.events().stream()
                        .map(
                            e ->
                                List.of(
                                    p.name(),
                                    p.crop(),
                                    e.event(),
                                    e.early(),
                                    e.usual(),
                                    e.late(),
                                    e.never(),
                                    e.decided(),
                                    p.model()))));
  }

  public static String of(BloomData data) {
    return table(
        List.of(
            "receiver",
            "source",
            "source_kind",
            "source_crop",
            "bitter",
            "same_species",
            "degree_low",
            "degree_high",
            "chance",
            "mornings_few",
            "mornings_usual",
            "mornings_many",
            "distance_m",
            "isolation_home_m",
            "isolation_strict_m",
            "into_seed"),
        data.pollen().stream().map(Tables::reach));
  }

  private static List<Object> reach(BloomData.Reach r) {
    return List.of(
        r.receiver(),
        r.source(),
        r.sourceKind(),
        r.sourceCrop(),
        r.bitter(),
        r.sameSpecies(),
        r.degree().low(),
        r.degree().high(),
        r.chance(),
        r.mornings().map(BloomData.MorningsData::few),
        r.mornings().map(BloomData.MorningsData::usual),
        r.mornings().map(BloomData.MorningsData::many),
        r.distance(),
        r.isolation().low(),
        r.isolation().high(),
        r.intoSeed());
  }

  /** Year by year; the frost dates by which it goes are those of the text and the JSON. */
  public static String of(ClimateData data) {
    return table(
        List.of("year", "last_spring_frost", "first_autumn_frost", "degree_days_c"),
        data.years().stream()
            .map(
                y -> List.of(y.year(), y.lastSpringFrost(), y.firstAutumnFrost(), y.degreeDays())));
  }

  /** The facts asked for, or else every species and crop. */
  public static String of(CropsData data) {
    if (data.entries().isEmpty()) {
      return table(
          List.of("species", "latin", "crop", "also_called"),
          data.species().stream()
              .flatMap(
                  s -> s.crops().stream().map(c -> List.of(s.name(), s.latin(), c, words(s, c)))));
    }
    return table(
        List.of("name", "fact", "words", "owner", "basis", "source", "file", "line"),
        data.entries().stream().flatMap(e -> e.facts().stream().map(f -> fact(e.name(), f))));
  }

  /** The words that may stand for a crop's name. */
  private static String words(CropsData.SpeciesData species, String crop) {
    return species.otherNames().stream()
        .filter(n -> n.crop().equals(crop) && n.alone())
        .map(CropsData.OtherNameData::name)
        .collect(Collectors.joining(" "));
  }

  private static List<Object> fact(String name, CropsData.FactData f) {
    return List.of(
        name,
        f.clause(),
        f.words(),
        f.owner(),
        f.basis(),
        f.source(),
        f.place().file(),
        f.place().line());
  }

  public static String of(LotsData data) {
    return table(
        List.of(
            "lot",
            "line",
            "crop",
            "generation",
            "cross",
            "parents",
            "seeds_left",
            "at_most",
            "age_years",
            "tested_seedlings",
            "tested_seeds",
            "tested_year",
            "germination_low",
            "germination_usual",
            "germination_high",
            "grow_on_by",
            "plants_wanted",
            "seeds_to_sow",
            "remnant",
            "keep_back",
            "may_be_bitter",
            "diseases"),
        data.lots().stream().map(Tables::lot));
  }

  private static List<Object> lot(LotsData.LotData l) {
    return List.of(
        l.name(),
        l.line(),
        l.crop(),
        l.generation(),
        l.cross(),
        String.join("; ", l.parents()),
        l.seedsLeft(),
        l.atMost(),
        l.age(),
        l.test().map(LotsData.TestData::seedlings),
        l.test().map(LotsData.TestData::seeds),
        l.test().flatMap(LotsData.TestData::year),
        l.germination().map(LotsData.GerminationData::low),
        l.germination().map(LotsData.GerminationData::usual),
        l.germination().map(LotsData.GerminationData::high),
        l.growOnBy(),
        l.plantsWanted(),
        l.seedsToSow(),
        l.remnant(),
        l.keepBack(),
        l.mayBeBitter(),
        String.join("; ", l.diseases()));
  }

  public static String of(LabelsData data) {
    return table(
        List.of(
            "kind",
            "name",
            "code",
            "line",
            "line_title",
            "planting",
            "cross",
            "date",
            "generation",
            "seeds",
            "harvested",
            "may_be_bitter",
            "doubtful"),
        data.labels().stream()
            .map(
                l ->
                    List.of(
                        l.kind(),
                        l.name(),
                        l.code(),
                        l.line(),
                        l.lineTitle(),
                        l.planting(),
                        l.cross(),
                        l.date(),
                        l.generation(),
                        l.seeds(),
                        l.harvested(),
                        l.mayBeBitter(),
                        l.doubtful())));
  }

  /** Fruit in store; how lines keep is in the text and the JSON. */
  public static String of(StoreData data) {
    return table(
        List.of(
            "fruit",
            "line",
            "since",
            "days",
            "where",
            "looked",
            "state",
            "first_kg",
            "last_kg",
            "best",
            "eat_by"),
        data.fruits().stream()
            .map(
                f ->
                    List.of(
                        f.name(),
                        f.line(),
                        f.since(),
                        f.days(),
                        f.where(),
                        f.looked(),
                        f.state(),
                        f.firstKilograms(),
                        f.lastKilograms(),
                        f.best(),
                        f.eatBy())));
  }

  static String table(List<String> headings, Stream<? extends List<?>> rows) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
      printer.printRecord(headings);
      for (List<?> row : rows.toList()) {
        printer.printRecord(row.stream().map(Tables::cell).toList());
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return out.toString();
  }

  private static String cell(Object value) {
    if (value instanceof Optional<?> maybe) {
      return maybe.map(Tables::cell).orElse("");
    }
    if (value instanceof Double number) {
      return Quantity.plain(number);
    }
    return value instanceof String text ? text(text) : value.toString();
  }

  /** Words of the plan's; what a spreadsheet would take for a formula gets an apostrophe before. */
  private static String text(String words) {
    String clean = Lines.clean(words);
    return FORMULA.matcher(clean).lookingAt() && !NUMBER.matcher(clean).matches()
        ? "'" + clean
        : clean;
  }
}
