package slipday.garden.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.Lot;
import slipday.language.Bound;
import slipday.language.Clause;
import slipday.language.Entry;
import slipday.language.RecordClauses;
import slipday.language.Value;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/** What the record has to say of lots in hand: tests, counts, what was sown and given away. */
final class LotStock {
  private final Entries entries;
  private final Map<String, String> planned;
  private final Map<String, List<Entry>> byLot = new HashMap<>();

  LotStock(Entries entries, Map<String, String> planned) {
    this.entries = entries;
    this.planned = planned;
    for (Entry entry : entries.all()) {
      lotOf(entry).ifPresent(l -> byLot.computeIfAbsent(l, n -> new ArrayList<>()).add(entry));
    }
  }

  /** The lot as it is when the plan's season begins. */
  Lot known(Lot born) {
    if (about(born).isEmpty() && !entries.saved().containsKey(born.name())) {
      return born;
    }
    Lot lot = lifted(born);
    return new Lot(
        lot.name(),
        lot.line(),
        lot.generation(),
        lot.inbred(),
        seeds(lot),
        lot.harvested(),
        tested(lot).or(lot::tested),
        proved(lot).orElse(lot.identity()),
        lot.exposedTo(),
        lot.bitterLifted(),
        lot.diseases(),
        lot.isolated(),
        lot.byDistance(),
        lot.keepBack(),
        lot.places());
  }

  /** The lot without the notes that were lifted. */
  Lot lifted(Lot lot) {
    Optional<Reasoned<String>> bitter = lift(lot, "bitter risk");
    boolean disease = lift(lot, "disease").isPresent();
    return bitter.isEmpty() && !disease
        ? lot
        : new Lot(
            lot.name(),
            lot.line(),
            lot.generation(),
            lot.inbred(),
            lot.seeds(),
            lot.harvested(),
            lot.tested(),
            lot.identity(),
            bitter.isPresent() ? List.of() : lot.exposedTo(),
            bitter.or(lot::bitterLifted),
            disease ? List.of() : lot.diseases(),
            lot.isolated(),
            lot.byDistance(),
            lot.keepBack(),
            lot.places());
  }

  private Optional<Reasoned<String>> lift(Lot lot, String note) {
    return last(of(RecordClauses.LIFTED, lot).stream()
            .filter(e -> e.bound().choice("note").equals(note))
            .toList())
        .map(e -> new Reasoned<>(e.bound().words("why"), reason(e)));
  }

  /** The lines that take from a lot or tell of it, by date. */
  private List<Entry> about(Lot lot) {
    return byLot.getOrDefault(lot.name(), List.of());
  }

  private List<Entry> of(Clause clause, Lot lot) {
    return about(lot).stream().filter(e -> e.is(clause)).toList();
  }

  private static <T> Optional<T> last(List<T> list) {
    return list.isEmpty() ? Optional.empty() : Optional.of(list.get(list.size() - 1));
  }

  private Optional<Reasoned<Lot.GerminationTest>> tested(Lot lot) {
    return last(of(RecordClauses.GERMINATION, lot))
        .map(
            e -> {
              Value.Share counts = e.bound().share("counts");
              return new Reasoned<>(
                  new Lot.GerminationTest(
                      counts.hits(), counts.of(), Optional.of(e.date().getYear())),
                  reason(e));
            });
  }

  /**
   * A doubtful lot that was grown out is doubtful no more, unless it proved mixed; one taken for
   * known is, where its plants were not what its fruit says.
   */
  Optional<Lot.Identity> proved(Lot lot) {
    return last(of(RecordClauses.GROWN_OUT, lot))
        .filter(e -> lot.identity() != Lot.Identity.UNKNOWN)
        .map(e -> e.bound().choice("verdict"))
        .map(
            verdict ->
                verdict.equals("mixed")
                        || (lot.identity() == Lot.Identity.KNOWN && refutes(verdict, lot))
                    ? Lot.Identity.DOUBTFUL
                    : Lot.Identity.KNOWN);
  }

  /** A self can't prove a cross, nor a cross a self; of fruit nobody recorded, a cross is stray. */
  private boolean refutes(String verdict, Lot lot) {
    boolean ofCross =
        entries.saved().getOrDefault(lot.name(), List.of()).stream()
            .anyMatch(
                e ->
                    entries
                        .mating(Fruit.Key.of(entries.seasons().of(e), e.bound().name("tag").text()))
                        .filter(m -> m.bound().has("father"))
                        .isPresent());
    return ofCross ? verdict.equals("a self") : verdict.equals("a cross");
  }

  /** The last count before the season, or what was first in hand, less what went since. */
  private Optional<Reasoned<Integer>> seeds(Lot lot) {
    List<Entry> counts =
        of(RecordClauses.COUNTED, lot).stream().filter(this::isBeforeSeason).toList();
    Optional<Entry> count = last(counts);
    boolean born = entries.saved().containsKey(lot.name());
    if (count.isEmpty() && !born) {
      return lot.seeds();
    }
    Optional<Reasoned<Integer>> base =
        count.map(e -> new Reasoned<>(e.bound().count("seeds"), reason(e))).or(lot::seeds);
    return base.map(b -> less(b, lot, count.map(Entry::date).orElse(LocalDate.MIN)));
  }

  /** Seed sown shortly ahead of the season for one of its plantings is the season's. */
  private boolean isBeforeSeason(Entry entry) {
    Seasons seasons = entries.seasons();
    boolean ahead =
        entry.is(RecordClauses.SOWED)
            && seasons.isShortlyBeforePlanned(entry.date())
            && planned.containsKey(name(entry));
    return seasons.of(entry.date()) < seasons.planned() && !ahead;
  }

  /** What was sown, by the name it goes by that season. */
  private static String name(Entry sowed) {
    return sowed.bound().name(sowed.bound().has("as") ? "as" : "planting").text();
  }

  private Reasoned<Integer> less(Reasoned<Integer> base, Lot lot, LocalDate since) {
    List<Reason> from = new ArrayList<>(List.of(base.reason()));
    int left = base.value();
    for (Entry entry : about(lot)) {
      int used = isBeforeSeason(entry) && entry.date().isAfter(since) ? used(entry) : 0;
      if (used > 0) {
        left -= used;
        from.add(reason(entry));
      }
    }
    int rest = Math.max(0, left);
    return from.size() == 1
        ? base
        : new Reasoned<>(rest, Reason.derived(rest + " seeds left", from));
  }

  /** Seeds that an entry about a lot used up. */
  private static int used(Entry entry) {
    Bound bound = entry.bound();
    if (entry.is(RecordClauses.SOWED)) {
      return bound.has("seeds") ? bound.count("seeds") : 0;
    }
    if (entry.is(RecordClauses.GIVEN_AWAY)) {
      return bound.count("seeds");
    }
    return entry.is(RecordClauses.GERMINATION) ? bound.share("counts").of() : 0;
  }

  /** The lot an entry takes from or tells of; seed that goes into one has its own line. */
  private Optional<String> lotOf(Entry entry) {
    if (entry.is(RecordClauses.SOWED)) {
      String name = entry.bound().name("planting").text();
      boolean inPlan = entries.seasons().of(entry.date()) == entries.seasons().planned();
      return Optional.of(inPlan ? planned.getOrDefault(name, name) : name);
    }
    boolean its = entry.bound().has("lot") && !entry.is(RecordClauses.SAVED);
    return its ? Optional.of(entry.bound().name("lot").text()) : Optional.empty();
  }

  private static Reason reason(Entry entry) {
    return new At(entry.date(), entry.span()).reason();
  }
}
