package slipday.garden.record;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slipday.garden.Lot;
import slipday.source.Span;

/** The notes and photos of the record, and which are of what. */
public final class Asides {
  private final GardenRecord record;

  public Asides(GardenRecord record) {
    this.record = record;
  }

  /**
   * A note or a photo.
   *
   * @param about as the record names it; empty where it is of the day alone
   * @param text a note's words; empty for a photo
   * @param photo its path as written; empty for a note
   */
  public record Aside(
      LocalDate date, String about, Optional<String> text, Optional<String> photo, Span span) {}

  /** What is told of a thing, by date: of a lot, its plants and the fruits it came of too. */
  public List<Aside> of(Subject subject) {
    Set<String> fruits = new HashSet<>();
    if (subject instanceof Subject.OfLot of) {
      record.origin(of.lot()).stream()
          .filter(s -> s.from() instanceof Fruit)
          .forEach(s -> fruits.add(key((Fruit) s.from())));
    } else if (subject instanceof Fruit fruit) {
      fruits.add(key(fruit));
    }
    return record.facts().stream()
        .flatMap(f -> aside(f).stream())
        .filter(a -> a.subject.filter(s -> concerns(s, subject, fruits)).isPresent())
        .map(Told::aside)
        .toList();
  }

  private static String key(Fruit fruit) {
    return fruit.key().toString();
  }

  private static boolean concerns(Subject told, Subject asked, Set<String> fruits) {
    if (told instanceof Fruit fruit && fruits.contains(key(fruit))) {
      return true;
    }
    if (asked instanceof Subject.OfLot of) {
      return isOf(told, of.lot());
    }
    Optional<Plants> plant =
        asked instanceof Fruit fruit
            ? Optional.of(fruit.seedParent())
            : asked instanceof Plants plants ? Optional.of(plants) : Optional.empty();
    return told instanceof Plants of
        && plant
            .filter(p -> p.equals(of) || (of.plant().isEmpty() && p.stand().equals(of.stand())))
            .isPresent();
  }

  private static boolean isOf(Subject told, Lot lot) {
    return told instanceof Subject.OfLot of
        ? of.lot().name().equals(lot.name())
        : told instanceof Plants plants && plants.stand().lot().name().equals(lot.name());
  }

  private record Told(Optional<Subject> subject, Aside aside) {}

  private static Optional<Told> aside(Fact fact) {
    if (fact instanceof Fact.Note note) {
      return Optional.of(
          new Told(
              note.subject(),
              new Aside(
                  note.date(),
                  name(note.subject()),
                  Optional.of(note.text()),
                  Optional.empty(),
                  note.span())));
    }
    if (fact instanceof Fact.Photo photo) {
      return Optional.of(
          new Told(
              photo.subject(),
              new Aside(
                  photo.date(),
                  name(photo.subject()),
                  Optional.empty(),
                  Optional.of(photo.path()),
                  photo.span())));
    }
    return Optional.empty();
  }

  private static String name(Optional<Subject> subject) {
    return subject
        .map(
            s ->
                s instanceof Fruit fruit
                    ? fruit.tag()
                    : s instanceof Plants plants
                        ? plants.toString()
                        : s instanceof Subject.OfLot of
                            ? of.lot().name()
                            : s instanceof Subject.OfLine line
                                ? line.line().name()
                                : ((Subject.OfBed) s).bed().name())
        .orElse("");
  }
}
