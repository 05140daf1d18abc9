package slipday.garden.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.finding.Finding;
import slipday.finding.Level;
import slipday.garden.Lot;
import slipday.measure.Reason;
import slipday.measure.Reasoned;
import slipday.source.Span;

/** More plants than were planted, more seeds than were there. */
final class Counts {
  private final GardenRecord record;
  private final List<Finding> findings;

  Counts(GardenRecord record, List<Finding> findings) {
    this.record = record;
    this.findings = findings;
  }

  /** How many of something there were at most, by which line, and in which words. */
  private record Most(int count, Span line, String words, Level level) {}

  void check() {
    Map<Stand, List<Fact>> byStand = new LinkedHashMap<>();
    record
        .facts()
        .forEach(
            f -> stands(f).forEach(s -> byStand.computeIfAbsent(s, x -> new ArrayList<>()).add(f)));
    byStand.forEach(this::stand);
    Map<String, List<Fact>> uses = new LinkedHashMap<>();
    Map<String, Lot> lots = new LinkedHashMap<>();
    record
        .facts()
        .forEach(
            f ->
                Stock.lot(f)
                    .ifPresent(
                        l -> {
                          lots.putIfAbsent(l.name(), l);
                          uses.computeIfAbsent(l.name(), n -> new ArrayList<>()).add(f);
                        }));
    lots.forEach((name, lot) -> seeds(lot, uses.getOrDefault(name, List.of())));
  }

  private static Stream<Stand> stands(Fact fact) {
    return fact instanceof Fact.Raised raised
        ? Stream.of(raised.stand())
        : plants(fact).map(Plants::stand).distinct();
  }

  private static Stream<Plants> plants(Fact fact) {
    return fact instanceof Fruit f
        ? Stream.of(f.seedParent(), f.pollenParent()).distinct()
        : subject(fact).filter(Plants.class::isInstance).map(Plants.class::cast).stream();
  }

  /** The one thing that a fact is about, other than a fruit or a lot by themselves. */
  private static Optional<Subject> subject(Fact fact) {
    if (fact instanceof Fact.Lost f) {
      return Optional.of(f.plants());
    }
    if (fact instanceof Fact.OffType f) {
      return Optional.of(f.plants());
    }
    if (fact instanceof Fact.Diseased f) {
      return Optional.of(f.plants());
    }
    if (fact instanceof Fact.Moved f) {
      return Optional.of(f.plants());
    }
    if (fact instanceof Fact.Staked f) {
      return Optional.of(f.plant());
    }
    if (fact instanceof Fact.FirstFlowers f) {
      return Optional.of(f.plants());
    }
    if (fact instanceof Fact.Covered f) {
      return Optional.of(f.plants());
    }
    if (fact instanceof Fact.Emasculated f) {
      return Optional.of(f.plants());
    }
    if (fact instanceof Fact.Tasted f) {
      return Optional.of(f.subject());
    }
    if (fact instanceof Fact.Picked f) {
      return Optional.of(f.subject());
    }
    if (fact instanceof Fact.Measured f) {
      return Optional.of(f.subject());
    }
    if (fact instanceof Fact.Saved f) {
      return Optional.of(f.from());
    }
    return fact instanceof Fact.Note f
        ? f.subject()
        : fact instanceof Fact.Photo f ? f.subject() : Optional.empty();
  }

  private void stand(Stand stand, List<Fact> facts) {
    Optional<Most> seeds = sown(facts);
    seeds.ifPresent(most -> facts.forEach(f -> raised(stand, f, most)));
    cameUp(facts).ifPresent(most -> plantedOut(stand, facts, most));
    Optional<Most> most = planted(facts).or(() -> meant(stand));
    most.ifPresent(m -> standing(stand, facts, m));
  }

  private static Optional<Most> sown(List<Fact> facts) {
    List<Fact.Sowed> sown =
        facts.stream().filter(Fact.Sowed.class::isInstance).map(Fact.Sowed.class::cast).toList();
    boolean known = !sown.isEmpty() && sown.stream().allMatch(s -> s.seeds().isPresent());
    int sum = sown.stream().mapToInt(s -> s.seeds().orElse(0)).sum();
    return known
        ? Optional.of(new Most(sum, sown.get(0).span(), sum + " seeds were sown", Level.ERROR))
        : Optional.empty();
  }

  private void raised(Stand stand, Fact fact, Most most) {
    int count =
        fact instanceof Fact.Emerged e
            ? e.seedlings()
            : fact instanceof Fact.PlantedOut p ? p.plants().orElse(0) : 0;
    if (count > most.count()) {
      findings.add(
          Finding.error(
                  "more-plants",
                  fact.span(),
                  "`" + stand.name() + "` has " + count + " plants, and " + most.words() + ".")
              .also(most.line(), "sown")
              .withHelp("Record what else was sown, or mend the count."));
    }
  }

