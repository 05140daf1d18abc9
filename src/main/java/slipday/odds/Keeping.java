package slipday.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slipday.garden.CropFacts.Population;
import slipday.genetics.EffectiveSize;
import slipday.genetics.Odds;
import slipday.measure.Quantity;
import slipday.measure.Reasoned;

/** How many plants it takes to keep a line: the trade's figure, and what follows from chance. */
public final class Keeping {
  private static final String MARSHALL =
      "D. R. Marshall and A. H. D. Brown 1975, in Crop Genetic Resources for Today and Tomorrow, 53"
          + " (from memory): 59 genes hold an allele of 5 % with a chance of 95 %.";
  private static final String WRIGHT =
      "S. Wright 1931, Genetics 16:97 (from memory): each generation loses 1 ÷ (2·Ne) of what"
          + " heterozygosity is left.";
  private static final String CROW =
      "J. F. Crow and M. Kimura 1970, An Introduction to Population Genetics Theory, chapter 7 (from"
          + " memory): (4·N − 2) ÷ (V + 2), V the variance of what the plants give to the next"
          + " generation, as mothers and as fathers.";

  /** V of fathers at random, where the mothers give as much seed each. */
  private static final int MOTHERS_ALIKE = 1;

  private static final double HAIR = 1e-9;

  private final double rare;
  private final double kept;
  private final int generations;
  private final double sure;

  /**
   * @param rare the share of all genes that an allele not to be lost has, above 0 and below 1
   * @param kept the share of heterozygosity to be left at the end, above 0 and below 1
   * @param generations how many times it is grown on, 1 or more
   * @param sure how sure to be of the allele, between 0 and 1 without either
   */
  public Keeping(double rare, double kept, int generations, double sure) {
    this.rare = rare;
    this.kept = kept;
    this.generations = generations;
    this.sure = sure;
  }

  /**
   * @param crop the crop's name; empty where none is asked about
   * @param population its figure; empty where it has none
   */
  public Reckoning reckon(Optional<String> crop, Optional<Reasoned<Population>> population) {
    OptionalInt genes = Odds.plantsNeeded(rare, 1, sure);
    double size = EffectiveSize.toKeep(kept, generations);
    int mixed = (int) Math.ceil(size - HAIR);
    List<Reckoning.Row> rows = new ArrayList<>();
    population.map(Reasoned::value).ifPresent(p -> rows.addAll(crop(p)));
    String allele = "no allele of " + Rate.percent(rare) + " lost, " + Rate.percent(sure) + " sure";
    OptionalInt outbred = halved(genes);
    rows.add(new Reckoning.Row(allele, outbred, "two genes a plant, if they are not inbred"));
    rows.add(new Reckoning.Row("the same, of inbred plants", genes, "a plant counts as one gene"));
    String diversity =
        Rate.percent(kept)
            + " of heterozygosity left after "
            + Words.count(generations, "generation");
    rows.add(new Reckoning.Row(diversity, OptionalInt.of(mixed), "mated at random"));
    int mothers = plants(size, MOTHERS_ALIKE);
    int both = plants(size, 0);
    rows.add(
        new Reckoning.Row(
            "the same, with as much seed of each",
            OptionalInt.of(mothers),
            "fathers as they come, by bees or by chance"));
    rows.add(
        new Reckoning.Row(
            "the same, each as often father too",
            OptionalInt.of(both),
            "by hand: pollen of each for as many fruits"));
    int answer =
        population
            .map(p -> (int) Math.round(p.value().toKeep().low()))
            .orElse(Math.max(outbred.orElse(Odds.MOST), mixed));
    List<String> sources = new ArrayList<>();
    population.ifPresent(p -> sources.add(p.reason().says() + "."));
    sources.addAll(List.of(MARSHALL, WRIGHT, CROW));
    return new Reckoning(
        "keep",
        OptionalInt.of(answer),
        "plants",
        says(crop, population, answer),
        sure,
        rows,
        List.of(),
        steps(genes, outbred, size, mothers, both),
        sources,
        List.of(
            "Take seed of as many plants as that, as much of each, and mix it; keep some of every"
                + " year as a remnant. Where that is too many, pollinate by hand with pollen of each"
                + " plant as often as it bears seed.",
            "A line that is being fixed goes through few plants on purpose; this is for one that is"
                + " to stay as it is."));
  }

  /** N out of Ne. */
  private static int plants(double size, int variance) {
    return (int) Math.ceil((size * (variance + 2) + 2) / 4 - HAIR);
  }

  private static OptionalInt halved(OptionalInt genes) {
    return genes.isEmpty() ? genes : OptionalInt.of((genes.getAsInt() + 1) / 2);
  }

  private static List<Reckoning.Row> crop(Population p) {
    return List.of(
        new Reckoning.Row("for any seed", OptionalInt.of(p.forSeed()), "the trade's figure"),
        new Reckoning.Row(
            "to keep the line",
            OptionalInt.of((int) Math.round(p.toKeep().low())),
            p.toKeep().isSingle() ? "the trade's figure" : "the trade's figure: " + p.toKeep()),
        new Reckoning.Row(
            "for all its diversity", OptionalInt.of(p.forDiversity()), "the trade's figure"));
  }

  private static String says(
      Optional<String> crop, Optional<Reasoned<Population>> population, int answer) {
    if (population.isPresent()) {
      Population p = population.get().value();
      return "To keep a line of "
          + crop.orElse("it")
          + ", save seed of "
          + p.toKeep()
          + " plants or more; of "
          + p.forDiversity()
          + " where all its diversity is to stay.";
    }
    return crop.map(c -> "No figure is known for " + c + "; by the reckoning below, save seed of ")
            .orElse("Save seed of ")
        + Words.count(answer, "plant")
        + " or more.";
  }

  private List<String> steps(
      OptionalInt genes, OptionalInt outbred, double size, int mothers, int both) {
    List<String> steps = new ArrayList<>();
    genes.ifPresent(
        g ->
            steps.add(
                "An allele that is "
                    + Rate.percent(rare)
                    + " of all genes is in none of "
                    + g
                    + " with a chance of (1 − "
                    + Quantity.plain(rare)
                    + ") to the power "
                    + g
                    + " = "
                    + Rate.percent(Math.pow(1 - rare, g))
                    + "; a plant that is not inbred carries two genes, so "
                    + Words.count(outbred.orElse(Odds.MOST), "plant")
                    + "."));
    steps.add(
        "Of heterozygosity (1 − 1 ÷ (2·Ne)) to the power "
            + generations
            + " is left; that is "
            + Rate.percent(kept)
            + " where Ne, the effective size, is "
            + Quantity.plain(Math.round(size * 10) / 10.0)
            + ".");
    steps.add(
        "As much seed of each plant evens out the mothers alone: with fathers at random V is 1, so"
            + " Ne is (4·N − 2) ÷ 3, and "
            + Words.count(mothers, "plant")
            + " will do; where each is a father as often too, V is 0, Ne is (4·N − 2) ÷ 2, and "
            + both
            + " will.");
    steps.add(
        "Plants that give unlike amounts of seed count as fewer: 1 ÷ the sum of their squared"
            + " shares.");
    return steps;
  }
}
