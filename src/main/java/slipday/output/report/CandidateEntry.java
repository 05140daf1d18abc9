package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slipday.choice.Candidate;
import slipday.choice.Candidates;
import slipday.choice.Chosen;
import slipday.choice.Trait;
import slipday.garden.record.Asides;
import slipday.measure.Ordinals;
import slipday.measure.Quantity;
import slipday.measure.Reason;
import slipday.output.CandidateQuestions;
import slipday.output.CandidatesText;
import slipday.output.Lines;
import slipday.output.Questions;
import slipday.output.report.WhyBook.Item;
import slipday.output.report.WhyBook.Thing;

/**
 * A candidate as the page tells of it.
 *
 * @param id in the book of reasons
 * @param parts its fruits that are chosen
 * @param studies the traits that are aimed at
 */
record CandidateEntry(
    String id, Candidate candidate, List<Chosen.Part> parts, List<Candidates.Study> studies) {
  private static final String NOTHING = "–";

  Mark.Kind kind() {
    if (candidate.refused().isPresent()) {
      return Mark.Kind.REFUSED;
    }
    if (!parts.isEmpty()) {
      return Mark.Kind.CHOSEN;
    }
    boolean seed = candidate.fruits().stream().anyMatch(Candidate.SeedFruit::mayGoOn);
    return seed ? Mark.Kind.SEED : Mark.Kind.BARE;
  }

  Candidate.Figure figure(Candidates.Study study) {
    return candidate.figures().stream()
        .filter(f -> f.trait().equals(study.trait()))
        .findFirst()
        .orElseThrow();
  }

  /** The tags that are chosen. */
  String tags() {
    return parts.stream().map(p -> Lines.clean(p.tag())).collect(Collectors.joining(" "));
  }

  private String standing() {
    String rank =
        candidate
            .rank()
            .map(Ordinals::of)
            .orElseGet(
                () ->
                    candidate
                        .refused()
                        .map(r -> "refused: " + r)
                        .orElse("no seed of the line marked on it"));
    return parts.isEmpty() ? rank : rank + ", " + Mark.Kind.CHOSEN.words() + ": " + tags();
  }

  /** On a mark, in a line. */
  String told(List<Candidates.Study> sides) {
    String figures =
        sides.stream()
            .map(s -> s.trait().name() + " " + shown(s))
            .collect(Collectors.joining(", "));
    return Lines.clean(candidate.name() + ", " + standing() + "; " + figures);
  }

  private String shown(Candidates.Study study) {
    Candidate.Figure f = figure(study);
    return f.predicted()
        .map(p -> study.trait().words(p.value()))
        .or(() -> f.corrected().map(study.trait()::words))
        .orElse("not measured");
  }

  private String shortBy() {
    return candidate.index().map(i -> Quantity.fixed(-i, 2)).orElse(NOTHING);
  }

  CandidatesView.Row row() {
    String seed =
        candidate.fruits().stream()
            .filter(Candidate.SeedFruit::mayGoOn)
            .map(f -> Lines.clean(f.fruit().tag()))
            .collect(Collectors.joining(" "));
    String rank =
        candidate
            .rank()
            .map(String::valueOf)
            .orElse(candidate.refused().isPresent() ? "no" : NOTHING);
    return new CandidatesView.Row(
        id,
        kind().sign(),
        kind().id(),
        rank,
        candidate.name(),
        seed.isEmpty() ? NOTHING : seed,
        studies.stream().map(this::cell).toList(),
        shortBy());
  }

  private CandidatesView.Cell cell(Candidates.Study study) {
    Candidate.Figure f = figure(study);
    Trait trait = study.trait();
    return new CandidatesView.Cell(
        trait.name(),
        f.corrected().map(trait::number).orElse(NOTHING),
        f.predicted().map(p -> trait.number(p.value())).orElse(""));
  }

  /** All that speaks for and against it, its figures, and its fruits. */
  Thing thing(Candidates found, WhyBook book) {
    List<Item> items = new ArrayList<>();
    items.add(book.item("standing", standing(), spoken(found)));
    for (Candidates.Study study : studies) {
      Candidate.Figure f = figure(study);
      String answer =
          f.predicted()
              .map(p -> CandidatesText.promise(f, p))
              .orElseGet(() -> study.trait().name() + ": " + shown(study));
      items.add(
          book.item(
              study.trait().name(),
              after(answer, study.trait().name()),
              CandidateQuestions.valued(study, f, found)));
    }
    List<Trait> traits = studies.stream().map(Candidates.Study::trait).toList();
    for (Candidate.SeedFruit f : candidate.fruits()) {
      String tag = f.fruit().tag();
      String answer = after(CandidatesText.fruit(f, traits), tag);
      items.add(book.item("fruit " + tag, answer, List.of(f.fruit().at().reason())));
    }
    if (!candidate.asides().isEmpty()) {
      List<Reason> noted = candidate.asides().stream().map(Asides.Aside::reason).toList();
      items.add(book.item("notes", Questions.counted(candidate.asides()), noted));
    }
    String generation = candidate.generation().map(g -> ", " + g).orElse("");
    String under = found.line().title() + generation + ", a candidate";
    return new Thing(Lines.clean(candidate.name()), Lines.clean(under), "", items);
  }

  private static String after(String answer, String topic) {
    return answer.startsWith(topic + ": ") ? answer.substring(topic.length() + 2) : answer;
  }

  private List<Reason> spoken(Candidates found) {
    List<Reason> reasons = new ArrayList<>();
    if (!candidate.speaksFor().isEmpty()) {
      reasons.add(Reason.derived("For: " + String.join(", ", candidate.speaksFor()) + "."));
    }
    if (!candidate.speaksAgainst().isEmpty()) {
      String against = String.join(", ", candidate.speaksAgainst());
      reasons.add(Reason.derived("Against: " + against + "."));
    }
    for (Chosen.Part part : parts) {
      String plants = Lines.count(part.plants(), "plant");
      reasons.add(Reason.derived("`" + part.tag() + "`: to be grown next, " + plants + "."));
    }
    candidate
        .index()
        .ifPresent(
            i ->
                reasons.add(
                    Reason.derived(
                        "Short of all aims by " + shortBy() + ", " + found.counted() + ".")));
    return reasons;
  }
}
