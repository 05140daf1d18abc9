package slipday.garden.record;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.finding.Finding;

/** Two facts that exclude one another. */
final class Conflicts {
  private static final String ROTTEN = "rotten";
  private static final double WEIGHTS_AGREE = 1.1;

  private final GardenRecord record;
  private final List<Finding> findings;
  private final Map<Plants, Fact.Lost> gone = new HashMap<>();

  Conflicts(GardenRecord record, List<Finding> findings) {
    this.record = record;
    this.findings = findings;
  }

  void check() {
    firstFlowers();
    failures();
    pickings();
    weights();
    keeping();
    tastes();
    counts();
    stakes();
    losses();
  }

  private static Finding twice(Fact again, Fact first, String message) {
    return Finding.error("recorded-twice", again.span(), message)
        .also(first.span(), "said first")
        .withHelp("Keep the line that is right.");
  }

  private record FlowersKey(Plants plants, boolean male) {}

  private void firstFlowers() {
    Map<FlowersKey, Fact.FirstFlowers> seen = new HashMap<>();
    record
        .every(Fact.FirstFlowers.class)
        .forEach(
            f -> {
              Fact.FirstFlowers first = seen.putIfAbsent(new FlowersKey(f.plants(), f.male()), f);
              if (first != null) {
                findings.add(
                    twice(
                        f,
                        first,
                        "The first "
                            + (f.male() ? "male" : "fruiting")
                            + " flowers of `"
                            + f.plants()
                            + "` are recorded on two days."));
              }
            });
  }

  /** A fruit may take and drop later; what has dropped does not come back. */
  private void failures() {
    Map<Fruit.Key, Fact.SetChecked> failed = new HashMap<>();
    record
        .every(Fact.SetChecked.class)
        .filter(s -> !s.took())
        .forEach(s -> failed.putIfAbsent(s.fruit().key(), s));
    record
        .every(Fact.SetChecked.class)
        .filter(Fact.SetChecked::took)
        .forEach(s -> notAfter(failed, s.fruit(), s, "took"));
    record
        .every(Fact.Picked.class)
        .filter(p -> p.subject() instanceof Fruit)
        .forEach(p -> notAfter(failed, (Fruit) p.subject(), p, "was picked"));
    record
        .every(Fact.Saved.class)
        .filter(s -> s.from() instanceof Fruit)
        .forEach(s -> notAfter(failed, (Fruit) s.from(), s, "gave seed"));
    record.every(Fact.FruitLost.class).forEach(l -> notAfter(failed, l.fruit(), l, "was lost"));
  }

  private void notAfter(
      Map<Fruit.Key, Fact.SetChecked> failed, Fruit fruit, Fact fact, String did) {
    Fact.SetChecked failure = failed.get(fruit.key());
    if (failure != null && !fact.date().isBefore(failure.date())) {
      findings.add(
          Finding.error(
                  "after-its-end",
                  fact.span(),
                  "`"
                      + fruit.tag()
                      + "` "
                      + did
                      + " on "
                      + fact.date()
                      + ", and had failed by "
                      + failure.date()
                      + ".")
              .also(failure.span(), "failed")
              .withHelp("Take the line out that is wrong, or look for a slip in its tag."));
    }
  }

  private void pickings() {
    Map<Fruit.Key, Fact.Picked> picked = new HashMap<>();
    record
        .every(Fact.Picked.class)
        .filter(p -> p.subject() instanceof Fruit)
        .forEach(
            p -> {
              Fact.Picked first = picked.putIfAbsent(((Fruit) p.subject()).key(), p);
              if (first != null) {
                findings.add(
                    twice(p, first, "`" + ((Fruit) p.subject()).tag() + "` was picked already."));
              }
            });
  }

  private record Weighing(Fruit.Key fruit, LocalDate day) {}

  /** One fruit has one weight on a day; scales differ by less than a tenth. */
  private void weights() {
    Map<Weighing, Fact> seen = new HashMap<>();
    for (Fact fact : record.facts()) {
      Optional<Double> mass = kilograms(fact);
      if (mass.isPresent()) {
        Fruit fruit = fruit(fact).orElseThrow();
        Fact first = seen.putIfAbsent(new Weighing(fruit.key(), fact.date()), fact);
        if (first != null && isAnother(mass.get(), kilograms(first).orElseThrow())) {
          findings.add(
              twice(fact, first, "`" + fruit.tag() + "` has two weights on " + fact.date() + "."));
        }
      }
    }
  }

  private static boolean isAnother(double one, double other) {
    return Math.max(one, other) > WEIGHTS_AGREE * Math.min(one, other) + 1e-9;
  }

  /** The weight of a marked fruit, weighed alone. */
  private static Optional<Double> kilograms(Fact fact) {
    Optional<Figures> figures =
        fact instanceof Fact.Picked p
            ? Optional.of(p.figures())
            : fact instanceof Fact.Measured m ? Optional.of(m.figures()) : Optional.empty();
    return fruit(fact).isEmpty()
        ? Optional.empty()
        : figures.filter(f -> f.fruits() == 1).flatMap(Figures::kilograms);
  }

  private static Optional<Fruit> fruit(Fact fact) {
    @Nullable Subject subject =
        fact instanceof Fact.Picked p
            ? p.subject()
            : fact instanceof Fact.Measured m
                ? m.subject()
                : fact instanceof Fact.LookedAt l
                    ? l.subject()
                    : fact instanceof Fact.Saved s ? s.from() : null;
    return subject instanceof Fruit fruit ? Optional.of(fruit) : Optional.empty();
  }

