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
import slipday.measure.Reasoned;

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
      return plant(plant.group(1), number(plant.group(2)), year(plant));
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
    Matcher plant = PLANT.matcher(words.strip().replaceAll("\\s+", " "));
    return plant.matches()
        ? plantHelp(plant.group(1), plant.group(2), year(plant))
        : nameHelp(words);
  }

  private String plantHelp(String name, String number, int year) {
    Optional<Integer> most = stand(name, year).flatMap(this::plants);
    if (most.isPresent()) {
      return "`" + name + "` has " + most.get() + " plants, counted from 1.";
    }
    List<Stand> stands = recorded().toList();
    Optional<Integer> grown =
        stands.stream().filter(s -> s.name().equals(name)).map(Stand::year).max(Integer::compare);
    if (grown.isPresent()) {
      return Nearest.meant(name + " plant " + number + " of " + grown.get());
    }
    List<String> known = new ArrayList<>(stands.stream().map(Stand::name).toList());
    garden.plantings().stream().map(Planting::name).forEach(known::add);
    return Nearest.help(
        name,
        known,
        () ->
            "Name a planting of this season, or one of an earlier with its year:"
                + " `PLANTING plant 1 of "
                + (garden.season().year() - 1)
                + "`.");
  }

  private String nameHelp(String words) {
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
    return stand(name, year)
        .map(s -> new Plants(s, Optional.of(number)))
        .filter(p -> number > 0 && (isTold(p) || number <= plants(p.stand()).orElse(number)))
        .map(p -> p);
  }

  /** Whether a fruit is recorded of it, or of its pollen. */
  private boolean isTold(Plants plants) {
    return garden
        .record()
        .every(Fruit.class)
        .anyMatch(f -> f.seedParent().equals(plants) || f.pollenParent().equals(plants));
  }

  /** How many plants a stand has: those planted out, or else those planned. */
  private Optional<Integer> plants(Stand stand) {
    List<Optional<Integer>> out =
        garden
            .record()
            .every(Fact.PlantedOut.class)
            .filter(f -> f.stand().equals(stand))
            .map(Fact.PlantedOut::plants)
            .toList();
    if (!out.isEmpty()) {
      return out.stream().allMatch(Optional::isPresent)
          ? Optional.of(out.stream().mapToInt(n -> n.orElse(0)).sum())
          : Optional.empty();
    }
    return stand.planting().flatMap(Planting::plants).map(Reasoned::value);
  }

  private int year(Matcher plant) {
    return plant.group(3) == null ? garden.season().year() : number(plant.group(3));
  }

  private Optional<Stand> stand(String name, int year) {
    Optional<Stand> planned =
        year == garden.season().year()
            ? garden.planting(name).map(p -> new Stand(year, name, p.lot(), Optional.of(p)))
            : Optional.empty();
    return planned.or(
        () -> recorded().filter(s -> s.year() == year && s.name().equals(name)).findFirst());
  }

  /** A stand of another season is known by its sowing and the fruits it bore. */
  private Stream<Stand> recorded() {
    return garden.record().facts().stream()
        .flatMap(
            f ->
                f instanceof Fruit fruit
                    ? Stream.of(fruit.seedParent().stand(), fruit.pollenParent().stand())
                    : f instanceof Fact.Sowed sowed ? Stream.of(sowed.stand()) : Stream.empty());
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
