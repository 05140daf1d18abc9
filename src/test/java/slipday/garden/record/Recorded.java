package slipday.garden.record;

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

/** A small invented garden with whatever a test records of it. */
final class Recorded {
  static final String PLAN =
      """
      season 2026
      site somewhere
        place 44 N, 72 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed south
        size 10 m x 1 m
      line amber
        is a muskmelon
      line rope
        is a muskmelon
      line gem
        is a muskmelon
        began 2026, from rope by amber
      lot amber-f3
        of amber
        seeds 40
      lot rope-2023
        of rope
        seeds 60
      grow amber-f3
        in south
        plants 8, 60 cm apart
        start indoors, 3 weeks before planting out
        flowers cover the chosen
        pollinate self by hand, for 5 fruits
        seed saved
      grow rope-2023 as rope
        in south
        plants 4, 60 cm apart
        start indoors, 3 weeks before planting out
        flowers cover the chosen
        seed saved
      trait net density
        scale 0 to 5
      """;

  private static final List<Block> CROPS = BuiltInCropsForTests.blocks();

  private Recorded() {}

  static Outcome<Optional<Garden>> outcome(List<String> record) {
    return outcome(PLAN, record);
  }

  static Outcome<Optional<Garden>> outcome(String plan, List<String> record) {
    Outcome<BoundFile> bound = read("plan.season", plan);
    Outcome<BoundFile> said = read("record.season", String.join("\n", record));
    Outcome<Optional<Garden>> garden = Resolver.resolve(CROPS, bound.value().and(said.value()));
    List<Finding> all = new ArrayList<>(bound.findings());
    all.addAll(said.findings());
    all.addAll(garden.findings());
    all.sort(Finding.ORDER);
    return new Outcome<>(garden.value(), all);
  }

  static Garden garden(String... record) {
    Outcome<Optional<Garden>> outcome = outcome(List.of(record));
    if (!outcome.findings().isEmpty()) {
      throw new AssertionError("the test's record is mistaken: " + outcome.findings());
    }
    return outcome.value().orElseThrow();
  }

  private static Outcome<BoundFile> read(String name, String text) {
    return SeasonParser.parse(Source.of(name, text)).then(Binder::bind);
  }
}
