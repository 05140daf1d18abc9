package slipday.demo;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import slipday.app.Checked;
import slipday.app.FileTexts;
import slipday.app.Pipeline;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.garden.record.Plants;

class TernHollowRecordTest {
  private static Checked checked;
  private static GardenRecord record;

  @BeforeAll
  static void check() {
    String plan = "plans/tern-hollow/recorded.season";
    checked =
        new Pipeline(FileTexts.onDisk(), false, LocalDate.of(2027, 12, 31))
            .check(Path.of(plan), plan);
    record = checked.garden().orElseThrow().record();
  }

  @Test
  void theFilesAreWhatTheProgramMakes() throws IOException {
    for (Map.Entry<String, String> file : MakeTernHollowRecord.texts().entrySet()) {
      Path path = MakeTernHollowRecord.FOLDER.resolve(file.getKey());
      assertThat(Files.readString(path)).as(path.toString()).isEqualTo(file.getValue());
    }
  }

  @Test
  void twoGardenersWroteAnEntryEachTime() {
    List<String> lines =
        MakeTernHollowRecord.texts().values().stream()
            .flatMap(String::lines)
            .filter(l -> !l.startsWith("#"))
            .toList();
    assertThat(MakeTernHollowRecord.texts()).hasSize(2);
    assertThat(lines).hasSizeGreaterThan(200).doesNotHaveDuplicates();
    assertThat(record.facts()).hasSameSizeAs(lines);
  }

  @Test
  void onlyTheCrossInDoubtStands() {
    assertThat(checked.findings())
        .filteredOn(f -> f.level() != Level.NOTE)
        .extracting(Finding::rule)
        .containsExactly("self-or-cross");
  }

  @Test
  void severalPlantsBearSeveralMarkedFruits() {
    Map<Integer, Long> marked =
        record
            .every(Fact.Picked.class)
            .filter(p -> p.subject() instanceof Fruit)
            .map(p -> ((Fruit) p.subject()).seedParent())
            .filter(p -> p.stand().name().equals("tern-amber-f3"))
            .collect(groupingBy(p -> p.plant().orElseThrow(), TreeMap::new, counting()));
    assertThat(marked).hasSizeGreaterThanOrEqualTo(8);
    assertThat(marked.values()).allMatch(n -> n <= 3).anyMatch(n -> n == 1).anyMatch(n -> n == 3);
  }

  /**
   * Plants differ by more than their fruits do, so that choosing among them is worth while. One-way
   * analysis of variance, as in any textbook of statistics; F of 2.5 is beyond one in twenty here.
   */
  @Test
  void plantsDifferByMoreThanTheirFruits() {
    assertThat(ratio(f -> f.brix().orElseThrow())).isGreaterThan(2.5);
    assertThat(ratio(f -> f.kilograms().orElseThrow())).isGreaterThan(2.5);
  }

  private static double ratio(ToDoubleFunction<slipday.garden.record.Figures> figure) {
    Map<Integer, List<Double>> plants = new TreeMap<>();
    record
        .every(Fact.Picked.class)
        .filter(p -> p.figures().brix().isPresent())
        .forEach(
            p -> {
              Plants of = p.subject() instanceof Fruit f ? f.seedParent() : (Plants) p.subject();
              if (of.stand().name().equals("tern-amber-f3")) {
                plants
                    .computeIfAbsent(of.plant().orElseThrow(), n -> new ArrayList<>())
                    .add(figure.applyAsDouble(p.figures()));
              }
            });
    double all = mean(plants.values().stream().flatMap(List::stream).toList());
    double between = 0;
    double within = 0;
    int fruits = 0;
    for (List<Double> of : plants.values()) {
      double mean = mean(of);
      between += of.size() * (mean - all) * (mean - all);
      within += of.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
      fruits += of.size();
    }
    return between / (plants.size() - 1) / (within / (fruits - plants.size()));
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
  }

  @Test
  void mostThatCanBeRecordedIs() {
    Set<Class<?>> kinds = new HashSet<>();
    record.facts().forEach(f -> kinds.add(f.getClass()));
    assertThat(kinds)
        .contains(
            Fact.OffType.class,
            Fact.Lost.class,
            Fact.Emasculated.class,
            Fact.Tasted.class,
            Fact.Germinated.class,
            Fact.Stored.class,
            Fact.LookedAt.class,
            Fact.Dropped.class)
        .hasSizeGreaterThanOrEqualTo(25);
  }
}
