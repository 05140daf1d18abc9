package slipday.output;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import slipday.caution.Caution;
import slipday.output.data.TodayData;
import slipday.output.data.TodayData.ComingData;
import slipday.output.data.TodayData.DoingData;
import slipday.output.data.TodayData.HoursData;
import slipday.output.data.TodayData.RipeData;
import slipday.output.data.TodayData.TaggedData;
import slipday.output.data.TodayData.TasteData;
import slipday.output.data.TodayData.TonightData;
import slipday.output.data.TodayData.UnrecordedData;

/** One day's work, for a phone's screen or a slip of paper. */
public final class TodayText {
  /** Columns of a phone held upright. */
  private static final int PHONE = 40;

  private final TodayData data;
  private final Ink ink;
  private final Days days;
  private final StringBuilder out = new StringBuilder();

  public TodayText(TodayData data, Ink ink) {
    this.data = data;
    this.ink = ink;
    this.days = new Days(data.season().first(), data.season().last());
  }

  public String text() {
    LocalDate date = data.date();
    String day =
        date.getDayOfMonth() + " " + Days.month(date.getMonthValue()) + " " + date.getYear();
    String title = Lines.clean("To do on " + day + ", " + data.season().title());
    out.append(ink.strong(Lines.hung("", title, PHONE).stripTrailing())).append('\n');
    if (!data.recordKept()) {
      out.append(
          Lines.hung("", "No planting of this season is on record: this is by the plan.", PHONE));
    }
    thisMorning();
    tonight();
    tomorrow();
    closed();
    covers();
    takes();
    taste();
    ripe();
    seed();
    unrecorded();
    chores();
    if (data.nothingToDo()) {
      out.append('\n').append("Nothing is to be done.\n");
    }
    coming();
    return out.toString();
  }

  private void head(String title) {
    out.append('\n').append(ink.strong(title)).append('\n');
  }

  private void item(String text) {
    out.append(Lines.hung("- ", text, PHONE));
  }

  private void more(String text) {
    out.append(Lines.hung("  ", text, PHONE));
  }

  private static <T> Map<HoursData, List<T>> byHours(List<T> all, Function<T, HoursData> when) {
    Map<HoursData, List<T>> grouped = new TreeMap<>(Comparator.comparing(HoursData::from));
    all.forEach(t -> grouped.computeIfAbsent(when.apply(t), h -> new ArrayList<>()).add(t));
    return grouped;
  }

  private void thisMorning() {
    byHours(data.thisMorning(), TodayData.CoveredData::hours)
        .forEach(
            (hours, covered) -> {
              head("This morning, " + TodayWords.hours(hours));
              covered.forEach(
                  c ->
                      item(
                          "Pollinate "
                              + c.planting()
                              + ": "
                              + Lines.count(c.flowers(), "flower")
                              + " covered last night."));
            });
  }

  private void tonight() {
    List<TonightData> withAnthers =
        data.pollinations().stream().filter(p -> p.anthers().isPresent()).toList();
    byHours(withAnthers, p -> p.anthers().orElseThrow())
        .forEach(
            (hours, all) -> {
              head("Anthers off, " + TodayWords.hours(hours));
              all.forEach(
                  p -> item(p.subject() + ": " + flowers(p) + " on " + p.seedParent() + "."));
            });
    byHours(data.pollinations(), TonightData::cover)
        .forEach(
            (hours, all) -> {
              head("Tonight, " + TodayWords.hours(hours));
              all.forEach(this::cover);
            });
  }

  private static String flowers(TonightData p) {
    return Lines.count(p.flowers(), p.flower());
  }

  private void cover(TonightData p) {
    String males =
        p.males()
            .map(m -> ", with " + count(m) + " " + m.called() + TodayWords.pollen(p))
            .orElse("");
    String on = p.way().equals("cross") ? " on " + p.seedParent() : "";
    item((p.bagged() ? "Bag " : "Tape ") + flowers(p) + on + " for " + p.subject() + males + ".");
    if (p.covered() > 0) {
      more("Covered on " + p.seedParent() + " so far: " + p.covered() + ".");
    }
    if (!p.inFlower() && data.recordKept()) {
      more("Its first flowers are not on record: look.");
    }
  }

