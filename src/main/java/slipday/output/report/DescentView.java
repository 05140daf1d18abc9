package slipday.output.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import slipday.descent.Births;
import slipday.descent.DescentGraph;
import slipday.descent.DescentGraph.Seed;
import slipday.descent.DescentGraph.Taking;
import slipday.descent.DescentGraph.Way;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.record.Fruit;
import slipday.genetics.Generation;
import slipday.measure.Basis;
import slipday.measure.Reason;
import slipday.output.Lines;
import slipday.output.report.DescentDrawing.Box;
import slipday.output.report.DescentDrawing.Kind;
import slipday.output.report.DescentDrawing.Role;
import slipday.output.report.Template.Raw;
import slipday.output.report.WhyBook.Item;
import slipday.output.report.WhyBook.Thing;
import slipday.output.report.Words.Part;
import slipday.seed.SeedLot;

/**
 * Which seed is of which.
 *
 * @param drawings for a wide page and for a narrow one; none where nothing is recorded
 * @param notes what is not drawn, or drawn as one
 * @param list the same in words
 * @param apart lots of which nothing is recorded, in a sentence; may be empty
 */
record DescentView(List<Raw> drawings, List<List<Part>> notes, List<Entry> list, String apart) {
  /** More boxes than these are a thicket. */
  private static final int MOST = 90;

  private static final double WIDE = 860;
  private static final double NARROW = 336;
  private static final int LONGEST = 30;

  /** Lots without a descent that are named. */
  private static final int MOST_APART = 20;

  /** Seed, or fruit whose seed is not taken yet, and what it is of. */
  record Entry(String thing, String name, String told) {}

  boolean hasList() {
    return !list.isEmpty();
  }

  static DescentView of(Garden garden, List<SeedLot> lots, Ids ids, WhyBook book) {
    DescentGraph graph = DescentGraph.of(garden, MOST);
    return new Maker(garden, graph, lots, ids, book).view();
  }

  /** Fills in drawing, list and book from one graph. */
  private static final class Maker {
    private final DescentGraph graph;
    private final Births births;
    private final Map<String, SeedLot> inHand = new HashMap<>();
    private final Ids ids;
    private final WhyBook book;
    private final DescentDrawing drawing = new DescentDrawing();
    private final List<Entry> list = new ArrayList<>();

    Maker(Garden garden, DescentGraph graph, List<SeedLot> lots, Ids ids, WhyBook book) {
      this.graph = graph;
      this.births = new Births(garden.record());
      lots.forEach(l -> inHand.put(l.lot().name(), l));
      this.ids = ids;
      this.book = book;
    }

    DescentView view() {
      List<Raw> drawings = new ArrayList<>();
      if (!graph.isEmpty()) {
        graph.seeds().forEach(this::seed);
        graph.takings().forEach(this::taking);
        drawing.place();
        drawings.add(new Raw(drawing.draw("wide", WIDE).toString()));
        drawings.add(new Raw(drawing.draw("narrow", NARROW).toString()));
      }
      return new DescentView(drawings, notes().stream().map(Words::parts).toList(), list, apart());
    }

    private void seed(Seed seed) {
      boolean several = seed.lots().size() > 1;
      String thing = several ? "dg" + graph.seeds().indexOf(seed) : ids.of(seed.lots().get(0));
      List<String> text = new ArrayList<>(List.of(shortened(name(seed))));
      String facts = String.join(", ", facts(seed));
      if (!facts.isEmpty()) {
        text.add(shortened(facts));
      }
      if (several) {
        book.thing(thing, several(seed));
      }
      String told = told(seed);
      drawing.box(
          new Box(
              several ? Kind.SEVERAL : Kind.SEED,
              text,
              thing,
              "#L" + book.line(seed.lots().get(0).span()),
              Lines.clean(name(seed) + ", " + (facts.isEmpty() ? "" : facts + ", ") + told)));
      list.add(
          new Entry(thing, Lines.clean(name(seed)), (facts.isEmpty() ? "" : facts + "; ") + told));
    }

