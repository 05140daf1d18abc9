package slipday.odds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.genetics.Answer;
import slipday.genetics.InheritedRatio;
import slipday.genetics.InheritedRatio.Grown;
import slipday.genetics.Parting;

/**
 * Counts held against ratios.
 *
 * @param counts plants in each class
 * @param tried every ratio held against, the best fitting first
 * @param partings how to tell apart those that stand
 * @param remarks what is to be borne in mind, a sentence each
 */
public record Trials(
    List<Integer> counts, List<Trial> tried, List<Further> partings, List<String> remarks) {
  /** More plants than this nobody counts. */
  public static final int MOST_PLANTS = 1_000_000;

  private static final int MOST_PARTED = 4;
  private static final double WRONG = 0.05;

  public Trials {
    counts = List.copyOf(counts);
    tried = List.copyOf(tried);
    partings = List.copyOf(partings);
    remarks = List.copyOf(remarks);
  }

  /**
   * Two ratios that both stand, and how many plants would part them, wrong in 1 of 20 either way.
   *
   * @param again plants more of the same cross; empty where no number in reach does
   * @param backcrossed plants of a backcross of the F1; empty where that does not part them
   * @param backcrossOne what the one would give there
   */
  public record Further(
      List<Integer> one,
      List<Integer> other,
      OptionalInt again,
      OptionalInt backcrossed,
      List<Integer> backcrossOne,
      List<Integer> backcrossOther) {}

  /** Against one ratio that is asked for, class by class. */
  public static Answer<Trials> against(List<Integer> counts, List<Integer> parts) {
    Optional<String> wrong = wrong(counts);
    if (wrong.isPresent()) {
      return Answer.refused(wrong.get());
    }
    if (parts.size() != counts.size()) {
      return Answer.refused(
          InheritedRatio.text(counts)
              + " has "
              + counts.size()
              + " classes and "
              + InheritedRatio.text(parts)
              + " has "
              + parts.size()
              + ".");
    }
    if (parts.stream().anyMatch(part -> part < 1)) {
      return Answer.refused("A ratio has no part of 0; leave that class out.");
    }
    Optional<InheritedRatio> known =
        InheritedRatio.ofClasses(parts.size()).stream()
            .filter(r -> r.parts().equals(parts))
            .findFirst();
    Trial trial = Trial.of(counts, parts, known);
    return Answer.of(
        new Trials(counts, List.of(trial), List.of(), remarks(counts, List.of(trial))));
  }

  /**
   * Against every ratio that one or two genes can give.
   *
   * @param grown only those of what was sown; empty for all
   */
  public static Answer<Trials> againstAll(List<Integer> counts, Optional<Grown> grown) {
    Optional<String> wrong = wrong(counts);
    if (wrong.isPresent()) {
      return Answer.refused(wrong.get());
    }
    List<Trial> tried = new ArrayList<>();
    for (InheritedRatio ratio : InheritedRatio.ofClasses(counts.size())) {
      if (grown.isEmpty() || grown.get() == ratio.grown()) {
        tried.add(Trial.of(counts, ratio.parts(), Optional.of(ratio)));
      }
    }
    if (tried.isEmpty()) {
      return Answer.refused(
          "No ratio of one or two genes that is known here has " + counts.size() + " classes.");
    }
    tried.sort(Comparator.comparingDouble((Trial t) -> -t.fit().probability()));
    return Answer.of(new Trials(counts, tried, partings(tried), remarks(counts, tried)));
  }

  private static Optional<String> wrong(List<Integer> counts) {
    long plants = counts.stream().mapToLong(Integer::longValue).sum();
    if (counts.size() < 2) {
      return Optional.of("One class alone does not segregate.");
    }
    if (plants == 0) {
      return Optional.of("Not one plant is counted.");
    }
    return plants > MOST_PLANTS
        ? Optional.of("More than " + MOST_PLANTS + " plants are too many to reckon with.")
        : Optional.empty();
  }

  /** The best of those that stand, pair by pair, within what was sown. */
  private static List<Further> partings(List<Trial> tried) {
    List<InheritedRatio> standing = new ArrayList<>();
    for (Trial trial : tried) {
      boolean fresh =
          trial.stands()
              && trial.ratio().filter(r -> r.grown() == Grown.SELFED).isPresent()
              && standing.size() < MOST_PARTED;
      if (fresh) {
        standing.add(trial.ratio().get());
      }
    }
    List<Further> partings = new ArrayList<>();
    for (int i = 0; i < standing.size(); i++) {
      for (int j = i + 1; j < standing.size(); j++) {
        partings.add(further(standing.get(i), standing.get(j)));
      }
    }
    return partings;
  }

  private static Further further(InheritedRatio one, InheritedRatio other) {
    return new Further(
        one.parts(),
        other.parts(),
        Parting.plants(one.parts(), other.parts(), WRONG),
        Parting.plants(one.backcrossed(), other.backcrossed(), WRONG),
        one.backcrossed(),
        other.backcrossed());
  }

  private static List<String> remarks(List<Integer> counts, List<Trial> tried) {
    List<String> remarks = new ArrayList<>();
    long standing = tried.stream().filter(Trial::stands).count();
    if (tried.size() > 1) {
      remarks.add(
          standing
              + " of "
              + tried.size()
              + (standing == 1 ? " ratios tried is" : " ratios tried are")
              + " not contradicted. A ratio that is not contradicted is not proved by that.");
      remarks.add(
          "Only one of them can be the true one, and that one is struck out wrongly in 1 of 20 cases,"
              + " however many are tried; but the more are tried, the likelier a wrong one stands.");
    } else if (standing == 1) {
      remarks.add("A ratio that is not contradicted is not proved by that.");
    }
    if (tried.size() > 1) {
      remarks.add(
          counts.size() > InheritedRatio.MOST_ARRANGED
              ? "The classes are taken in the order they stand in."
              : "Which class is which is not known, so every way round is tried.");
    }
    if (tried.stream().anyMatch(t -> t.verdict() == Trial.Verdict.TOO_FEW)) {
      remarks.add(
          "With so few plants some ratios can't be contradicted, whatever was counted; count more.");
    }
    if (tried.stream().anyMatch(t -> t.verdict() == Trial.Verdict.NOT_JUDGED)) {
      remarks.add(
          "A class of which fewer than 5 are expected is too small for the chi-square, and so many"
              + " plants have too many outcomes to add up: put classes together.");
    }
    if (tried.stream().allMatch(t -> t.verdict() == Trial.Verdict.CONTRADICTED)) {
      remarks.add(
          tried.size() > 1
              ? "None stands: there may be more genes, linked ones, seed of several crosses mixed, or"
                  + " plants lost before they were counted."
              : "Plants lost before they were counted, or seed of several crosses mixed, can upset a"
                  + " ratio too.");
    }
    return remarks;
  }
}
