package slipday.garden.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.garden.Crop;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.garden.Places;
import slipday.genetics.Generation;
import slipday.genetics.PlainGeneration;
import slipday.language.Block;
import slipday.language.Bound;
import slipday.language.Declaration;
import slipday.language.Entry;
import slipday.language.RecordClauses;
import slipday.language.Value;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * The lots that seed was saved into. A lot may come from fruit of a lot that was itself born in the
 * record, so they are found by name, whatever the order of the lines.
 */
final class LotBirths {
  private final Entries entries;
  private final Map<String, Lot> declared;
  private final Map<String, Line> lines;
  private final Map<String, String> planned;
  private final Isolation isolation;
  private final LotStock stock;
  private final DiseasesSeen diseasesSeen;
  private final Map<String, Optional<Lot>> born = new LinkedHashMap<>();
  private final Set<String> inBirth = new HashSet<>();
  private final List<Finding> findings = new ArrayList<>();

  LotBirths(Entries entries, Map<String, Lot> declared, Map<String, Line> lines, Planned planned) {
    this.entries = entries;
    this.declared = declared;
    this.lines = lines;
    this.planned = planned.lots();
    this.isolation = new Isolation(entries, planned, this::lot);
    this.stock = new LotStock(entries, this.planned);
    this.diseasesSeen = new DiseasesSeen(entries);
  }

  /**
   * @return every lot born, by name; empty where its own line or one it rests on is mistaken
   */
  Outcome<Map<String, Optional<Lot>>> births() {
    entries.saved().keySet().forEach(this::lot);
    return new Outcome<>(born, findings);
  }

  private Optional<Lot> lot(String name) {
    List<Entry> saved = entries.saved().get(name);
    if (declared.containsKey(name) || saved == null) {
      return Optional.ofNullable(declared.get(name));
    }
    if (!born.containsKey(name)) {
      if (!inBirth.add(name)) {
        return Optional.empty();
      }
      Optional<Lot> lot = born(name, saved);
      inBirth.remove(name);
      born.put(name, lot);
    }
    return born.get(name);
  }

  /** One taking of seed: the lots of its parents. */
  private record Taking(
      Entry entry,
      Lot mother,
      Optional<Lot> father,
      Lot.Identity identity,
      Optional<Isolation.Kept> kept) {
    Taking(Entry entry, Lot mother, Optional<Lot> father, Lot.Identity identity) {
      this(entry, mother, father, identity, Optional.empty());
    }

    Stream<Lot> parents() {
      return Stream.concat(Stream.of(mother), father.stream());
    }
  }

  private Optional<Lot> born(String name, List<Entry> saved) {
    List<Taking> takings = new ArrayList<>();
    for (Entry entry : saved) {
      Optional<Taking> taking = taking(entry);
      if (taking.isEmpty()) {
        saved.forEach(this::told); // the lines it names are looked up all the same
        return Optional.empty();
      }
      takings.add(taking.get());
    }
    Optional<Line> line = line(takings);
    return line.map(l -> lot(name, l, takings));
  }

  private Optional<Taking> taking(Entry entry) {
    String subject = entry.bound().name("tag").text();
    int year = entries.seasons().of(entry);
    Optional<Entry> mating = entries.mating(Fruit.Key.of(year, subject));
    if (mating.isEmpty()) {
      // From fruit that nobody marked: any pollen, but in a block kept from all other.
      Optional<Isolation.Kept> kept = kept(entry, year, subject);
      return stand(year, subject)
          .map(
              m ->
                  kept.isPresent()
                      ? new Taking(entry, m, Optional.of(m), Lot.Identity.KNOWN, kept)
                      : new Taking(entry, m, Optional.empty(), Lot.Identity.UNKNOWN));
    }
    Bound bound = mating.get().bound();
    Optional<Lot> mother = stand(year, bound.name("planting").text());
    if (!bound.has("father")) {
      return mother.map(m -> new Taking(entry, m, Optional.of(m), Lot.Identity.KNOWN));
    }
    Optional<Lot> father = stand(year, bound.name("father").text());
    return mother.isEmpty() || father.isEmpty()
        ? Optional.empty()
        : Optional.of(new Taking(entry, mother.get(), father, crossed(mating.get(), mother.get())));
  }

  /** What kept other pollen out: the label of the seed says so, or the plan does. */
  private Optional<Isolation.Kept> kept(Entry entry, int year, String stand) {
    boolean told =
        read(entry)
            .filter(g -> g instanceof PlainGeneration.OpenPollinated open && open.isolated())
            .isPresent();
    if (told) {
      Reason label = new At(entry.date(), entry.span()).reason();
      return Optional.of(new Isolation.Kept(Reason.derived("its label says so", label), true));
    }
    return year == entries.seasons().planned() ? isolation.of(stand) : Optional.empty();
  }

