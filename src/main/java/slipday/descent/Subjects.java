package slipday.descent;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slipday.finding.Nearest;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.PollenReach;
import slipday.garden.Species;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.garden.record.Stand;
import slipday.garden.record.Subject;

/** Finds what a gardener names: {@code 3A}, {@code 3A of 2025}, a lot, {@code rope plant 2}. */
public final class Subjects {
  private static final Pattern TAG_OF_SEASON = Pattern.compile("(\\S+) of (\\d{4})(?:-\\d{2})?");
  private static final Pattern PLANT = Pattern.compile("(\\S+) plant (\\d{1,6})(?: of (\\d{4}))?");

  private final Garden garden;

  public Subjects(Garden garden) {
    this.garden = garden;
  }

  /**
   * A bare name is a lot, or else a planting's lot, or else a tag: of the plan's season, or else of
   * the last that has it.
   */
  public Optional<Subject> find(String words) {
    String text = words.strip().replaceAll("\\s+", " ");
    Matcher plant = PLANT.matcher(text);
    if (plant.matches()) {
      int year = plant.group(3) == null ? garden.season().year() : number(plant.group(3));
      return plant(plant.group(1), number(plant.group(2)), year);
    }
    Matcher tag = TAG_OF_SEASON.matcher(text);
    if (tag.matches()) {
      return fruits(tag.group(1))
          .filter(f -> f.year() == number(tag.group(2)))
          .findFirst()
          .map(f -> f);
    }
    return lot(text).<Subject>map(Subject.OfLot::new).or(() -> fruit(text));
  }

  /** Whether two can have seed together, whichever is the mother. */
  static boolean cross(Subject one, Subject other) {
    Species a = species(one);
    Species b = species(other);
    return PollenReach.degree(a, b).isPresent() || PollenReach.degree(b, a).isPresent();
  }

  private static Species species(Subject subject) {
    Lot lot =
        subject instanceof Subject.OfLot of
            ? of.lot()
            : subject instanceof Fruit fruit
                ? fruit.seedParent().stand().lot()
                : ((Plants) subject).stand().lot();
    return lot.line().crop().species();
  }

  /** What to do about a name that is none. */
  public String help(String words) {
    List<String> known = new ArrayList<>(garden.lots().stream().map(Lot::name).toList());
    garden.record().every(Fruit.class).map(Fruit::tag).forEach(known::add);
    garden.plantings().stream().map(Planting::name).forEach(known::add);
    return Nearest.help(
        words,
        known,
        () -> "Name a lot, a tag (`3A`, `3A of 2025`) or a plant (`PLANTING plant 3`).");
  }

  private Optional<Lot> lot(String name) {
    Optional<Lot> lot = garden.lots().stream().filter(l -> l.name().equals(name)).findFirst();
    return lot.or(() -> garden.planting(name).map(Planting::lot));
  }

  private Optional<Subject> fruit(String tag) {
    Optional<Fruit> now = fruits(tag).filter(f -> f.year() == garden.season().year()).findFirst();
    return now.or(() -> fruits(tag).max(java.util.Comparator.comparingInt(Fruit::year)))
        .map(f -> f);
  }

  private Stream<Fruit> fruits(String tag) {
    return garden.record().every(Fruit.class).filter(f -> f.tag().equalsIgnoreCase(tag));
  }

  private Optional<Subject> plant(String name, int number, int year) {
    if (number == 0) {
      return Optional.empty();
    }
    Optional<Stand> planned =
        year == garden.season().year()
            ? garden.planting(name).map(p -> new Stand(year, name, p.lot(), Optional.of(p)))
            : Optional.empty();
    return planned.or(() -> recorded(name, year)).map(s -> new Plants(s, Optional.of(number)));
  }

  /** A stand of another season is known by the fruits it bore. */
  private Optional<Stand> recorded(String name, int year) {
    Stream<Stand> stands =
        garden.record().facts().stream()
            .flatMap(
                f ->
                    f instanceof Fruit fruit
                        ? Stream.of(fruit.seedParent().stand(), fruit.pollenParent().stand())
                        : f instanceof Fact.Sowed sowed
                            ? Stream.of(sowed.stand())
                            : Stream.empty());
    return stands.filter(s -> s.year() == year && s.name().equals(name)).findFirst();
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
