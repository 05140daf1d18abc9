package slipday.rules.record;

import java.util.LinkedHashMap;
import java.util.Map;
import slipday.finding.Level;
import slipday.garden.Line;
import slipday.garden.record.Fact;
import slipday.garden.record.Plants;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;
import slipday.source.Span;

/** Seed was kept of a plant that is not what its label says. */
public final class SeedOfOffType implements Rule {
  @Override
  public String id() {
    return "seed-of-off-type";
  }

  @Override
  public Level level() {
    return Level.ERROR;
  }

  @Override
  public Level milderLevel() {
    return Level.NOTE;
  }

  /** Why a plant is out, and where that is told. */
  private record Out(Span span, String words) {}

  @Override
  public void check(Season season, Reporter reporter) {
    Map<Plants, Out> out = new LinkedHashMap<>();
    season
        .garden()
        .record()
        .every(Fact.Lost.class)
        .filter(l -> l.rogued() && l.plants().plant().isPresent())
        .forEach(l -> out.putIfAbsent(l.plants(), new Out(l.span(), "was rogued")));
    season
        .garden()
        .record()
        .every(Fact.OffType.class)
        .filter(o -> o.plants().plant().isPresent())
        .forEach(o -> out.putIfAbsent(o.plants(), new Out(o.span(), "is an off-type")));
    Taking.of(season)
        .forEach(
            t ->
                t.parents()
                    .filter(out::containsKey)
                    .findFirst()
                    .ifPresent(
                        p ->
                            found(
                                t,
                                p,
                                out.getOrDefault(p, new Out(t.saved().span(), "")),
                                reporter)));
  }

  /** Kept for curiosity: on trial, or as a line of its own. */
  private static boolean isApart(Taking taking) {
    return taking.lot().line().purpose() == Line.Purpose.TRIAL
        || !taking.lot().line().name().equals(taking.stand().lot().line().name());
  }

  private static void found(Taking taking, Plants plant, Out out, Reporter reporter) {
    taking
        .report(
            reporter,
            !isApart(taking),
            "The seed of "
                + taking.name()
                + " is kept, and "
                + Words.tick(plant.toString())
                + " "
                + out.words
                + ".")
        .also(out.span, out.words)
        .note("What made the plant differ goes on in its seed, and in its pollen.")
        .help(
            "Leave it out of the line; if it is worth a look, save it into a line of its own `on"
                + " trial`, and grow that apart.");
  }
}
