package slipday.rules.weather;

import java.util.List;
import java.util.OptionalDouble;
import slipday.climate.Climate;
import slipday.climate.ReadSoil;
import slipday.climate.SoilReading;
import slipday.finding.Level;
import slipday.garden.Site;
import slipday.language.BoundClause;
import slipday.language.PlanClauses;
import slipday.measure.Months;
import slipday.measure.Units;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.season.SoilMoves;

/** The gardener's own readings of the soil move what is planted by a week or more. */
public final class SoilReadingMovesDates implements Rule {
  private static final int WEEK = 7;
  private static final int NOTES = 5;

  /** °C from the estimate at which a lone reading is doubted; by Slipday's judgement. */
  private static final double FAR = 5;

  @Override
  public String id() {
    return "soil-reading-moves-dates";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public Level milderLevel() {
    return Level.NOTE;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    Climate climate = season.climate();
    List<SoilReading> readings = climate.soilReadings();
    if (readings.stream().noneMatch(r -> ReadSoil.isOfSpring(r, climate.axis()))) {
      return; // told-in-vain tells it
    }
    List<SoilMoves.Move> moves = SoilMoves.of(season);
    SoilMoves.Move most = null;
    for (SoilMoves.Move move : moves) {
      if (most == null || Math.abs(move.days()) > Math.abs(most.days())) {
        most = move;
      }
    }
    if (most != null && Math.abs(most.days()) >= WEEK) {
      found(season, moves, most, reporter);
    }
  }

  private static void found(
      Season season, List<SoilMoves.Move> moves, SoilMoves.Move most, Reporter reporter) {
    Climate climate = season.climate();
    Site site = season.garden().site();
    Units units = season.garden().units();
    List<SoilReading> readings = climate.soilReadings();
    List<BoundClause> clauses = site.places().block().every(PlanClauses.SOIL_READING).toList();
    int farthest = farthest(climate, readings);
    double off = off(climate, readings.get(farthest)).orElse(0);
    boolean lone = readings.size() == 1;
    boolean doubtful = lone && Math.abs(off) >= FAR;
    Reporter.Report report =
        reporter
            .report(
                doubtful,
                site,
                clauses.get(farthest).span(),
                (lone ? "One reading of the soil moves " : "Readings of the soil move ")
                    + Words.tick(most.planting().name())
                    + " by "
                    + Math.abs(most.days())
                    + " days, from "
                    + Months.day(most.without())
                    + " to "
                    + Months.day(most.with())
                    + (moves.size() == 1
                        ? "."
                        : ", and "
                            + Words.count(moves.size() - 1, "other planting", "other plantings")
                            + " with it."))
            .marked(lone ? "read once" : "farthest from the estimate");
    for (int i = 0; i < clauses.size(); i++) {
      if (i != farthest) {
        report.also(clauses.get(i).span(), "read too");
      }
    }
    moves.forEach(m -> report.concerns(m.planting()));
    readings.stream().limit(NOTES).forEach(r -> report.note(beside(climate, r, units)));
    report
        .because(
            (climate.usableYears().isEmpty()
                ? climate.readSoil().reason(units)
                : climate.soil().reason(units)))
        .help(
            (doubtful
                    ? "Look whether figure, unit and day are right, and whether it was read at"
                        + " sowing depth, in the morning, in the bed and out of the sun. "
                    : "")
                + "A reading goes before any estimate. "
                + (lone
                    ? "Read again a week or two later: a second reading makes the date surer."
                    : "Read on until you plant: each makes the date surer."));
  }

  /** The reading farthest from what the air tells; the first where that is not known. */
  private static int farthest(Climate climate, List<SoilReading> readings) {
    int farthest = 0;
    double most = -1;
    for (int i = 0; i < readings.size(); i++) {
      double off = Math.abs(off(climate, readings.get(i)).orElse(0));
      if (off > most) {
        most = off;
        farthest = i;
      }
    }
    return farthest;
  }

  /** °C that a reading is warmer than the estimate from the air. */
  private static OptionalDouble off(Climate climate, SoilReading reading) {
    OptionalDouble byAir = climate.soilByAir(reading.slot());
    return byAir.isEmpty() ? byAir : OptionalDouble.of(reading.celsius() - byAir.getAsDouble());
  }

  private static String beside(Climate climate, SoilReading reading, Units units) {
    OptionalDouble off = off(climate, reading);
    String read =
        units.temperature(reading.celsius())
            + " was read on "
            + Months.day(climate.axis().dateOf(reading.slot()));
    if (off.isEmpty()) {
      return read + "; without a weather record nothing tells whether that is usual.";
    }
    double by = off.getAsDouble();
    return read
        + ", "
        + units.difference(Math.abs(by))
        + (by < 0 ? " colder" : " warmer")
        + " than the soil is estimated to be from the air of the years.";
  }
}
