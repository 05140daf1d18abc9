package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.choice.Candidate;
import slipday.choice.Candidates;
import slipday.output.Lines;
import slipday.output.report.CandidatesView.Panel;
import slipday.output.report.ScatterDrawing.Side;
import slipday.output.report.Template.Raw;

/** Plots of a line's candidates, two traits at a time. */
final class CandidatePlots {
  private static final int MOST_MARKS = 120;

  private final List<Candidates.Study> studies;
  private final List<CandidateEntry> entries;

  /**
   * @param studies the traits aimed at
   * @param entries by rank
   */
  CandidatePlots(List<Candidates.Study> studies, List<CandidateEntry> entries) {
    this.studies = studies;
    this.entries = entries;
  }

  /** One for each pair of traits; one alone where a single trait is aimed at. */
  List<Panel> panels() {
    List<Panel> panels = new ArrayList<>();
    if (studies.size() == 1) {
      panels.add(panel(studies));
    }
    for (int i = 0; i < studies.size(); i++) {
      for (int j = i + 1; j < studies.size(); j++) {
        panels.add(panel(List.of(studies.get(i), studies.get(j))));
      }
    }
    return panels;
  }

  private Panel panel(List<Candidates.Study> pair) {
    List<CandidateEntry> measured =
        entries.stream()
            .filter(e -> pair.stream().allMatch(s -> e.figure(s).corrected().isPresent()))
            .toList();
    List<CandidateEntry> drawn = measured.stream().limit(MOST_MARKS).toList();
    boolean promised = drawn.stream().allMatch(e -> pair.stream().allMatch(s -> has(e.figure(s))));
    List<Side> sides = pair.stream().map(s -> side(s)).toList();
    ScatterDrawing drawing =
        new ScatterDrawing(
            sides, drawn.stream().map(e -> mark(e, pair, promised)).toList(), promised);
    String title =
        pair.stream().map(s -> s.trait().name()).reduce((a, b) -> a + " and " + b).orElseThrow();
    List<String> notes = notes(pair, drawing, promised);
    int left = entries.size() - measured.size();
    if (left > 0) {
      notes.add(
          Lines.count(left, "plant")
              + (pair.size() == 1 ? " not measured" : " not measured in both")
              + (left == 1 ? " is" : " are")
              + " left out.");
    }
    if (measured.size() > drawn.size()) {
      notes.add("The first " + drawn.size() + " are drawn.");
    }
    String label = title + ", " + Lines.count(drawn.size(), "plant");
    return new Panel(title, new Raw(drawing.svg(label).toString()), notes);
  }

  private static boolean has(Candidate.Figure figure) {
    return figure.predicted().isPresent();
  }

  private static Side side(Candidates.Study study) {
    return new Side(PlotFrame.title(study.trait(), study.wanted()), study.wanted());
  }

  private static Mark mark(CandidateEntry e, List<Candidates.Study> pair, boolean promised) {
    List<Mark.Figure> figures = new ArrayList<>();
    for (Candidates.Study study : pair) {
      Candidate.Figure f = e.figure(study);
      figures.add(
          promised
              ? new Mark.Figure(f.predicted().orElseThrow().value(), f.predicted())
              : new Mark.Figure(f.corrected().orElseThrow(), Optional.empty()));
    }
    return new Mark(e.id(), e.kind(), figures, e.tags(), e.told(pair));
  }

  private static List<String> notes(
      List<Candidates.Study> pair, ScatterDrawing drawing, boolean promised) {
    List<String> notes = new ArrayList<>();
    for (int i = 0; i < pair.size(); i++) {
      if (!drawing.reaches(i)) {
        notes.add(PlotFrame.beyond(pair.get(i).trait(), pair.get(i).wanted()));
      }
    }
    if (!promised) {
      notes.add(
          "Shown as measured, corrected: what offspring promise can't be told, so there are no"
              + " lines of equal worth.");
    } else if (pair.size() == 2 && drawing.drawn().isEmpty()) {
      List<String> idle =
          pair.stream()
              .filter(s -> s.wanted().filter(a -> a.weight() > 0).isEmpty())
              .map(s -> s.trait().name())
              .toList();
      notes.add(
          String.join(" and ", idle)
              + (idle.size() == 1 ? " weighs" : " weigh")
              + " nothing here, so there are no lines of equal worth.");
    } else if (drawing.drawn().filter(c -> c.levels().isEmpty()).isPresent()) {
      notes.add(
          "All that is drawn here meets both aims alike, so there are no lines of equal worth.");
    }
    return notes;
  }
}
