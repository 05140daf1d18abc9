package slipday.descent;

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

/** Small invented gardens with a pedigree in their record. */
public final class Pedigrees {
  private static final String PLAN =
      """
      season 2027
      site somewhere
        place 44 N, 72 W
        time zone America/New_York
        last frost 18 May, 1 in 10 after 30 May
        first frost 27 September, 1 in 10 before 14 September
      bed south
        size 10 m x 1 m
      line p
        is a butternut
      line q
        is a butternut
      line mix
        is a butternut
        began 2020, from p by q
      """;

  private static final List<Block> CROPS = BuiltInCropsForTests.blocks();

  private Pedigrees() {}

  /**
   * Lots p-0 and q-0, and what is recorded of them.
   *
   * @param founders more lines of both lots
   */
  public static Garden garden(String founders, String... record) {
    String lots = "lot p-0\n  of p\n" + founders + "lot q-0\n  of q\n" + founders;
    return garden(lots, List.of(record));
  }

  public static Garden garden(String more, List<String> record) {
    Outcome<BoundFile> plan = read("plan.season", PLAN + more);
    Outcome<BoundFile> said = read("record.season", String.join("\n", record) + "\n");
    Outcome<Optional<Garden>> garden = Resolver.resolve(CROPS, plan.value().and(said.value()));
    List<Finding> all = new ArrayList<>(plan.findings());
    all.addAll(said.findings());
    all.addAll(garden.findings());
    if (!all.isEmpty()) {
      throw new AssertionError("the test's record is mistaken: " + all);
    }
    return garden.value().orElseThrow();
  }

  private static Outcome<BoundFile> read(String name, String text) {
    return SeasonParser.parse(Source.of(name, text)).then(Binder::bind);
  }
}
