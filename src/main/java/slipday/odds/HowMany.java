package slipday.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slipday.measure.Quantity;

/** Plants to grow, seeds to sow, flowers to pollinate: trials of which enough should come out. */
public final class HowMany {
  private static final List<Double> DEGREES = List.of(0.5, 0.8, 0.9, 0.95, 0.99);
  private static final String SEDCOLE =
      "J. R. Sedcole 1977, Crop Science 17:667 (from memory): the least number of plants at which"
          + " the chance is met.";
  private static final String JEFFREYS =
      "Half a count is added to either side (Jeffreys' prior; Brown, Cai and DasGupta 2001,"
          + " Statistical Science 16:101, from memory): what was seen is a sample only.";
  private static final String SKELLAM =
      "J. G. Skellam 1948, Journal of the Royal Statistical Society B 10:257 (from memory): the"
          + " beta-binomial law.";

  private static final double HAIR = 1e-6;
  private static final double BEYOND = 0.05;

  private final int wanted;
  private final Rate rate;
  private final double sure;

  /**
   * @param wanted how many are to come out, 1 or more
   * @param sure how sure to be, between 0 and 1 without either
   */
  public HowMany(int wanted, Rate rate, double sure) {
    if (wanted < 1 || !(sure > 0 && sure < 1)) {
      throw new IllegalArgumentException(wanted + " wanted, sure " + sure);
    }
    this.wanted = wanted;
    this.rate = rate;
    this.sure = sure;
  }

  /**
   * Plants to grow.
   *
   * @param because how the share came about, a sentence each; may be empty
   */
  public Reckoning plants(List<String> because) {
    OptionalInt answer = rate.needed(wanted, sure);
    String type = wanted + " or more of a type that comes at " + rate.words();
    String says =
        answer.isEmpty()
            ? none() + "no number of plants that a garden holds is sure to give " + type + "."
            : "Grow " + Words.count(answer.getAsInt(), "plant") + " for " + type + ", " + in();
    List<String> steps = new ArrayList<>(because);
    steps.add(
        "Each plant is of the type with a chance of "
            + Rate.percent(rate.middle())
            + ", whatever the others are.");
    List<String> next = new ArrayList<>();
    answer.ifPresent(
        n ->
            next.add(
                "These are plants that live to be judged; for the seed that takes: slipday odds sow "
                    + n
                    + " at 44 of 50"));
    return reckoning("find", answer, "plants", says, steps, next, "plant");
  }

  /** Seeds to sow for so many plants. */
  public Reckoning seeds() {
    OptionalInt answer = rate.needed(wanted, sure);
    String plants = Words.count(wanted, "plant");
    String says =
        answer.isEmpty()
            ? none()
                + "no number of seeds in reach is sure to give "
                + plants
                + "; the lot is as good as dead."
            : "Sow "
                + Words.count(answer.getAsInt(), "seed")
                + " for "
                + plants
                + " or more"
                + ", "
                + in();
    List<String> steps = new ArrayList<>(List.of("Germination is " + rate.words() + "."));
    List<String> next =
        List.of(
            answer.isEmpty()
                ? "Grow another lot, or sow all of it and call each seedling luck."
                : "Seedlings that die later are not in this; sow the more for slugs and damping"
                    + " off.");
    return reckoning("sow", answer, "seeds", says, steps, next, "seed");
  }

  /** Flowers to pollinate by hand for so many fruits. */
  public Reckoning flowers() {
    OptionalInt answer = rate.needed(wanted, sure);
    OptionalInt even = rate.needed(wanted, DEGREES.get(0));
    String fruits = Words.count(wanted, "fruit");
    String says =
        answer.isEmpty()
            ? none() + "no number of flowers in reach is sure to give " + fruits + "."
            : "Pollinate up to "
                + Words.count(answer.getAsInt(), "flower")
                + " for "
                + fruits
                + " or more"
                + ", "
                + in();
    List<String> steps = new ArrayList<>(List.of("The take is " + rate.words() + "."));
    List<String> next = new ArrayList<>();
    even.ifPresent(
        n ->
            next.add(
                "Begin with "
                    + Words.count(n, "flower")
                    + ", which is enough as often as not. Look after a week, and stop when "
                    + (wanted == 1 ? "1 has" : wanted + " have")
                    + " set."));
    next.add(
        "The flowers of one vine take or fail together, which is not reckoned in: spread them over"
            + " vines and days, and count on more.");
    next.add(
        rate instanceof Rate.Certain
            ? "A take given as a share is taken as certain; given as counts, such as 3 of 20, its"
                + " own doubt is reckoned in."
            : "No vine carries more than it can; more than its crop bears drops again.");
    return reckoning("pollinate", answer, "flowers", says, steps, next, "flower");
  }

