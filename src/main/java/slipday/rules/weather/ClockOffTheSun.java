package slipday.rules.weather;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Locale;
import slipday.finding.Level;
import slipday.garden.Garden;
import slipday.garden.Site;
import slipday.language.PlanClauses;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** The site's clocks run hours off its sun: its time zone or its longitude is another place's. */
public final class ClockOffTheSun implements Rule {
  /** The farthest that people keep their clocks from the sun, in the west of China. */
  private static final double FARTHEST_HOURS = 3;

  private static final int DEGREES_AN_HOUR = 15;

  @Override
  public String id() {
    return "clock-off-the-sun";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Garden garden = season.garden();
    Site site = garden.site();
    double off = hoursOff(site.zone(), garden);
    if (Math.abs(off) > FARTHEST_HOURS) {
      found(site, off, reporter);
    }
  }

  /** Hours the clocks are before the sun, from −12 to 12; summer time left out. */
  private static double hoursOff(ZoneId zone, Garden garden) {
    var midnight = garden.season().first().atStartOfDay(zone).toInstant();
    ZoneOffset standard = zone.getRules().getStandardOffset(midnight);
    double bySun = garden.site().place().value().longitude() / DEGREES_AN_HOUR;
    double off = standard.getTotalSeconds() / 3600.0 - bySun;
    return off - 24 * Math.rint(off / 24);
  }

  private static void found(Site site, double off, Reporter reporter) {
    String hours = String.format(Locale.ROOT, "%.1f", Math.abs(off));
    reporter
        .report(
            site,
            site.places().of(PlanClauses.TIME_ZONE),
            "The clocks of "
                + Words.tick(site.zone().getId())
                + " run "
                + hours
                + " hours "
                + (off > 0 ? "before" : "behind")
                + " the sun at this place.")
        .also(site.places().of(PlanClauses.PLACE), "where the garden lies")
        .note("People keep their clocks within three hours of the sun.")
        .help(mends(site, off));
  }

  private static String mends(Site site, double off) {
    double longitude = site.place().value().longitude();
    double mirrored = off + 2 * longitude / DEGREES_AN_HOUR;
    return Math.abs(mirrored - 24 * Math.rint(mirrored / 24)) <= FARTHEST_HOURS
        ? "East and west seem to be changed over: write `" + (longitude < 0 ? "E" : "W") + "`."
        : "Mend the time zone or the longitude; the hours of dusk and morning hang on both.";
  }
}
