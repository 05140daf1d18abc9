package slipday.output.data;

import java.util.List;
import java.util.Optional;
import slipday.choice.Progress;
import slipday.garden.SeasonYear;
import slipday.season.Season;

/**
 * A line over its generations.
 *
 * @param line the line's name
 * @param traits those aimed at first
 * @param notes what is lacking or taken for granted, a sentence each
 */
public record ProgressData(
    Head slipday,
    String plan,
    SeasonData season,
    String line,
    List<TrendData> traits,
    List<String> notes) {

  /**
   * One trait over the generations.
   *
   * @param trait its name
   * @param unit what its figures are in; null for counts and points
   * @param aim what the goal says of it; null where it says nothing
   * @param generations each as it was grown, oldest first, then by season
   * @param steps from each generation to the next
   * @param whole from the first to the last; null for fewer than three
   */
  public record TrendData(
      String trait,
      Optional<String> unit,
      Optional<String> aim,
      List<GenerationGrownData> generations,
      List<StepData> steps,
      Optional<StepData> whole) {}

  /**
   * One generation in one season, as measured.
   *
   * @param generation its label, or the lot where nobody knows it
   * @param grown the season
   * @param plants how many were measured
   * @param fruits of them
   * @param mean of plants' means
   * @param deviation standard deviation of plants' means; null for one plant
   * @param best the plant nearest to the aim
   * @param bestMean its mean
   * @param inbreeding mean F of the plants
   * @param parents how many of them had seed taken for the line
   * @param differential what the mean of those parents lies above that of all
   */
  public record GenerationGrownData(
      String generation,
      String grown,
      int plants,
      int fruits,
      double mean,
      Optional<Double> deviation,
      String best,
      double bestMean,
      double inbreeding,
      int parents,
      Optional<Double> differential) {}

  /**
   * From one generation to another.
   *
   * @param from the older
   * @param to the newer
   * @param gain of the mean, apart from season and bed; null where that can't be told
   * @param error its standard error
   * @param by what it was told by, or why it can't be
   * @param predicted the gain by breeding values of traits that were valued together; null where
   *     the trait was valued by itself
   * @param predictedError its standard error
   * @param realised the realised heritability, where there is enough
   * @param realisedError its standard error
   */
  public record StepData(
      String from,
      String to,
      Optional<Double> gain,
      Optional<Double> error,
      String by,
      Optional<Double> predicted,
      Optional<Double> predictedError,
      Optional<Double> realised,
      Optional<Double> realisedError) {}

  public static ProgressData of(String plan, Season season, Progress found) {
    SeasonYear own = season.garden().season();
    return new ProgressData(
        Head.of("progress"),
        plan,
        SeasonData.of(season),
        found.line().name(),
        found.traits().stream().map(t -> trend(t, own)).toList(),
        found.notes());
  }

  private static TrendData trend(Progress.Trend t, SeasonYear own) {
    return new TrendData(
        t.trait().name(),
        t.trait().unit().map(u -> u.word()),
        t.aim(),
        t.stands().stream().map(g -> grown(g, own)).toList(),
        t.steps().stream().map(ProgressData::step).toList(),
        t.whole().map(ProgressData::step));
  }

  private static GenerationGrownData grown(Progress.Grown g, SeasonYear own) {
    return new GenerationGrownData(
        g.generation(),
        own.label(g.year()),
        g.plants(),
        g.fruits(),
        g.mean(),
        g.deviation(),
        g.best(),
        g.bestMean(),
        g.inbreeding(),
        g.parents(),
        g.differential());
  }

  private static StepData step(Progress.Step s) {
    return new StepData(
        s.from(),
        s.to(),
        s.gain().map(Progress.Gain::value),
        s.gain().map(Progress.Gain::error),
        s.by(),
        s.predicted().map(Progress.Gain::value),
        s.predicted().map(Progress.Gain::error),
        s.realised().map(Progress.Gain::value),
        s.realised().map(Progress.Gain::error));
  }
}
