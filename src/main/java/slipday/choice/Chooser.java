package slipday.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slipday.finding.Nearest;
import slipday.garden.CropFacts;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Planting;
import slipday.garden.record.Plants;
import slipday.genetics.Answer;
import slipday.genetics.parents.Choice;
import slipday.genetics.parents.Question;
import slipday.measure.Reasoned;

/** Chooses the fruits of a line whose seed goes on. */
public final class Chooser {
  private static final int FAMILIES = 4;
  private static final int PLANTS = 12;

  private final Garden garden;
  private final Line line;
  private final Wish wish;
  private final CandidateFinder finder;
  private final Candidates candidates;
  private final List<String> notes = new ArrayList<>();

  private Chooser(Garden garden, Line line, Wish wish) {
    this.garden = garden;
    this.line = line;
    this.wish = wish;
    this.finder = new CandidateFinder(garden, line);
    this.candidates = finder.find();
  }

  /** The choice, or why there is none. */
  public static Answer<Chosen> choose(Garden garden, Line line, Wish wish) {
    return new Chooser(garden, line, wish).run();
  }

  /** A fruit that may be chosen, with its plant. */
  record Eligible(Candidate plant, Candidate.SeedFruit fruit) {
    String tag() {
      return fruit.fruit().tag().toLowerCase(Locale.ROOT);
    }
  }

  private Answer<Chosen> run() {
    Optional<String> wrong = wrongTags();
    if (wrong.isPresent()) {
      return Answer.refused(wrong.get());
    }
    List<Eligible> eligible = eligible(lower(wish.drop()));
    if (eligible.isEmpty()) {
      return Answer.refused(nothing());
    }
    int parents = parents(eligible);
    int plants = plants(parents);
    Kin kin = new Kin(eligible, finder.relatives());
    List<Candidate> pool =
        new Kin(eligible(Set.of()), finder.relatives()).among(candidates.candidates());
    FruitSeed seed = new FruitSeed(garden);
    return new Dealing(eligible, kin, pool, wish, seed, parents, plants)
        .best()
        .then(dealt -> Answer.of(chosen(eligible, kin, pool, dealt, parents, seed)));
  }

  static Set<String> lower(List<String> tags) {
    Set<String> lower = new TreeSet<>();
    tags.forEach(t -> lower.add(t.toLowerCase(Locale.ROOT)));
    return lower;
  }

  /** Fruits of the line with seed, on plants that may be parents; the best of a plant first. */
  private List<Eligible> eligible(Set<String> dropped) {
    List<Eligible> eligible = new ArrayList<>();
    for (Candidate candidate : candidates.candidates()) {
      for (Candidate.SeedFruit fruit : candidate.fruits()) {
        Eligible each = new Eligible(candidate, fruit);
        boolean may =
            candidate.refused().isEmpty()
                && fruit.mayGoOn()
                && fruit.seeds().orElse(1) > 0
                && !dropped.contains(each.tag());
        if (may) {
          eligible.add(each);
        }
      }
    }
    return eligible;
  }

  private Optional<String> wrongTags() {
    Map<String, Eligible> known = new HashMap<>();
    for (Candidate candidate : candidates.candidates()) {
      candidate
          .fruits()
          .forEach(f -> known.put(new Eligible(candidate, f).tag(), new Eligible(candidate, f)));
    }
    List<String> asked = new ArrayList<>(wish.keep());
    asked.addAll(wish.drop());
    for (String tag : asked) {
      Eligible found = known.get(tag.toLowerCase(Locale.ROOT));
      if (found == null) {
        List<String> tags =
            known.values().stream().map(e -> e.fruit().fruit().tag()).sorted().toList();
        return Optional.of(
            "No marked fruit of `"
                + line.name()
                + "` carries the tag `"
                + tag
                + "`. "
                + Nearest.help(tag, tags, () -> "There are: " + String.join(", ", tags) + "."));
      }
      boolean kept = lower(wish.keep()).contains(found.tag());
      if (kept && found.plant().refused().isPresent()) {
        return Optional.of(
            "`"
                + tag
                + "` can't be kept: "
                + found.plant().name()
                + " may be no parent ("
                + found.plant().refused().get()
                + ").");
      }
      Optional<String> refused = found.fruit().refused();
      if (kept && refused.isPresent()) {
        return Optional.of("`" + tag + "` can't be kept: " + refused.get() + ".");
      }
      if (kept && !found.fruit().ofLine()) {
        return Optional.of("`" + tag + "` can't be kept: its seed is a cross, not of the line.");
      }
    }
    return Optional.empty();
  }

  private String nothing() {
    if (candidates.candidates().isEmpty()) {
      return "No plant of `" + line.name() + "` has a fruit marked or measured on record.";
    }
    long refused = candidates.candidates().stream().filter(c -> c.refused().isPresent()).count();
    return "No marked fruit of `"
        + line.name()
        + "` may give seed: "
        + (refused == 0
            ? "no flower that set was marked on its plants."
            : "of "
                + count(candidates.candidates().size(), "plant")
                + ", "
                + refused
                + " may be no parent, and no flower that set was marked on another.");
  }

  static String count(int n, String word) {
    return n + " " + word + (n == 1 ? "" : "s");
  }