  private static String count(TodayData.MalesData range) {
    return range.low() == range.high()
        ? String.valueOf(range.low())
        : range.low() + " to " + range.high();
  }

  private void tomorrow() {
    byHours(data.pollinations(), TonightData::pollinate)
        .forEach(
            (hours, all) -> {
              head("Tomorrow morning, " + TodayWords.hours(hours));
              all.forEach(this::pollinate);
            });
    if (!data.pollinations().isEmpty()) {
      out.append(
          Lines.hung(
              "", "End sooner in heat; not in rain, nor where a bee was in. Tag each.", PHONE));
    }
  }

  private void pollinate(TonightData p) {
    item("Pollinate " + p.flowers() + " for " + p.subject() + " (" + p.way() + ").");
    more(TodayWords.wanted(p));
  }

  private void closed() {
    if (data.closed().isEmpty()) {
      return;
    }
    head("Too late to pollinate more");
    data.closed()
        .forEach(
            c -> item(c.subject() + ", since " + days.day(c.last()) + ": " + TodayWords.closed(c)));
  }

  private void covers() {
    if (data.uncover().isEmpty()) {
      return;
    }
    head("Covers off, if petals have withered");
    data.uncover()
        .forEach(
            u -> {
              List<String> what = new ArrayList<>();
              if (!u.tags().isEmpty()) {
                what.add(String.join(", ", u.tags()));
              }
              if (u.idle() > 0) {
                what.add(Lines.count(u.idle(), "flower") + " covered, not pollinated");
              }
              item(u.planting() + ": " + String.join("; ", what));
            });
  }

  private void takes() {
    if (data.unchecked().isEmpty()) {
      return;
    }
    head("Did it take?");
    Map<String, List<String>> tags = new LinkedHashMap<>();
    for (TaggedData t : data.unchecked()) {
      tags.computeIfAbsent(t.planting(), p -> new ArrayList<>())
          .add(t.tag() + " (" + t.days() + " d)");
    }
    tags.forEach((planting, all) -> item(planting + ": " + String.join(", ", all)));
  }

  private void taste() {
    if (data.taste().isEmpty()) {
      return;
    }
    head("Taste for bitterness first");
    for (TasteData t : data.taste()) {
      String clean = t.clean().isEmpty() ? "" : "; clean: plant " + numbers(t.clean());
      item(t.planting() + ": " + untasted(t) + clean + ".");
      if (!t.bitter().isEmpty()) {
        more(
            "Bitter: plant "
                + numbers(t.bitter())
                + ". Destroy it, its fruit, and all seed it bore or gave pollen to.");
      }
    }
    out.append(Lines.hung("", Caution.TASTE_FIRST.words(), PHONE));
  }

  private static String untasted(TasteData t) {
    int tasted = t.clean().size() + t.bitter().size();
    return t.plants()
        .map(n -> Math.max(0, n - tasted) + " of " + n + " plants not tasted")
        .orElse("every plant");
  }

  private static String numbers(List<Integer> numbers) {
    return String.join(", ", numbers.stream().map(String::valueOf).toList());
  }

  private void ripe() {
    Map<Boolean, List<RipeData>> parts = new LinkedHashMap<>();
    data.ripe().forEach(r -> parts.computeIfAbsent(r.overdue(), o -> new ArrayList<>()).add(r));
    parts.forEach(
        (overdue, fruits) -> {
          head(overdue ? "Overdue: look today" : "Ripening: look at it");
          Map<String, List<RipeData>> plantings = new LinkedHashMap<>();
          fruits.forEach(
              r -> plantings.computeIfAbsent(r.planting(), p -> new ArrayList<>()).add(r));
          plantings.forEach(this::ripe);
        });
    Set<String> told = new LinkedHashSet<>();
    data.ripe().stream().filter(r -> told.add(r.crop())).forEach(this::signs);
  }

  private void ripe(String planting, List<RipeData> fruits) {
    boolean seed = fruits.get(0).waitsFor().equals("seed-ripe");
    out.append(Lines.hung("", planting + (seed ? ", for seed" : "") + ":", PHONE));
    for (RipeData r : fruits) {
      item(ripe(r));
      r.notes().forEach(n -> more("Noted: " + n));
    }
  }

