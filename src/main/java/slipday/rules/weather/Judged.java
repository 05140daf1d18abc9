package slipday.rules.weather;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.finding.Mend;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Reason;
import slipday.rules.PlanMends;
import slipday.rules.Reporter;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.DateChoice;
import slipday.season.PlantingSeason;
import slipday.season.Season;
import slipday.source.Span;

/**
 * A planting whose date is judged by one condition. A free date that meets no condition is {@link
 * ImpossibleSeason}'s to tell, with what would mend it.
 *
 * @param chance that the condition is met, 0 to 1
 */
record Judged(PlantingSeason season, Condition condition, double chance) {

  static Stream<Judged> by(Condition condition, Season season) {
    return season.plantings().stream()
        .filter(p -> p.choice().fixed() || p.choice().possible())
        .flatMap(
            p ->
                Optional.ofNullable(p.choice().chances().get(condition)).stream()
                    .map(chance -> new Judged(p, condition, chance)));
  }

  /** Whether the condition is met in fewer years than it should be. */
  boolean fails(double wanted) {
    return chance < wanted - 1e-9;
  }

  Planting planting() {
    return season.planting();
  }

  String name() {
    return Words.tick(planting().name());
  }

  DateChoice choice() {
    return season.choice();
  }

  /** The line that fixes the date, or else the planting. */
  Span place() {
    return placeOf(planting());
  }

  static Span placeOf(Planting planting) {
    return planting
        .places()
        .find(PlanClauses.PLANT_OUT_ON)
        .or(() -> planting.places().find(PlanClauses.SOW_ON))
        .orElseGet(planting::span);
  }

  /** {@code planted out on 1 May 2026}, or sown. */
  String when() {
    return (season.indoors() ? "planted out on " : "sown on ") + Words.day(choice().date());
  }

  /** What the season was reckoned with, and for frost the years it failed in. */
  Reporter.Report told(Reporter.Report report) {
    planting().bed().ifPresent(report::concerns);
    report.concerns(planting().lot());
    shift().ifPresent(report::mend);
    report.because(choice().reason());
    choice().reason().from().stream()
        .map(Reason::says)
        .filter(s -> s.startsWith(condition.met() + ":") && s.contains("; "))
        .findFirst()
        .ifPresent(s -> report.note(Words.sentence(s.substring(s.indexOf("; ") + 2))));
    return report.fact(season.modelReason());
  }

  /** A day the gardener fixed, to the nearest one that meets every condition. */
  private Optional<Mend> shift() {
    boolean helps = choice().fixed() && !choice().recorded() && choice().possible();
    return tooEarly()
        .or(this::tooLate)
        .filter(day -> helps)
        .flatMap(day -> PlanMends.shift(planting(), choice().date(), day));
  }

  private Optional<LocalDate> tooEarly() {
    return choice().earliest().filter(d -> d.isAfter(choice().date()));
  }

  private Optional<LocalDate> tooLate() {
    return choice().latest().filter(d -> d.isBefore(choice().date()));
  }

  /** The first day that suits spring, or what would make one. */
  String later() {
    return tooEarly()
        .map(
            d ->
                verb()
                    + " on "
                    + Words.day(d)
                    + " or later"
                    + bound("before", choice().earlyBound()))
        .orElseGet(this::mends);
  }

  /** The last day from which it still ripens, or what would make one. */
  String sooner() {
    return tooLate()
        .map(
            d ->
                verb()
                    + " on "
                    + Words.day(d)
                    + " or before"
                    + bound("after", choice().lateBound()))
        .orElseGet(this::mends);
  }

  private String bound(String beyond, Condition bound) {
    boolean told = bound == condition || bound == Condition.CALENDAR;
    return told ? "." : "; " + beyond + " that, " + bound.hindrance() + " is in the way.";
  }

  private String verb() {
    String verb = season.indoors() ? "plant out" : "sow";
    return choice().recorded()
        ? "By the record it is done; another year " + verb
        : Words.sentence(verb).replace(".", "");
  }

  private String mends() {
    return mends(choice());
  }

  /** What would make an impossible season possible, in one text. */
  static String mends(DateChoice choice) {
    return String.join(" ", choice.mends());
  }
}
