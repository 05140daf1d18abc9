package slipday.rules.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.FactKey;
import slipday.garden.Garden;
import slipday.garden.Goal;
import slipday.garden.Line;
import slipday.garden.record.KnownTraits;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * Between which figures a fruit of a line is likely to lie: wide about what is usual for its kind,
 * or for the line where its goal says so. How wide is Slipday's judgement.
 *
 * @param usual for the kind, with what the goal aims at
 * @param reason what says the usual figures
 */
record Likely(Sort sort, Range usual, Reason reason) {
  private static final double NOT_FAR_UNDER = 0.5;
  private static final double[] SLIPS = {0.1, 0.01, 0.001, 10, 100, 1000};

  /** What is weighed, tasted or counted of a fruit. */
  enum Sort {
    WEIGHT(CropFacts.FRUIT_WEIGHT, KnownTraits.FRUIT_WEIGHT, "fruit weight", 0.2, 3),
    SWEETNESS(CropFacts.SOLUBLE_SOLIDS, KnownTraits.SWEETNESS, "soluble solids", 0.25, 1.6),
    SEEDS(CropFacts.SEEDS_PER_FRUIT, "", "seeds a fruit", 0, 3);

    private final FactKey<Range> key;
    private final String trait;
    private final String clause;
    private final double least;
    private final double most;

    /**
     * @param trait as a goal calls it
     * @param clause that says what is usual
     * @param least of the least that is usual
     * @param most of the most that is usual
     */
    Sort(FactKey<Range> key, String trait, String clause, double least, double most) {
      this.key = key;
      this.trait = trait;
      this.clause = clause;
      this.least = least;
      this.most = most;
    }

    String clause() {
      return clause;
    }
  }

  /** Empty where neither line nor crop says what is usual. */
  static Optional<Likely> of(Line line, Sort sort, Garden garden) {
    Optional<Reasoned<Range>> fact = line.facts().get(sort.key);
    if (fact.isEmpty()) {
      return Optional.empty();
    }
    Range usual = fact.get().value();
    for (Goal goal : garden.goals()) {
      if (goal.line().name().equals(line.name())) {
        usual = with(goal, sort, usual);
      }
    }
    return Optional.of(new Likely(sort, usual, fact.get().reason()));
  }

  private static Range with(Goal goal, Sort sort, Range usual) {
    Range wider = usual;
    for (Goal.Aim aim : goal.aims()) {
      if (KnownTraits.key(aim.trait()).equals(sort.trait)) {
        wider = with(aim.at(), wider);
        wider = aim.to().isPresent() ? with(aim.to().get(), wider) : wider;
      }
    }
    return wider;
  }

  private static Range with(Goal.Figure figure, Range usual) {
    double at = figure.quantity().isPresent() ? figure.quantity().get().base() : figure.number();
    return new Range(Math.min(usual.low(), at), Math.max(usual.high(), at));
  }

  boolean isTooMuch(double figure) {
    return figure > sort.most * usual.high();
  }

  boolean isTooLittle(double figure) {
    return figure < sort.least * usual.low();
  }

  private boolean isUsual(double figure) {
    return figure >= usual.low() && figure <= usual.high();
  }

  /**
   * What was likely meant, its point or zeros elsewhere or its unit another, as it would stand in
   * the figure's place: what is usual, or else what is not far under it.
   */
  List<String> meant(SeenFigure seen) {
    List<String> near = new ArrayList<>();
    List<String> best = new ArrayList<>();
    for (double slip : SLIPS) {
      double other = slip < 1 ? seen.written() / Math.rint(1 / slip) : seen.written() * slip;
      double figure = seen.read(other);
      boolean whole = seen.unit().isPresent() || other == Math.rint(other);
      if (whole && figure >= NOT_FAR_UNDER * usual.low() && !isTooMuch(figure)) {
        (isUsual(figure) ? best : near).add(seen.text(slip, other));
      }
    }
    return best.isEmpty() ? near : best;
  }
}
