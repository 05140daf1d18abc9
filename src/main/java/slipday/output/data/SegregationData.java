package slipday.output.data;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.genetics.InheritedRatio;
import slipday.odds.TraitCount;
import slipday.odds.Trial;
import slipday.odds.Trials;

/**
 * Counts of a trait held against ratios.
 *
 * @param plan null where the counts were given on the command line
 * @param trait null likewise
 * @param counted one for each planting the trait was seen in
 */
public record SegregationData(
    Head slipday, Optional<String> plan, Optional<String> trait, List<CountedData> counted) {
  /**
   * The plants of one planting by classes.
   *
   * @param of the planting; null where the counts were given
   * @param lot what was sown; null likewise
   * @param season its label; null likewise
   * @param plants in all
   * @param refused why nothing is held against them; null where something is
   * @param tried the best fitting first
   * @param further how to part those that stand
   * @param remarks what is to be borne in mind, a sentence each
   */
  public record CountedData(
      Optional<String> of,
      Optional<String> lot,
      Optional<String> season,
      List<ClassData> classes,
      int plants,
      Optional<String> refused,
      List<TrialData> tried,
      List<FurtherData> further,
      List<String> remarks) {}

  /**
   * @param name what its plants are; null where the counts were given
   * @param plants how many
   * @param which those whose numbers are known
   */
  public record ClassData(Optional<String> name, int plants, List<Integer> which) {}

  /**
   * Counts against one ratio.
   *
   * @param ratio in the order of the classes
   * @param grown {@code selfed} or {@code backcross}; null for a ratio that is none of those known
   * @param genes by which genes it comes about; null likewise
   * @param expected plants in each class
   * @param chiSquare Σ (counted − expected)² ÷ expected
   * @param probability of counts at least as far off, if the ratio holds
   * @param method {@code chi-square}, {@code exact} or {@code chi-square-rough}
   * @param verdict {@code not-contradicted}, {@code contradicted}, {@code too-few} or {@code
   *     not-judged}
   */
  public record TrialData(
      String ratio,
      Optional<String> grown,
      Optional<String> genes,
      List<Double> expected,
      double chiSquare,
      int degreesOfFreedom,
      double probability,
      String method,
      String verdict) {
    static TrialData of(Trial t) {
      return new TrialData(
          InheritedRatio.text(t.parts()),
          t.ratio().map(r -> Ids.of(r.grown())),
          t.ratio().map(InheritedRatio::says),
          t.expected(),
          t.fit().chiSquare(),
          t.fit().degreesOfFreedom(),
          t.fit().probability(),
          Ids.of(t.fit().method()),
          Ids.of(t.verdict()));
    }
  }

  /**
   * What would part two ratios that both stand, wrong in 1 of 20 either way.
   *
   * @param again plants of the same cross; null where no number in reach does
   * @param backcrossed plants of a backcross to the recessive; null where that does not part them
   * @param backcrossOne what the one would give there
   * @param backcrossOther what the other would
   */
  public record FurtherData(
      String one,
      String other,
      Optional<Integer> again,
      Optional<Integer> backcrossed,
      String backcrossOne,
      String backcrossOther) {
    static FurtherData of(Trials.Further f) {
      return new FurtherData(
          InheritedRatio.text(f.one()),
          InheritedRatio.text(f.other()),
          number(f.again()),
          number(f.backcrossed()),
          InheritedRatio.text(f.backcrossOne()),
          InheritedRatio.text(f.backcrossOther()));
    }

    private static Optional<Integer> number(OptionalInt n) {
      return n.isPresent() ? Optional.of(n.getAsInt()) : Optional.empty();
    }
  }

  /** Counts given on the command line. */
  public static SegregationData of(Trials trials) {
    List<ClassData> classes =
        trials.counts().stream().map(n -> new ClassData(Optional.empty(), n, List.of())).toList();
    CountedData counted =
        new CountedData(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            classes,
            trials.counts().stream().mapToInt(Integer::intValue).sum(),
            Optional.empty(),
            trials.tried().stream().map(TrialData::of).toList(),
            trials.partings().stream().map(FurtherData::of).toList(),
            trials.remarks());
    return new SegregationData(
        Head.of("segregation"), Optional.empty(), Optional.empty(), List.of(counted));
  }

  /** Plants of the record. */
  public static SegregationData of(String plan, String trait, List<CountedData> counted) {
    return new SegregationData(
        Head.of("segregation"), Optional.of(plan), Optional.of(trait), counted);
  }

  /** One planting's plants that were held against ratios. */
  public static CountedData counted(TraitCount c, Trials trials) {
    return counted(
        c,
        Optional.empty(),
        trials.tried().stream().map(TrialData::of).toList(),
        trials.partings().stream().map(FurtherData::of).toList(),
        trials.remarks());
  }

  /** One planting's plants that can't be held against any. */
  public static CountedData refused(TraitCount c, String why) {
    return counted(c, Optional.of(why), List.of(), List.of(), List.of());
  }

  private static CountedData counted(
      TraitCount c,
      Optional<String> refused,
      List<TrialData> tried,
      List<FurtherData> further,
      List<String> remarks) {
    List<String> all = new java.util.ArrayList<>(c.leftOut());
    all.addAll(remarks);
    return new CountedData(
        Optional.of(c.of()),
        Optional.of(c.lot()),
        Optional.of(c.season()),
        c.classes().stream()
            .map(k -> new ClassData(Optional.of(k.name()), k.plants(), k.which()))
            .toList(),
        c.plants(),
        refused,
        tried,
        further,
        all);
  }
}
