package slipday.garden.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import slipday.finding.Finding;
import slipday.garden.Bed;
import slipday.language.Bound;
import slipday.language.Clause;
import slipday.language.Entry;
import slipday.language.RecordClauses;
import slipday.language.Value;

/** From lines of the record to facts. */
final class FactReader {
  private final Entries entries;
  private final Subjects subjects;
  private final Traits traits;
  private final List<Finding> findings;
  private final Map<Clause, Function<Entry, Optional<? extends Fact>>> readers = new HashMap<>();

  FactReader(Entries entries, Subjects subjects, Traits traits, List<Finding> findings) {
    this.entries = entries;
    this.subjects = subjects;
    this.traits = traits;
    this.findings = findings;
    plants();
    flowers();
    fruit();
    seed();
    notes();
    others();
  }

  /** Every fact; tags first, so that a line may come before the one it rests on. */
  List<Fact> facts() {
    List<Fact> facts = new ArrayList<>();
    entries.all().stream().filter(Entries::isMating).forEach(e -> mating(e).ifPresent(facts::add));
    for (Entry entry : entries.all()) {
      Function<Entry, Optional<? extends Fact>> reader = readers.get(entry.clause());
      if (reader != null) {
        reader.apply(entry).ifPresent(facts::add);
      }
    }
    return facts;
  }

  private static At at(Entry entry) {
    return new At(entry.date(), entry.span());
  }

  private static Optional<Integer> count(Entry entry, String name) {
    Bound bound = entry.bound();
    return bound.has(name) ? Optional.of(bound.count(name)) : Optional.empty();
  }

  /** What was told in quotes or without. */
  private static Optional<String> words(Entry entry, String name) {
    return entry
        .bound()
        .find(name)
        .map(v -> v instanceof Value.Text text ? text.text() : ((Value.Name) v).text());
  }

  private Optional<Fruit> mating(Entry entry) {
    Bound bound = entry.bound();
    Mating how =
        entry.is(RecordClauses.SELFED)
            ? Mating.SELF
            : entry.is(RecordClauses.SIBBED)
                ? Mating.SIB
                : entry.is(RecordClauses.CROSSED) ? Mating.CROSS : Mating.BACKCROSS;
    Optional<Plants> mother = subjects.plants(entry, "planting", "plant");
    Optional<Plants> father =
        how == Mating.SELF
            ? mother
            : subjects.plants(entry, how.isCross() ? "father" : "planting", "fatherplant");
    String tag = bound.name("tag").text();
    int year = entries.seasons().of(entry.date());
    if (mother.isEmpty() || father.isEmpty()) {
      subjects.spoil(Fruit.Key.of(year, tag));
      return Optional.empty();
    }
    Fruit fruit = new Fruit(at(entry), how, mother.get(), father.get(), tag, year);
    WithItself.of(fruit).ifPresent(findings::add);
    subjects.tag(fruit);
    return Optional.of(fruit);
  }

  private void stand(Clause clause, BiFunction<Entry, Stand, Fact> make) {
    readers.put(clause, e -> subjects.stand(e).map(s -> make.apply(e, s)));
  }

  private void plant(Clause clause, BiFunction<Entry, Plants, Fact> make) {
    readers.put(clause, e -> subjects.plants(e, "planting", "plant").map(p -> make.apply(e, p)));
  }

  private void grown(Clause clause, BiFunction<Entry, Subject, Fact> make) {
    readers.put(
        clause,
        e -> {
          Optional<Subject> subject = subjects.fruitOrPlants(e);
          if (subject.isEmpty()) {
            figures(e); // its traits are looked up all the same
          }
          return subject.map(s -> make.apply(e, s));
        });
  }

  private void lot(Clause clause, BiFunction<Entry, slipday.garden.Lot, Fact> make) {
    readers.put(clause, e -> subjects.lot(e.bound().name("lot")).map(l -> make.apply(e, l)));
  }