  /** What is lost or rotten is so for good, and what was opened for its seed is kept no more. */
  private void keeping() {
    Map<Fruit.Key, Fact> rotten = new HashMap<>();
    Map<Fruit.Key, Fact> opened = new HashMap<>();
    Map<Fruit.Key, Fact> lost = new HashMap<>();
    record.every(Fact.FruitLost.class).forEach(l -> lost.putIfAbsent(l.fruit().key(), l));
    for (Fact fact : record.facts()) {
      fruit(fact)
          .ifPresent(
              f -> ended(fact, f.tag(), Contradictions.done(fact), lost.get(f.key()), "lost"));
    }
    record
        .every(Fact.Saved.class)
        .forEach(s -> fruit(s).ifPresent(f -> opened.putIfAbsent(f.key(), s)));
    record
        .every(Fact.LookedAt.class)
        .filter(l -> l.state().equals(ROTTEN))
        .forEach(l -> fruit(l).ifPresent(f -> rotten.putIfAbsent(f.key(), l)));
    record
        .every(Fact.LookedAt.class)
        .forEach(
            l ->
                fruit(l)
                    .ifPresent(
                        f -> {
                          if (!l.state().equals(ROTTEN)) {
                            ended(l, f.tag(), l.state(), rotten.get(f.key()), ROTTEN);
                          }
                          ended(
                              l, f.tag(), "looked at", opened.get(f.key()), "opened for its seed");
                        }));
  }

  private void ended(Fact fact, String tag, String did, @Nullable Fact end, String ended) {
    if (end != null && end.date().isBefore(fact.date())) {
      findings.add(
          Finding.error(
                  "after-its-end",
                  fact.span(),
                  "`"
                      + tag
                      + "` was "
                      + did
                      + " on "
                      + fact.date()
                      + ", and "
                      + ended
                      + " on "
                      + end.date()
                      + ".")
              .also(end.span(), ended)
              .withHelp("Take the line out that is wrong, or look for a slip in its tag or day."));
    }
  }

  private void tastes() {
    Map<Subject, Fact.Tasted> tasted = new HashMap<>();
    record
        .every(Fact.Tasted.class)
        .forEach(
            t -> {
              Fact.Tasted first = tasted.putIfAbsent(t.subject(), t);
              if (first != null && first.bitter() != t.bitter()) {
                findings.add(
                    Finding.warning(
                            "recorded-twice",
                            t.span(),
                            "`" + name(t.subject()) + "` tasted clean once and bitter once.")
                        .also(first.span(), "said first")
                        .withHelp(
                            "It is held for bitter, whichever came first: destroy it, and eat and"
                                + " seed none of it."));
              }
            });
  }

  private static String name(Subject subject) {
    return subject instanceof Fruit fruit ? fruit.tag() : subject.toString();
  }

  private void counts() {
    Map<String, Fact.Counted> counted = new HashMap<>();
    record
        .every(Fact.Counted.class)
        .forEach(
            c -> {
              Fact.Counted first = counted.putIfAbsent(c.lot().name() + " " + c.date(), c);
              if (first != null) {
                findings.add(
                    twice(
                        c,
                        first,
                        "`" + c.lot().name() + "` was counted twice on " + c.date() + "."));
              }
            });
  }

  private record StakeKey(int year, String stake) {}

  private void stakes() {
    Map<StakeKey, Fact.Staked> staked = new HashMap<>();
    record
        .every(Fact.Staked.class)
        .forEach(
            s -> {
              StakeKey key =
                  new StakeKey(s.plant().stand().year(), s.stake().toLowerCase(Locale.ROOT));
              Fact.Staked first = staked.putIfAbsent(key, s);
              if (first != null && !first.plant().equals(s.plant())) {
                findings.add(twice(s, first, "Two plants have the stake `" + s.stake() + "`."));
              }
            });
  }

  private void losses() {
    record
        .every(Fact.Lost.class)
        .filter(l -> l.plants().plant().isPresent())
        .forEach(
            l -> {
              Fact.Lost first = gone.putIfAbsent(l.plants(), l);
              if (first != null) {
                findings.add(twice(l, first, "`" + l.plants() + "` was gone already."));
              }
            });
    record
        .every(Fruit.class)
        .forEach(
            f -> {
              stillThere(f, f.seedParent());
              if (!f.pollenParent().equals(f.seedParent())) {
                stillThere(f, f.pollenParent());
              }
            });
    record.every(Fact.FirstFlowers.class).forEach(f -> stillThere(f, f.plants()));
    // A vine may die under its fruit; what was rogued is off the bed.
    record
        .every(Fact.Picked.class)
        .forEach(
            p -> {
              if (p.subject() instanceof Plants plants && isRogued(plants)) {
                stillThere(p, plants);
              }
            });
    record.every(Fact.Covered.class).forEach(f -> stillThere(f, f.plants()));
    record.every(Fact.Emasculated.class).forEach(f -> stillThere(f, f.plants()));
  }

  private boolean isRogued(Plants plants) {
    Fact.Lost lost = gone.get(plants);
    return lost != null && lost.rogued();
  }

  private void stillThere(Fact fact, Plants plants) {
    Optional.ofNullable(gone.get(plants))
        .filter(l -> l.date().isBefore(fact.date()))
        .ifPresent(
            l ->
                findings.add(
                    Finding.error(
                            "after-its-end",
                            fact.span(),
                            "`"
                                + plants
                                + "` was "
                                + Contradictions.done(fact)
                                + " on "
                                + fact.date()
                                + ", and gone by "
                                + l.date()
                                + ".")
                        .also(l.span(), l.rogued() ? "rogued" : "died")
                        .withHelp("Look for a slip in the number of the plant.")));
  }
}
