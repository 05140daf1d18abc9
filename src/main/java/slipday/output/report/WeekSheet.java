package slipday.output.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import slipday.caution.Caution;
import slipday.descent.Tags;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.measure.Reasoned;
import slipday.output.Days;
import slipday.output.data.SheetData.EntryData;
import slipday.output.data.SheetData.SheetPartData;
import slipday.season.MarkedFruit;
import slipday.season.PollinationPlan;
import slipday.season.Season;
import slipday.season.chore.ChoreKind;
import slipday.season.today.DayAtHand;
import slipday.season.today.TodayList;

/** The work of a week as lines of the record to be filled in outside. */
public final class WeekSheet {
  private static final int WEEK = 7;

  /** Lines for the flowers of one plan; who does more takes a second sheet. */
  private static final int MOST_FLOWERS = 12;

  private static final int SPARE = 4;

  private final LocalDate from;
  private final LocalDate to;
  private final Season season;
  private final TodayList start;
  private final TodayList end;
  private final Days days;
  private final List<SheetPartData> parts = new ArrayList<>();

  private WeekSheet(Season whole, LocalDate from) {
    this.from = from;
    this.to = from.plusDays(WEEK - 1L);
    this.start = DayAtHand.of(whole, from, WEEK - 1);
    this.season = start.season();
    this.end = DayAtHand.of(season, to, 0);
    this.days = new Days(season.garden().season().first(), season.garden().season().last());
  }

  /** The parts of the sheet for the week that begins on a day, by what is recorded up to it. */
  public static List<SheetPartData> of(Season whole, LocalDate from) {
    WeekSheet sheet = new WeekSheet(whole, from);
    sheet.steps();
    sheet.flowers();
    sheet.takes();
    sheet.fruit();
    sheet.tastes();
    sheet.seed();
    sheet.spare();
    return sheet.parts;
  }

  private void part(String title, String hint, List<EntryData> entries) {
    if (!entries.isEmpty()) {
      parts.add(new SheetPartData(title, hint, entries));
    }
  }

  // --- sowing, potting on, planting out, first flowers

  private void steps() {
    List<EntryData> entries = new ArrayList<>();
    Set<String> told = new LinkedHashSet<>();
    start
        .chores()
        .forEach(c -> step(c.kind(), c.subject(), "till " + days.day(c.last()), told, entries));
    for (TodayList.Coming coming : start.coming()) {
      String when = "from " + days.day(coming.date());
      coming.subjects().forEach(s -> step(coming.kind(), s, when, told, entries));
    }
    part("Sow, pot on, plant out, watch for flowers", "", entries);
  }

  private static void step(
      ChoreKind kind, String subject, String when, Set<String> told, List<EntryData> entries) {
    if (!told.add(kind + " " + subject)) {
      return;
    }
    switch (kind) {
      case SOW -> entries.add(counted("sowed " + subject, " seeds").about(when));
      case POT_ON -> entries.add(counted("potted on " + subject, " plants").about(when));
      case PLANT_OUT -> entries.add(counted("planted out " + subject, " plants").about(when));
      case LIFT_COVER ->
          entries.add(new SheetLine().text("note " + subject + ", \"cover off\"").about(when));
      case WATCH_FLOWERS -> {
        entries.add(new SheetLine().text("first male flowers " + subject).about(when));
        entries.add(new SheetLine().text("first fruiting flowers " + subject).about(""));
      }
      default -> {
        // what is done to single flowers and fruits has lines of its own
      }
    }
  }

  private static SheetLine counted(String text, String unit) {
    return new SheetLine().text(text).box(SheetLine.COUNT, ", ", unit);
  }

  // --- cover, take anthers out, pollinate

  private void flowers() {
    List<EntryData> evenings = new ArrayList<>();
    List<EntryData> mornings = new ArrayList<>();
    Map<String, Integer> wanted = new HashMap<>();
    for (PollinationPlan plan : season.pollinations()) {
      wanted.merge(plan.seedParent().name(), lines(plan), Integer::sum);
    }
    Map<String, List<String>> tags = new HashMap<>();
    Tags.free(season.garden(), p -> wanted.getOrDefault(p.name(), 0), false)
        .forEach(f -> tags.put(f.planting().name(), new ArrayList<>(f.tags())));
    for (PollinationPlan plan : season.pollinations()) {
      int most = flowers(plan).max().orElse(0);
      if (most > 0) {
        evenings(plan, most, evenings);
        mornings(plan, tags.getOrDefault(plan.seedParent().name(), new ArrayList<>()), mornings);
      }
    }
    part(
        "In the evening: cover",
        "Buds of tomorrow's flowers, and two or three males for each. Covers stay on two to three days.",
        evenings);
    part(
        "In the morning: pollinate, cover again, hang the tag",
        "Not in rain, and not where a bee was in. Stop when enough have set.",
        mornings);
  }

  /** Flowers of a plan on each day of the week. */
  private IntStream flowers(PollinationPlan plan) {
    return IntStream.range(0, WEEK).map(day -> plan.flowersOn(from.plusDays(day)));
  }

  private int lines(PollinationPlan plan) {
    return Math.min(MOST_FLOWERS, flowers(plan).sum());
  }