  /** A planting that is called as its lot is needs no more telling. */
  private boolean lotTold(Entry entry) {
    Bound bound = entry.bound();
    return bound.has("as") || subjects.isLot(bound.name("planting").text());
  }

  private void plants() {
    stand(RecordClauses.SOWED, (e, s) -> new Fact.Sowed(at(e), s, count(e, "seeds"), lotTold(e)));
    stand(
        RecordClauses.EMERGED, (e, s) -> new Fact.Emerged(at(e), s, e.bound().count("seedlings")));
    stand(RecordClauses.POTTED_ON, (e, s) -> new Fact.PottedOn(at(e), s, count(e, "plants")));
    stand(RecordClauses.PLANTED_OUT, (e, s) -> new Fact.PlantedOut(at(e), s, count(e, "plants")));
    readers.put(
        RecordClauses.MOVED,
        e -> {
          Optional<Plants> plants = subjects.plants(e, "planting", "plant");
          Optional<Bed> bed = subjects.bed(e.bound().name("bed"));
          return plants.flatMap(p -> bed.map(b -> new Fact.Moved(at(e), p, b)));
        });
    plant(RecordClauses.STAKED, (e, p) -> new Fact.Staked(at(e), p, e.bound().name("tag").text()));
    plant(RecordClauses.DIED, (e, p) -> lost(e, p, false));
    plant(RecordClauses.ROGUED, (e, p) -> lost(e, p, true));
    plant(
        RecordClauses.OFF_TYPE,
        (e, p) -> new Fact.OffType(at(e), p, count(e, "plants").orElse(1), words(e, "why")));
  }

  private void notes() {
    plant(
        RecordClauses.DISEASE_SEEN,
        (e, p) -> new Fact.Diseased(at(e), p, words(e, "what").orElseThrow()));
    lot(
        RecordClauses.LIFTED,
        (e, l) ->
            new Fact.Lifted(
                at(e),
                l,
                e.bound().choice("note").equals("bitter risk"),
                words(e, "why").orElseThrow()));
  }

  private static Fact lost(Entry e, Plants plants, boolean rogued) {
    return new Fact.Lost(at(e), plants, count(e, "plants").orElse(1), rogued, words(e, "why"));
  }

  private void flowers() {
    plant(RecordClauses.FIRST_MALE, (e, p) -> new Fact.FirstFlowers(at(e), p, true));
    plant(RecordClauses.FIRST_FRUITING, (e, p) -> new Fact.FirstFlowers(at(e), p, false));
    plant(RecordClauses.COVERED, (e, p) -> new Fact.Covered(at(e), p, count(e, "flowers")));
    plant(RecordClauses.EMASCULATED, (e, p) -> new Fact.Emasculated(at(e), p, count(e, "flowers")));
    readers.put(
        RecordClauses.TOOK, e -> subjects.fruit(e).map(f -> new Fact.SetChecked(at(e), f, true)));
    readers.put(
        RecordClauses.FAILED,
        e -> subjects.fruit(e).map(f -> new Fact.SetChecked(at(e), f, false)));
    readers.put(
        RecordClauses.LOST,
        e -> subjects.fruit(e).map(f -> new Fact.FruitLost(at(e), f, words(e, "why"))));
  }

  private void fruit() {
    grown(
        RecordClauses.PICKED,
        (e, s) ->
            new Fact.Picked(
                at(e),
                s,
                e.bound().has("state") ? Optional.of(e.bound().choice("state")) : Optional.empty(),
                figures(e)));
    List.of(
            RecordClauses.WEIGHED,
            RecordClauses.SWEETNESS,
            RecordClauses.SCORED,
            RecordClauses.MEASURED,
            RecordClauses.FAULT)
        .forEach(c -> grown(c, (e, s) -> new Fact.Measured(at(e), s, figures(e))));
    grown(
        RecordClauses.TASTED,
        (e, s) -> new Fact.Tasted(at(e), s, e.bound().choice("verdict").equals("bitter")));
  }

