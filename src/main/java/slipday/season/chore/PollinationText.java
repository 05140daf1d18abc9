package slipday.season.chore;

import java.time.LocalDate;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Cross;
import slipday.garden.Facts;
import slipday.garden.Sex;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.measure.Units;
import slipday.season.PollinationPlan;

/** The words of one pollination by hand. */
final class PollinationText {
  private static final Range USUAL_MALES = new Range(2, 3);

  private static final String BAGGED =
      "The bag must keep out the smallest bee and be tied round the stalk.";
  private static final String TAPED =
      "The tape closes the petals' tips and must hold till you open them.";
  private static final String TOUCHED =
      "Pick a male that sheds, turn back its petals, and touch its pollen to every lobe of the"
          + " stigma.";

  private final PollinationPlan plan;
  private final Units units;
  private final Sex sex;
  private final Facts facts;
  private final String name;
  private final String flowers;
  private final boolean bagged;

  PollinationText(PollinationPlan plan, Units units) {
    this.plan = plan;
    this.units = units;
    this.sex = plan.seedParent().line().sex();
    this.facts = plan.seedParent().facts();
    this.name = plan.subject();
    this.flowers = Words.count(plan.aMorning(), plan.seedParent().fruitingFlower());
    this.bagged = facts.valueOr(CropFacts.BAGGED, true);
  }

  boolean perfect() {
    return sex.fruitingFlowersArePerfect();
  }

  Draft removeAnthers(int morning) {
    return draft(
            ChoreKind.REMOVE_ANTHERS,
            Gathering.begin(ChoreKind.REMOVE_ANTHERS) + flowers + " for " + name,
            morning)
        .says(
            "On "
                + plan.seedParent().name()
                + ", in buds that open tomorrow: slit the petals on one side and lift out every"
                + " anther with fine tweezers before any has shed. Spare the stigma and the small"
                + " fruit.")
        .says(budSign())
        .says("Clean the tweezers in spirit between flowers. Cover the bud at once.");
  }

  Draft cover(int morning) {
    return draft(
            ChoreKind.COVER, Gathering.begin(ChoreKind.COVER) + flowers + " for " + name, morning)
        .says(
            (bagged ? "Bag" : "Tape shut")
                + " what opens tomorrow: "
                + flowers
                + " of "
                + plan.seedParent().name()
                + males().map(m -> ", and " + m).orElse("")
                + ".")
        .says(budSign())
        .says(facts.valueOr(CropFacts.HOW_TO_COVER, bagged ? BAGGED : TAPED));
  }

  Draft pollinate(int morning) {
    return draft(
            ChoreKind.POLLINATE,
            Gathering.begin(ChoreKind.POLLINATE) + flowers + " for " + name,
            morning)
        .says(how())
        .says(facts.get(CropFacts.OPENS).map(o -> "When they open: " + o.value() + "."))
        .says(
            (byInsects()
                    ? "Cover the flower again before an insect comes"
                    : "Cover it again at once")
                + ", and tie on its tag: both parents, the plant's number, the day.")
        .says(bees())
        .says(heat())
        .says("The cover stays for " + Words.days(plan.seedParent().coverStays()) + ".")
        .says(goal());
  }

  Draft uncover() {
    return draft(ChoreKind.UNCOVER, "Uncover withered flowers of " + name)
        .says(
            Words.sentence(
                    Words.days(plan.seedParent().coverStays())
                        + " after its pollination, once it has withered, a flower takes no more"
                        + " pollen: take the cover off")
                + " The tag stays.");
  }

  Draft checkTake(int week) {
    return draft(ChoreKind.CHECK_TAKE, Gathering.begin(ChoreKind.CHECK_TAKE) + name, week)
        .says(
            "Flowers pollinated a week ago or more: swelling is a take; yellow and shrunken has"
                + " failed. Note both, by tag.")
        .says(
            sex == Sex.SETS_WITHOUT_POLLEN
                ? Optional.of("This line sets without pollen: a fruit without seed is no take.")
                : Optional.empty())
        .says(goal());
  }