  private void evenings(PollinationPlan plan, int most, List<EntryData> entries) {
    String name = plan.seedParent().name();
    String about = plan.subject() + ": up to " + most + " each evening";
    for (int i = 0; i < 2; i++) {
      entries.add(
          onPlant("covered " + name)
              .box(SheetLine.COUNT, ", ", " flowers")
              .about(i == 0 ? about : ""));
    }
    if (plan.emasculate()) {
      entries.add(
          onPlant("emasculated " + name)
              .box(SheetLine.COUNT, ", ", " flowers")
              .about("take out all anthers"));
    }
  }

  private static SheetLine onPlant(String text) {
    return new SheetLine().text(text).box(SheetLine.PLANT, " plant ", "");
  }

  private void mornings(PollinationPlan plan, List<String> free, List<EntryData> entries) {
    String name = plan.seedParent().name();
    String about = plan.subject() + ": " + plan.stillWantedWhole() + " still wanted";
    int lines = lines(plan);
    for (int i = 0; i < lines && !free.isEmpty(); i++) {
      String verb = plan.cross().isPresent() ? "crossed " : plan.selfing() ? "selfed " : "sibbed ";
      SheetLine line = onPlant(verb + name);
      if (plan.cross().isPresent()) {
        line.text(" by " + plan.pollenParent().name()).box(SheetLine.PLANT, " plant ", "");
      } else if (!plan.selfing()) {
        line.box(SheetLine.PLANT, " by plant ", "");
      }
      entries.add(line.text(", tag " + free.remove(0)).about(i == 0 ? about : ""));
    }
  }

  // --- takes, fruit, tasting, seed

  private void takes() {
    part(
        "Did it take? A week after",
        "",
        end.unchecked().stream()
            .map(
                f ->
                    new SheetLine()
                        .choice("took", "failed")
                        .text(" " + f.tag())
                        .about(where(f) + ", pollinated " + days.day(f.pollinated())))
            .toList());
  }

  private static String where(MarkedFruit fruit) {
    Planting planting = fruit.planting();
    return planting.name()
        + fruit.story().fruit().seedParent().plant().map(n -> " plant " + n).orElse("");
  }

  private void fruit() {
    List<EntryData> entries = new ArrayList<>();
    Map<String, String> signs = new LinkedHashMap<>();
    for (TodayList.RipeFruit ripe : end.ripe()) {
      MarkedFruit f = ripe.fruit();
      entries.add(picked(f).about(where(f) + stake(ripe) + ", " + when(f)));
      signs.computeIfAbsent(f.planting().crop().name(), crop -> crop + ": " + signs(f));
    }
    part("Look at, and pick when ripe", String.join(". ", signs.values()), entries);
  }

  private static String signs(MarkedFruit fruit) {
    return String.join(
        "; ", fruit.planting().facts().all(CropFacts.SIGN).stream().map(Reasoned::value).toList());
  }

  private static SheetLine picked(MarkedFruit fruit) {
    boolean slips =
        fruit
            .planting()
            .facts()
            .get(CropFacts.SLIP)
            .map(s -> !s.value().equals("none"))
            .orElse(false);
    SheetLine line = new SheetLine().text("picked " + fruit.tag());
    if (slips) {
      line.choice(", ", List.of("full slip", "half slip", "forced"));
    }
    return line.box(SheetLine.WEIGHT, ", ", "")
        .box(SheetLine.WEIGHT, " less ", "")
        .box(SheetLine.FIGURE, ", ", " brix")
        .box(SheetLine.FIGURE, ", flavour ", " of 10");
  }

  private static String stake(TodayList.RipeFruit ripe) {
    return ripe.stake().map(s -> ", stake " + s).orElse("");
  }

  private String when(MarkedFruit fruit) {
    return "ripe about " + days.day(fruit.expected().value().usual());
  }

  private void tastes() {
    part(
        "Taste before anything is eaten",
        Caution.TASTE_FIRST.words(),
        end.taste().stream()
            .map(
                t ->
                    onPlant("tasted " + t.planting().name())
                        .choice(", ", List.of("clean", "bitter"))
                        .about(
                            t.bitter().isEmpty()
                                ? "seed that may be bitter"
                                : "bitter by the record: destroy it, and taste the others"))
            .toList());
  }

  private void seed() {
    List<EntryData> entries = new ArrayList<>();
    for (TodayList.SeedFruit s : end.seed()) {
      String tag = s.story().fruit().tag();
      boolean earlier = s.story().fruit().year() != season.garden().season().year();
      if (!earlier) {
        entries.add(
            new SheetLine()
                .text("saved " + tag)
                .box(SheetLine.COUNT, ", ", " seeds")
                .text(", into ")
                .box(SheetLine.WORDS)
                .about("picked " + days.day(s.picked())));
      }
    }
    for (TodayList.SeedLeft left : end.seedDone()) {
      if (left.toDry()) {
        entries.add(new SheetLine().text("dried " + left.lot()).about(""));
      }
      if (left.toCount()) {
        entries.add(
            new SheetLine()
                .text("counted " + left.lot() + ", ")
                .box(SheetLine.COUNT, "", " seeds")
                .about(""));
      }
    }
    part("Take, dry and count seed", "", entries);
  }

  private void spare() {
    List<EntryData> entries = new ArrayList<>();
    for (int i = 0; i < SPARE; i++) {
      entries.add(new SheetLine().text("note ").box(SheetLine.WORDS, "\"", "\"").about(""));
    }
    part("Anything else: losses, off-types, first signs", "", entries);
  }

  /** The last day of the week that begins on a day. */
  public static LocalDate lastDay(LocalDate from) {
    return from.plusDays(WEEK - 1L);
  }
}