  /** The fewest seed parents: asked for, or the goal's, or as the line's purpose is. */
  private int parents(List<Eligible> eligible) {
    Set<Plants> bearing = new LinkedHashSet<>();
    eligible.forEach(e -> bearing.add(e.plant().plant()));
    int asked =
        wish.parents()
            .or(candidates::chosen)
            .orElseGet(
                () ->
                    line.purpose() == Line.Purpose.KEEP
                        ? line.facts()
                            .get(CropFacts.POPULATION)
                            .map(p -> (int) Math.round(p.value().toKeep().low()))
                            .orElse(FAMILIES)
                        : FAMILIES);
    if (asked > bearing.size()) {
      notes.add(
          count(asked, "seed parent")
              + " or more are wanted, and only "
              + count(bearing.size(), "plant")
              + (bearing.size() == 1 ? " bears" : " bear")
              + " seed that may go on: all of them are taken, and what is missing can't be made up"
              + " later. Mix in seed of an earlier year if there is any.");
    }
    return Math.min(asked, bearing.size());
  }

  /** Plants of the next generation: asked for, or as many as the plan gives the line. */
  private int plants(int parents) {
    int planned =
        garden.plantings().stream()
            .filter(p -> p.line().name().equals(line.name()) && p.seedSaved())
            .map(Planting::plants)
            .flatMap(Optional::stream)
            .mapToInt(Reasoned::value)
            .sum();
    int plants = wish.plants().orElse(planned > 0 ? planned : PLANTS);
    if (plants < parents) {
      notes.add(
          (wish.plants().isPresent() ? "Asked for: " : "The plan grows ")
              + count(plants, "plant")
              + "; "
              + count(parents, "seed parent")
              + " need "
              + count(parents, "plant")
              + ", so that many are dealt out. Fewer parents would do with fewer: `--parents "
              + plants
              + "`.");
    }
    return Math.min(Question.MOST_PARTS, Math.max(parents, plants));
  }

  private Chosen chosen(
      List<Eligible> eligible,
      Kin kin,
      List<Candidate> pool,
      Dealing.Dealt dealing,
      int parents,
      FruitSeed seed) {
    Choice choice = dealing.choice();
    Optional<Choice> free = dealing.free();
    notes.addAll(dealing.notes());
    List<Chosen.Part> parts = new ArrayList<>();
    for (int i = 0; i < eligible.size(); i++) {
      int dealt = choice.parts().get(i);
      if (dealt > 0) {
        parts.add(new Chosen.Part(eligible.get(i).plant(), eligible.get(i).fruit(), dealt));
      }
    }
    parts.sort(
        Comparator.comparingInt((Chosen.Part p) -> -p.plants())
            .thenComparing(p -> p.plant().rank().orElse(Integer.MAX_VALUE)));
    boolean valued = eligible.stream().anyMatch(e -> e.fruit().index().isPresent());
    if (!valued) {
      notes.add(
          "Nothing can be valued here, so seed of as many plants as are wanted goes on in equal"
              + " parts, as they come.");
    }
    tellHeritability();
    Chosen.Kinship kinship = kin.kinship(choice.parts(), pool);
    Outcomes outcomes =
        new Outcomes(finder, kin.shares(choice.parts()), free.map(f -> kin.shares(f.parts())));
    notes.addAll(new Mixtures(garden.record(), finder, candidates, outcomes).notes(parts));
    Optional<Chosen.Release> release =
        line.purpose() == Line.Purpose.KEEP ? Optional.empty() : outcomes.release(parts, pool);
    return new Chosen(
        candidates,
        parts,
        dealing.plants(),
        bounds(kinship, parents),
        Optional.of(choice.value()).filter(v -> valued),
        Optional.of(choice.bound()).filter(v -> valued),
        choice.proved(),
        free.map(Choice::value).filter(v -> valued),
        kinship,
        outcomes.promises(),
        release,
        Remnants.of(eligible, choice.parts(), seed, line.purpose() == Line.Purpose.FIX),
        notes);
  }

  private List<Chosen.Bound> bounds(Chosen.Kinship kinship, int parents) {
    List<Chosen.Bound> bounds = new ArrayList<>();
    bounds.add(
        new Chosen.Bound(
            parents == 1
                ? "one seed parent or more"
                : "seed parents that count for "
                    + parents
                    + " used alike, as near as the plants can be dealt out",
            kinship.parentsAlike()));
    wish.effectiveSize()
        .ifPresent(
            n ->
                bounds.add(
                    new Chosen.Bound(
                        String.format(Locale.ROOT, "an effective size of %.1f or more", n),
                        kinship.effectiveSize())));
    wish.coancestry()
        .ifPresent(
            c ->
                bounds.add(
                    new Chosen.Bound(
                        String.format(Locale.ROOT, "a mean coancestry of %.3f at most", c),
                        kinship.coancestry())));
    return bounds;
  }

  /** On what the figures rest, where nobody knows how much of a difference is passed on. */
  private void tellHeritability() {
    List<String> assumed =
        candidates.traits().stream()
            .filter(t -> t.aim().isPresent() && t.source() == Source.ASSUMED)
            .map(t -> t.trait().name())
            .toList();
    if (!assumed.isEmpty()) {
      notes.add(
          "No heritability is known of "
              + String.join(", ", assumed)
              + ": what is expected is reckoned with 0.3 of one figure, and less or more may"
              + " come.");
    }
    candidates.notes().stream().filter(n -> n.contains("a heritability of")).forEach(notes::add);
    candidates.notes().stream().filter(n -> n.contains("The choice depends")).forEach(notes::add);
  }
}