  private static Optional<String> label(Entry entry) {
    return entry.bound().has("generation")
        ? Optional.of(entry.bound().name("generation").text())
        : Optional.empty();
  }

  /** A perfect flower that kept its anthers may have selfed. */
  private Lot.Identity crossed(Entry mating, Lot mother) {
    boolean doubtful =
        mother.line().sex().fruitingFlowersArePerfect()
            && entries.all().stream().noneMatch(e -> emasculates(e, mating));
    return doubtful ? Lot.Identity.DOUBTFUL : Lot.Identity.KNOWN;
  }

  private static boolean emasculates(Entry entry, Entry mating) {
    return entry.is(RecordClauses.EMASCULATED)
        && entry.bound().name("planting").text().equals(mating.bound().name("planting").text())
        && (!entry.bound().has("plant")
            || !mating.bound().has("plant")
            || entry.bound().count("plant") == mating.bound().count("plant"))
        && !entry.date().isAfter(mating.date())
        && !entry.date().isBefore(mating.date().minusDays(2));
  }

  private Optional<Lot> stand(int year, String name) {
    if (year == entries.seasons().planned() && planned.containsKey(name)) {
      return lot(planned.get(name));
    }
    return lot(entries.sownAs(year, name).orElse(name));
  }

  /** The line told, or else that of all parents. */
  private Optional<Line> line(List<Taking> takings) {
    Optional<Line> line = Optional.empty();
    for (Taking taking : takings) {
      Optional<Line> own = line(taking);
      if (own.isEmpty()) {
        return own;
      }
      if (line.isPresent() && !line.get().name().equals(own.get().name())) {
        findings.add(
            Finding.error(
                    "line-mismatch",
                    taking.entry.span(),
                    "Seed of two lines goes into the lot `"
                        + taking.entry.bound().name("lot").text()
                        + "`.")
                .labelled("seed of `" + own.get().name() + "`")
                .also(takings.get(0).entry.span(), "seed of `" + line.get().name() + "`")
                .withHelp("Save each into a lot of its own."));
        return Optional.empty();
      }
      line = own;
    }
    return line;
  }

  private Optional<Line> line(Taking taking) {
    Line mothers = taking.mother.line();
    boolean one = taking.parents().allMatch(p -> p.line().name().equals(mothers.name()));
    if (!taking.entry.bound().has("line")) {
      if (!one) {
        findings.add(untold(taking));
      }
      return one ? Optional.of(mothers) : Optional.empty();
    }
    return told(taking.entry).filter(l -> agrees(taking, l, one));
  }

  private Optional<Line> told(Entry saved) {
    for (Value.Name told : saved.bound().names("line")) {
      Line line = lines.get(told.text());
      if (line != null) {
        return Optional.of(line);
      }
      findings.add(
          Finding.error("unknown-name", told.span(), "There is no line `" + told.text() + "`.")
              .nearest(told.text(), lines.keySet(), "line"));
    }
    return Optional.empty();
  }

  private static Finding untold(Taking taking) {
    Lot father = taking.father.orElse(taking.mother);
    return Finding.error(
            "line-untold",
            taking.entry.span(),
            "The seed of `"
                + taking.entry.bound().name("tag").text()
                + "` is a cross of `"
                + taking.mother.line().name()
                + "` and `"
                + father.line().name()
                + "`, and its line is not told.")
        .withHelp("Declare a line for it in the plan, and end this line with `, of LINE`.");
  }

  /** Seed of one line is of that line, unless a new one begins out of it, as a selection does. */
  private boolean agrees(Taking taking, Line told, boolean one) {
    Line mothers = taking.mother.line();
    boolean same = told.name().equals(mothers.name());
    boolean sameSpecies = told.crop().species().name().equals(mothers.crop().species().name());
    boolean beginsOutOfIt = beginsFrom(told, mothers);
    if (sameSpecies && (!one || same || beginsOutOfIt)) {
      return true;
    }
    findings.add(
        Finding.error(
                "line-mismatch",
                taking.entry.span(),
                "The fruit `"
                    + taking.entry.bound().name("tag").text()
                    + "` is of `"
                    + mothers.name()
                    + "`, and its seed can't be of `"
                    + told.name()
                    + "`.")
            .also(told.span(), "the line of the lot")
            .also(taking.mother.span(), "the lot it grew from")
            .withHelp(
                "If the line begins here, let it say `began …, from " + mothers.name() + "`."));
    return false;
  }

  private static boolean beginsFrom(Line line, Line from) {
    return line.began().stream()
        .flatMap(c -> Stream.of("mother", "father").flatMap(n -> c.bound().names(n).stream()))
        .anyMatch(n -> n.text().equals(from.name()));
  }

