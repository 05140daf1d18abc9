package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.caution.Caution;
import slipday.garden.Lot;
import slipday.garden.record.Asides;
import slipday.genetics.Odds;
import slipday.genetics.SeedLife;
import slipday.measure.Basis;
import slipday.measure.Quantity;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.output.Lines;
import slipday.output.Questions;
import slipday.output.report.Template.Raw;
import slipday.output.report.WhyBook.Item;
import slipday.output.report.WhyBook.Thing;
import slipday.seed.SeedLot;

/**
 * A lot of seed in hand.
 *
 * @param facts generation, cross and harvest
 * @param left how much there is, and how much is to be sown
 * @param coming how well it should come up, in words
 * @param caution where it may be bitter, or is not surely what it is called
 */
record SeedView(
    String thing,
    String name,
    String title,
    String facts,
    String left,
    String coming,
    String caution,
    Raw bar) {
  /** How crosses are written. */
  static final Reason NOTATION =
      Reason.method(
          "Seed parent first, / the first cross, // the second, * the doses of a recurrent parent"
              + " (Purdy and others 1968).");

  private static final Reason INBREEDING =
      Reason.method(
          "The chance that both copies of a gene come from one copy in one ancestor, reckoned"
              + " through all that is recorded (Quaas 1976; Meuwissen and Luo 1992).");
  private static final double MIDDLE = 11;

  static List<SeedView> of(List<SeedLot> lots, Ids ids, WhyBook book) {
    return lots.stream().map(lot -> of(lot, ids, book)).toList();
  }

  private static SeedView of(SeedLot seed, Ids ids, WhyBook book) {
    Lot lot = seed.lot();
    String id = ids.of(lot);
    book.thing(id, thing(seed, book));
    List<String> facts = new ArrayList<>();
    seed.generation().ifPresent(facts::add);
    seed.cross().filter(c -> !c.equals(lot.line().name())).ifPresent(facts::add);
    lot.harvested().ifPresent(y -> facts.add("harvested " + y.value()));
    return new SeedView(
        id,
        lot.name(),
        lot.line().title(),
        String.join(", ", facts),
        left(seed),
        coming(seed),
        caution(seed),
        new Raw(seed.outlook().germination().map(SeedView::bar).map(Svg::toString).orElse("")));
  }

  static String left(SeedLot seed) {
    List<String> parts = new ArrayList<>();
    parts.add(
        seed.left()
            .map(n -> (seed.atMost() ? "at most " : "") + Lines.count(n, "seed") + " left")
            .orElse("never counted"));
    if (seed.toSow() > 0 && seed.toSow() < Odds.MOST) {
      parts.add("sow " + seed.toSow() + " for " + Lines.count(seed.wanted(), "plant"));
    }
    seed.outlook().growOnBy().ifPresent(y -> parts.add("best grown on by " + y));
    return String.join(", ", parts);
  }

  private static String coming(SeedLot seed) {
    return seed.outlook()
        .germination()
        .map(
            g ->
                Lines.percent(g.usual())
                    + " should come up ("
                    + Lines.percent(g.low())
                    + " to "
                    + Lines.percent(g.high())
                    + ")")
        .orElse("nobody knows how much of it will come up");
  }

  private static String caution(SeedLot seed) {
    if (seed.mayBeBitter()) {
      return Caution.ON_A_LABEL.words();
    }
    return seed.lot().identity() == Lot.Identity.KNOWN ? "" : "Not surely what it is called.";
  }

  /** From nothing to all: the range as a band, the usual as a stroke. */
  private static Svg bar(SeedLife.Germination g) {
    Svg svg = new Svg();
    svg.open("svg", "class", "bar", "width", "100%", "height", 22, "aria-hidden", "true");
    svg.leaf("line", "class", "month", "x1", 0, "x2", "100%", "y1", MIDDLE, "y2", MIDDLE);
    svg.leaf(
        "rect",
        "class",
        "band",
        "x",
        Svg.percent(g.low()),
        "width",
        Svg.percent(Math.max(0.005, g.high() - g.low())),
        "y",
        MIDDLE - 5,
        "height",
        10);
    String usual = Svg.percent(g.usual());
    svg.leaf(
        "line", "class", "usual", "x1", usual, "x2", usual, "y1", MIDDLE - 8, "y2", MIDDLE + 8);
    return svg.close();
  }

  private static Thing thing(SeedLot seed, WhyBook book) {
    Lot lot = seed.lot();
    List<Item> items = new ArrayList<>();
    add(items, "generation", lot.generation().map(Reasoned::reason), seed.generation(), book);
    add(items, "cross", Optional.of(NOTATION), seed.cross(), book);
    List<Reason> inbreeding = new ArrayList<>(List.of(INBREEDING));
    seed.assumed().forEach(a -> inbreeding.add(Reason.byDefault(a)));
    items.add(
        book.item("inbreeding", inbreeding(seed.inbreeding(), seed.inbreeding()), inbreeding));
    List<Reason> reckoning =
        seed.outlook().reckoning().stream()
            .map(s -> new Reason(s, Basis.DERIVED, Optional.empty(), List.of()))
            .toList();
    List<Reason> stated =
        Stream.of(lot.harvested().map(Reasoned::reason), lot.tested().map(Reasoned::reason))
            .flatMap(Optional::stream)
            .toList();
    List<Reason> because = new ArrayList<>(reckoning);
    because.addAll(stated);
    because.addAll(seed.outlook().facts());
    items.add(book.item("germination", coming(seed), because));
    add(items, "seeds", lot.seeds().map(Reasoned::reason), Optional.of(left(seed)), book);
    List<Reason> parents =
        seed.parents().stream()
            .map(s -> new Reason(s, Basis.RECORD, Optional.empty(), List.of()))
            .toList();
    if (!parents.isEmpty()) {
      items.add(book.item("parents", Lines.count(parents.size(), "fruit"), parents));
    }
    if (!seed.asides().isEmpty()) {
      List<Reason> noted = seed.asides().stream().map(Asides.Aside::reason).toList();
      items.add(book.item("notes", Questions.counted(seed.asides()), noted));
    }
    return new Thing(
        Lines.clean(lot.name()),
        Lines.clean(lot.line().title()) + ", seed",
        book.line(lot.span()),
        items);
  }

  /** As people write it; four decimals tell eight selfings apart. */
  static String inbreeding(double least, double most) {
    String low = Quantity.plain(least);
    String high = Quantity.plain(most);
    return "F = " + (low.equals(high) ? low : low + " to " + high);
  }

  private static void add(
      List<Item> items,
      String topic,
      Optional<Reason> because,
      Optional<String> answer,
      WhyBook book) {
    answer.ifPresent(a -> items.add(book.item(topic, a, because.stream().toList())));
  }
}
