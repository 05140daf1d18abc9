package slipday.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.app.BuiltInCropsForTests;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.garden.Garden;
import slipday.garden.Resolver;
import slipday.language.Binder;
import slipday.language.Block;
import slipday.language.BoundFile;
import slipday.source.Source;
import slipday.syntax.SeasonParser;

/** Small invented gardens with a line whose plants were measured. */
final class Gardens {
  private static final String PLAN =
      """
      season 2026
      site somewhere
        place 44 N, 72 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed south
        size 10 m x 1 m
      bed north
        size 10 m x 1 m
      line gold
        is a butternut
        purpose to fix
      line grey
        is a butternut
        purpose to keep
      lot gold-f3
        of gold
        generation F3
      lot grey-1
        of grey
      grow gold-f3
        in south
        plants 12, 60 cm apart
        pollinate self by hand, for 8 fruits
        seed saved
      grow gold-f3 as gold-north
        in north
        plants 12, 60 cm apart
        pollinate self by hand, for 8 fruits
        seed saved
      """;

  private static final List<Block> CROPS = BuiltInCropsForTests.blocks();

  private Gardens() {}

  /**
   * @param more lines of the plan, a goal among them
   * @param record its lines
   */
  static Garden garden(String more, List<String> record) {
    return garden(2026, more, record);
  }

  static Garden garden(int year, String more, List<String> record) {
    String start = PLAN.replace("season 2026", "season " + year);
    Outcome<BoundFile> plan = read("plan.season", start + more);
    Outcome<BoundFile> said = read("record.season", String.join("\n", record) + "\n");
    Outcome<Optional<Garden>> garden = Resolver.resolve(CROPS, plan.value().and(said.value()));
    List<Finding> all = new ArrayList<>(plan.findings());
    all.addAll(said.findings());
    all.addAll(garden.findings());
    if (!all.isEmpty()) {
      throw new AssertionError("the test's garden is mistaken: " + all);
    }
    return garden.value().orElseThrow();
  }

  /** The candidates of line gold. */
  static Candidates candidates(String more, List<String> record) {
    Garden garden = garden(more, record);
    return Candidates.of(
        garden,
        garden.lines().stream().filter(l -> l.name().equals("gold")).findFirst().orElseThrow());
  }

  private static Outcome<BoundFile> read(String name, String text) {
    return SeasonParser.parse(Source.of(name, text)).then(Binder::bind);
  }
}
