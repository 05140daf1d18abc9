package slipday.choice;

import java.util.List;
import java.util.Optional;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.genetics.Aim;
import slipday.source.Span;

/**
 * A line over its generations, trait by trait.
 *
 * @param traits those aimed at first
 * @param notes what is lacking or taken for granted, a sentence each
 */
public record Progress(Line line, List<Trend> traits, List<String> notes) {
  public Progress {
    traits = List.copyOf(traits);
    notes = List.copyOf(notes);
  }

  /**
   * One trait.
   *
   * @param aim what the goal says of it, in its words; empty where it says nothing
   * @param wanted where the goal wants its figures; empty likewise
   * @param stands the line's generations as they were grown, oldest generation first, then by
   *     season
   * @param checks plants of other lines or lots that were measured in two or more of those seasons,
   *     as they were grown; named by line or lot in place of a generation
   * @param steps from each generation to the next
   * @param whole from the first generation to the last; empty for fewer than three
   */
  public record Trend(
      Trait trait,
      Optional<String> aim,
      Optional<Aim> wanted,
      List<Grown> stands,
      List<Grown> checks,
      List<Step> steps,
      Optional<Step> whole) {
    public Trend {
      stands = List.copyOf(stands);
      checks = List.copyOf(checks);
      steps = List.copyOf(steps);
    }
  }

  /**
   * One generation in one season, as measured.
   *
   * @param generation its label, or the lot where nobody knows it
   * @param year the season by its first year
   * @param plants how many were measured
   * @param fruits of them
   * @param mean of plants' means
   * @param deviation standard deviation of plants' means; empty for one plant
   * @param best the plant nearest to the aim, or the highest without one
   * @param bestMean its mean
   * @param inbreeding mean F of the plants
   * @param parents how many of them had seed taken for the line, as seed or pollen parent
   * @param differential what the mean of those parents, by how many offspring each has, lies above
   *     that of all; empty where none is known
   * @param each plant, the lowest mean first
   */
  public record Grown(
      String generation,
      int year,
      int plants,
      int fruits,
      double mean,
      Optional<Double> deviation,
      String best,
      double bestMean,
      double inbreeding,
      int parents,
      Optional<Double> differential,
      List<Each> each) {
    public Grown {
      each = List.copyOf(each);
    }
  }

  /**
   * A plant as measured.
   *
   * @param mean of its fruits
   * @param parent whether seed of it was taken for the line
   * @param lot it was grown of
   * @param figures the lines of the record they are in
   */
  public record Each(String plant, double mean, boolean parent, Lot lot, List<Span> figures) {
    public Each {
      figures = List.copyOf(figures);
    }
  }

  /**
   * From one generation to another.
   *
   * @param gain what the mean rose by, apart from season and bed; empty where that can't be told
   * @param by what it was told by, or why it can't be
   * @param predicted the same by the breeding values of traits that were valued together; empty
   *     where the trait was valued by itself or the gain can't be told
   * @param realised gain over differential: the realised heritability; empty where there is not
   *     enough to tell it
   */
  public record Step(
      String from,
      String to,
      Optional<Gain> gain,
      String by,
      Optional<Gain> predicted,
      Optional<Gain> realised) {}

  /**
   * @param error standard error
   */
  public record Gain(double value, double error) {}

  public static Progress of(Garden garden, Line line) {
    return new ProgressFinder(garden, line).find();
  }
}
