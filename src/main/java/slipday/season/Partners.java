package slipday.season;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.garden.CropFacts;
import slipday.garden.Cross;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.language.PlanClauses;
import slipday.measure.Range;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * Sets the parents of a cross to bloom together, and plantings that ask for it apart, by putting
 * off one whose date is free, within the days from which it still ripens.
 */
final class Partners {
  private static final double SURE = 0.95;
  private static final int ENOUGH_MORNINGS = 5;
  private static final double FOR_WEEKS = 28;

  private final Garden garden;
  private final Forecaster forecaster;
  private final Map<String, Forecaster.Draft> drafts;
  private final Map<String, Integer> starts = new LinkedHashMap<>();
  private final Map<String, List<Reason>> moved = new HashMap<>();

  Partners(Garden garden, Forecaster forecaster, Map<String, Forecaster.Draft> drafts) {
    this.garden = garden;
    this.forecaster = forecaster;
    this.drafts = drafts;
    drafts.forEach((name, draft) -> starts.put(name, draft.start()));
  }

  int start(String name) {
    return starts.getOrDefault(name, 0);
  }

  List<Reason> moved(String name) {
    return moved.getOrDefault(name, List.of());
  }

  private Traces traces(String name) {
    return traces(name, start(name));
  }

  private Traces traces(String name, int start) {
    return forecaster.traces(draft(name), start);
  }

  private Forecaster.Draft draft(String name) {
    Forecaster.Draft draft = drafts.get(name);
    if (draft == null) {
      throw new IllegalStateException("no planting " + name);
    }
    return draft;
  }

  /** How many days a planting may still be put off; 0 where its date is fixed. */
  private int slack(String name) {
    Forecaster.Draft draft = draft(name);
    int latest = draft.choice().latest().orElse(start(name));
    return draft.isFree() ? Math.max(0, latest - start(name)) : 0;
  }

  List<Nicking> nickings() {
    return garden.crosses().stream().map(this::nick).toList();
  }

  private Overlap.Meeting meeting(Cross cross, Traces pollen, Traces seed) {
    return Overlap.of(
        pollen, Overlap.sheds(cross.pollenParent().line().sex()), seed, Event.LAST_SET);
  }

  private static boolean good(Overlap.Meeting meeting) {
    return meeting.chance() >= SURE && meeting.mornings().usual() >= ENOUGH_MORNINGS;
  }

  private static boolean better(Overlap.Meeting a, Overlap.Meeting b) {
    return a.chance() > b.chance() + 0.02
        || (a.chance() > b.chance() - 0.02 && a.mornings().usual() > b.mornings().usual());
  }

  private Nicking nick(Cross cross) {
    String seed = cross.seedParent().name();
    String pollen = cross.pollenParent().name();
    Overlap.Meeting best = meeting(cross, traces(pollen), traces(seed));
    int delay = 0;
    Optional<String> delayed = Optional.empty();
    if (!good(best) && !seed.equals(pollen)) {
      for (String candidate : List.of(seed, pollen)) {
        for (int days = 1; days <= slack(candidate) && !good(best); days++) {
          Traces moved = traces(candidate, start(candidate) + days);
          Overlap.Meeting tried =
              candidate.equals(seed)
                  ? meeting(cross, traces(pollen), moved)
                  : meeting(cross, moved, traces(seed));
          if (better(tried, best)) {
            best = tried;
            delay = days;
            delayed = Optional.of(candidate);
          }
        }
      }
    }
    if (delayed.isPresent()) {
      move(
          delayed.get(),
          delay,
          "put off so that the parents of cross `" + cross.name() + "` bloom together",
          cross.places().reason(PlanClauses.SEED_PARENT));
    }
    return new Nicking(
        cross, best.chance(), best.mornings(), delay, delayed, reason(cross, seed, pollen));
  }

  private void move(String name, int days, String why, Reason asked) {
    starts.merge(name, days, Integer::sum);
    moved
        .computeIfAbsent(name, n -> new ArrayList<>())
        .add(Reason.derived(days + " days later: " + why, asked));
  }

  private static Reason reason(Cross cross, String seed, String pollen) {
    return Reason.derived(
        "mornings on which `" + pollen + "` sheds and `" + seed + "` has flowers that still ripen",
        cross.places().reason(PlanClauses.SEED_PARENT),
        cross.places().reason(PlanClauses.POLLEN_PARENT));
  }

  List<Apart> apart() {
    List<Apart> wishes = new ArrayList<>();
    for (Planting asking : garden.plantings()) {
      for (Reasoned<String> wish : asking.bloomApart()) {
        garden
            .planting(wish.value())
            .map(other -> apart(asking, other, wish))
            .ifPresent(wishes::add);
      }
    }
    return wishes;
  }

  /** Together in any way: either one's pollen while the other has fruiting flowers. */
  private static Overlap.Meeting together(Planting a, Traces ta, Planting b, Traces tb) {
    Overlap.Meeting there = Overlap.of(ta, Overlap.sheds(a.line().sex()), tb, Event.BLOOM_ENDS);
    Overlap.Meeting back = Overlap.of(tb, Overlap.sheds(b.line().sex()), ta, Event.BLOOM_ENDS);
    return there.chance() >= back.chance() ? there : back;
  }

  /** Such a vine goes on as long as it grows, so days put off are no promise. */
  private static boolean flowersForWeeks(Planting planting) {
    return planting.facts().valueOr(CropFacts.BLOOMS_FOR, Range.of(0)).high() >= FOR_WEEKS;
  }

  private static String apartText(boolean honoured, boolean lasting, double chance, int slack) {
    if (honoured) {
      return "apart in all but " + Math.round(chance * 100) + " % of years";
    }
    if (!lasting && slack == 0) {
      return "its date leaves no later day from which it still ripens";
    }
    return lasting
        ? "plants that flower for weeks, as long as they grow, can't be kept apart by their dates"
        : "even " + slack + " days later, the most that still ripens, they bloom together";
  }

  private Apart apart(Planting asking, Planting other, Reasoned<String> wish) {
    double risk = garden.site().frostRisk().value();
    Traces fixed = traces(other.name());
    Overlap.Meeting best = together(asking, traces(asking.name()), other, fixed);
    int delay = 0;
    boolean lasting = flowersForWeeks(asking) || flowersForWeeks(other);
    int slack = lasting ? 0 : slack(asking.name());
    for (int days = 1; days <= slack && best.chance() > risk; days++) {
      Traces moved = traces(asking.name(), start(asking.name()) + days);
      Overlap.Meeting tried = together(asking, moved, other, fixed);
      boolean fewer =
          tried.chance() < best.chance() - 1e-9
              || (tried.chance() <= best.chance() + 1e-9
                  && tried.mornings().usual() < best.mornings().usual());
      if (fewer) {
        best = tried;
        delay = days;
      }
    }
    boolean honoured = !lasting && best.chance() <= risk + 1e-9;
    if (honoured && delay > 0) {
      move(
          asking.name(),
          delay,
          "put off so that it blooms apart from `" + other.name() + "`",
          wish.reason());
    }
    Reason reason =
        Reason.derived(apartText(honoured, lasting, best.chance(), slack), wish.reason());
    return new Apart(
        asking,
        other,
        honoured,
        best.chance(),
        best.mornings().usual(),
        honoured ? delay : 0,
        lasting,
        wish.reason().place().orElseGet(asking::span),
        reason);
  }
}
