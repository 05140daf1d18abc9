package slipday.rules.crossing;

import slipday.finding.Level;
import slipday.garden.Planting;
import slipday.garden.PollenReach;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Apart;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** A planting can't be kept from blooming with one it should bloom apart from. */
public final class BloomNotApart implements Rule {
  @Override
  public String id() {
    return "bloom-not-apart";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    season.apart().stream().filter(a -> !a.honoured()).forEach(a -> found(season, a, reporter));
  }

  private static void found(Season season, Apart apart, Reporter reporter) {
    reporter
        .report(
            apart.asking(),
            apart.span(),
            Words.tick(apart.asking().name())
                + " can't bloom apart from "
                + Words.tick(apart.other().name())
                + ".")
        .marked("asked here")
        .also(apart.other().span(), "blooms at the same time")
        .concerns(apart.other())
        .note(
            "The chance that they bloom together all the same is "
                + Words.percent(apart.chance())
                + ", usually on "
                + Words.count(apart.togetherMornings(), "morning", "mornings")
                + ".")
        .note(Words.sentence(apart.reason().says()))
        .because(apart.reason())
        .help(mend(season, apart));
  }

  private static String mend(Season season, Apart apart) {
    if (!cross(apart.asking(), apart.other())) {
      return "They are of kinds that do not cross, so nothing is lost: take this line out.";
    }
    if (apart.lasting()) {
      return "Cover the chosen flowers and pollinate them by hand instead, or cage one of the two.";
    }
    boolean fixed =
        season
            .planting(apart.asking().name())
            .map(PlantingSeason::choice)
            .filter(c -> c.fixed())
            .isPresent();
    return (fixed ? "Leave the date of this planting free, or s" : "S")
        + "ow the other one three or four weeks sooner or later.";
  }

  private static boolean cross(Planting one, Planting other) {
    return PollenReach.degree(one.species(), other.species()).isPresent()
        || PollenReach.degree(other.species(), one.species()).isPresent();
  }
}
