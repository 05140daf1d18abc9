package slipday.choice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import slipday.garden.record.Plants;
import slipday.genetics.Answer;
import slipday.genetics.mixed.BreedingValues;
import slipday.genetics.mixed.Components;
import slipday.genetics.mixed.JointModel;

/**
 * Values traits that go together by one set of equations for all of them, where the plan states how
 * far they do.
 */
final class Together {
  private final Correlations correlations;

  /** Of what a plant has of its own in a trait told of it once: luck in name only. */
  private static final double NEXT_TO_NOTHING = 1e-4;

  /**
   * A trait with what of it is inherited.
   *
   * @param alone the same valued by itself, where it was valued together with others
   */
  record Known(TraitModel model, Inheritance inheritance, Optional<Inheritance> alone) {
    static Known alone(TraitModel model, Inheritance inheritance) {
      return new Known(model, inheritance, Optional.empty());
    }

    Trait trait() {
      return model.trait();
    }

    boolean canBeValued() {
      return inheritance.levels().stream()
          .allMatch(l -> l.heritability().components().additive() > 0);
    }

    /** Its level beside another trait's; the middle one of several. */
    private Inheritance.Level level(int of, int levels) {
      int own = inheritance.levels().size();
      return inheritance.levels().get(own == levels ? of : own / 2);
    }

    /**
     * What is told of a plant once is the plant's own but for what it inherits, and goes together
     * with what else stays with the plant, not with the luck of a fruit.
     */
    private Components components(int of, int levels) {
      Components found = level(of, levels).heritability().components();
      double rest = found.permanent() + found.residual();
      return trait().isOfPlant()
          ? new Components(found.additive(), rest * (1 - NEXT_TO_NOTHING), rest * NEXT_TO_NOTHING)
          : found;
    }

    /** Whether anything is known of what stays with its plants beside what they inherit. */
    private boolean isLasting() {
      return inheritance.levels().stream()
          .anyMatch(l -> trait().isOfPlant() || l.heritability().components().permanent() > 0);
    }
  }

  Together(Correlations correlations) {
    this.correlations = correlations;
  }

  /** The same traits in the same order, those that go together valued together. */
  List<Known> valued(List<Known> traits) {
    List<Known> valued = new ArrayList<>(traits);
    Set<Integer> done = new HashSet<>();
    for (int t = 0; t < traits.size(); t++) {
      List<Integer> group = group(traits, t, done);
      if (group.size() > 1) {
        List<Known> joined = joined(group.stream().map(traits::get).toList());
        for (int i = 0; i < group.size(); i++) {
          valued.set(group.get(i), joined.get(i));
        }
      }
    }
    return valued;
  }

  /** All that hang together with a trait by any chain of pairs. */
  private List<Integer> group(List<Known> traits, int from, Set<Integer> done) {
    List<Integer> group = new ArrayList<>();
    if (isValued(traits.get(from)) && done.add(from)) {
      group.add(from);
    }
    for (int i = 0; i < group.size(); i++) {
      Trait one = traits.get(group.get(i)).trait();
      for (int other = 0; other < traits.size(); other++) {
        boolean told = correlations.tell(one, traits.get(other).trait());
        if (told && isValued(traits.get(other)) && done.add(other)) {
          group.add(other);
        }
      }
    }
    group.sort(null);
    return group;
  }

  private static boolean isValued(Known known) {
    return !known.inheritance().levels().isEmpty() && known.canBeValued();
  }

  private List<Known> joined(List<Known> group) {
    int levels = group.stream().mapToInt(k -> k.inheritance().levels().size()).max().orElse(0);
    List<List<BreedingValues>> byLevel = new ArrayList<>();
    for (int level = 0; level < levels; level++) {
      Answer<List<BreedingValues>> values = values(group, level, levels);
      if (values.refusal().isPresent()) {
        return group.stream().map(k -> said(k, values.refusal().get())).toList();
      }
      values.value().ifPresent(byLevel::add);
    }
    List<Known> joined = new ArrayList<>();
    for (int t = 0; t < group.size(); t++) {
      Known known = group.get(t);
      int own = known.inheritance().levels().size();
      List<Inheritance.Level> made = new ArrayList<>();
      for (int level = 0; level < own; level++) {
        made.add(
            new Inheritance.Level(
                known.inheritance().levels().get(level).heritability(),
                byLevel.get(own == levels ? level : levels / 2).get(t)));
      }
      List<String> says = new ArrayList<>(known.inheritance().says());
      says.add(told(known, group));
      joined.add(
          new Known(
              known.model(),
              new Inheritance(known.inheritance().source(), made, says),
              Optional.of(known.inheritance())));
    }
    return joined;
  }

  private Answer<List<BreedingValues>> values(List<Known> group, int level, int levels) {
    int n = group.size();
    double[][] genetic = new double[n][n];
    double[][] environmental = new double[n][n];
    List<JointModel.Part> parts = new ArrayList<>();
    for (int t = 0; t < n; t++) {
      Known one = group.get(t);
      parts.add(
          new JointModel.Part(
              one.model().model(),
              one.components(level, levels),
              one.model().observed().stream().map(Together::unit).toList()));
      for (int s = 0; s < n; s++) {
        genetic[t][s] = correlations.genetic(one.trait(), group.get(s).trait());
        environmental[t][s] = correlations.environmental(one.trait(), group.get(s).trait());
      }
    }
    return JointModel.values(parts, new JointModel.Correlations(genetic, environmental));
  }

  /** What figures of several traits have to be of to share their luck. */
  private static Object unit(Observed each) {
    if (each.trait().isOfPlant()) {
      return each.plant();
    }
    return each.fruit().isPresent() ? each.fruit().get().key() : each.span();
  }

  private static Known said(Known known, String sentence) {
    List<String> says = new ArrayList<>(known.inheritance().says());
    says.add(sentence + " It is valued by itself.");
    return Known.alone(
        known.model(),
        new Inheritance(known.inheritance().source(), known.inheritance().levels(), says));
  }

  /** With what it was valued, and what that tells of plants that lack it. */
  private String told(Known known, List<Known> group) {
    List<String> others = new ArrayList<>();
    Set<Plants> told = new HashSet<>();
    for (Known other : group) {
      if (!other.trait().equals(known.trait())) {
        others.add(other.trait().name() + stated(known, other));
        other.model().observed().forEach(o -> told.add(o.plant()));
      }
    }
    known.model().observed().forEach(o -> told.remove(o.plant()));
    String lacking =
        told.isEmpty()
            ? "."
            : "; "
                + Chooser.count(told.size(), "plant")
                + " without a figure of "
                + known.trait().name()
                + (told.size() == 1 ? " is" : " are")
                + " told by those.";
    return "Valued together with " + String.join(", ", others) + lacking;
  }

  private String stated(Known one, Known other) {
    double genetic = correlations.genetic(one.trait(), other.trait());
    double environmental = correlations.environmental(one.trait(), other.trait());
    if (genetic == 0 && environmental == 0) {
      return " (by way of others)";
    }
    boolean ofPlant = one.trait().isOfPlant() || other.trait().isOfPlant();
    if (environmental != 0 && ofPlant && !(one.isLasting() && other.isLasting())) {
      Known fruit = one.trait().isOfPlant() ? other : one;
      return String.format(
          Locale.ROOT,
          " (genetic correlation %.2f; the environmental one tells nothing, for what plants have of"
              + " their own in %s is not known here)",
          genetic,
          fruit.trait().name());
    }
    return String.format(
        Locale.ROOT,
        " (genetic correlation %.2f, environmental %.2f, as the plan states)",
        genetic,
        environmental);
  }
}
