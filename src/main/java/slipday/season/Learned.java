package slipday.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.garden.record.Stand;
import slipday.genetics.Shrunken;
import slipday.measure.Quantity;
import slipday.measure.Reason;

/**
 * What the record of all seasons teaches of a line: when it flowers, how long it takes to ripen.
 */
final class Learned {
  /** Ends of a range are the 10 and 90 % points, as the paces of a walk are. */
  private static final double TENTH = 1.2815515655446004;

  /** A figure told without a range is no surer than this share of itself. */
  private static final double LEAST_SPREAD = 0.05;

  /** States in which a fruit was picked at its own time. */
  private static final Set<String> IN_TIME = Set.of("full slip", "half slip");

  private final int season;
  private final Map<String, List<FruitStory>> ripened = new HashMap<>();
  private final Map<String, Map<Stand, Flowering>> flowered = new HashMap<>();

  /** The days of one stand, where recorded. */
  static final class Flowering {
    private final Map<Event, Fact> firsts = new HashMap<>();

    Optional<LocalDate> day(Event event) {
      return Optional.ofNullable(firsts.get(event)).map(Fact::date);
    }

    private void note(Event event, Fact fact) {
      firsts.putIfAbsent(event, fact);
    }

    private List<Reason> lines(Event... events) {
      List<Reason> lines = new ArrayList<>();
      for (Event event : events) {
        Fact fact = firsts.get(event);
        if (fact != null) {
          lines.add(fact.at().reason());
        }
      }
      return lines;
    }
  }

  /**
   * A figure of a line with its own records in it.
   *
   * @param need quick to slow, in the unit of the figure it takes the place of
   */
  @SuppressWarnings("ArrayRecordComponent") // handed on to a stage, never compared
  record Figure(double[] need, Reason reason) {}

  /** One record of a figure. */
  private record Seen(int year, double figure, Reason reason) {}

  /**
   * A figure as it is reckoned with, and what a gardener calls its unit.
   *
   * @param scale how many of that unit one of the figure's is
   */
  @SuppressWarnings("ArrayRecordComponent") // as the stage has it, never compared
  record Kind(
      Line line, String what, double[] need, String unit, double scale, List<Reason> reasons) {
    /** A figure in the unit it is told in. */
    double told(double figure) {
      return scale * figure;
    }
  }

  Learned(Garden garden, List<FruitStory> stories) {
    this.season = garden.season().year();
    for (FruitStory story : stories) {
      if (story.picked().filter(Learned::isInTime).isPresent() && !story.pickedTooSoon()) {
        String line = story.fruit().seedParent().stand().lot().line().name();
        ripened.computeIfAbsent(line, l -> new ArrayList<>()).add(story);
      }
    }
    garden.record().facts().forEach(this::file);
  }

  private static boolean isInTime(Fact.Picked picked) {
    return picked.state().isEmpty() || IN_TIME.contains(picked.state().get());
  }

  private void file(Fact fact) {
    if (fact instanceof Fact.Sowed s) {
      of(s.stand()).note(Event.SOW, fact);
    } else if (fact instanceof Fact.Emerged e) {
      of(e.stand()).note(Event.EMERGED, fact);
    } else if (fact instanceof Fact.PlantedOut p) {
      of(p.stand()).note(Event.PLANT_OUT, fact);
    } else if (fact instanceof Fact.FirstFlowers f) {
      of(f.plants().stand()).note(f.male() ? Event.FIRST_MALE : Event.FIRST_FRUITING, fact);
    }
  }

  private Flowering of(Stand stand) {
    return flowered
        .computeIfAbsent(stand.lot().line().name(), l -> new LinkedHashMap<>())
        .computeIfAbsent(stand, s -> new Flowering());
  }

  /** Whether the record says anything of a line. */
  boolean knows(Line line) {
    return ripened.containsKey(line.name()) || flowered.containsKey(line.name());
  }

  /** The planting by name where it has days of its own on record; else nothing. */
  String ownDays(Planting planting) {
    return flowered.getOrDefault(planting.line().name(), Map.of()).keySet().stream()
            .anyMatch(s -> isOf(s, planting))
        ? planting.name()
        : "";
  }

  private boolean isOf(Stand stand, Planting planting) {
    return stand.year() == season && stand.name().equals(planting.name());
  }

  /** Reckons a stretch of days in the unit of a stage, with words for how it was done. */
  interface Measure {
    Measured of(LocalDate from, LocalDate to);
  }

  /**
   * @param how a few words on where the figure is from; empty for plain days
   */
  record Measured(double figure, String how) {}

  /** From pollination to picking, over all marked fruit of the line that was picked in its time. */
  Optional<Figure> ripening(Kind kind, Measure measure) {
    List<Seen> seen = new ArrayList<>();
    for (FruitStory story : ripened.getOrDefault(kind.line().name(), List.of())) {
      Fruit fruit = story.fruit();
      Fact.Picked picked = story.picked().orElseThrow();
      Measured measured = measure.of(fruit.date(), picked.date());
      seen.add(seen(kind, fruit.tag(), fruit.year(), measured, fruit, picked));
    }
    return figure(kind, seen, "fruit", "fruits");
  }

