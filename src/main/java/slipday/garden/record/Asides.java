package slipday.garden.record;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import slipday.garden.Lot;
import slipday.measure.Reason;
import slipday.source.Span;

/** The notes and photos of the record, and which are of what. */
public final class Asides {
  private final GardenRecord record;
  private final List<Told> all;

  public Asides(GardenRecord record) {
    this.record = record;
    this.all = record.facts().stream().flatMap(f -> aside(f).stream()).toList();
  }

  /**
   * A note or a photo.
   *
   * @param about as the record names it; empty where it is of the day alone
   * @param things by which it can be asked for: a plant and its planting, a tag with its year where
   *     that is not the plan's; none where it is of the day alone
   * @param text a note's words; empty for a photo
   * @param photo its path as written; empty for a note
   */
  public record Aside(
      LocalDate date,
      String about,
      List<String> things,
      Optional<String> text,
      Optional<String> photo,
      Span span) {
    public Reason reason() {
      return new At(date, span).reason();
    }
  }

  public List<Aside> all() {
    return all.stream().map(Told::aside).toList();
  }

  /** What is told of a thing, by date: of a lot, its plants and the fruits it came of too. */
  public List<Aside> of(Subject subject) {
    Set<Fruit.Key> fruits = new HashSet<>();
    if (subject instanceof Subject.OfLot of) {
      record.origin(of.lot()).stream()
          .filter(s -> s.from() instanceof Fruit)
          .forEach(s -> fruits.add(((Fruit) s.from()).key()));
    } else if (subject instanceof Fruit fruit) {
      fruits.add(fruit.key());
    }
    return about(
        subject,
        (told, asked) ->
            (told instanceof Fruit fruit && fruits.contains(fruit.key())) || concerns(told, asked));
  }

  /** What is told of one plant and of the fruits on it, and not of all plants of its stand. */
  public List<Aside> ofPlant(Plants plant) {
    return about(
        plant,
        (told, asked) ->
            told.equals(plant)
                || (told instanceof Fruit fruit && fruit.seedParent().equals(plant)));
  }

  /** What is told of a fruit, and not of its plant. */
  public List<Aside> ofFruit(Fruit fruit) {
    return about(fruit, (told, asked) -> told instanceof Fruit f && f.key().equals(fruit.key()));
  }

  private List<Aside> about(Subject subject, BiPredicate<Subject, Subject> concerns) {
    return all.stream()
        .filter(t -> t.subject.filter(s -> concerns.test(s, subject)).isPresent())
        .map(Told::aside)
        .toList();
  }

  private static boolean concerns(Subject told, Subject asked) {
    if (asked instanceof Subject.OfLot of) {
      return isOf(told, of.lot());
    }
    Subject plant = asked instanceof Fruit fruit ? fruit.seedParent() : asked;
    return told instanceof Plants of
        && plant instanceof Plants own
        && (own.equals(of) || (of.plant().isEmpty() && own.stand().equals(of.stand())));
  }

  private static boolean isOf(Subject told, Lot lot) {
    return told instanceof Subject.OfLot of
        ? of.lot().name().equals(lot.name())
        : told instanceof Plants plants && plants.stand().lot().name().equals(lot.name());
  }

  private record Told(Optional<Subject> subject, Aside aside) {}

  private Optional<Told> aside(Fact fact) {
    if (fact instanceof Fact.Note note) {
      return Optional.of(told(note, note.subject(), Optional.of(note.text()), Optional.empty()));
    }
    return fact instanceof Fact.Photo photo
        ? Optional.of(told(photo, photo.subject(), Optional.empty(), Optional.of(photo.path())))
        : Optional.empty();
  }

  private Told told(
      Fact fact, Optional<Subject> subject, Optional<String> text, Optional<String> photo) {
    String about = subject.map(Subject::name).orElse("");
    List<String> things = subject.map(this::things).orElse(List.of());
    return new Told(subject, new Aside(fact.date(), about, things, text, photo, fact.span()));
  }

  private List<String> things(Subject subject) {
    if (subject instanceof Fruit fruit && fruit.year() != record.season()) {
      return List.of(fruit.tag() + " of " + fruit.year());
    }
    if (subject instanceof Plants plants) {
      Stand stand = plants.stand();
      if (stand.year() != record.season()) {
        return List.of(stand.lot().name());
      }
      return plants.plant().isPresent()
          ? List.of(plants.toString(), stand.name())
          : List.of(stand.name());
    }
    return List.of(subject.name());
  }
}
