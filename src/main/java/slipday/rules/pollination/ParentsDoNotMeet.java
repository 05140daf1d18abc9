package slipday.rules.pollination;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.Cross;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.DateChoice;
import slipday.season.Event;
import slipday.season.Nicking;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** The parents of a cross are not in flower together often enough. */
public final class ParentsDoNotMeet implements Rule {
  private static final double AS_OFTEN_AS_NOT = 0.5;
  private static final double SURE = 0.95;

  @Override
  public String id() {
    return "parents-do-not-meet";
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
    season.nickings().stream()
        .filter(n -> n.chance() < SURE - 1e-9)
        .filter(n -> CrossCannotBeMade.obstacles(season, n.cross()).isEmpty())
        .forEach(n -> found(season, n, reporter));
  }

  private static void found(Season season, Nicking nicking, Reporter reporter) {
    Cross cross = nicking.cross();
    Reporter.Report report =
        reporter
            .report(
                nicking.chance() < AS_OFTEN_AS_NOT,
                cross,
                cross.places().of(PlanClauses.POLLEN_PARENT),
                "The parents of cross "
                    + Words.tick(cross.name())
                    + " are in flower together in "
                    + Words.percent(nicking.chance())
                    + " of years.")
            .also(cross.seedParent().span(), "bears the fruit")
            .also(cross.pollenParent().span(), "gives the pollen")
            .concerns(cross.seedParent())
            .concerns(cross.pollenParent())
            .because(nicking.reason());
    if (nicking.mornings().many() > 0) {
      report.note(
          "Usually on "
              + Words.count(nicking.mornings().usual(), "morning", "mornings")
              + " ("
              + nicking.mornings().few()
              + " to "
              + nicking.mornings().many()
              + ") that leave a fruit time to ripen.");
    }
    season.planting(cross.pollenParent().name()).ifPresent(p -> flowers(p, true, report));
    season.planting(cross.seedParent().name()).ifPresent(p -> flowers(p, false, report));
    report.help(mend(season, nicking));
  }

  private static void flowers(PlantingSeason p, boolean pollen, Reporter.Report report) {
    boolean males = pollen && p.planting().line().sex().hasMaleFlowers();
    Event event = males ? Event.FIRST_MALE : Event.FIRST_FRUITING;
    p.date(event)
        .flatMap(d -> d.value().usual())
        .ifPresent(
            first ->
                report.note(
                    Words.tick(p.name())
                        + " usually has its "
                        + event.words()
                        + " on "
                        + Words.day(first)
                        + p.date(Event.BLOOM_ENDS)
                            .flatMap(d -> d.value().usual())
                            .map(end -> ", and the last of its bloom on " + Words.day(end))
                            .orElse("")
                        + "."));
  }

  private static String mend(Season season, Nicking nicking) {
    String seed = nicking.cross().seedParent().name();
    String pollen = nicking.cross().pollenParent().name();
    boolean fixed = fixed(season, seed) || fixed(season, pollen);
    String free = fixed ? "Leave the fixed dates free, so that they can be set to meet. " : "";
    Optional<LocalDate> fruiting = usual(season, seed, Event.FIRST_FRUITING);
    Optional<LocalDate> shedding =
        usual(season, pollen, Event.FIRST_MALE)
            .or(() -> usual(season, pollen, Event.FIRST_FRUITING));
    if (fruiting.isEmpty() || shedding.isEmpty()) {
      return free + "Grow a parent that flowers here in most years.";
    }
    int late = (int) ChronoUnit.DAYS.between(fruiting.get(), shedding.get());
    return free
        + (late > 0
            ? nearer(season, pollen, seed, late)
            : nearer(season, seed, pollen, Math.max(1, -late)));
  }

  /** What brings the flowers of two together, as far as the season of each leaves room. */
  private static String nearer(Season season, String late, String early, int days) {
    int sooner = season.planting(late).map(p -> room(p, true)).orElse(0);
    int later = season.planting(early).map(p -> room(p, false)).orElse(0);
    List<String> ways = new ArrayList<>();
    if (sooner >= days) {
      ways.add("start " + Words.tick(late) + " about " + count(days) + " sooner");
    }
    if (later >= days) {
      ways.add("start " + Words.tick(early) + " about " + count(days) + " later, or twice");
    }
    if (ways.isEmpty() && sooner > 0 && later > 0 && sooner + later >= days) {
      String both = Words.tick(late) + " " + count(sooner) + " sooner and " + Words.tick(early);
      ways.add("start " + both + " " + count(days - sooner) + " later");
    }
    if (!ways.isEmpty()) {
      return Words.sentence(String.join(", or ", ways));
    }
    return Words.tick(late)
        + " would have to start "
        + count(days)
        + " sooner, or "
        + Words.tick(early)
        + " as much later, and their seasons here have no room for that. Raise "
        + Words.tick(late)
        + " under a cover, or cross it with a line that flowers nearer to it.";
  }

  /** Days that a planting can be moved within what spring, or ripening, allows. */
  private static int room(PlantingSeason planting, boolean sooner) {
    DateChoice choice = planting.choice();
    Optional<LocalDate> bound = sooner ? choice.earliest() : choice.latest();
    return bound
        .map(d -> (int) ChronoUnit.DAYS.between(d, choice.date()) * (sooner ? 1 : -1))
        .filter(d -> d > 0)
        .orElse(0);
  }

  private static String count(int days) {
    return Words.count(days, "day", "days");
  }

  private static Optional<LocalDate> usual(Season season, String planting, Event event) {
    return season.planting(planting).flatMap(p -> p.date(event)).flatMap(d -> d.value().usual());
  }

  private static boolean fixed(Season season, String planting) {
    return season.planting(planting).filter(p -> p.choice().fixed()).isPresent();
  }
}
