package slipday.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import slipday.climate.Climate;
import slipday.climate.FrostSide;
import slipday.climate.SeasonAxis;
import slipday.climate.SiteClimateInput;
import slipday.climate.SitePlace;
import slipday.climate.SoilReading;
import slipday.climate.StatedFrost;
import slipday.climate.WeatherRecord;
import slipday.garden.SeasonYear;
import slipday.garden.Site;
import slipday.language.PlanClauses;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** From what a plan says of its site to the climate there. */
public final class SiteClimate {
  /** Where only the usual frost is told: one year in ten it comes this many days beyond. */
  private static final int USUAL_SPREAD = 14;

  private final Site site;
  private final SeasonYear season;
  private final SeasonAxis axis;

  private SiteClimate(Site site, SeasonYear season, SitePlace place) {
    this.site = site;
    this.season = season;
    this.axis = new SeasonAxis(place.hemisphere(), season.year());
  }

  /**
   * @param record the site's weather record, where it has one that could be read
   */
  public static Climate of(Site site, SeasonYear season, Optional<WeatherRecord> record) {
    Site.Place p = site.place().value();
    SitePlace place = new SitePlace(p.latitude(), p.longitude(), p.height().orElse(0.0));
    return new SiteClimate(site, season, place).read(place, record);
  }

  private Climate read(SitePlace place, Optional<WeatherRecord> record) {
    return Climate.of(
        new SiteClimateInput(
            place,
            site.zone(),
            season.year(),
            record,
            offset(),
            Optional.empty(),
            site.lastFrost().map(f -> frost(f, FrostSide.SPRING)),
            site.firstFrost().map(f -> frost(f, FrostSide.AUTUMN)),
            soil(),
            site.units()));
  }

  private Optional<Reasoned<Double>> offset() {
    if (site.warmerThanStation() == 0) {
      return Optional.empty();
    }
    var clause = site.warmerThanStation() < 0 ? PlanClauses.COLDER : PlanClauses.WARMER;
    return Optional.of(new Reasoned<>(site.warmerThanStation(), site.places().reason(clause)));
  }

  private int slot(MonthDay day) {
    return axis.slotOf(season.on(day));
  }

  private StatedFrost frost(Site.StatedFrost stated, FrostSide side) {
    int usual = slot(stated.usual());
    int way = side == FrostSide.SPRING ? 1 : -1;
    int beyond =
        stated.odds().map(o -> oneInTen(usual, slot(o.day()), o.share())).orElse(USUAL_SPREAD);
    Reason reason =
        stated.odds().isPresent()
            ? stated.reason()
            : Reason.derived(
                "one year in ten taken as " + USUAL_SPREAD + " days beyond the usual",
                stated.reason(),
                Reason.byDefault("14 days to the 1-in-10 frost, where the plan tells none"));
    return StatedFrost.of(side, axis, usual, usual + way * Math.max(1, Math.abs(beyond)), reason);
  }

  /** Days from the usual frost to the 1-in-10 one, from any other odds, on a normal. */
  private static int oneInTen(int usual, int day, double share) {
    NormalDistribution standard = NormalDistribution.of(0, 1);
    double z = standard.inverseSurvivalProbability(Math.min(0.49, Math.max(0.001, share)));
    return (int) Math.round(Math.abs(day - usual) / z * standard.inverseSurvivalProbability(0.1));
  }

  private List<SoilReading> soil() {
    return site.soil().stream()
        .map(
            r -> {
              LocalDate date =
                  r.value().day().date().orElseGet(() -> season.on(r.value().day().day()));
              // A reading of another year tells of the same day of this one.
              int slot = Math.floorMod(axis.slotOf(date), SeasonAxis.SLOTS);
              return new SoilReading(slot, r.value().celsius());
            })
        .toList();
  }
}
