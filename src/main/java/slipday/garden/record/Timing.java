package slipday.garden.record;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import slipday.finding.Finding;

/** Facts dated before what they rest on. The order of their lines means nothing; their dates do. */
final class Timing {
  private final GardenRecord record;
  private final List<Finding> findings;
  private final Map<Stand, Fact.Sowed> sown = new HashMap<>();
  private final Map<Stand, Fact.FirstFlowers> inFlower = new HashMap<>();
  private final Map<String, Fact.Saved> saved = new LinkedHashMap<>();
  private final Map<Fruit.Key, Fact.Picked> picked = new HashMap<>();

  Timing(GardenRecord record, List<Finding> findings) {
    this.record = record;
    this.findings = findings;
  }

  void check() {
    record.every(Fact.Sowed.class).forEach(s -> sown.putIfAbsent(s.stand(), s));
    record.every(Fact.FirstFlowers.class).filter(f -> !f.male()).forEach(this::flowers);
    record.every(Fact.Saved.class).forEach(s -> saved.putIfAbsent(s.lot().name(), s));
    record.every(Fact.Picked.class).forEach(this::picked);
    record.facts().forEach(this::check);
  }

  private void flowers(Fact.FirstFlowers first) {
    if (first.plants().plant().isEmpty()) {
      inFlower.putIfAbsent(first.plants().stand(), first);
    }
  }

  private void picked(Fact.Picked fact) {
    if (fact.subject() instanceof Fruit fruit) {
      picked.putIfAbsent(fruit.key(), fact);
    }
  }

  private void check(Fact fact) {
    if (fact instanceof Fruit fruit) {
      String name = fruit.tag();
      after(fact, name, sown.get(fruit.seedParent().stand()));
      after(fact, name, inFlower.get(fruit.seedParent().stand()));
      return;
    }
    fruitOf(fact).ifPresent(f -> onFruit(fact, f));
    standOf(fact).ifPresent(s -> after(fact, s.name(), sown.get(s)));
    lotOf(fact).ifPresent(lot -> after(fact, lot, saved.get(lot)));
  }

  private void onFruit(Fact fact, Fruit fruit) {
    boolean early = after(fact, fruit.tag(), fruit);
    boolean afterPicking = fact instanceof Fact.Saved || fact instanceof Fact.LookedAt;
    if (!early && afterPicking) {
      after(fact, fruit.tag(), picked.get(fruit.key()));
    }
  }

  private static Optional<Fruit> fruitOf(Fact fact) {
    @Nullable Subject subject = null;
    if (fact instanceof Fact.SetChecked set) {
      subject = set.fruit();
    } else if (fact instanceof Fact.FruitLost l) {
      subject = l.fruit();
    } else if (fact instanceof Fact.Picked p) {
      subject = p.subject();
    } else if (fact instanceof Fact.Measured m) {
      subject = m.subject();
    } else if (fact instanceof Fact.Tasted t) {
      subject = t.subject();
    } else if (fact instanceof Fact.Saved s) {
      subject = s.from();
    } else if (fact instanceof Fact.Stored s) {
      subject = s.subject();
    } else if (fact instanceof Fact.LookedAt l) {
      subject = l.subject();
    }
    return subject instanceof Fruit fruit ? Optional.of(fruit) : Optional.empty();
  }

  private static Optional<Stand> standOf(Fact fact) {
    if (fact instanceof Fact.Raised raised) {
      return fact instanceof Fact.Sowed ? Optional.empty() : Optional.of(raised.stand());
    }
    if (fact instanceof Fact.FirstFlowers f) {
      return Optional.of(f.plants().stand());
    }
    return fact instanceof Fact.Picked p && p.subject() instanceof Plants plants
        ? Optional.of(plants.stand())
        : Optional.empty();
  }

  private static Optional<String> lotOf(Fact fact) {
    if (fact instanceof Fact.Sowed s) {
      return Optional.of(s.stand().lot().name());
    }
    if (fact instanceof Fact.Dried d) {
      return Optional.of(d.lot().name());
    }
    if (fact instanceof Fact.Counted c) {
      return Optional.of(c.lot().name());
    }
    if (fact instanceof Fact.Germinated g) {
      return Optional.of(g.lot().name());
    }
    return fact instanceof Fact.GivenAway g ? Optional.of(g.lot().name()) : Optional.empty();
  }

  /** Whether the fact is dated before what it rests on; then that is said. */
  private boolean after(Fact fact, String name, @Nullable Fact restsOn) {
    if (restsOn == null || !fact.date().isBefore(restsOn.date())) {
      return false;
    }
    String rests = restsOn instanceof Fact.Saved ? "saved" : Contradictions.done(restsOn);
    findings.add(
        Finding.error(
                "dated-too-early",
                fact.span(),
                "`"
                    + name
                    + "` was "
                    + Contradictions.done(fact)
                    + " on "
                    + fact.date()
                    + ", and "
                    + rests
                    + " only on "
                    + restsOn.date()
                    + ".")
            .labelled(Contradictions.done(fact))
            .also(Objects.requireNonNull(restsOn).span(), rests)
            .withHelp("Look which of the two dates is right."));
    return true;
  }
}
