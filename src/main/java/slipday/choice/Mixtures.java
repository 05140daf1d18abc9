package slipday.choice;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;

/** Lots in which a chosen fruit's seed lies mixed with other seed: no share of it can be sown. */
final class Mixtures {
  private final GardenRecord record;
  private final CandidateFinder finder;
  private final Outcomes outcomes;
  private final Map<Fruit.Key, Candidate.SeedFruit> known = new HashMap<>();

  Mixtures(GardenRecord record, CandidateFinder finder, Candidates candidates, Outcomes outcomes) {
    this.record = record;
    this.finder = finder;
    this.outcomes = outcomes;
    candidates.candidates().stream()
        .flatMap(c -> c.fruits().stream())
        .forEach(f -> known.put(f.fruit().key(), f));
  }

  /** A sentence for each such lot, and what is to be expected of it where every seed is known. */
  List<String> notes(List<Chosen.Part> parts) {
    Set<String> lots = new LinkedHashSet<>();
    parts.forEach(p -> lots.addAll(p.fruit().savedInto()));
    return lots.stream().flatMap(lot -> note(lot, parts).stream()).toList();
  }

  private Optional<String> note(String lot, List<Chosen.Part> parts) {
    List<Fact.Saved> into =
        record.every(Fact.Saved.class).filter(s -> s.lot().name().equals(lot)).toList();
    Set<Object> sources = new HashSet<>();
    into.forEach(s -> sources.add(s.from() instanceof Fruit f ? f.key() : s.from()));
    if (sources.size() < 2) {
      return Optional.empty();
    }
    long chosen = parts.stream().filter(p -> p.fruit().savedInto().contains(lot)).count();
    boolean fruits = into.stream().allMatch(s -> s.from() instanceof Fruit);
    return Optional.of(
        "Lot `"
            + lot
            + "` mixes seed of "
            + (fruits ? sources.size() + " fruits" : "marked fruits and of others")
            + ", "
            + (chosen == sources.size() ? "all chosen" : chosen + " of them chosen")
            + ": the shares can be kept only where each fruit's seed is still bagged by itself. Of"
            + " the mix sown as it lies "
            + shares(into)
                .map(outcomes::expected)
                .filter(e -> !e.isEmpty())
                .map(e -> "expect, by its seeds, " + e)
                .orElse("nothing can be expected by what is recorded")
            + ".");
  }

  /** What each plant gives to the mix, by counted seeds. */
  private Optional<Map<Integer, Double>> shares(List<Fact.Saved> into) {
    boolean told =
        into.stream()
            .allMatch(
                s ->
                    s.seeds().isPresent()
                        && s.from() instanceof Fruit f
                        && known.containsKey(f.key()));
    if (!told) {
      return Optional.empty();
    }
    double all = into.stream().collect(Collectors.summingDouble(s -> s.seeds().orElse(0)));
    Map<Integer, Double> shares = new HashMap<>();
    for (Fact.Saved saved : into) {
      double share = saved.seeds().orElse(0) / all;
      finder
          .relatives()
          .seed((Fruit) saved.from())
          .parents()
          .forEach((plant, part) -> shares.merge(plant, share * part, Double::sum));
    }
    return all > 0 ? Optional.of(shares) : Optional.empty();
  }
}
