package slipday.odds;

import java.util.List;
import java.util.Optional;
import slipday.genetics.InheritedRatio;
import slipday.genetics.Segregation;

/**
 * Counts held against one ratio.
 *
 * @param parts the ratio, in the order of the classes
 * @param ratio by which genes; empty for a ratio that was asked for and is none of those known
 * @param expected plants in each class, if it holds
 */
public record Trial(
    List<Integer> parts,
    Optional<InheritedRatio> ratio,
    List<Double> expected,
    Segregation fit,
    Verdict verdict) {
  /** Counts so rarely as this, if the ratio held, contradict it. */
  public static final double RARE = 0.05;

  public Trial {
    parts = List.copyOf(parts);
    expected = List.copyOf(expected);
  }

  /** What the counts say of a ratio; that it is so, they never say. */
  public enum Verdict {
    /** What was counted is no wonder if the ratio holds. */
    NOT_CONTRADICTED,
    /** What was counted would be a wonder if the ratio held. */
    CONTRADICTED,
    /** So few plants can't contradict it, whatever they are. */
    TOO_FEW,
    /** Some class is too small for the chi-square, and the outcomes are too many to add up. */
    NOT_JUDGED
  }

  static Trial of(List<Integer> counts, List<Integer> parts, Optional<InheritedRatio> ratio) {
    int plants = counts.stream().mapToInt(Integer::intValue).sum();
    double all = parts.stream().mapToInt(Integer::intValue).sum();
    List<Double> shares = parts.stream().map(Integer::doubleValue).toList();
    Segregation fit = Segregation.test(counts, shares);
    return new Trial(
        parts,
        ratio,
        parts.stream().map(part -> part / all * plants).toList(),
        fit,
        verdict(fit, plants, shares));
  }

  private static Verdict verdict(Segregation fit, int plants, List<Double> shares) {
    if (fit.method() == Segregation.Method.CHI_SQUARE_ROUGH) {
      return Verdict.NOT_JUDGED;
    }
    if (fit.probability() < RARE) {
      return Verdict.CONTRADICTED;
    }
    return Segregation.leastProbability(plants, shares) < RARE
        ? Verdict.NOT_CONTRADICTED
        : Verdict.TOO_FEW;
  }

  public boolean stands() {
    return verdict == Verdict.NOT_CONTRADICTED || verdict == Verdict.TOO_FEW;
  }
}