  private static Optional<Most> cameUp(List<Fact> facts) {
    List<Fact.Emerged> up =
        facts.stream()
            .filter(Fact.Emerged.class::isInstance)
            .map(Fact.Emerged.class::cast)
            .toList();
    int sum = up.stream().mapToInt(Fact.Emerged::seedlings).sum();
    return up.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Most(
                sum,
                up.get(0).span(),
                sum + (sum == 1 ? " seedling" : " seedlings") + " came up",
                Level.WARNING));
  }

  /** Told once, at the line that makes them too many; some may have come up unrecorded. */
  private void plantedOut(Stand stand, List<Fact> facts, Most most) {
    int sum = 0;
    for (Fact fact : facts) {
      int before = sum;
      sum += fact instanceof Fact.PlantedOut out ? out.plants().orElse(0) : 0;
      if (before <= most.count() && sum > most.count()) {
        findings.add(
            Finding.at(
                    "more-plants",
                    most.level(),
                    fact.span(),
                    "Of `"
                        + stand.name()
                        + "` "
                        + sum
                        + " plants are out, and "
                        + most.words()
                        + ".")
                .also(most.line(), "came up")
                .withHelp("Record what else came up, or mend the count."));
      }
    }
  }

  private static Optional<Most> planted(List<Fact> facts) {
    List<Fact.PlantedOut> out =
        facts.stream()
            .filter(Fact.PlantedOut.class::isInstance)
            .map(Fact.PlantedOut.class::cast)
            .toList();
    boolean known = !out.isEmpty() && out.stream().allMatch(p -> p.plants().isPresent());
    int sum = out.stream().mapToInt(p -> p.plants().orElse(0)).sum();
    return known
        ? Optional.of(
            new Most(
                sum,
                out.get(0).span(),
                sum + (sum == 1 ? " was" : " were") + " planted out",
                Level.ERROR))
        : Optional.empty();
  }

  /** What the plan means to plant binds nobody; so more of them is no error. */
  private static Optional<Most> meant(Stand stand) {
    return stand
        .planting()
        .flatMap(p -> p.plants())
        .flatMap(
            n ->
                n.reason()
                    .place()
                    .map(
                        span ->
                            new Most(n.value(), span, "the plan has " + n.value(), Level.WARNING)));
  }

  private void standing(Stand stand, List<Fact> facts, Most most) {
    int lost = 0;
    for (Fact fact : facts) {
      plants(fact)
          .filter(p -> p.stand().equals(stand))
          .flatMap(p -> p.plant().stream())
          .filter(n -> n > most.count())
          .findFirst()
          .ifPresent(
              n ->
                  findings.add(
                      tooMany(stand, fact, most, "`" + stand.name() + "` has no plant " + n)));
      if (fact instanceof Fact.Lost l) {
        lost += l.count();
        if (lost > most.count() && lost - l.count() <= most.count()) {
          findings.add(
              tooMany(stand, fact, most, "Of `" + stand.name() + "` " + lost + " plants are gone"));
        }
      }
    }
  }

  private static Finding tooMany(Stand stand, Fact fact, Most most, String message) {
    String help =
        most.level() == Level.ERROR
            ? "Record what else was planted out, or mend the number."
            : "Record how many were planted out: `planted out " + stand.name() + ", … plants`.";
    return Finding.at("more-plants", most.level(), fact.span(), message + ": " + most.words() + ".")
        .also(most.line(), "the count")
        .withHelp(help);
  }

  /** Uses since the season began against what was then in hand, or was counted since. */
  private void seeds(Lot lot, List<Fact> facts) {
    Optional<Reasoned<Integer>> inHand = lot.seeds();
    if (inHand.isEmpty()) {
      return;
    }
    int left = inHand.get().value();
    Optional<Span> line = inHand.get().reason().place().or(() -> firstPlace(inHand.get().reason()));
    for (Fact fact : Stock.since(record, facts)) {
      if (fact instanceof Fact.Counted counted) {
        left = counted.seeds();
        line = Optional.of(counted.span());
        continue;
      }
      int before = left;
      int used = Stock.used(fact).orElse(0);
      left -= used;
      if (left < 0 && used > 0 && before >= 0) {
        Finding finding =
            Finding.error(
                    "more-seeds",
                    fact.span(),
                    "`"
                        + lot.name()
                        + "` had "
                        + before
                        + " seeds left, and "
                        + used
                        + " were taken from it.")
                .withHelp("Record a count of the lot, or mend the number.");
        findings.add(line.map(l -> finding.also(l, "the seeds in hand")).orElse(finding));
      }
    }
  }

  private static Optional<Span> firstPlace(Reason reason) {
    return reason.from().stream().flatMap(r -> r.place().stream()).findFirst();
  }
}
