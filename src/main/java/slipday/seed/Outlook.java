package slipday.seed;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.CropFacts;
import slipday.garden.Lot;
import slipday.genetics.SeedLife;
import slipday.measure.Quantity;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * How well a lot can be expected to come up, and when to grow it on.
 *
 * @param germination empty where neither its age nor a test tells anything
 * @param growOnBy the season in which its germination is expected to fall under a floor
 * @param asUsual whether the seeds to sow are enough only if it keeps as usual: since it was tested
 *     or harvested it may have come down to less than its kind's least
 * @param reckoning by what that was worked out, a sentence each
 * @param facts of the crop that it rests on, with their sources
 */
public record Outlook(
    Optional<SeedLife.Germination> germination,
    Optional<Integer> growOnBy,
    boolean asUsual,
    List<String> reckoning,
    List<Reason> facts) {
  /** Where a kind has no least germination for sale. */
  private static final double HALF = 0.5;

  /** A season beyond any gardener's. */
  private static final int LAST_YEAR = 9999;

  public Outlook {
    reckoning = List.copyOf(reckoning);
    facts = List.copyOf(facts);
  }

  /**
   * The storage life that all is reckoned with, in years: the middle of what the crop says, since
   * nobody says where in it a lot falls.
   */
  public static double life(Range keeps) {
    return keeps.middle();
  }

  /** {@code 5 years}; of a range also what is reckoned with. */
  public static String words(Range keeps) {
    String years = keeps.isSingle() && keeps.low() == 1 ? " year" : " years";
    return keeps
        + years
        + (keeps.isSingle() ? "" : " (" + Quantity.plain(life(keeps)) + " are reckoned with)");
  }

  /** What the seed was, and in which year. */
  private record Start(SeedLife.Germination germination, int year, String words) {}

  /** In a season, by its first year. */
  public static Outlook of(Lot lot, int season) {
    Optional<Start> start = start(lot, season);
    if (start.isEmpty()) {
      return new Outlook(
          Optional.empty(),
          Optional.empty(),
          false,
          List.of("Neither its harvest nor a test is told, so nothing can be said of it."),
          List.of());
    }
    return lot.line()
        .facts()
        .get(CropFacts.SEED_KEEPS)
        .map(keeps -> aged(lot, start.get(), keeps, season))
        .orElseGet(() -> ageless(start.get()));
  }

  private static Optional<Start> start(Lot lot, int season) {
    Optional<Lot.GerminationTest> test = lot.tested().map(Reasoned::value);
    Optional<Integer> harvested = lot.harvested().map(Reasoned::value);
    if (test.isPresent()) {
      Lot.GerminationTest t = test.get();
      int year = t.year().orElse(season);
      String words = t.seedlings() + " of " + t.of() + " came up in its test";
      String when = t.year().map(y -> " of " + y).orElse(", which has no year and is taken as new");
      return Optional.of(new Start(SeedLife.tested(t.seedlings(), t.of()), year, words + when));
    }
    String untested =
        String.format(
            Locale.ROOT,
            "It was not tested; new seed is taken to come up at %.0f %%",
            100 * SeedLife.NEW_SEED);
    return harvested.map(y -> new Start(SeedLife.untested(), y, untested));
  }

  private static Outlook ageless(Start start) {
    return new Outlook(
        Optional.of(start.germination),
        Optional.empty(),
        false,
        List.of(start.words + ".", "How long such seed keeps is not known, so age is left out."),
        List.of());
  }

  private static Outlook aged(Lot lot, Start start, Reasoned<Range> keeps, int season) {
    int years = Math.max(0, season - start.year);
    double life = life(keeps.value());
    Optional<Reasoned<Double>> least = lot.line().facts().get(CropFacts.LEAST_GERMINATION);
    double floor = least.map(Reasoned::value).orElse(HALF);
    double until = start.year + Math.floor(SeedLife.yearsUntil(floor, start.germination, life));
    SeedLife.Germination now = SeedLife.after(start.germination, years, life);
    List<String> reckoning = new ArrayList<>();
    reckoning.add(
        start.words
            + "; "
            + years
            + (years == 1 ? " year" : " years")
            + " since, and such seed keeps "
            + words(keeps.value())
            + ".");
    reckoning.add(
        String.format(
            Locale.ROOT,
            now.usual() < floor
                ? "It is past the time to be grown on, under %.0f %%%s: if it is to be kept, now."
                : "It is best grown on before it falls under %.0f %%%s.",
            100 * floor,
            least.isPresent() ? ", the least its kind may be sold at" : ""));
    return new Outlook(
        Optional.of(now),
        Optional.of((int) Math.min(LAST_YEAR, until)),
        years > 0 && now.low() < floor,
        reckoning,
        Stream.concat(Stream.of(keeps), least.stream()).map(Reasoned::reason).toList());
  }
}