    private static String shortened(String text) {
      return Lines.shortened(Lines.clean(text), LONGEST);
    }

    private String name(Seed seed) {
      Lot first = seed.lots().get(0);
      return graph.grain() == DescentGraph.Grain.LINES
          ? first.line().title()
          : seed.lots().size() == 1 ? first.name() : first.line().name();
    }

    private List<String> facts(Seed seed) {
      List<String> facts = new ArrayList<>();
      if (seed.lots().size() > 1) {
        facts.add(Lines.count(seed.lots().size(), "lot"));
      }
      generation(seed).ifPresent(facts::add);
      return facts;
    }

    /** Where all its lots have one. */
    private Optional<String> generation(Seed seed) {
      List<Optional<String>> each =
          seed.lots().stream()
              .map(l -> births.generation(l).map(Generation::print))
              .distinct()
              .toList();
      return each.size() == 1 ? each.get(0) : Optional.empty();
    }

    /** Whose seed it is. */
    private String told(Seed seed) {
      int place = graph.seeds().indexOf(seed);
      String of =
          graph.takings().stream()
              .filter(t -> t.seed().equals(OptionalInt.of(place)))
              .map(this::told)
              .collect(Collectors.joining("; "));
      return of.isEmpty() ? "its parents are not drawn" : of;
    }

    private String told(Taking taking) {
      String mother = name(graph.seeds().get(taking.seedParent()));
      String how = fruits(taking) + " of " + mother;
      if (taking.pollenParent().isEmpty()) {
        return how + " by pollen nobody knows";
      }
      boolean own = taking.pollenParent().getAsInt() == taking.seedParent();
      String father = name(graph.seeds().get(taking.pollenParent().getAsInt()));
      return own ? how : how + " by " + father;
    }

    /** {@code 18 fruits, selfed}. */
    private static String fruits(Taking taking) {
      int tagged = taking.tagged();
      String which =
          tagged == 0
              ? "unmarked fruit"
              : tagged == 1 && taking.of().get(0) instanceof Fruit fruit
                  ? "fruit " + fruit.tag()
                  : Lines.count(taking.of().size(), "fruit");
      return which + ", " + taking.way().words();
    }

    private Thing several(Seed seed) {
      List<Item> items = new ArrayList<>();
      generation(seed).ifPresent(g -> items.add(book.item("generation", g, List.of())));
      cross(seed).ifPresent(c -> items.add(book.item("cross", c, List.of(SeedView.NOTATION))));
      List<Reason> each = new ArrayList<>();
      for (Lot lot : seed.lots()) {
        Optional<SeedLot> known = Optional.ofNullable(inHand.get(lot.name()));
        String says = "`" + lot.name() + "`" + known.map(l -> ": " + SeedView.left(l)).orElse("");
        each.add(new Reason(says, Basis.PLAN, Optional.of(lot.span()), List.of()));
      }
      items.add(book.item("lots", inbreeding(seed), each));
      return new Thing(
          Lines.clean(name(seed)),
          Lines.count(seed.lots().size(), "lot") + " of one descent, drawn as one",
          book.line(seed.lots().get(0).span()),
          items);
    }

    private Optional<String> cross(Seed seed) {
      List<Optional<String>> each =
          seed.lots().stream()
              .map(l -> Optional.ofNullable(inHand.get(l.name())).flatMap(SeedLot::cross))
              .distinct()
              .toList();
      return each.size() == 1 ? each.get(0) : Optional.empty();
    }

    private String inbreeding(Seed seed) {
      List<Double> each =
          seed.lots().stream()
              .flatMap(l -> Optional.ofNullable(inHand.get(l.name())).stream())
              .map(SeedLot::inbreeding)
              .sorted()
              .toList();
      if (each.isEmpty()) {
        return "none in hand";
      }
      return "inbreeding " + SeedView.inbreeding(each.get(0), each.get(each.size() - 1));
    }

