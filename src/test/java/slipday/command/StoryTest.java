package slipday.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.demo.FollowingYear;
import slipday.demo.GeneDrop;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.garden.Bed;
import slipday.garden.CropFacts;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.testing.Golden;

/** Tern Hollow from its recorded year on: plan, record, lots, next plan, and that again twice. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StoryTest {
  private static final Path GOLDEN = Path.of("src/test/resources/golden/tern-hollow");
  private static final int FIRST = 2026;
  private static final int LAST = 2029;

  private Path folder = Path.of("");
  private final Map<Integer, String> plans = new TreeMap<>();
  private final Map<Integer, Checked> seasons = new TreeMap<>();

  /** The next plans as they were written, before anything was recorded of their seasons. */
  private final Map<Integer, Checked> unrecorded = new TreeMap<>();

  @BeforeAll
  void threeSeasons(@TempDir Path temp) throws IOException {
    folder = temp;
    copy(Path.of("plans/tern-hollow"), folder);
    plans.put(FIRST, "recorded.season");
    for (int year = FIRST; year < LAST; year++) {
      if (year > FIRST) {
        Garden garden = check(plans.get(year), year).garden().orElseThrow();
        String record = FollowingYear.text(garden, year);
        Files.writeString(folder.resolve("record/all-" + year + ".season"), record);
      }
      seasons.put(year, check(plans.get(year), year));
      String next = (year + 1) + ".season";
      Run run = run(year, "next-season", plans.get(year), "-o", next);
      assertThat(run.err()).isEmpty();
      assertThat(run.exit()).isZero();
      plans.put(year + 1, next);
      unrecorded.put(year + 1, check(next, year));
    }
    seasons.put(LAST, check(plans.get(LAST), LAST));
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path path : all.filter(Files::isRegularFile).toList()) {
        Path target = to.resolve(from.relativize(path).toString());
        Files.createDirectories(target.getParent());
        Files.copy(path, target);
      }
    }
  }

  private Checked check(String plan, int year) {
    return new Pipeline(FileTexts.onDisk(), false, LocalDate.of(year, 12, 31))
        .check(folder.resolve(plan), plan);
  }

  private Run run(int year, String... args) {
    long end = LocalDate.of(year, 12, 31).toEpochSecond(LocalTime.NOON, ZoneOffset.UTC);
    Map<String, String> env = Map.of("SOURCE_DATE_EPOCH", Long.toString(end));
    return Run.in(folder, new byte[0], env, false, args);
  }

  private Garden garden(int year) {
    return seasons.get(year).garden().orElseThrow();
  }

  private String text(int year) throws IOException {
    return Files.readString(folder.resolve(plans.get(year)));
  }

  @Test
  void theNextPlansAreTheseTexts() throws IOException {
    Golden.check(GOLDEN.resolve("next-2027.season"), text(2027));
    Golden.check(GOLDEN.resolve("next-2028.season"), text(2028));
  }

  @Test
  void theNextPlansAreLaidOut() {
    for (int year = FIRST + 1; year <= LAST; year++) {
      assertThat(run(year, "format", "--check", plans.get(year)).exit()).isZero();
    }
  }

  /** What the checks hold against a plan before anything is recorded of it, its comments say. */
  @Test
  void whatIsOpenStandsInTheCommentsAndNothingElse() throws IOException {
    for (int year = FIRST + 1; year <= LAST; year++) {
      tellsItself(year);
    }
  }

  private void tellsItself(int year) throws IOException {
    List<Finding> open =
        unrecorded.get(year).findings().stream()
            .filter(f -> f.level() != Level.NOTE && f.allowed().isEmpty())
            .toList();
    assertThat(open).noneMatch(f -> f.level() == Level.ERROR);
    String comments = text(year).replaceAll("\n# > (?!To decide)", " ");
    List<String> told = comments.lines().filter(l -> l.startsWith("# > To decide: ")).toList();
    assertThat(told).hasSameSizeAs(open);
    open.forEach(f -> assertThat(told).anyMatch(t -> t.contains(f.message())));
  }

  @Test
  void linesGoOnByAGenerationAYear() {
    assertThat(generations(2027, "tern-amber", true)).containsOnly("F4");
    assertThat(generations(2028, "tern-amber", true)).containsOnly("F5");
    assertThat(generations(2029, "tern-amber", true)).containsOnly("F6");
    assertThat(generations(2027, "tern-amber", false)).containsExactly("F2");
    assertThat(generations(2027, "ropewalk-amber", true)).containsExactly("F1, segregating");
    assertThat(generations(2028, "ropewalk-amber", true)).allMatch(g -> g.startsWith("F2"));
    assertThat(garden(2028).plantings())
        .extracting(Planting::name)
        .contains("ropewalk-2027", "sandbank-2027", "oak-stair-2027", "kettle-green-2027");
    assertThat(garden(2027).plantings()).noneMatch(p -> p.line().name().equals("swap-table"));
  }

  private List<String> generations(int year, String line, boolean saved) {
    Map<String, String> byLot = new HashMap<>();
    lots(year).forEach(l -> byLot.put(l.get("name").asText(), l.get("generation").asText()));
    return garden(year).plantings().stream()
        .filter(p -> p.line().name().equals(line) && p.seedSaved() == saved)
        .map(p -> byLot.get(p.lot().name()))
        .toList();
  }

  private List<JsonNode> lots(int year) {
    try {
      List<JsonNode> all = new ArrayList<>();
      String json = run(year, "lots", plans.get(year), "--format", "json").out();
      new ObjectMapper().readTree(json).get("lots").forEach(all::add);
      return all;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Every seed is followed through the lines of the record by a reckoning of the test's own. */
  @Test
  void seedsAreCountedFromYearToYear() throws IOException {
    SeedLedger ledger = new SeedLedger();
    ledger.declared(Files.readString(folder.resolve("plan.season")));
    ledger.declared(Files.readString(folder.resolve("recorded.season")));
    ledger.recorded(folder.resolve("record"), LAST - 1);
    Map<String, Integer> left = new HashMap<>();
    lots(LAST).forEach(l -> left.put(l.get("name").asText(), l.get("seedsLeft").asInt()));
    assertThat(left).hasSizeGreaterThan(40).containsExactlyInAnyOrderEntriesOf(ledger.left());
  }

  /** The check lasts while its seed does; then the generation after it takes its place. */
  @Test
  void aCheckStandsBesideTheNewerGeneration() {
    assertThat(checks(2027)).containsExactly("tern-amber-f2");
    assertThat(checks(2028)).hasSize(1).allMatch(n -> n.startsWith("tern-amber-f4"));
    assertThat(beds(2027, "tern-amber")).hasSize(1);
    assertThat(beds(2028, "tern-amber")).hasSize(1);
  }

  private List<String> checks(int year) {
    return garden(year).plantings().stream()
        .filter(p -> p.line().name().equals("tern-amber") && !p.seedSaved())
        .map(Planting::name)
        .toList();
  }

  private List<String> beds(int year, String line) {
    return garden(year).plantings().stream()
        .filter(p -> p.line().name().equals(line))
        .map(p -> p.bed().orElseThrow().name())
        .distinct()
        .toList();
  }

  @Test
  void bedsRememberAndMoveOn() {
    for (int year = FIRST + 1; year <= LAST; year++) {
      Garden now = garden(year);
      Garden before = garden(year - 1);
      for (Planting p : before.plantings()) {
        Bed bed = bed(now, p.bed().orElseThrow().name());
        assertThat(bed.grew())
            .anyMatch(
                g ->
                    g.value().year() == before.season().year()
                        && g.value().crop().name().equals(p.crop().name()));
      }
      assertThat(tooSoon(now, now.plantings())).isLessThan(stayed(now));
    }
  }

  private static Bed bed(Garden garden, String name) {
    return garden.beds().stream().filter(b -> b.name().equals(name)).findFirst().orElseThrow();
  }

  /** Plants that would come back too soon if every line stood where it stood the year before. */
  private long stayed(Garden now) {
    Map<String, String> stood = new HashMap<>();
    garden(now.season().year() - 1)
        .plantings()
        .forEach(p -> stood.putIfAbsent(p.line().name(), p.bed().orElseThrow().name()));
    return now.plantings().stream()
        .filter(
            p -> {
              String bed = stood.getOrDefault(p.line().name(), p.bed().orElseThrow().name());
              return comesTooSoon(now, p, bed(now, bed));
            })
        .mapToInt(p -> p.plants().orElseThrow().value())
        .sum();
  }

  private static long tooSoon(Garden garden, List<Planting> plantings) {
    return plantings.stream()
        .filter(p -> comesTooSoon(garden, p, p.bed().orElseThrow()))
        .mapToInt(p -> p.plants().orElseThrow().value())
        .sum();
  }

  private static boolean comesTooSoon(Garden garden, Planting planting, Bed bed) {
    Range years = planting.facts().get(CropFacts.ROTATION).orElseThrow().value();
    String family = planting.facts().get(CropFacts.FAMILY).orElseThrow().value();
    return bed.grew().stream()
        .map(Reasoned::value)
        .filter(g -> g.crop().facts().get(CropFacts.FAMILY).orElseThrow().value().equals(family))
        .anyMatch(g -> garden.season().year() - g.year() < years.high());
  }

  /** Selfing halves what is left: F = 1 − ½ⁿ⁻¹ in Fn (Falconer and Mackay 1996, from memory). */
  @Test
  void inbreedingGrowsAsSelfingHasIt() {
    assertThat(inbreeding(2027, lotOf(2027, "tern-amber"))).isEqualTo(0.875);
    assertThat(inbreeding(2028, lotOf(2028, "tern-amber"))).isEqualTo(0.9375);
    assertThat(inbreeding(2029, lotOf(2029, "tern-amber"))).isEqualTo(0.96875);
  }

  private String lotOf(int year, String line) {
    return garden(year).plantings().stream()
        .filter(p -> p.line().name().equals(line) && p.seedSaved())
        .map(p -> p.lot().name())
        .findFirst()
        .orElseThrow();
  }

  private double inbreeding(int year, String lot) {
    return descent(year, lot).get("inbreeding").asDouble();
  }

  private JsonNode descent(int year, String lot) {
    try {
      String json = run(year, "descent", plans.get(year), lot, "--format", "json").out();
      return new ObjectMapper().readTree(json);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Sibbed lots against genes dropped through the lines of the record, 100 000 times. */
  @Test
  void sibbedLinesAgreeWithGenesDropped() throws IOException {
    GeneDrop drop = GeneDrop.of(folder.resolve("record"), LAST - 1);
    for (String line : List.of("ropewalk", "sandbank", "kettle-green")) {
      String lot = line + "-" + (LAST - 1);
      assertThat(inbreeding(LAST, lot))
          .as(lot)
          .isCloseTo(drop.inbreeding(lot), org.assertj.core.api.Assertions.within(0.005));
      assertThat(drop.inbreeding(lot)).isPositive();
    }
  }
}
