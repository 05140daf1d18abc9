package slipday.garden;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.language.Clause;
import slipday.measure.Reasoned;

/** The facts of a species, crop or line; what it does not say itself its parent says. */
public final class Facts {
  private static final Facts NONE = new Facts(List.of(), Optional.empty());

  private final IdentityHashMap<Clause, List<StatedFact>> own = new IdentityHashMap<>();
  private final Optional<Facts> parent;

  private Facts(List<StatedFact> stated, Optional<Facts> parent) {
    for (StatedFact fact : stated) {
      own.computeIfAbsent(fact.clause().clause(), c -> new ArrayList<>(1)).add(fact);
    }
    this.parent = parent;
  }

  public static Facts none() {
    return NONE;
  }

  /** These facts over a parent's; a line that says nothing of its own shares its crop's. */
  public static Facts of(List<StatedFact> stated, Facts parent) {
    return stated.isEmpty() ? parent : new Facts(stated, Optional.of(parent));
  }

  /** The facts a clause states, from the nearest that states any. */
  public List<StatedFact> stated(Clause clause) {
    List<StatedFact> mine = own.get(clause);
    if (mine != null) {
      return Collections.unmodifiableList(mine);
    }
    return parent.map(p -> p.stated(clause)).orElse(List.of());
  }

  public <T> Optional<Reasoned<T>> get(FactKey<T> key) {
    List<StatedFact> stated = stated(key.clause());
    return stated.isEmpty() ? Optional.empty() : Optional.of(read(key, stated.get(0)));
  }

  public <T> List<Reasoned<T>> all(FactKey<T> key) {
    return stated(key.clause()).stream().map(s -> read(key, s)).toList();
  }

  /** The value alone, or a fallback where nothing is stated. */
  public <T> T valueOr(FactKey<T> key, T fallback) {
    return get(key).map(Reasoned::value).orElse(fallback);
  }

  /** Every fact in force, own first, in the order they were stated. */
  public Stream<StatedFact> inForce() {
    Stream<StatedFact> mine =
        own.values().stream().flatMap(List::stream).sorted((a, b) -> a.span().compareTo(b.span()));
    Stream<StatedFact> inherited =
        parent.stream().flatMap(Facts::inForce).filter(f -> !own.containsKey(f.clause().clause()));
    return Stream.concat(mine, inherited);
  }

  private static <T> Reasoned<T> read(FactKey<T> key, StatedFact fact) {
    return new Reasoned<>(key.reader().apply(fact.clause().bound()), fact.reason());
  }
}