  /** {@code 6B, stake 6: 40 d, due 38 (31 to 44)}. */
  private static String ripe(RipeData r) {
    String where =
        r.stake().map(s -> ", stake " + s).or(() -> r.plant().map(n -> ", plant " + n)).orElse("");
    return r.tag()
        + where
        + ": "
        + r.days()
        + " d, due "
        + r.usual().map(u -> u + " ").orElse("")
        + "("
        + r.early().map(String::valueOf).orElse("?")
        + r.late().map(l -> " to " + l).orElse(" or more")
        + ")"
        + (r.takeSeen() ? "" : "; take not recorded");
  }

  private void signs(RipeData r) {
    List<String> signs = new ArrayList<>();
    if (r.slip().filter("none"::equals).isPresent()) {
      signs.add("never slips");
    }
    signs.addAll(r.signs());
    if (!signs.isEmpty()) {
      out.append(
          Lines.hung("", "Signs, " + r.crop() + ": " + String.join("; ", signs) + ".", PHONE));
    }
  }

  private void seed() {
    if (!data.seed().isEmpty()) {
      head("Take the seed");
      data.seed()
          .forEach(
              s -> {
                boolean ofNow = s.season() == data.season().first().getYear();
                item(
                    s.tag()
                        + (ofNow ? "" : " of " + s.season())
                        + " ("
                        + s.planting()
                        + "), picked "
                        + days.day(s.picked()));
              });
    }
    if (!data.seedDone().isEmpty()) {
      head("Seed to finish");
      data.seedDone()
          .forEach(
              s -> item(TodayWords.left(s) + " " + s.lot() + ", taken " + days.day(s.taken())));
    }
  }

  private void unrecorded() {
    if (data.unrecorded().isEmpty()) {
      return;
    }
    head("Planned, and not recorded");
    Map<String, List<String>> steps = new LinkedHashMap<>();
    for (UnrecordedData u : data.unrecorded()) {
      String late = u.tooLate().map(d -> ", too late since " + days.day(d)).orElse("");
      steps
          .computeIfAbsent(TodayWords.step(u.step()), s -> new ArrayList<>())
          .add(u.planting() + " (" + days.day(u.due()) + late + ")");
    }
    steps.forEach((step, plantings) -> item(step + ": " + String.join(", ", plantings)));
  }

  private void chores() {
    if (data.chores().isEmpty()) {
      return;
    }
    head("Also");
    Map<String, List<String>> kinds = new LinkedHashMap<>();
    for (DoingData d : data.chores()) {
      String till = d.last().equals(data.date()) ? "" : ", till " + days.day(d.last());
      kinds
          .computeIfAbsent(TodayWords.doing(d.kind()), k -> new ArrayList<>())
          .add(d.subject() + till);
    }
    kinds.forEach((kind, subjects) -> item(kind + ": " + String.join("; ", subjects)));
  }

  private void coming() {
    if (!data.coming().isEmpty()) {
      head("Coming");
      data.coming().forEach(this::coming);
    } else if (data.nothingToDo()) {
      Optional<LocalDate> next = data.next().stream().map(ComingData::date).findFirst();
      out.append(
          next.map(d -> "Next, on " + days.day(d) + ":\n")
              .orElse("Nothing more comes this season.\n"));
      data.next().forEach(this::coming);
    }
    LocalDate last = data.season().last();
    if (data.date().isAfter(last)) {
      out.append(
          Lines.hung(
              "", "The season ended on " + days.day(last) + ". The next one's plan:", PHONE));
      out.append("  ").append(Shell.command("next-season", data.plan(), "-o NEXT")).append('\n');
    } else if (data.date().isBefore(data.season().first())) {
      out.append(Lines.hung("", "The season is yet to begin.", PHONE));
    }
  }

  private void coming(ComingData c) {
    item(
        days.day(c.date())
            + ", "
            + TodayWords.doing(c.kind())
            + ": "
            + String.join(", ", c.subjects()));
  }
}
