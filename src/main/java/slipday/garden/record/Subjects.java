package slipday.garden.record;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.garden.Bed;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.language.Bound;
import slipday.language.Entry;
import slipday.language.Value;

/** Finds what the lines of the record name, and says where a name is not known. */
final class Subjects {
  private final Entries entries;
  private final Seasons seasons;
  private final Ground ground;
  private final List<Finding> findings;
  private final Map<Fruit.Key, Fruit> fruits = new HashMap<>();
  private final Map<Fruit.Key, Boolean> spoilt = new HashMap<>();

  /** By year: the fruits that carry another's tag, so that a tag of their own seems unknown. */
  private final Map<Integer, Integer> strayTags = new HashMap<>();

  Subjects(Entries entries, Ground ground, List<Finding> findings) {
    this.entries = entries;
    this.seasons = entries.seasons();
    this.ground = ground;
    this.findings = findings;
  }

  /** Puts a tag on a flower; two on one tag are told of. */
  void tag(Fruit fruit) {
    Fruit first = fruits.putIfAbsent(fruit.key(), fruit);
    if (first != null) {
      strayTags.merge(fruit.year(), 1, Integer::sum);
      findings.add(
          Finding.error(
                  "tag-twice",
                  fruit.span(),
                  "Two fruits of "
                      + seasons.label(fruit.year())
                      + " carry the tag `"
                      + fruit.tag()
                      + "`.")
              .labelled("tagged again")
              .also(first.span(), "tagged first")
              .withHelp("Give one of them another tag."));
    }
  }

  /** A tag whose own line is mistaken. */
  void spoil(Fruit.Key key) {
    spoilt.put(key, true);
  }

  private boolean isSilent(String name) {
    return ground.spoilt().test(name) || entries.isInMistakenLine(name);
  }

  private void unknown(String kind, Value.Name name, Collection<String> known) {
    if (!isSilent(name.text())) {
      findings.add(
          Finding.error(
                  "unknown-name", name.span(), "There is no " + kind + " `" + name.text() + "`.")
              .nearest(name.text(), known, kind));
    }
  }

  boolean isLot(String name) {
    return ground.lots().containsKey(name);
  }

  Optional<Lot> lot(Value.Name name) {
    return known("lot", name, ground.lots());
  }

  Optional<Line> line(Value.Name name) {
    return known("line", name, ground.lines());
  }

  Optional<Bed> bed(Value.Name name) {
    return known("bed", name, ground.beds());
  }

  private <T> Optional<T> known(String kind, Value.Name name, Map<String, T> things) {
    T found = things.get(name.text());
    if (found == null) {
      unknown(kind, name, things.keySet());
    }
    return Optional.ofNullable(found);
  }

  /** The stand that a line which happens before the flowers names. */
  Optional<Stand> stand(Entry entry) {
    Bound bound = entry.bound();
    Value.Name name = bound.name(bound.has("as") ? "as" : "planting");
    boolean ahead =
        seasons.isShortlyBeforePlanned(entry.date()) && ground.plantings().containsKey(name.text());
    return stand(ahead ? seasons.planned() : seasons.of(entry.date()), name);
  }

  private Optional<Stand> stand(int year, Value.Name name) {
    Optional<Stand> found = find(year, name.text());
    boolean planned = year == seasons.planned();
    boolean silent =
        planned
            ? isSilent(name.text())
            : ground.spoiltLots().test(name.text()) || entries.isInMistakenLine(name.text());
    if (found.isEmpty() && !silent) {
      Finding unknown =
          Finding.error(
              "unknown-name",
              name.span(),
              "Nothing called `" + name.text() + "` grows in " + seasons.label(year) + ".");
      findings.add(
          planned
              ? unknown.nearest(name.text(), ground.plantings().keySet(), "planting")
              : unknown.meant(
                  Nearest.to(name.text(), ground.lots().keySet()), () -> otherYear(name.text())));
    }
    return found;
  }

  /** Of another year's plan nothing is known but what its record says. */
  private static String otherYear(String name) {
    return "Of another year only lots are known; where a planting had a name of its own, its"
        + " sowing says so: `sowed LOT as "
        + name
        + "`.";
  }

  private Optional<Stand> find(int year, String name) {
    if (year == seasons.planned()) {
      Planting planting = ground.plantings().get(name);
      return Optional.ofNullable(planting).map(p -> new Stand(year, name, p.lot(), Optional.of(p)));
    }
    String lotName = entries.sownAs(year, name).orElse(name);
    return Optional.ofNullable(ground.lots().get(lotName))
        .map(l -> new Stand(year, name, l, Optional.empty()));
  }

  Optional<Plants> plants(Entry entry, String name, String number) {
    Bound bound = entry.bound();
    return stand(seasons.of(entry.date()), bound.name(name)).flatMap(s -> plants(s, bound, number));
  }

  private Optional<Plants> plants(Stand stand, Bound bound, String number) {
    if (!bound.has(number)) {
      return Optional.of(new Plants(stand, Optional.empty()));
    }
    int plant = bound.count(number);
    if (plant == 0) {
      findings.add(
          Finding.error(
                  "impossible-count",
                  bound.find(number).orElseThrow().span(),
                  "Plants are counted from 1, and this is plant 0.")
              .withHelp("Count from one end of the row."));
      return Optional.empty();
    }
    return Optional.of(new Plants(stand, Optional.of(plant)));
  }

