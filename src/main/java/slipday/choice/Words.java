package slipday.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.descent.Relatives;
import slipday.genetics.Aim;
import slipday.genetics.Pedigree;
import slipday.measure.Ordinals;

/** What speaks for a candidate and against it, in a gardener's words. */
final class Words {
  private static final int PLACES = 3;
  private static final int MANY = 5;
  private static final double LITTLE_KNOWN = 0.3;

  private final List<Candidate> all;
  private final Aims aims;
  private final List<TraitValues> traits;
  private final Relatives relatives;
  private final Refusals refusals;

  Words(
      List<Candidate> all,
      Aims aims,
      List<TraitValues> traits,
      Relatives relatives,
      Refusals refusals) {
    this.all = all;
    this.aims = aims;
    this.traits = traits;
    this.relatives = relatives;
    this.refusals = refusals;
  }

  Candidate spoken(Candidate candidate) {
    return new Candidate(
        candidate.plant(),
        candidate.generation(),
        candidate.inbreeding(),
        candidate.figures(),
        candidate.index(),
        candidate.rank(),
        candidate.refused(),
        speaksFor(candidate),
        speaksAgainst(candidate),
        candidate.fruits(),
        candidate.asides());
  }

  private List<String> speaksFor(Candidate candidate) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < traits.size(); i++) {
      Candidate.Figure figure = candidate.figures().get(i);
      int measured = traits.get(i).measured();
      int place = i;
      figure
          .rank()
          .filter(r -> r <= PLACES && r <= measured / 2 && !isShared(r, place))
          .ifPresent(r -> words.add(Ordinals.of(r) + " for " + figure.trait().name()));
    }
    for (int i = 0; i < traits.size(); i++) {
      Candidate.Figure figure = candidate.figures().get(i);
      Optional<Aim> aim = aims.aim(figure.trait(), traits.get(i).deviation());
      if (aim.isPresent() && meets(candidate, i, aim.get()) && !allMeet(i, aim.get())) {
        words.add("meets the aim for " + figure.trait().name());
      }
    }
    kin(candidate).ifPresent(words::add);
    return words;
  }

  private boolean isShared(int rank, int trait) {
    return all.stream()
            .filter(c -> c.figures().get(trait).rank().filter(r -> r == rank).isPresent())
            .count()
        > 1;
  }

  private static boolean meets(Candidate candidate, int trait, Aim aim) {
    return candidate
        .figures()
        .get(trait)
        .predicted()
        .filter(p -> aim.isMetBy(p.value()))
        .isPresent();
  }

  private boolean allMeet(int trait, Aim aim) {
    return all.stream().allMatch(c -> meets(c, trait, aim));
  }

  /** Beside the best of another family, a parent that is no sib of it keeps more of the line. */
  private Optional<String> kin(Candidate candidate) {
    Optional<Candidate> best = all.stream().filter(c -> c.rank().isPresent()).findFirst();
    if (best.isEmpty()
        || best.get().plant().equals(candidate.plant())
        || candidate.rank().isEmpty()) {
      return Optional.empty();
    }
    Pedigree pedigree = relatives.pedigree();
    int own = relatives.plant(candidate.plant());
    int other = relatives.plant(best.get().plant());
    if (pedigree.coancestry(own, other) < 1e-9) {
      return Optional.of("not a relative of " + best.get().name());
    }
    Map<Integer, Double> parents = pedigree.parents(own);
    return parents.isEmpty() || parents.equals(pedigree.parents(other))
        ? Optional.empty()
        : Optional.of("of another family than " + best.get().name());
  }

  private List<String> speaksAgainst(Candidate candidate) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < traits.size(); i++) {
      Candidate.Figure figure = candidate.figures().get(i);
      boolean aimed = aims.isAimedAt(figure.trait());
      int measured = traits.get(i).measured();
      if (aimed && figure.raw().isEmpty()) {
        words.add(figure.trait().name() + " not measured");
      } else if (figure.rank().filter(r -> r == measured && measured >= MANY).isPresent()) {
        words.add("last for " + figure.trait().name());
      }
    }
    boolean single =
        candidate.figures().stream().anyMatch(f -> f.raw().isPresent() && !f.trait().isOfPlant())
            && candidate.figures().stream()
                .filter(f -> !f.trait().isOfPlant())
                .allMatch(f -> f.fruits() <= 1);
    if (single) {
      words.add("known by one fruit only");
    }
    boolean littleKnown =
        candidate.index().isPresent()
            && candidate.figures().stream()
                .filter(f -> aims.isAimedAt(f.trait()))
                .flatMap(f -> f.predicted().stream())
                .allMatch(p -> p.accuracy() < LITTLE_KNOWN);
    if (littleKnown) {
      words.add("little is known of what it passes on");
    }
    words.addAll(refusals.minor(candidate.plant()));
    refusals.death(candidate.plant()).ifPresent(words::add);
    if (candidate.fruits().stream().noneMatch(Candidate.SeedFruit::ofLine)) {
      words.add("no marked fruit, so no seed of the line");
    } else if (candidate.fruits().stream().noneMatch(Candidate.SeedFruit::mayGoOn)) {
      words.add("no seed that may go on");
    }
    return words;
  }
}