  Draft stop(LocalDate end) {
    return draft(ChoreKind.STOP, "Stop pollinating for " + name + " if enough have set")
        .says(goal())
        .says(
            "If too few have set, go on, till "
                + Words.day(end)
                + " at the latest: what flowers after that usually ripens no more.");
  }

  private Draft draft(ChoreKind kind, String title, Object... keyParts) {
    Object[] parts = new Object[keyParts.length + 1];
    parts[0] = plan.cross().isPresent() ? "cross" : "own";
    System.arraycopy(keyParts, 0, parts, 1, keyParts.length);
    return new Draft(kind, name, title, parts);
  }

  private Optional<String> budSign() {
    return facts.get(CropFacts.BUD_SIGN).map(s -> "Tomorrow's bud: " + s.value() + ".");
  }

  /** The pollen wanted, such as "8 to 12 males of `x`"; empty where a flower uses its own. */
  private Optional<String> males() {
    Sex pollen = plan.pollenParent().line().sex();
    if (!pollen.hasMaleFlowers()) {
      return plan.cross().map(c -> Words.count(plan.aMorning(), "flower") + ofParent(c));
    }
    Range each = facts.valueOr(CropFacts.MALES_PER_FLOWER, USUAL_MALES);
    String number = Words.whole(each.times(plan.aMorning()));
    return Optional.of(
        number
            + " "
            + plan.pollenParent().males()
            + plan.cross()
                .map(PollinationText::ofParent)
                .orElse(plan.selfing() ? " of the same plants" : " of other plants of it"));
  }

  private static String ofParent(Cross cross) {
    return " of " + cross.pollenParent().name();
  }

  private String how() {
    Optional<String> with = males();
    if (with.isEmpty()) {
      return "Open the cover of each of the "
          + flowers
          + ", and brush or shake its own pollen on to the stigma.";
    }
    String wary =
        plan.pollenParent().line().sex() == Sex.MALE_AND_PERFECT
            ? " Take male flowers: the pollen of perfect ones sets seldom."
            : "";
    return "Covered last evening: "
        + flowers
        + " of "
        + plan.seedParent().name()
        + ", and "
        + with.get()
        + ". "
        + Words.sentence(facts.valueOr(CropFacts.HOW_TO_POLLINATE, TOUCHED))
        + wary;
  }

  private boolean byInsects() {
    return facts.valueOr(CropFacts.POLLEN_BY, "insects").endsWith("insects");
  }

  private String bees() {
    return byInsects()
        ? "Not in rain. A flower that a bee was in first is lost: leave it unmarked and uncovered."
        : "Not in rain or wind. A flower that stood open before you came is lost: leave it"
            + " unmarked.";
  }

  private String heat() {
    return "From when pollen sheds to ten o'clock by the sun."
        + facts
            .get(CropFacts.HEAT)
            .map(Reasoned::value)
            .map(
                h ->
                    " On a day that reaches "
                        + units.inBothScales(h.hinders())
                        + " end sooner; on one of "
                        + units.inBothScales(h.ends())
                        + " leave it, for little or nothing sets.")
            .orElse("");
  }

  private String goal() {
    String from =
        plan.fromPlants().map(p -> ", from " + Words.count(p, "plant") + " or more").orElse("");
    String sure =
        plan.flowersSure()
            .map(s -> ", in 19 of 20 cases by " + Words.count(s, "flower"))
            .orElse("");
    String likely =
        plan.isHopeless()
            ? "No number of flowers makes them likely, as few as take"
            : "They are as likely there as not by "
                + Words.count(plan.flowersLikely(), "flower")
                + sure;
    return "Wanted: "
        + Words.count(plan.wanted(), "fruit")
        + from
        + ". "
        + likely
        + ". "
        + Words.sentence(plan.stop());
  }
}
