package slipday.output.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.choice.Candidate;
import slipday.choice.Candidates;
import slipday.choice.Chosen;
import slipday.garden.record.Plants;
import slipday.output.Lines;
import slipday.output.report.Template.Raw;
import slipday.output.report.Words.Part;

/**
 * The candidates of one line.
 *
 * @param season the one they stood in
 * @param chosen whose seed goes on, or why none can
 * @param next what to do
 * @param first plots of the first pairs of traits
 * @param more of the others
 * @param traits the columns of the table
 * @param rest how many plants the table leaves out, in words; empty where none
 * @param notes what is lacking, taken for granted or left aside
 */
record CandidatesView(
    String title,
    String name,
    String season,
    List<Part> chosen,
    List<Part> next,
    List<Panel> first,
    List<Panel> more,
    List<String> traits,
    List<Row> rows,
    String rest,
    String counted,
    List<List<Part>> notes) {
  private static final int FIRST_PAIRS = 3;
  private static final int MOST_ROWS = 200;

  /**
   * A plot.
   *
   * @param title its traits
   * @param notes what is not on it
   */
  record Panel(String title, Raw svg, List<String> notes) {}

  /**
   * A plant.
   *
   * @param standing its rank, or that it may be no parent
   * @param seed tags of the fruits with seed of the line
   * @param shortBy of all aims
   */
  record Row(
      String thing,
      Raw sign,
      String kind,
      String standing,
      String name,
      String seed,
      List<Cell> cells,
      String shortBy) {}

  /**
   * @param figure the mean as measured, corrected; a dash where it was not measured
   * @param promise what its offspring promise; empty where nothing can be told
   */
  record Cell(String trait, String figure, String promise) {}

  boolean hasMore() {
    return !more.isEmpty();
  }

  boolean hasNotes() {
    return !notes.isEmpty();
  }

  String morePairs() {
    return Lines.count(more.size(), "more pair") + " of traits";
  }

  /**
   * @param season they stood in, as people call it
   * @param prefix of the candidates' ids in the book
   */
  static CandidatesView of(Breeding.OfLine of, String season, String prefix, WhyBook book) {
    Candidates found = of.candidates();
    Optional<Chosen> chosen = of.chosen().value();
    List<Candidates.Study> studies =
        found.traits().stream().filter(t -> t.aim().isPresent()).toList();
    List<CandidateEntry> entries = new ArrayList<>();
    Set<Plants> parents =
        chosen.stream()
            .flatMap(c -> c.parts().stream())
            .map(p -> p.plant().plant())
            .collect(Collectors.toCollection(LinkedHashSet::new));
    for (Candidate candidate : found.candidates()) {
      List<Chosen.Part> parts =
          parents.contains(candidate.plant())
              ? chosen.orElseThrow().parts().stream()
                  .filter(p -> p.plant().plant().equals(candidate.plant()))
                  .toList()
              : List.of();
      entries.add(new CandidateEntry(prefix + entries.size(), candidate, parts, studies));
    }
    List<CandidateEntry> shown = entries.stream().limit(MOST_ROWS).toList();
    shown.forEach(e -> book.thing(e.id(), e.thing(found, book)));
    List<Panel> panels = new CandidatePlots(studies, shown).panels();
    Set<String> notes = new LinkedHashSet<>();
    chosen.ifPresent(c -> notes.addAll(c.notes()));
    notes.addAll(found.notes());
    int pairs = Math.min(FIRST_PAIRS, panels.size());
    return new CandidatesView(
        found.line().title(),
        found.line().name().equals(found.line().title()) ? "" : found.line().name(),
        season,
        Words.parts(of.chosen().match(CandidatesView::goesOn, refused -> refused)),
        Words.parts(chosen.map(CandidatesView::next).orElse("")),
        panels.subList(0, pairs),
        panels.subList(pairs, panels.size()),
        studies.stream().map(s -> s.trait().name()).toList(),
        shown.stream().map(CandidateEntry::row).toList(),
        rest(entries.size() - shown.size(), found),
        found.counted(),
        notes.stream().map(Words::parts).toList());
  }

  private static String rest(int left, Candidates found) {
    return left == 0
        ? ""
        : Lines.count(left, "plant")
            + " more are in what `slipday candidates` tells of "
            + found.line().name()
            + ".";
  }

  private static String goesOn(Chosen chosen) {
    String parts =
        chosen.parts().stream()
            .map(p -> "`" + p.tag() + "` for " + Lines.count(p.plants(), "plant"))
            .collect(Collectors.joining(", "));
    return "Seed that goes on, of the next generation's "
        + Lines.count(chosen.plants(), "plant")
        + ": "
        + parts
        + ".";
  }

  private static String next(Chosen chosen) {
    List<String> unsaved =
        chosen.parts().stream()
            .filter(p -> p.fruit().savedInto().isEmpty())
            .map(p -> "`" + p.tag() + "`")
            .toList();
    String line = chosen.candidates().line().name();
    String why =
        "`slipday choose` with `" + line + "` tells what it costs, and what else could be.";
    return unsaved.isEmpty()
        ? "Next: sow each in its share, and keep the rest of its seed. " + why
        : "Next: take out and dry the seed of "
            + String.join(", ", unsaved)
            + ", count it and write it down as saved. "
            + why;
  }
}
