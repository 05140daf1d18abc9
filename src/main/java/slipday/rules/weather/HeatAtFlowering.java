package slipday.rules.weather;

import java.time.LocalDate;
import java.util.Optional;
import slipday.caution.Caution;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Condition;
import slipday.season.Event;
import slipday.season.Season;

/** The first flowers open in days too hot to set, in most years. */
public final class HeatAtFlowering implements Rule {
  private static final double USUALLY = 0.5;

  @Override
  public String id() {
    return "heat-at-flowering";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Judged.by(Condition.HEAT, season)
        .filter(j -> j.fails(USUALLY))
        .forEach(j -> found(j, reporter));
  }

  private static void found(Judged judged, Reporter reporter) {
    Optional<LocalDate> first =
        judged.season().date(Event.FIRST_FRUITING).flatMap(d -> d.value().usual());
    Reporter.Report report =
        reporter.report(
            judged.planting(),
            judged.place(),
            judged.name()
                + ", "
                + judged.when()
                + ", opens its first fruiting flowers"
                + first.map(d -> " about " + Words.day(d)).orElse("")
                + " in days mostly too hot to set, in "
                + Words.percent(1 - judged.chance())
                + " of years.");
    judged
        .told(report)
        .note(Caution.WORK_IN_HEAT.words())
        .help(
            "Plant it some weeks sooner or later, so that it flowers outside the hottest weeks;"
                + " pollinate at first light, and shade the plants at noon.");
    judged.planting().facts().get(CropFacts.HEAT).ifPresent(h -> report.fact(h.reason()));
  }
}
