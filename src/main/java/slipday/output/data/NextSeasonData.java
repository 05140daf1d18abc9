package slipday.output.data;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.garden.Bed;
import slipday.garden.SeasonYear;
import slipday.nextseason.NextSeason;

/**
 * What can follow a season.
 *
 * @param next the label of the season the new plan is for
 * @param file the plan that was written; null where it was printed
 * @param sown what is to be sown
 * @param leftOut what this season had and the next has not, with why
 * @param toDecide what the checks hold against the new plan
 */
public record NextSeasonData(
    Head slipday,
    String plan,
    String next,
    Optional<String> file,
    List<SownData> sown,
    List<LeftOutData> leftOut,
    List<RestingData> resting,
    List<OpenData> toDecide) {

  /**
   * A lot to be sown.
   *
   * @param role {@code carried-on}, {@code again}, {@code family}, {@code check} or {@code
   *     new-cross}
   * @param after this season's planting whose ways it is grown by
   * @param plants 0 where the plan does not say how many
   * @param seedsToSow for its plants in 19 of 20 cases
   * @param remnant seeds left after that; null where never counted
   * @param why a sentence each
   */
  public record SownData(
      String lot,
      String line,
      String role,
      String after,
      Optional<String> bed,
      int plants,
      int seedsToSow,
      Optional<Integer> remnant,
      boolean seedSaved,
      List<String> why) {
    static SownData of(NextSeason.Sown s) {
      return new SownData(
          s.lot().name(),
          s.lot().line().name(),
          s.role().name().toLowerCase(Locale.ROOT).replace('_', '-'),
          s.from().name(),
          s.bed().map(Bed::name),
          s.plants(),
          s.toSow(),
          s.remnant(),
          s.seedSaved(),
          s.why());
    }
  }

  /**
   * @param name of a planting, a lot or a cross
   */
  public record LeftOutData(String name, String why) {}

  /**
   * A lot that lies in the seed box for the season.
   *
   * @param growOnBy the season, by its first year, before which it is best grown on
   */
  public record RestingData(
      String lot, String line, Optional<Integer> seedsLeft, Optional<Integer> growOnBy) {}

  /**
   * @param rule the rule that is broken
   */
  public record OpenData(String rule, String message, String help) {}

  /**
   * @param open what the checks hold against it
   */
  public static NextSeasonData of(
      String plan, NextSeason next, Optional<String> file, List<Finding> open) {
    SeasonYear now = next.garden().season();
    return new NextSeasonData(
        Head.of("next-season"),
        plan,
        now.label(next.year()),
        file,
        next.plantings().stream().map(SownData::of).toList(),
        next.leftOut().stream().map(l -> new LeftOutData(l.name(), l.why())).toList(),
        next.resting().stream()
            .map(r -> new RestingData(r.lot().name(), r.line().name(), r.left(), r.growOnBy()))
            .toList(),
        open.stream().map(f -> new OpenData(f.rule(), f.message(), f.help())).toList());
  }
}