  private Figures figures(Entry entry) {
    Bound bound = entry.bound();
    List<Value> figures = bound.all("figure");
    List<Value.Name> names = bound.names("trait");
    List<Figures.Trait> read = new ArrayList<>();
    for (int i = 0; i < figures.size(); i++) {
      traits.read(names.get(i), figures.get(i)).ifPresent(read::add);
    }
    return new Figures(
        kilograms(bound),
        bound.has("brix") ? Optional.of(bound.base("brix")) : Optional.empty(),
        count(entry, "fruits").orElse(1),
        bound.names("fault").stream().map(Value.Name::text).toList(),
        List.copyOf(read),
        bound.find("mass").map(Value.Amount.class::cast),
        bound.find("brix").map(Value.Amount.class::cast));
  }

  private Optional<Double> kilograms(Bound bound) {
    if (!bound.has("mass")) {
      return Optional.empty();
    }
    double gross = bound.base("mass");
    double container = bound.has("container") ? bound.base("container") : 0;
    if (container >= gross && container > 0) {
      findings.add(
          Finding.error(
                  "container-heavier",
                  bound.find("container").orElseThrow().span(),
                  "The container weighs as much as the fruit in it.")
              .also(bound.find("mass").orElseThrow().span(), "both together")
              .withHelp("Write the weight of both first, and after `less` that of the container."));
      return Optional.empty();
    }
    return Optional.of(gross - container);
  }

  private void seed() {
    readers.put(
        RecordClauses.SAVED,
        e ->
            subjects
                .fruitOrPlants(e)
                .flatMap(
                    s ->
                        subjects
                            .lot(e.bound().name("lot"))
                            .map(
                                l ->
                                    new Fact.Saved(
                                        at(e),
                                        s,
                                        count(e, "seeds"),
                                        e.bound().find("seeds").map(Value::span),
                                        l))));
    lot(RecordClauses.DRIED, (e, l) -> new Fact.Dried(at(e), l));
    lot(RecordClauses.COUNTED, (e, l) -> new Fact.Counted(at(e), l, e.bound().count("seeds")));
    lot(
        RecordClauses.GERMINATION,
        (e, l) -> {
          Value.Share counts = e.bound().share("counts");
          return new Fact.Germinated(at(e), l, counts.hits(), counts.of());
        });
    lot(
        RecordClauses.GIVEN_AWAY,
        (e, l) -> new Fact.GivenAway(at(e), l, e.bound().count("seeds"), words(e, "to")));
    lot(RecordClauses.GROWN_OUT, (e, l) -> new Fact.GrownOut(at(e), l, verdict(e)));
  }

  private static Fact.Verdict verdict(Entry entry) {
    String words = entry.bound().choice("verdict").toUpperCase(Locale.ROOT);
    return Fact.Verdict.valueOf(words.replace(' ', '_'));
  }

  private void others() {
    readers.put(
        RecordClauses.STORED,
        e ->
            subjects
                .anything(e)
                .map(s -> new Fact.Stored(at(e), s, words(e, "where").orElseThrow())));
    grown(
        RecordClauses.LOOKED_AT,
        (e, s) -> new Fact.LookedAt(at(e), s, e.bound().choice("state"), figures(e)));
    readers.put(
        RecordClauses.DROPPED,
        e ->
            subjects
                .line(e.bound().name("line"))
                .map(l -> new Fact.Dropped(at(e), l, words(e, "why").orElseThrow())));
    aside(RecordClauses.NOTE, (e, s) -> new Fact.Note(at(e), s, e.bound().text("text")));
    aside(RecordClauses.PHOTO, (e, s) -> new Fact.Photo(at(e), s, e.bound().text("path")));
  }

  /** A note may be of nothing but the day. */
  private void aside(Clause clause, BiFunction<Entry, Optional<Subject>, Fact> make) {
    readers.put(
        clause,
        e ->
            e.bound().has("tag")
                ? subjects.anything(e).map(s -> make.apply(e, Optional.of(s)))
                : Optional.of(make.apply(e, Optional.empty())));
  }
}
