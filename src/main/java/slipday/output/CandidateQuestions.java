package slipday.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.choice.Candidate;
import slipday.choice.Candidates;
import slipday.choice.Predicted;
import slipday.choice.Trait;
import slipday.garden.record.KnownTraits;
import slipday.measure.Reason;

/** What can be asked of a line's candidates: why each trait of each was valued as it was. */
public final class CandidateQuestions {
  private static final String METHOD =
      "Several traits in one set of mixed-model equations: C. R. Henderson and R. L. Quaas 1976,"
          + " Journal of Animal Science 43:1188.";

  private CandidateQuestions() {}

  /** By trait of the line, then of each plant; those that are aimed at. */
  public static List<Question> of(Candidates found) {
    List<Question> all = new ArrayList<>();
    List<Candidates.Study> aimed =
        found.traits().stream().filter(s -> s.aim().isPresent()).toList();
    for (Candidates.Study study : aimed) {
      String answer =
          Lines.count(study.plants(), "candidate")
              + " measured, mean "
              + study.trait().words(study.mean());
      List<Reason> because = valued(study, found);
      study.together().forEach(c -> because.add(Reason.quoting(c::span)));
      all.add(question(found.line().name(), study, answer, because));
    }
    for (Candidate candidate : found.candidates()) {
      for (Candidates.Study study : aimed) {
        figure(candidate, study)
            .ifPresent(
                f ->
                    f.predicted()
                        .ifPresent(
                            p ->
                                all.add(
                                    question(
                                        candidate.name(),
                                        study,
                                        told(f, p),
                                        valued(study, f, found)))));
      }
    }
    return all;
  }

  private static Question question(
      String subject, Candidates.Study study, String answer, List<Reason> because) {
    return Question.of(subject, Questions.hyphened(study.trait().name()), answer, because);
  }

  private static Optional<Candidate.Figure> figure(Candidate candidate, Candidates.Study study) {
    return candidate.figures().stream().filter(f -> f.trait().equals(study.trait())).findFirst();
  }

  /** Without the trait's name, which is what was asked. */
  private static String told(Candidate.Figure figure, Predicted predicted) {
    String promise = CandidatesText.promise(figure, predicted);
    return promise.substring(promise.indexOf(": ") + 2);
  }

  /** Why a figure of a plant is what it is. */
  public static List<Reason> valued(
      Candidates.Study study, Candidate.Figure figure, Candidates found) {
    List<Reason> reasons = new ArrayList<>();
    joined(study, figure).ifPresent(reasons::add);
    reasons.addAll(valued(study, found));
    return reasons;
  }

  /** What other traits did to it. */
  private static Optional<Reason> joined(Candidates.Study study, Candidate.Figure figure) {
    if (figure.alone().isEmpty() || figure.predicted().isEmpty()) {
      return Optional.empty();
    }
    Trait trait = study.trait();
    Predicted alone = figure.alone().get();
    Predicted together = figure.predicted().get();
    List<Reason> from = new ArrayList<>();
    study.together().forEach(c -> from.add(Reason.quoting(c::span)));
    from.add(Reason.method(METHOD));
    String says =
        String.format(
            java.util.Locale.ROOT,
            "By figures of %s alone it would promise %s, accuracy %.2f; with the traits that go"
                + " together with it %s, accuracy %.2f.",
            trait.name(),
            trait.words(alone.value()),
            alone.accuracy(),
            trait.words(together.value()),
            together.accuracy());
    return Optional.of(Reason.derived(says, from));
  }

  /** What a trait's values rest on, for all candidates alike. */
  private static List<Reason> valued(Candidates.Study study, Candidates found) {
    List<Reason> reasons = new ArrayList<>();
    String name = study.trait().name();
    found.goal().stream()
        .flatMap(g -> g.aims().stream())
        .filter(a -> KnownTraits.key(a.trait()).equals(name))
        .forEach(a -> reasons.add(Reason.quoting(a::span)));
    found.goal().stream()
        .flatMap(g -> g.heritabilities().stream())
        .filter(h -> KnownTraits.key(h.trait()).equals(name))
        .forEach(h -> reasons.add(Reason.quoting(h::span)));
    CandidatesText.says(study).stream()
        .filter(s -> !s.startsWith("Goal: "))
        .forEach(s -> reasons.add(Reason.derived(s)));
    return reasons;
  }
}
