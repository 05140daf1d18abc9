package slipday.output.data;

import java.util.List;
import java.util.Optional;
import slipday.choice.Candidate;
import slipday.choice.Chosen;
import slipday.choice.Predicted;
import slipday.garden.SeasonYear;
import slipday.season.Season;

/**
 * The fruits of a line whose seed goes on.
 *
 * @param line the line's name
 * @param grown the season the parents stood in
 * @param choice the best within the limits
 * @param whatIf the best if a fruit is kept or dropped as well; null where that was not asked
 */
public record ChooseData(
    Head slipday,
    String plan,
    SeasonData season,
    String line,
    String grown,
    ChoiceData choice,
    Optional<WhatIfData> whatIf) {

  /**
   * A choice.
   *
   * @param plants of the next generation that the shares are dealt in
   * @param fruits the largest share first
   * @param limits what it keeps to
   * @param index 0 where all aims are met, below 0 by what is lacking; null where nothing is valued
   * @param bound no other choice within the limits is better than this; null likewise
   * @param proved whether none is better at all
   * @param unlimited the index of the best without limits; null likewise
   * @param promises what the next generation will be like
   * @param release what selfing can still set free; null where it is not selfed
   * @param remnants seed to keep
   * @param notes what is lacking, taken for granted or advised, a sentence each
   */
  public record ChoiceData(
      int plants,
      List<PartData> fruits,
      List<LimitData> limits,
      Optional<Double> index,
      Optional<Double> bound,
      boolean proved,
      Optional<Double> unlimited,
      KinshipData kinship,
      List<PromiseData> promises,
      Optional<ReleaseData> release,
      List<RemnantData> remnants,
      List<String> notes) {}

  /**
   * A fruit that is chosen.
   *
   * @param parent the plant that bore it
   * @param plants of the next generation that are grown of it
   * @param share of all of them
   * @param index of its seed; null where nothing is valued
   * @param because what speaks for its plant
   * @param against what speaks against the plant or the fruit
   */
  public record PartData(
      String tag,
      String parent,
      Optional<String> generation,
      int plants,
      double share,
      Optional<Integer> seeds,
      List<String> savedInto,
      Optional<Double> index,
      List<String> because,
      List<String> against) {}

  /**
   * @param says what is asked for
   * @param used what the choice has of it
   */
  public record LimitData(String says, double used) {}

  /**
   * @param seedParents plants that bear the seed
   * @param effectiveSize 1 ÷ the sum of the squared shares of all parents
   * @param coancestry mean of all pairs of the chosen, each with itself included
   * @param coancestryOfAll the same of all that may be parents, used alike
   * @param inbreedingNow mean F of all that may be parents
   * @param inbreedingNext mean F of the chosen seed
   */
  public record KinshipData(
      int seedParents,
      double effectiveSize,
      double coancestry,
      double coancestryOfAll,
      double inbreedingNow,
      double inbreedingNext) {}

  /**
   * One trait of the next generation, grown beside this one.
   *
   * @param unit what its figures are in; null for counts and points
   * @param now the candidates' mean
   * @param expected mean of the chosen seed
   * @param low the true mean is above this in 9 cases of 10
   * @param high and below this in as many
   * @param unlimited expected of the best choice without limits
   * @param aim what the goal says; null where it says nothing
   * @param aimMet whether the expected mean meets it; null likewise
   */
  public record PromiseData(
      String trait,
      Optional<String> unit,
      double now,
      double expected,
      double low,
      double high,
      Optional<Double> unlimited,
      Optional<String> aim,
      Optional<Boolean> aimMet) {}

  /**
   * What selfing can still set free in the chosen families.
   *
   * @param within the share of the additive differences among plants of the next generation that
   *     lies within families
   * @param shown the share of all that selfing can bring out that differs between plants by now
   */
  public record ReleaseData(double within, double shown, List<TraitReleaseData> traits) {}

  /**
   * @param deviation standard deviation of breeding values within a family of the next generation
   * @param ceiling the same among all pure lines the families can end in
   * @param best how far towards the aim the best of a hundred such lines lies from the expected
   *     mean
   * @param inReach whether the aim lies within that; null without one
   */
  public record TraitReleaseData(
      String trait, double deviation, double ceiling, double best, Optional<Boolean> inReach) {}

  /**
   * Seed that is kept.
   *
   * @param seeds left once what is chosen is sown; null where nobody counted
   * @param chosen whether some of it is sown
   */
  public record RemnantData(
      String tag, String parent, Optional<Integer> seeds, List<String> savedInto, boolean chosen) {}

  /**
   * Another choice beside the best.
   *
   * @param says what it keeps or drops
   * @param came tags that are chosen only so
   * @param went tags that are no longer chosen
   */
  public record WhatIfData(String says, ChoiceData choice, List<String> came, List<String> went) {}

  /** The choice alone. */
  public static ChooseData of(String plan, Season season, Chosen chosen) {
    SeasonYear own = season.garden().season();
    return new ChooseData(
        Head.of("choose"),
        plan,
        SeasonData.of(season),
        chosen.candidates().line().name(),
        own.label(chosen.candidates().year()),
        choice(chosen),
        Optional.empty());
  }

  /** With another beside it. */
  public ChooseData with(String says, Chosen other) {
    ChoiceData there = choice(other);
    List<String> before = choice.fruits().stream().map(PartData::tag).toList();
    List<String> after = there.fruits().stream().map(PartData::tag).toList();
    return new ChooseData(
        slipday,
        plan,
        season,
        line,
        grown,
        choice,
        Optional.of(
            new WhatIfData(
                says,
                there,
                after.stream().filter(t -> !before.contains(t)).toList(),
                before.stream().filter(t -> !after.contains(t)).toList())));
  }

  private static ChoiceData choice(Chosen c) {
    return new ChoiceData(
        c.plants(),
        c.parts().stream().map(p -> part(p, c.plants())).toList(),
        c.limits().stream().map(l -> new LimitData(l.says(), l.used())).toList(),
        c.index(),
        c.bound(),
        c.proved(),
        c.unlimited(),
        kinship(c.kinship()),
        c.promises().stream().map(ChooseData::promise).toList(),
        c.release().map(ChooseData::release),
        c.remnants().stream().map(ChooseData::remnant).toList(),
        c.notes());
  }

  private static PartData part(Chosen.Part p, int plants) {
    Candidate.SeedFruit fruit = p.fruit();
    List<String> against = new java.util.ArrayList<>(p.plant().speaksAgainst());
    fruit.speaksAgainst().stream()
        .filter(f -> against.stream().noneMatch(a -> a.startsWith(f + " (") && a.contains(p.tag())))
        .forEach(against::add);
    return new PartData(
        p.tag(),
        p.plant().name(),
        fruit.generation(),
        p.plants(),
        p.plants() / (double) plants,
        fruit.seeds(),
        fruit.savedInto(),
        fruit.index(),
        p.plant().speaksFor(),
        against);
  }

  private static KinshipData kinship(Chosen.Kinship k) {
    return new KinshipData(
        k.parents(),
        k.effectiveSize(),
        k.coancestry(),
        k.coancestryOfAll(),
        k.inbreedingNow(),
        k.inbreedingNext());
  }

  private static PromiseData promise(Chosen.Promise p) {
    Predicted next = p.next();
    return new PromiseData(
        p.trait().name(),
        p.trait().unit().map(u -> u.word()),
        p.now(),
        next.value(),
        next.low(),
        next.high(),
        p.unlimited(),
        p.aim(),
        p.aimed());
  }

  private static ReleaseData release(Chosen.Release r) {
    return new ReleaseData(
        r.within(),
        r.shown(),
        r.traits().stream()
            .map(
                t ->
                    new TraitReleaseData(
                        t.trait().name(), t.deviation(), t.ceiling(), t.best(), t.inReach()))
            .toList());
  }

  private static RemnantData remnant(Chosen.Remnant r) {
    return new RemnantData(
        r.fruit().fruit().tag(), r.plant().name(), r.seeds(), r.fruit().savedInto(), r.chosen());
  }
}