    private void taking(Taking taking) {
      int place = graph.takings().indexOf(taking);
      String thing = "dt" + place;
      List<Item> items = new ArrayList<>();
      List<Reason> lines = taking.of().stream().map(f -> f.at().reason()).toList();
      items.add(book.item("pollinated", fruits(taking), lines));
      generation(taking).ifPresent(g -> items.add(book.item("its seed", g, List.of())));
      Thing entered =
          new Thing(
              Lines.clean(fruits(taking)),
              Lines.clean(told(taking)),
              book.line(taking.of().get(0).span()),
              items);
      book.thing(thing, entered);
      String untaken = taking.seed().isEmpty() ? ", seed not taken yet" : "";
      int fruits =
          drawing.box(
              new Box(
                  Kind.FRUITS,
                  List.of(shortened(fruits(taking))),
                  thing,
                  "#L" + book.line(taking.of().get(0).span()),
                  Lines.clean(told(taking) + untaken)));
      drawing.line(taking.seedParent(), fruits, Role.SEED_PARENT);
      drawing.line(taking.pollenParent().orElseGet(this::unknown), fruits, Role.POLLEN_PARENT);
      taking.seed().ifPresent(s -> drawing.line(fruits, s, Role.TAKEN));
      if (taking.seed().isEmpty()) {
        list.add(
            new Entry(thing, Lines.clean(fruits(taking)), Lines.clean(told(taking) + untaken)));
      }
    }

    private int unknown() {
      return drawing.box(new Box(Kind.UNKNOWN, List.of("pollen unknown"), "", "", ""));
    }

    /** Of what is not in a lot yet. */
    private Optional<String> generation(Taking taking) {
      List<Optional<String>> each =
          taking.of().stream()
              .map(
                  f ->
                      f instanceof Fruit fruit
                          ? births.seedOf(fruit)
                          : Optional.<Generation>empty())
              .map(g -> g.map(Generation::print))
              .distinct()
              .toList();
      boolean settled = taking.seed().isPresent() || taking.way() == Way.PROVED_SELF;
      return settled || each.size() != 1 ? Optional.empty() : each.get(0);
    }

    private List<String> notes() {
      List<String> notes = new ArrayList<>();
      if (graph.seeds().stream().anyMatch(s -> s.lots().size() > 1)) {
        notes.add(
            graph.grain() == DescentGraph.Grain.LINES
                ? "There is too much to draw lot by lot: each box is a line with all its lots, and"
                    + " seed taken within a line is left out."
                : "A box with another behind it stands for several lots of one descent that nothing"
                    + " was grown of yet.");
      }
      graph
          .since()
          .ifPresent(
              y ->
                  notes.add(
                      "To stay readable it begins with season "
                          + y
                          + "; "
                          + Lines.count(graph.leftOut(), "earlier fruit")
                          + " are left out, which `slipday descent` tells."));
      if (graph.since().isEmpty() && graph.leftOut() > 0) {
        notes.add(
            "Only the last of it is drawn; "
                + Lines.count(graph.leftOut(), "cross")
                + (graph.leftOut() == 1 ? " between lines is" : "es between lines are")
                + " left out.");
      }
      return notes;
    }

    private String apart() {
      if (graph.apart().isEmpty()) {
        return "";
      }
      int all = graph.apart().size();
      int told = all <= MOST_APART + 1 ? all : MOST_APART;
      String names =
          graph.apart().stream().limit(told).map(Lot::name).collect(Collectors.joining(", "));
      return "Of "
          + (all == 1 ? "one lot" : all + " lots")
          + " neither parents nor offspring are recorded: "
          + Lines.clean(names)
          + (all > told ? ", and " + (all - told) + " more among the seed in hand" : "")
          + ".";
    }
  }
}
