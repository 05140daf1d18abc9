package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slipday.choice.Progress;
import slipday.choice.Progress.Grown;
import slipday.choice.Trait;
import slipday.garden.SeasonYear;
import slipday.measure.Quantity;
import slipday.measure.Reason;
import slipday.output.Lines;
import slipday.output.ProgressText;
import slipday.output.report.GenerationsDrawing.Column;
import slipday.output.report.Template.Raw;
import slipday.output.report.WhyBook.Item;
import slipday.output.report.WhyBook.Thing;
import slipday.output.report.Words.Part;

/**
 * One line over its generations.
 *
 * @param panels a plot for each trait measured in two generations or more
 * @param single names of aimed traits that were measured in one alone; may be empty
 * @param notes what is lacking or taken for granted
 */
record GenerationsView(
    String title, String name, List<Panel> panels, String single, List<List<Part>> notes) {
  private static final int MOST_COLUMNS = 7;
  private static final String NOTHING = "–";

  /**
   * A trait.
   *
   * @param says what was gained from one generation to the next, or why nobody can tell
   */
  record Panel(
      String title,
      String aim,
      Raw svg,
      List<List<Part>> says,
      List<String> notes,
      List<Row> rows) {}

  /** A generation as it was grown. */
  record Row(
      String thing,
      String generation,
      String season,
      int plants,
      int fruits,
      String mean,
      String spread,
      String best,
      String inbreeding,
      String parents,
      String chosenBy) {}

  /**
   * @param aimed its traits that are aimed at
   * @param own the plan's season, as which others are named
   * @param prefix of the generations' ids in the book
   */
  static GenerationsView of(
      Progress progress, List<Progress.Trend> aimed, SeasonYear own, String prefix, WhyBook book) {
    List<Panel> panels = new ArrayList<>();
    for (Progress.Trend trend : aimed) {
      if (trend.stands().size() > 1) {
        panels.add(panel(progress, trend, own, prefix + panels.size() + "-", book));
      }
    }
    String single =
        aimed.stream()
            .filter(t -> t.stands().size() == 1)
            .map(t -> t.trait().name())
            .collect(Collectors.joining(", "));
    String name = progress.line().name();
    return new GenerationsView(
        progress.line().title(),
        name.equals(progress.line().title()) ? "" : name,
        List.copyOf(panels),
        single,
        progress.notes().stream().map(Words::parts).toList());
  }

  private static Panel panel(
      Progress progress, Progress.Trend trend, SeasonYear own, String prefix, WhyBook book) {
    Trait trait = trend.trait();
    List<Column> columns = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    for (Grown g : trend.stands()) {
      String season = own.label(g.year());
      Column column = new Column(g, season, prefix + columns.size(), told(g, season, trait));
      columns.add(column);
      rows.add(row(column, trait));
      book.thing(column.thing(), thing(progress, trend, column, book));
    }
    List<Column> drawn =
        columns.subList(Math.max(0, columns.size() - MOST_COLUMNS), columns.size());
    GenerationsDrawing drawing = new GenerationsDrawing(trend, drawn);
    List<Progress.Step> steps = new ArrayList<>(trend.steps());
    trend.whole().ifPresent(steps::add);
    return new Panel(
        trait.name(),
        trend.aim().orElse(""),
        new Raw(drawing.svg(trait.name() + " over the generations").toString()),
        steps.stream().map(s -> Words.parts(ProgressText.step(s, trait))).toList(),
        notes(trend, drawing, drawn),
        rows);
  }

  private static List<String> notes(
      Progress.Trend trend, GenerationsDrawing drawing, List<Column> drawn) {
    List<String> notes = new ArrayList<>();
    if (drawn.size() < trend.stands().size()) {
      notes.add("The last " + drawn.size() + " are drawn.");
    }
    if (!drawing.reaches()) {
      notes.add(PlotFrame.beyond(trend.trait(), trend.wanted()));
    }
    if (drawn.stream().anyMatch(c -> c.grown().each().size() > GenerationsDrawing.MOST_DOTS)) {
      notes.add(
          "Of more than " + GenerationsDrawing.MOST_DOTS + " plants none is drawn by itself.");
    }
    List<String> checks = trend.checks().stream().map(Grown::generation).distinct().toList();
    if (!checks.isEmpty()) {
      notes.add(
          "A triangle is the mean of a check grown beside: " + String.join(", ", checks) + ".");
    }
    return notes;
  }

  private static String told(Grown g, String season, Trait trait) {
    return Lines.clean(
        g.generation()
            + " of "
            + season
            + ": "
            + Lines.count(g.plants(), "plant")
            + ", mean "
            + trait.words(g.mean())
            + ", best "
            + trait.words(g.bestMean())
            + " ("
            + g.best()
            + ")");
  }

  private static Row row(Column column, Trait trait) {
    Grown g = column.grown();
    return new Row(
        column.thing(),
        g.generation(),
        column.season(),
        g.plants(),
        g.fruits(),
        trait.number(g.mean()),
        g.deviation().map(trait::number).orElse(NOTHING),
        trait.number(g.bestMean()) + " " + g.best(),
        inbreeding(g),
        g.parents() == 0 ? NOTHING : String.valueOf(g.parents()),
        g.differential().map(d -> ProgressText.signed(d, trait)).orElse(NOTHING));
  }

  private static String inbreeding(Grown g) {
    return Quantity.fixed(g.inbreeding(), 2);
  }

  private static Thing thing(Progress progress, Progress.Trend trend, Column column, WhyBook book) {
    Grown g = column.grown();
    Trait trait = trend.trait();
    List<Item> items = new ArrayList<>();
    List<Reason> plants = new ArrayList<>();
    g.deviation()
        .ifPresent(
            d ->
                plants.add(
                    Reason.derived("Spread: a standard deviation of " + trait.words(d) + ".")));
    g.each().stream()
        .limit(GenerationsDrawing.MOST_DOTS)
        .forEach(e -> plants.add(measured(e, trait)));
    String of = Lines.count(g.plants(), "plant") + ", " + Lines.count(g.fruits(), "fruit");
    items.add(book.item("mean", trait.words(g.mean()) + " in " + of, plants));
    items.add(
        book.item(
            "best",
            trait.words(g.bestMean()) + ", " + g.best(),
            trend.aim().map(a -> Reason.derived("By the goal: " + a + ".")).stream().toList()));
    items.add(
        book.item(
            "inbreeding",
            "F " + inbreeding(g),
            List.of(Reason.derived("Mean of its plants, out of their descent."))));
    g.differential()
        .ifPresent(
            d ->
                items.add(
                    book.item(
                        "chosen by",
                        ProgressText.signed(d, trait),
                        List.of(
                            Reason.derived(
                                "What the mean of the "
                                    + Lines.count(g.parents(), "plant")
                                    + " that seed was taken from, each counted by its fruits, lies"
                                    + " above the mean of all.")))));
    for (Progress.Step s : trend.steps()) {
      if (s.to().equals(g.generation())) {
        items.add(book.item("gain", ProgressText.step(s, trait), told(s)));
      }
    }
    String under = progress.line().title() + ", " + trait.name() + ", " + column.season();
    String line = g.each().stream().findFirst().map(e -> book.line(e.lot().span())).orElse("");
    return new Thing(Lines.clean(g.generation()), Lines.clean(under), line, items);
  }

  /** A plant's mean, with the lines of the record that it is of. */
  private static Reason measured(Progress.Each each, Trait trait) {
    String says =
        each.plant() + ": " + trait.words(each.mean()) + (each.parent() ? ", seed taken" : "");
    return Reason.derived(says, each.figures().stream().distinct().map(Reason::quoting).toList());
  }

  private static List<Reason> told(Progress.Step step) {
    Optional<Reason> method =
        step.gain()
            .map(
                g ->
                    Reason.method(
                        "A difference of means with what season and bed do taken off; the plants"
                            + " are the sample"));
    return method.stream().toList();
  }

  boolean hasNotes() {
    return !notes.isEmpty();
  }
}
