package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.garden.Named;
import slipday.garden.Planting;
import slipday.measure.Reason;
import slipday.measure.Units;
import slipday.output.Days;
import slipday.output.Lines;
import slipday.output.Question;
import slipday.output.Questions;
import slipday.output.data.EventData;
import slipday.output.report.WhyBook.Item;
import slipday.output.report.WhyBook.Thing;
import slipday.season.Condition;
import slipday.season.DateSpread;
import slipday.season.Event;
import slipday.season.MarkedFruit;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/** Enters every thing of the garden, with all that can be asked of it, into the book of reasons. */
final class Things {
  /** Findings of one rule on one thing of which why is told. */
  private static final int MOST_FINDINGS = 6;

  private final WhyBook book;
  private final Ids ids;
  private final Questions questions;
  private final Axis axis;
  private final Days days;
  private final Reach reach;
  private final Units units;

  /**
   * @param questions of pollen, those that reach tells
   */
  Things(
      WhyBook book, Ids ids, Questions questions, Axis axis, Days days, Reach reach, Units units) {
    this.book = book;
    this.ids = ids;
    this.questions = questions;
    this.axis = axis;
    this.days = days;
    this.reach = reach;
    this.units = units;
  }

  void add(Season season) {
    season.plantings().forEach(this::planting);
    season.garden().crosses().forEach(c -> named(c, c.name(), "a cross"));
    season.garden().beds().forEach(b -> named(b, b.title(), "a bed"));
    season.garden().outsiders().forEach(o -> named(o, o.title(), "pollen from outside"));
    season.fruits().forEach(this::fruit);
    named(season.garden().site(), season.garden().site().title(), "the site");
  }

  private void planting(PlantingSeason p) {
    Planting planting = p.planting();
    List<Item> items = new ArrayList<>();
    for (Question q : questions.about(p.name())) {
      items.add(item(q, topic(p, q), at(p, q)));
    }
    String more = Reach.told(reach.of(p.name())).more(units);
    if (!more.isEmpty()) {
      items.add(book.item("pollen of others", more, List.of()));
    }
    enter(
        planting, planting.line().title(), planting.name() + ", " + planting.crop().name(), items);
  }

  private void fruit(MarkedFruit fruit) {
    DateSpread spread = fruit.expected().value();
    int at = (int) Math.round(axis.usual(spread) * 1000);
    List<Reason> because = List.of(fruit.expected().reason());
    Item item =
        book.item(fruit.ripens().words(), SeasonView.span(spread, days), at, because, List.of());
    List<Item> items = new ArrayList<>(List.of(item));
    questions.find(fruit.tag(), "notes").ifPresent(q -> items.add(item(q, plain(q.topic()), -1)));
    String under = Lines.clean(fruit.planting().name()) + ", a marked fruit";
    String line = book.line(fruit.story().fruit().span());
    book.thing(WantedView.thing(fruit), new Thing(Lines.clean(fruit.tag()), under, line, items));
  }

  private void named(Named thing, String title, String under) {
    List<Item> items =
        questions.about(thing.name()).stream().map(q -> item(q, plain(q.topic()), -1)).toList();
    enter(thing, title, title.equals(thing.name()) ? under : thing.name() + ", " + under, items);
  }

  private void enter(Named thing, String title, String under, List<Item> items) {
    book.thing(
        ids.of(thing),
        new Thing(Lines.clean(title), Lines.clean(under), book.line(thing.span()), items));
  }

  private Item item(Question q, String topic, int at) {
    List<Integer> years =
        q.years().stream()
            .map(y -> y.day().map(d -> (int) (axis.at(d) * axis.days())).orElse(-1))
            .toList();
    String said = topic + ": ";
    String answer = q.answer().startsWith(said) ? q.answer().substring(said.length()) : q.answer();
    return book.item(topic, answer + others(q.findings().size()), at, because(q), years);
  }

  /** How many of a rule's findings are not told beside the first, and why of which is. */
  private static String others(int findings) {
    String why = findings > MOST_FINDINGS ? "; why is told of the first " + MOST_FINDINGS : "";
    return findings < 2 ? "" : " And " + (findings - 1) + " more like it" + why + ".";
  }

  private static List<Reason> because(Question q) {
    return q.findings().size() <= MOST_FINDINGS
        ? q.because()
        : q.findings().stream().limit(MOST_FINDINGS).flatMap(f -> f.because().stream()).toList();
  }

  /** An event or a condition as people read it. */
  private static String topic(PlantingSeason p, Question q) {
    for (Event event : p.dates().keySet()) {
      if (event.id().equals(q.topic())) {
        return EventData.words(p.planting(), event);
      }
    }
    return p.choice().chanceReasons().keySet().stream()
        .filter(c -> plain(c.name()).equals(plain(q.topic())))
        .findFirst()
        .map(Condition::words)
        .orElse(plain(q.topic()));
  }

  private static String plain(String topic) {
    return topic.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ');
  }

  private int at(PlantingSeason p, Question q) {
    Optional<Double> at =
        p.dates().entrySet().stream()
            .filter(e -> e.getKey().id().equals(q.topic()))
            .findFirst()
            .map(e -> axis.usual(e.getValue().value()));
    return at.map(share -> (int) Math.round(share * 1000)).orElse(-1);
  }
}
