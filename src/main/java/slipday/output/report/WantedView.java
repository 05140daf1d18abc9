package slipday.output.report;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.garden.record.FruitStory;
import slipday.measure.Reasoned;
import slipday.output.Days;
import slipday.output.Lines;
import slipday.output.report.Template.Raw;
import slipday.season.DateSpread;
import slipday.season.MarkedFruit;
import slipday.season.PlantingSeason;
import slipday.season.PollinationPlan;
import slipday.season.Season;

/**
 * Pollination by hand as far as it has come, and the marked fruit that hangs.
 *
 * @param plans every planting and cross pollinated by hand
 * @param kinds the fruit that hangs, by planting
 * @param months over the bars of the fruit
 * @param lines behind them
 */
record WantedView(List<Plan> plans, List<Kind> kinds, Raw months, Raw lines) {
  private static final int MOST_SIGNS = 60;
  private static final double STEP = 15;

  boolean hasPlans() {
    return !plans.isEmpty();
  }

  boolean hasKinds() {
    return !kinds.isEmpty();
  }

  /**
   * @param way what is done
   * @param sofar how many are wanted, set, waiting
   * @param next what is still to do; empty where enough have set
   */
  record Plan(String thing, String subject, String way, String sofar, Raw signs, String next) {}

  /** Fruits of one planting, with the signs of ripeness of its type. */
  record Kind(String thing, String title, String name, String signs, List<Fruit> fruits) {}

  /**
   * @param state how near it is to its time
   */
  record Fruit(String thing, String tag, String facts, String state, boolean due, Raw bar) {}

  static WantedView of(Season season, LocalDate today, Axis axis, Ids ids, Days days) {
    List<Plan> plans = new ArrayList<>();
    for (PollinationPlan plan : season.pollinations()) {
      String thing =
          plan.cross().isPresent() ? ids.of(plan.cross().get()) : ids.of(plan.seedParent());
      plans.add(
          new Plan(
              thing,
              plan.subject(),
              way(plan),
              sofar(plan),
              new Raw(signs(plan).toString()),
              next(plan, today, days)));
    }
    CalendarDrawing calendar = new CalendarDrawing(axis, season.climate());
    return new WantedView(
        plans,
        kinds(season, today, axis, ids, days),
        new Raw(calendar.months().toString()),
        new Raw(calendar.lines(Optional.of(today)).toString()));
  }

  private static String way(PollinationPlan plan) {
    String way =
        plan.cross().isPresent()
            ? plan.seedParent().name() + " by " + plan.pollenParent().name()
            : plan.selfing() ? "selfed" : "sibbed";
    return plan.emasculate() ? way + ", anthers off the evening before" : way;
  }

  private static String sofar(PollinationPlan plan) {
    List<String> parts = new ArrayList<>();
    String from =
        plan.fromPlants().map(n -> " from " + Lines.count(n, "plant") + " or more").orElse("");
    parts.add(Lines.count(plan.wanted(), "fruit") + " wanted" + from);
    parts.add(plan.set() + " set");
    if (plan.waiting() > 0) {
      parts.add(Lines.count(plan.waiting(), "flower") + " not yet known");
    }
    return String.join(", ", parts);
  }

  private static String next(PollinationPlan plan, LocalDate today, Days days) {
    if (plan.left() == 0) {
      return "Enough have set.";
    }
    if (plan.flowersLikely() == 0) {
      return "Those that wait should do; look whether they took. " + plan.stop();
    }
    if (plan.isHopeless() || plan.from().isEmpty() || plan.until().isEmpty()) {
      return plan.stop();
    }
    String sure = plan.flowersSure().map(n -> ", " + n + " to be sure").orElse("");
    String from =
        plan.from().filter(today::isBefore).map(d -> days.day(d) + " to ").orElse("until ");
    return Lines.count(plan.flowersLikely(), "more flower")
        + " as likely as not"
        + sure
        + "; "
        + from
        + days.day(plan.until())
        + ", "
        + Lines.count(plan.aMorning(), "flower")
        + " a morning. "
        + plan.stop();
  }

  /** A full circle for a fruit that set, a half for a flower that waits, a ring for one wanted. */
  private static Svg signs(PollinationPlan plan) {
    int set = (int) plan.pollinated().stream().filter(FruitStory::counts).count();
    int wanted = Math.max(0, plan.wanted() - set);
    int shown = Math.min(MOST_SIGNS, set + plan.waiting() + wanted);
    Svg svg = new Svg();
    svg.open("svg", "class", "tally", "width", shown * STEP, "height", 18, "aria-hidden", "true");
    for (int i = 0; i < shown; i++) {
      double x = i * STEP + 7;
      boolean full = i < set;
      boolean half = !full && i < set + plan.waiting();
      svg.leaf("circle", "class", full ? "full" : "ring", "cx", x, "cy", 9, "r", 5);
      if (half) {
        String path = "M" + Svg.number(x) + " 4A5 5 0 0 0 " + Svg.number(x) + " 14Z";
        svg.leaf("path", "class", "full", "d", path);
      }
    }
    return svg.close();
  }

  private static List<Kind> kinds(Season season, LocalDate today, Axis axis, Ids ids, Days days) {
    List<Kind> kinds = new ArrayList<>();
    for (PlantingSeason planting : season.plantings()) {
      List<Fruit> fruits =
          season.fruits().stream()
              .filter(f -> f.hangs() && f.planting().name().equals(planting.name()))
              .sorted(Comparator.comparing(MarkedFruit::pollinated))
              .map(f -> fruit(f, today, axis, days))
              .toList();
      if (!fruits.isEmpty()) {
        Planting p = planting.planting();
        List<String> signs = p.facts().all(CropFacts.SIGN).stream().map(Reasoned::value).toList();
        String name = p.name().equals(p.line().title()) ? "" : p.name();
        kinds.add(new Kind(ids.of(p), p.line().title(), name, String.join("; ", signs), fruits));
      }
    }
    return kinds;
  }

  static String thing(MarkedFruit fruit) {
    byte[] tag = fruit.tag().toLowerCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8);
    return "fr" + HexFormat.of().formatHex(tag);
  }

  private static Fruit fruit(MarkedFruit f, LocalDate today, Axis axis, Days days) {
    DateSpread spread = f.expected().value();
    boolean over = spread.late().filter(today::isAfter).isPresent();
    boolean due = spread.early().filter(d -> !d.isAfter(today)).isPresent();
    String state = over ? "overdue" : due ? "look at it daily" : "from " + days.day(spread.early());
    String plant = f.story().fruit().seedParent().plant().map(n -> "plant " + n + ", ").orElse("");
    String facts =
        plant + days.day(f.pollinated()) + ", " + Lines.count(f.age(today), "day") + " old";
    return new Fruit(
        thing(f),
        f.tag(),
        facts,
        state + (f.story().took().orElse(false) ? "" : ", set not seen"),
        due,
        new Raw(FruitBar.of(f, axis).toString()));
  }
}