  /** Begins the sentence where nothing came of what was tried. */
  private String none() {
    return rate instanceof Rate.Counted counted && counted.hits() == 0
        ? "Hardly any comes, for none of " + counted.of() + " did: "
        : "By that rate ";
  }

  private String in() {
    return "with a chance of " + Rate.percent(sure) + ".";
  }

  private Reckoning reckoning(
      String question,
      OptionalInt answer,
      String unit,
      String says,
      List<String> steps,
      List<String> next,
      String one) {
    List<String> sources = new ArrayList<>();
    if (rate instanceof Rate.Counted none && none.hits() == 0) {
      double most = 1 - Math.pow(BEYOND, 1.0 / none.of());
      steps.add(
          "None of "
              + none.of()
              + " still comes with a chance of 5 % where the rate is "
              + Rate.percent(most)
              + ", so it is likely less than that, and how much less nothing tells.");
    } else if (rate instanceof Rate.Counted counted) {
      steps.add(
          "So small a count may have come of a better or a worse rate: it is held as Beta("
              + Quantity.plain(counted.hits() + 0.5)
              + ", "
              + Quantity.plain(counted.of() - counted.hits() + 0.5)
              + "), and all "
              + unit
              + " share the one unknown rate.");
      sources.add(JEFFREYS);
      sources.add(SKELLAM);
    } else {
      sources.add(SEDCOLE);
    }
    answer.ifPresent(n -> steps.addAll(proof(n, one)));
    return new Reckoning(
        question, answer, unit, says, sure, rows(), List.of(), steps, sources, next);
  }

  /** The chances of falling short with that many, and with one fewer. */
  private List<String> proof(int n, String one) {
    List<String> proof = new ArrayList<>();
    double bearable = 1 - sure;
    if (wanted == 1 && rate instanceof Rate.Certain certain && certain.share() < 1) {
      proof.add(closedForm(certain.share(), n));
    }
    String fewer = wanted == 1 ? "none" : "fewer than " + wanted;
    proof.add(
        "By the "
            + rate.law()
            + " "
            + fewer
            + " come out of "
            + Words.count(n, one)
            + " with a chance of "
            + Rate.percent(1 - rate.enough(n, wanted))
            + (n > wanted
                ? ", and out of "
                    + Words.count(n - 1L, one)
                    + " with "
                    + Rate.percent(1 - rate.enough(n - 1, wanted))
                : "")
            + "; "
            + Rate.percent(bearable)
            + " is borne.");
    return proof;
  }

  /** For one plant: ln(1 − p) ÷ ln(1 − q), rounded up. */
  private String closedForm(double share, int n) {
    double exact = Math.log1p(-sure) / Math.log1p(-share);
    return "None among n: (1 − "
        + Quantity.plain(share)
        + ")ⁿ is to be "
        + Rate.percent(1 - sure)
        + " at most; n = ln "
        + Quantity.plain(1 - sure)
        + " ÷ ln "
        + Quantity.plain(1 - share)
        + " = "
        + Quantity.plain(Math.round(exact * 100) / 100.0)
        + ", "
        + (Math.abs(exact - n) < HAIR ? "which is " + n : "and the next whole number is " + n)
        + ".";
  }

  private List<Reckoning.Row> rows() {
    if (rate instanceof Rate.Counted counted && counted.hits() == 0) {
      return List.of();
    }
    List<Double> degrees = new ArrayList<>(DEGREES);
    if (!degrees.contains(sure)) {
      degrees.add(sure);
      degrees.sort(null);
    }
    return degrees.stream()
        .map(d -> new Reckoning.Row(Rate.percent(d) + " sure", rate.needed(wanted, d), ""))
        .toList();
  }
}