  private Lot lot(String name, Line line, List<Taking> takings) {
    Entry first = takings.get(0).entry;
    At at = new At(first.date(), first.span());
    Map<String, Reasoned<Crop>> exposed = new HashMap<>();
    Map<String, Reasoned<String>> diseases = new TreeMap<>();
    Lot.Identity identity = Lot.Identity.KNOWN;
    for (Taking taking : takings) {
      identity = worse(identity, taking.identity);
      diseasesSeen.on(taking.entry).forEach(d -> diseases.putIfAbsent(d.value(), d));
      for (Lot parent : taking.parents().map(stock::lifted).toList()) {
        identity = worse(identity, stock.proved(parent).orElse(parent.identity()));
        parent.exposedTo().forEach(e -> exposed.putIfAbsent(e.value().name(), e));
        parent.diseases().forEach(d -> diseases.putIfAbsent(d.value(), d));
      }
    }
    boolean byDistance =
        takings.stream().anyMatch(t -> t.kept.filter(Isolation.Kept::byDistance).isPresent())
            || takings.stream()
                .flatMap(Taking::parents)
                .map(stock::lifted)
                .anyMatch(p -> p.byDistance() && p.bitterLifted().isEmpty());
    Block place = new Block(Declaration.LOT, Optional.empty(), first.line(), List.of(), false);
    return new Lot(
        name,
        line,
        generation(takings),
        Optional.empty(),
        seeds(takings),
        Optional.of(new Reasoned<>(entries.seasons().of(first), at.reason())),
        Optional.empty(),
        identity,
        List.copyOf(sorted(exposed)),
        lifted(takings),
        List.copyOf(diseases.values()),
        isolated(takings),
        byDistance,
        Optional.empty(),
        new Places(place));
  }

  /** Where all of it is of open flowers that no other pollen reached. */
  private static Optional<Reason> isolated(List<Taking> takings) {
    List<Reason> reasons =
        takings.stream().flatMap(t -> t.kept.stream()).map(Isolation.Kept::reason).toList();
    return reasons.size() < takings.size() ? Optional.empty() : Optional.of(reasons.get(0));
  }

  /** Seed whose parents of unknown father were cleared with a reason is as clear as they. */
  private Optional<Reasoned<String>> lifted(List<Taking> takings) {
    List<Lot> unknown =
        takings.stream()
            .flatMap(Taking::parents)
            .map(stock::lifted)
            .filter(p -> p.identity() == Lot.Identity.UNKNOWN)
            .toList();
    boolean clear =
        takings.stream().noneMatch(t -> t.identity == Lot.Identity.UNKNOWN)
            && unknown.stream().allMatch(p -> p.bitterLifted().isPresent());
    return clear ? unknown.stream().findFirst().flatMap(Lot::bitterLifted) : Optional.empty();
  }

  private static Collection<Reasoned<Crop>> sorted(Map<String, Reasoned<Crop>> exposed) {
    return new TreeSet<>(exposed.keySet()).stream().map(exposed::get).toList();
  }

  private static Lot.Identity worse(Lot.Identity one, Lot.Identity other) {
    return one.compareTo(other) >= 0 ? one : other;
  }

  private Optional<Reasoned<String>> generation(List<Taking> takings) {
    List<Entry> labelled =
        takings.stream().map(Taking::entry).filter(e -> label(e).isPresent()).toList();
    if (labelled.isEmpty()) {
      return Optional.empty();
    }
    Entry first = labelled.get(0);
    labelled.stream()
        .filter(e -> !read(e).equals(read(first)))
        .findFirst()
        .ifPresent(other -> findings.add(twoLabels(first, other)));
    return Optional.of(
        new Reasoned<>(label(first).orElseThrow(), new At(first.date(), first.span()).reason()));
  }

  private static Optional<Generation> read(Entry entry) {
    return label(entry).flatMap(l -> Generation.parse(l).value());
  }

  private static Finding twoLabels(Entry first, Entry other) {
    return Finding.error(
            "recorded-twice",
            other.bound().name("generation").span(),
            "`"
                + other.bound().name("lot").text()
                + "` is labelled `"
                + label(first).orElse("")
                + "` once and `"
                + label(other).orElse("")
                + "` once.")
        .also(first.bound().name("generation").span(), "said first")
        .withHelp("Keep the label that is right, or save the seed into two lots.");
  }

  /** The sum of what every fruit gave; unknown as soon as one is. */
  private static Optional<Reasoned<Integer>> seeds(List<Taking> takings) {
    List<Entry> told =
        takings.stream().map(Taking::entry).filter(e -> e.bound().has("seeds")).toList();
    if (told.size() < takings.size()) {
      return Optional.empty();
    }
    int sum = told.stream().mapToInt(e -> e.bound().count("seeds")).sum();
    List<Reason> reasons = told.stream().map(e -> new At(e.date(), e.span()).reason()).toList();
    return Optional.of(
        new Reasoned<>(
            sum,
            reasons.size() == 1
                ? reasons.get(0)
                : Reason.derived(sum + " seeds of several fruits", reasons)));
  }
}