  /** A tagged fruit, and nothing else. */
  Optional<Fruit> fruit(Entry entry) {
    Value.Name tag = entry.bound().name("tag");
    int year = seasons.of(entry);
    Fruit fruit = fruits.get(Fruit.Key.of(year, tag.text()));
    if (fruit == null) {
      unknownTag(tag, entry, tags(year));
    }
    return Optional.ofNullable(fruit);
  }

  /** A tagged fruit, or a stand or plant of it. */
  Optional<Subject> fruitOrPlants(Entry entry) {
    Value.Name name = entry.bound().name("tag");
    int year = seasons.of(entry);
    Fruit fruit = fruits.get(Fruit.Key.of(year, name.text()));
    if (fruit != null) {
      return onItsPlant(fruit, entry) ? Optional.of(fruit) : Optional.empty();
    }
    Optional<Stand> stand = find(year, name.text());
    if (stand.isEmpty()) {
      List<String> known = tags(year);
      known.addAll(
          year == seasons.planned() ? ground.plantings().keySet() : ground.lots().keySet());
      unknownTag(name, entry, known);
    }
    return stand.flatMap(s -> plants(s, entry.bound(), "plant"));
  }

  private boolean onItsPlant(Fruit fruit, Entry entry) {
    Optional<Integer> plant = fruit.seedParent().plant();
    boolean other =
        entry.bound().has("plant")
            && plant.isPresent()
            && plant.get() != entry.bound().count("plant");
    if (other) {
      findings.add(
          Finding.error(
                  "plant-mismatch",
                  entry.bound().find("plant").orElseThrow().span(),
                  "`" + fruit.tag() + "` hangs on plant " + plant.get() + ".")
              .also(fruit.span(), "tagged here")
              .withHelp("Leave the plant off; the tag knows it."));
    }
    return !other;
  }

  /** Anything that has a name. */
  Optional<Subject> anything(Entry entry) {
    String name = entry.bound().name("tag").text();
    int year = seasons.of(entry);
    boolean grows = fruits.containsKey(Fruit.Key.of(year, name)) || find(year, name).isPresent();
    if (!grows && ground.lots().containsKey(name)) {
      return Optional.of(new Subject.OfLot(ground.lots().get(name)));
    }
    if (!grows && ground.lines().containsKey(name)) {
      return Optional.of(new Subject.OfLine(ground.lines().get(name)));
    }
    if (!grows && ground.beds().containsKey(name)) {
      return Optional.of(new Subject.OfBed(ground.beds().get(name)));
    }
    if (!grows && !isSilent(name)) {
      findings.add(unknownAtAll(entry.bound().name("tag"), year));
      return Optional.empty();
    }
    return fruitOrPlants(entry);
  }

  private Finding unknownAtAll(Value.Name name, int year) {
    List<String> known = tags(year);
    known.addAll(ground.plantings().keySet());
    known.addAll(ground.lots().keySet());
    known.addAll(ground.lines().keySet());
    known.addAll(ground.beds().keySet());
    return Finding.error(
            "unknown-name", name.span(), "Nothing here is called `" + name.text() + "`.")
        .meant(
            Nearest.to(name.text(), known),
            () -> "Name a tag, planting, lot, line or bed, or leave it off.");
  }

  /** A line without a season may have but the year of its date wrong. */
  private static String yearSlip(Entry entry, Fruit fruit) {
    if (entry.bound().has("season")) {
      return "Write ";
    }
    LocalDate meant = fruit.date().withDayOfYear(1).with(MonthDay.from(entry.date()));
    meant = meant.isBefore(fruit.date()) ? meant.plusYears(1) : meant;
    if (meant.equals(entry.date())) {
      return "Write ";
    }
    return "If the year of the line is wrong, write `" + meant + "`; if not, write ";
  }

  private List<String> tags(int year) {
    List<String> tags = new ArrayList<>();
    fruits.values().stream().filter(f -> f.year() == year).map(Fruit::tag).forEach(tags::add);
    return tags;
  }

  private void unknownTag(Value.Name tag, Entry entry, List<String> known) {
    int year = seasons.of(entry);
    if (isSilent(tag.text()) || spoilt.containsKey(Fruit.Key.of(year, tag.text()))) {
      return;
    }
    Optional<Fruit> elsewhere =
        fruits.values().stream()
            .filter(f -> f.tag().equalsIgnoreCase(tag.text()))
            .max(java.util.Comparator.comparingInt(Fruit::year));
    if (elsewhere.isEmpty() && strayTags.getOrDefault(year, 0) > 0) {
      strayTags.merge(year, -1, Integer::sum);
      spoil(Fruit.Key.of(year, tag.text()));
      return;
    }
    Finding finding =
        Finding.error(
            "unknown-tag",
            tag.span(),
            "No fruit of " + seasons.label(year) + " carries the tag `" + tag.text() + "`.");
    findings.add(
        elsewhere
            .map(
                f -> {
                  String whole = f.tag() + " of " + seasons.label(f.year());
                  Finding helped =
                      finding
                          .also(f.span(), "a tag of " + seasons.label(f.year()))
                          .withHelp(yearSlip(entry, f) + "`" + whole + "`.");
                  return entry.bound().has("season") ? helped : helped.writing(whole);
                })
            .orElseGet(() -> finding.nearest(tag.text(), known, "tag")));
  }
}
