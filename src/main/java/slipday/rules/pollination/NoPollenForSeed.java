package slipday.rules.pollination;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Cross;
import slipday.garden.FlowerCare;
import slipday.garden.Planting;
import slipday.garden.Sex;
import slipday.language.PlanClauses;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Exposure;
import slipday.season.Season;

/** Seed is wanted of a planting that no pollen reaches: its own, a neighbour's or by hand. */
public final class NoPollenForSeed implements Rule {
  private static final String INSECTS = "insects";
  private static final String LEAVE = "Leave those flowers on, and cover the chosen. ";
  private static final String DONOR =
      "Pollinate it by hand with a line that has males, as a `cross`; or grow such a line beside it"
          + " and leave its flowers open.";
  private static final String OPEN =
      "Open the cage at dawn and pollinate it by hand (`pollinate sib by hand`), or put flies or"
          + " bees in.";

  @Override
  public String id() {
    return "no-pollen-for-seed";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Set<String> pollinated = new HashSet<>();
    season.exposures().stream()
        .filter(Exposure::sameSpecies)
        .forEach(e -> pollinated.add(e.receiver().name()));
    season.garden().crosses().stream()
        .map(Cross::seedParent)
        .map(Planting::name)
        .forEach(pollinated::add);
    for (Planting planting : season.garden().plantings()) {
      boolean wanted = planting.seedSaved() && !planting.facts().valueOr(CropFacts.BIENNIAL, false);
      if (wanted) {
        judge(planting, pollinated.contains(planting.name()), reporter);
      }
    }
  }

  private static void judge(Planting planting, boolean donor, Reporter reporter) {
    Sex sex = planting.line().sex();
    FlowerCare.How how = planting.flowers().how();
    boolean byHand = planting.pollination().isPresent();
    if (how == FlowerCare.How.FEMALES_REMOVED || how == FlowerCare.How.ALL_REMOVED) {
      found(true, planting, "the flowers that bear it are removed", LEAVE.strip(), reporter);
    } else if (!sex.shedsPollen() && (byHand || !donor)) {
      found(true, planting, "it is " + sex.words() + " and has no pollen", DONOR, reporter);
    } else if (how == FlowerCare.How.MALES_REMOVED && !sex.fruitingFlowersArePerfect() && !donor) {
      found(
          true,
          planting,
          "its males are removed and no other pollen reaches it",
          LEAVE + DONOR,
          reporter);
    } else if (sex == Sex.SETS_WITHOUT_POLLEN && !byHand && !donor) {
      found(
          false, planting, "it sets without pollen, and such fruit holds no seed", DONOR, reporter);
    } else if (how == FlowerCare.How.CAGED && !byHand && !donor && byInsects(planting)) {
      found(false, planting, "no insect gets into its cage", OPEN, reporter);
    }
  }

  private static boolean byInsects(Planting planting) {
    Optional<Reasoned<String>> vector = planting.facts().get(CropFacts.POLLEN_BY);
    return vector.filter(v -> v.value().equals(INSECTS)).isPresent();
  }

  private static void found(
      boolean grave, Planting planting, String why, String help, Reporter reporter) {
    Reporter.Report report =
        reporter
            .report(
                grave,
                planting,
                planting.places().of(PlanClauses.SEED),
                "No seed will come of " + Words.tick(planting.name()) + ": " + why + ".")
            .marked("seed is wanted here")
            .concerns(planting.lot())
            .concerns(planting.line());
    planting.places().find(PlanClauses.FLOWERS).ifPresent(f -> report.also(f, "its flowers"));
    planting.facts().get(CropFacts.SEX).ifPresent(s -> report.fact(s.reason()));
    report.help(help);
    planting.bed().ifPresent(report::concerns);
  }
}