  private static Seen seen(Kind kind, String name, int year, Measured measured, Fact... facts) {
    List<Reason> lines = new ArrayList<>();
    for (Fact fact : facts) {
      lines.add(fact.at().reason());
    }
    return seen(kind, name, year, measured, lines);
  }

  private static Seen seen(
      Kind kind, String name, int year, Measured measured, List<Reason> lines) {
    String says = name + ": " + figure(measured.figure(), kind) + measured.how();
    return new Seen(year, measured.figure(), Reason.derived(says, lines));
  }

  /** Reckons what a stand needed to its first fruiting flower; empty where a day is missing. */
  interface FloweringMeasure {
    Optional<Measured> of(Flowering days);
  }

  /** To the first fruiting flower, over all stands of the line but the planting itself. */
  Optional<Figure> flowering(Kind kind, Planting planting, FloweringMeasure measure) {
    List<Seen> seen = new ArrayList<>();
    others(kind.line(), planting)
        .forEach(
            (stand, days) -> {
              if (days.day(Event.FIRST_FRUITING).isPresent()) {
                measure.of(days).map(m -> seen(kind, stand, m, days)).ifPresent(seen::add);
              }
            });
    return figure(kind, seen, "planting", "plantings");
  }

  private static Seen seen(Kind kind, Stand stand, Measured measured, Flowering days) {
    List<Reason> lines =
        days.lines(Event.SOW, Event.EMERGED, Event.PLANT_OUT, Event.FIRST_FRUITING);
    return seen(kind, stand.name(), stand.year(), measured, lines);
  }

  /** From the first male flower to the first fruiting one. */
  Optional<Figure> malesEarlier(Kind kind, Planting planting) {
    List<Seen> seen = new ArrayList<>();
    others(kind.line(), planting)
        .forEach(
            (stand, days) -> {
              Optional<LocalDate> male = days.day(Event.FIRST_MALE);
              Optional<LocalDate> fruiting = days.day(Event.FIRST_FRUITING);
              if (male.isPresent() && fruiting.isPresent()) {
                Measured m =
                    new Measured(fruiting.get().toEpochDay() - male.get().toEpochDay(), "");
                List<Reason> lines = days.lines(Event.FIRST_MALE, Event.FIRST_FRUITING);
                seen.add(seen(kind, stand.name(), stand.year(), m, lines));
              }
            });
    return figure(kind, seen, "planting", "plantings");
  }

  /** The stands of a line but one planting, whose own days stand for themselves. */
  private Map<Stand, Flowering> others(Line line, Planting planting) {
    Map<Stand, Flowering> others =
        new LinkedHashMap<>(flowered.getOrDefault(line.name(), Map.of()));
    others.keySet().removeIf(s -> isOf(s, planting));
    return others;
  }

  private static Optional<Figure> figure(Kind kind, List<Seen> seen, String one, String many) {
    if (seen.isEmpty()) {
      return Optional.empty();
    }
    Map<Integer, List<Seen>> seasons = new TreeMap<>();
    seen.forEach(s -> seasons.computeIfAbsent(s.year(), y -> new ArrayList<>()).add(s));
    double middle = kind.need()[1];
    double stated = (kind.need()[2] - kind.need()[0]) / (2 * TENTH);
    double spread = Math.max(stated, LEAST_SPREAD * Math.abs(middle));
    Shrunken own =
        Shrunken.of(
            middle,
            spread,
            seasons.values().stream().map(s -> s.stream().map(Seen::figure).toList()).toList());
    double[] need = {
      Math.max(0, own.mean() - TENTH * own.spread()), own.mean(), own.mean() + TENTH * own.spread()
    };
    String says =
        kind.what()
            + " of "
            + kind.line().name()
            + ": "
            + figure(need[1], kind)
            + ", in 8 of 10 "
            + Math.round(kind.told(need[0]))
            + " to "
            + Math.round(kind.told(need[2]))
            + "; its own "
            + seen.size()
            + " "
            + (seen.size() == 1 ? one : many)
            + " in "
            + seasons.size()
            + (seasons.size() == 1 ? " season" : " seasons")
            + " count for "
            + Math.round(100 * own.weight())
            + " %, the usual "
            + Math.round(kind.told(kind.need()[0]))
            + " to "
            + Math.round(kind.told(kind.need()[2]))
            + " for the rest";
    return Optional.of(new Figure(need, Reason.derived(says, reasons(kind, seasons))));
  }

  private static List<Reason> reasons(Kind kind, Map<Integer, List<Seen>> seasons) {
    List<Reason> from = new ArrayList<>(kind.reasons());
    seasons.forEach(
        (year, seen) -> {
          double mean = seen.stream().mapToDouble(Seen::figure).average().orElseThrow();
          String says = year + ": " + figure(mean, kind) + " on average";
          List<Reason> each = seen.stream().map(Seen::reason).toList();
          from.add(seen.size() == 1 ? each.get(0) : Reason.derived(says, each));
        });
    from.add(
        Reason.method(
            "Shrunk to the usual figure by best linear unbiased prediction, half of its spread"
                + " taken as between lines, a quarter between seasons, a quarter within them"
                + " (Robinson 1991, Statistical Science 6:15, from memory)"));
    return from;
  }

  private static String figure(double value, Kind kind) {
    return Quantity.plain(Math.round(kind.told(value) * 10) / 10.0) + " " + kind.unit();
  }
}
