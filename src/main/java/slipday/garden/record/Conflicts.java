package slipday.garden.record;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Finding;

/** Two facts that exclude one another. */
final class Conflicts {
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
    record.every(Fact.Covered.class).forEach(f -> stillThere(f, f.plants()));
    record.every(Fact.Emasculated.class).forEach(f -> stillThere(f, f.plants()));
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
