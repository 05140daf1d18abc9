package slipday.garden.record;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.Lot;

/**
 * What tasted bitter, and which seed comes of it. One bitter fruit condemns its plant, and the
 * plant all seed that it bore or gave pollen to.
 */
public final class Bitterness {
  private final GardenRecord record;
  private final Map<Subject, Fact.Tasted> bitter = new LinkedHashMap<>();

  private Bitterness(GardenRecord record) {
    this.record = record;
    for (Fact.Tasted fact : record.every(Fact.Tasted.class).filter(Fact.Tasted::bitter).toList()) {
      bitter.putIfAbsent(fact.subject(), fact);
      if (fact.subject() instanceof Fruit fruit && fruit.seedParent().plant().isPresent()) {
        bitter.putIfAbsent(fruit.seedParent(), fact);
      }
    }
  }

  public static Bitterness of(GardenRecord record) {
    return new Bitterness(record);
  }

  /**
   * A taste that condemns seed or a fruit.
   *
   * @param culprit what tasted bitter: the fruit itself or a plant that is its parent
   */
  public record Told(Subject culprit, Fact.Tasted tasted) {}

  /**
   * What condemns a fruit and its seed: its own taste, its plant's, or that of its pollen parent.
   */
  public Optional<Told> of(Subject fruit) {
    if (bitter.isEmpty()) {
      return Optional.empty();
    }
    Stream<Subject> pollen =
        fruit instanceof Fruit marked
            ? Stream.of(marked.seedParent(), marked.pollenParent())
            : Stream.of();
    return Stream.concat(Stream.of(fruit), pollen).flatMap(this::told).findFirst();
  }

  /**
   * What tells that the flesh of a fruit is bitter: its own taste or its plant's, not the pollen's.
   */
  public boolean isBitter(Subject fruit) {
    return bitter.containsKey(fruit)
        || (fruit instanceof Fruit marked && bitter.containsKey(marked.seedParent()));
  }

  private Stream<Told> told(Subject subject) {
    return Optional.ofNullable(bitter.get(subject)).map(t -> new Told(subject, t)).stream();
  }

  /** What condemns the seed of a lot; empty too for one that was declared and not saved. */
  public Optional<Told> ofSeed(Lot lot) {
    return bitter.isEmpty() || lot.line().crop().isBitter()
        ? Optional.empty()
        : record.origin(lot).stream().flatMap(s -> of(s.from()).stream()).findFirst();
  }
}
