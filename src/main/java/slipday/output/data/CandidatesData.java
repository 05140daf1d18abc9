package slipday.output.data;

import java.util.List;
import java.util.Optional;
import slipday.choice.Candidate;
import slipday.choice.Candidates;
import slipday.choice.Correction;
import slipday.choice.Predicted;
import slipday.garden.SeasonYear;
import slipday.season.Season;

/**
 * The plants of a line, valued and ranked as parents of the next generation.
 *
 * @param line the line's name
 * @param grown the season they stood in: the plan's, or else the last in which they were measured
 * @param parents how many the goal asks for at least; null where it does not say
 * @param traits how each trait was valued, those aimed at first
 * @param candidates by rank, then those refused
 * @param notes what is lacking, taken for granted or left aside, a sentence each
 */
public record CandidatesData(
    Head slipday,
    String plan,
    SeasonData season,
    String line,
    String grown,
    Optional<Integer> parents,
    List<StudyData> traits,
    List<CandidateData> candidates,
    List<String> notes) {

  /**
   * How one trait was valued.
   *
   * @param trait its name
   * @param unit what its figures are in; null for counts and points
   * @param outOf the most points; null for what is measured or counted
   * @param aim what the goal says of it; null where it says nothing
   * @param weight what a standard deviation from the aim matters, or a unit where the goal weighs
   *     so
   * @param plants how many candidates were measured
   * @param mean of the candidates' corrected means
   * @param deviation the standard deviation among those
   * @param source {@code stated}, {@code estimated}, {@code assumed} or {@code none}
   * @param heritabilities of one fruit among the plants measured; several where none is known
   * @param repeatability how alike fruits of one plant are, 0 to 1
   * @param onParent selfed plants on their parent, where both were measured
   * @param corrected what its figures are corrected for
   * @param effects what was taken off
   * @param says how its heritability is known, a sentence each
   */
  public record StudyData(
      String trait,
      Optional<String> unit,
      Optional<Double> outOf,
      Optional<String> aim,
      double weight,
      int plants,
      double mean,
      double deviation,
      String source,
      List<Double> heritabilities,
      Optional<Double> repeatability,
      Optional<SlopeData> onParent,
      List<String> corrected,
      List<EffectData> effects,
      List<String> says) {}

  /**
   * @param slope an estimate of the heritability of plant means
   * @param error its standard error
   * @param pairs how many
   */
  public record SlopeData(double slope, double error, int pairs) {}

  /**
   * @param of what was corrected for
   * @param level which; empty for an amount
   * @param beside the one it is a difference from; empty for an amount
   * @param estimate in the trait's unit
   * @param error its standard error
   */
  public record EffectData(String of, String level, String beside, double estimate, double error) {}

  /**
   * A plant.
   *
   * @param name as the record calls it
   * @param inbreeding F, 0 to 1
   * @param index 0 where all aims are met, below 0 by what is lacking; null where none can be told
   * @param rank among those not refused; alike share one
   * @param refused why it may be no parent; null where it may
   * @param speaksFor what speaks for it
   * @param speaksAgainst what speaks against it
   * @param lot it was sown from
   * @param generation as far as its lot tells
   * @param figures of every trait of the study, in its order
   * @param fruits marked ones, the best for seed first
   * @param asides notes and photos of it and of the fruits on it
   */
  public record CandidateData(
      String name,
      String lot,
      Optional<String> generation,
      double inbreeding,
      Optional<Double> index,
      Optional<Integer> rank,
      Optional<String> refused,
      List<TraitFigureData> figures,
      List<String> speaksFor,
      List<String> speaksAgainst,
      List<MarkedFruitData> fruits,
      List<AsideData> asides) {}

  /**
   * One trait of a plant.
   *
   * @param trait its name
   * @param fruits how many were measured
   * @param measured the mean as measured
   * @param corrected the mean as it would have been beside the others
   * @param value its breeding value on the trait's scale; null where none can be told
   * @param low the true value is above this in 9 cases of 10
   * @param high and below this in as many
   * @param accuracy correlation of the value's difference from the mean with the true one
   * @param alone what it would be by figures of this trait alone; null where it was valued by
   *     itself
   * @param rank 1 the nearest to the aim; null where there is no aim
   */
  public record TraitFigureData(
      String trait,
      int fruits,
      Optional<Double> measured,
      Optional<Double> corrected,
      Optional<Double> value,
      Optional<Double> low,
      Optional<Double> high,
      Optional<Double> accuracy,
      Optional<AloneData> alone,
      Optional<Integer> rank) {}

  /**
   * A breeding value by figures of one trait alone, beside that of traits valued together.
   *
   * @param value on the trait's scale
   * @param low the true value is above this in 9 cases of 10
   * @param high and below this in as many
   * @param accuracy correlation of the value's difference from the mean with the true one
   */
  public record AloneData(double value, double low, double high, double accuracy) {}

  /**
   * A marked fruit and its seed.
   *
   * @param tag its tag
   * @param ofLine whether its seed is of the line, and not a cross
   * @param refused why its seed may not go on though its plant may be a parent; null where it may
   * @param generation of its seed
   * @param inbreeding of its seed
   * @param index as the plant's, at the mean of the seed's parents
   * @param seeds saved of it; null where nobody counted
   * @param savedInto lots
   * @param speaksAgainst faults, doubts, unripe seed
   * @param measured as measured
   */
  public record MarkedFruitData(
      String tag,
      boolean ofLine,
      Optional<String> refused,
      Optional<String> generation,
      double inbreeding,
      Optional<Double> index,
      Optional<Integer> seeds,
      List<String> savedInto,
      List<String> speaksAgainst,
      List<ReadingData> measured) {}

  /**
   * A figure as it was read.
   *
   * @param trait its name
   * @param value in the trait's unit
   */
  public record ReadingData(String trait, double value) {}

  public static CandidatesData of(String plan, Season season, Candidates found) {
    SeasonYear own = season.garden().season();
    return new CandidatesData(
        Head.of("candidates"),
        plan,
        SeasonData.of(season),
        found.line().name(),
        own.label(found.year()),
        found.chosen(),
        found.traits().stream().map(CandidatesData::study).toList(),
        found.candidates().stream().map(CandidatesData::candidate).toList(),
        found.notes());
  }

  private static StudyData study(Candidates.Study s) {
    return new StudyData(
        s.trait().name(),
        s.trait().unit().map(u -> u.word()),
        s.trait().scale().map(r -> r.high()),
        s.aim(),
        s.weight(),
        s.plants(),
        s.mean(),
        s.deviation(),
        Ids.of(s.source()),
        s.heritabilities(),
        s.repeatability().map(r -> r.value()),
        s.onParent().map(r -> new SlopeData(r.slope(), r.error(), r.points())),
        s.corrected().stream().sorted().map(Correction::words).toList(),
        s.effects().stream()
            .map(e -> new EffectData(e.of(), e.level(), e.beside(), e.estimate(), e.error()))
            .toList(),
        s.says());
  }

  private static CandidateData candidate(Candidate c) {
    return new CandidateData(
        c.name(),
        c.plant().stand().lot().name(),
        c.generation(),
        c.inbreeding(),
        c.index(),
        c.rank(),
        c.refused(),
        c.figures().stream().map(CandidatesData::figure).toList(),
        c.speaksFor(),
        c.speaksAgainst(),
        c.fruits().stream().map(CandidatesData::fruit).toList(),
        AsideData.of(c.asides()));
  }

  private static TraitFigureData figure(Candidate.Figure f) {
    return new TraitFigureData(
        f.trait().name(),
        f.fruits(),
        f.raw(),
        f.corrected(),
        f.predicted().map(Predicted::value),
        f.predicted().map(Predicted::low),
        f.predicted().map(Predicted::high),
        f.predicted().map(Predicted::accuracy),
        f.alone().map(p -> new AloneData(p.value(), p.low(), p.high(), p.accuracy())),
        f.rank());
  }

  private static MarkedFruitData fruit(Candidate.SeedFruit f) {
    return new MarkedFruitData(
        f.fruit().tag(),
        f.ofLine(),
        f.refused(),
        f.generation(),
        f.inbreeding(),
        f.index(),
        f.seeds(),
        f.savedInto(),
        f.speaksAgainst(),
        f.measured().stream().map(m -> new ReadingData(m.trait().name(), m.value())).toList());
  }
}
