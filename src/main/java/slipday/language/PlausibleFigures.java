package slipday.language;

import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.finding.Finding;
import slipday.measure.Dimension;
import slipday.measure.Quantity;
import slipday.measure.Range;

/**
 * Whether figures are of this world: a slip of a digit or a unit would otherwise carry on into
 * every date. The limits are wide, by Slipday's judgement; no garden comes near them.
 */
final class PlausibleFigures {
  private static final String HARM = "Seed and seedlings die outside of that.";
  private static final String AIR = "No garden's air or soil is outside of that.";
  private static final String COVERS = "No cover or mulch does more; shade it, if it is hot.";
  private static final String PLACES = "Two places a garden's weather is told by differ no more.";
  private static final String NOTHING =
      "It would take no time at all, or longer than a plant lives.";
  private static final String SPACE = "Plants need some space, and a bed has an end.";
  private static final String GROWTH = "Nothing grows below freezing or above 50 C.";

  /**
   * A stretch that a figure lies in.
   *
   * @param field the placeholder; where a clause has it more than once, each of them
   * @param unit as told to people, in the base unit of what is measured; empty for counts
   */
  private record Limit(String field, double low, double high, String unit, String why) {}

  /** By the clause itself, which is one of a fixed table. */
  private static final IdentityHashMap<Clause, List<Limit>> LIMITS = new IdentityHashMap<>();

  static {
    put(PlanClauses.PLACE, new Limit("height", -450, 6000, "m", "Nobody gardens there."));
    put(
        PlanClauses.FROST_RISK,
        new Limit(
            "share",
            0.1,
            95,
            "%",
            "No date is without risk, and none is worth choosing with every one."));
    put(PlanClauses.HARVESTED, count("year", 1900, 2999, "Seed is not kept for a century."));
    put(PlanClauses.GREW, count("year", 1900, 2999, "Beds are asked for the last years alone."));
    put(PlanClauses.COLDER, warmth(20, PLACES));
    put(PlanClauses.WARMER, warmth(20, PLACES));
    put(PlanClauses.FROST_POCKET, warmth(20, PLACES));
    put(PlanClauses.SOIL_READING, celsius("temperature", -30, 60, AIR));
    put(
        PlanClauses.HANDS,
        count("count", 1, 1000, "Without hands there is no pollinating by hand."),
        count("flowers", 1, 1000, "Nobody does none, or more, in a morning."));
    put(PlanClauses.SIZE, metres("long", 0.05, 5000), metres("wide", 0.05, 5000));
    put(PlanClauses.CORNER, metres("east", 0, 20_000), metres("north", 0, 20_000));
    put(PlanClauses.VINES, metres("length", 0, 30));
    put(PlanClauses.PLANTS, metres("apart", 0.005, 50));
    put(
        PlanClauses.START,
        celsius("temperature", 2, 45, HARM),
        days("age", 1, 366, "Give at least some days to come up."));
    put(PlanClauses.SOW_SEEDS, count("count", 1, 1e7, "Leave the line out otherwise."));
    put(PlanClauses.RAISE, weight());
    put(PlanClauses.LOWER, weight());
    put(PlanClauses.KEEP_AT, weight());
    put(PlanClauses.PARENTS, count("count", 1, 1e5, "Seed comes of one plant at least."));
    put(PlanClauses.MULCH, warmth(25, COVERS));
    put(
        PlanClauses.COVER,
        warmth(30, COVERS),
        days("time", 1, 366, NOTHING),
        celsius("temperature", -30, 8, "It guards against frosts, and no harder ones."));
    put(CropClauses.EMERGES, celsius("temperature", -5, 60, HARM), days("time", 0.5, 366, NOTHING));
    put(CropClauses.GERMINATES, celsius("temperature-range", -5, 60, HARM));
    put(CropClauses.SOW_AT, celsius("temperature", -5, 45, HARM));
    put(CropClauses.SET_OUT_AT, celsius("temperature", -5, 45, HARM));
    put(CropClauses.NIGHTS, celsius("temperature", -20, 40, AIR));
    put(CropClauses.CHILLED, celsius("temperature", -30, 30, AIR));
    put(CropClauses.KILLED, celsius("temperature", -60, 15, AIR));
    put(CropClauses.GROWTH, celsius("base", -5, 35, GROWTH), celsius("limit", 5, 50, GROWTH));
    put(
        CropClauses.FIRST_FLOWERS,
        celsius("base", -5, 35, GROWTH),
        celsius("limit", 5, 50, GROWTH));
    put(CropClauses.REFERENCE, celsius("temperature", 5, 45, GROWTH));
    put(CropClauses.HEAT, celsius("hinders", 15, 60, AIR), celsius("ends", 15, 60, AIR));
    put(CropClauses.SEEDLING_AGE, days("time-range", 1, 366, NOTHING));
    put(CropClauses.HARDENED, days("time-range", 0, 90, NOTHING));
    put(CropClauses.CHECKED, days("time-range", 0, 90, NOTHING));
    put(CropClauses.POTTED_ON, days("time-range", 1, 366, NOTHING));
    put(CropClauses.MALES_EARLIER, days("time-range", 0, 120, NOTHING));
    put(CropClauses.BLOOMS, days("time-range", 1, 366, NOTHING));
    put(CropClauses.SEED_RIPE, days("time-range", 1, 730, NOTHING));
    put(CropClauses.SEED_REST, days("time-range", 0, 366, NOTHING));
    put(CropClauses.TAKE, trials());
    put(CropClauses.TAKE_EMASCULATED, trials());
    put(
        CropClauses.FRUITS_PER_PLANT,
        count("count-range", 1, 100_000, "A plant that bears none gives no seed."));
    put(CropClauses.SPACING, metres("row", 0.002, 50), metres("rows", 0.002, 50));
    put(CropClauses.AREA, new Limit("area", 1e-5, 1000, "m²", SPACE));
    put(
        CropClauses.SEED_KEEPS,
        count("count-range", 1, 100, "Seed keeps a year at least, and no century."));
    put(CropClauses.RIPE, count("heat-or-time-range", 1, 20_000, NOTHING));
  }

  /** What is weighed, measured or tasted of fruits and plants, by what is measured. */
  private static final Map<Dimension, Limit> SEEN = new EnumMap<>(Dimension.class);

  static {
    String none = "No fruit of a garden is outside of that.";
    SEEN.put(Dimension.MASS, new Limit("", 0.0001, 1500, "kg", none));
    SEEN.put(Dimension.LENGTH, new Limit("", 0.0005, 30, "m", none));
    SEEN.put(Dimension.SWEETNESS, new Limit("", 0, 40, "brix", none));
    put(RecordClauses.SAVED, count("seeds", 1, 1e6, "Seed of none is not saved."));
  }

  private PlausibleFigures() {}

  private static void put(Clause clause, Limit... limits) {
    LIMITS.put(clause, List.of(limits));
  }

  private static Limit celsius(String field, double low, double high, String why) {
    return new Limit(field, low, high, "C", why);
  }

  private static Limit warmth(double most, String why) {
    return new Limit("warmth", 0, most, "C", why);
  }

  private static Limit metres(String field, double low, double high) {
    return new Limit(field, low, high, "m", SPACE);
  }

  private static Limit days(String field, double low, double high, String why) {
    return new Limit(field, low, high, "days", why);
  }

  private static Limit count(String field, double low, double high, String why) {
    return new Limit(field, low, high, "", why);
  }

  private static Limit weight() {
    return count(
        "weight",
        0,
        1e6,
        "It says what the aim matters beside the others, such as 1 to 10; which way a trait is"
            + " wanted, `raise`, `lower` and `keep` say.");
  }

  private static Limit trials() {
    return count("flowers", 1, 1e6, "A share seen on no flowers is known of none.");
  }

  static void check(Block block, List<Finding> findings) {
    for (BoundClause clause : block.clauses()) {
      List<Limit> limits = LIMITS.get(clause.clause());
      if (limits == null) {
        continue; // nothing is asked of its order either
      }
      for (Limit limit : limits) {
        clause.bound().each(limit.field(), value -> check(value, limit, findings));
      }
      order(clause, CropClauses.GROWTH, "base", "limit", findings);
      order(clause, CropClauses.FIRST_FLOWERS, "base", "limit", findings);
      order(clause, CropClauses.HEAT, "hinders", "ends", findings);
    }
  }

  /** A line of the record: its figures by the clause, and whatever it has weighed or measured. */
  static void check(Entry entry, List<Finding> findings) {
    for (Limit limit : LIMITS.getOrDefault(entry.clause(), List.of())) {
      entry.bound().each(limit.field(), value -> check(value, limit, findings));
    }
    List<Value> containers = entry.bound().all("container"); // which may weigh nothing
    for (Value value : entry.bound().values()) {
      if (value instanceof Value.Amount amount && !containers.contains(value)) {
        Limit limit = SEEN.get(amount.quantity().unit().dimension());
        if (limit != null) {
          check(value, limit, findings);
        }
      }
    }
  }

  private static void check(Value value, Limit limit, List<Finding> findings) {
    figures(value, limit)
        .filter(range -> range.low() < limit.low() - 1e-9 || range.high() > limit.high() + 1e-9)
        .ifPresent(
            range ->
                findings.add(
                    Finding.error(
                            "impossible-figure",
                            value.span(),
                            "`"
                                + value.span().text()
                                + "` is outside of what can be, "
                                + told(limit.low())
                                + " to "
                                + told(limit.high())
                                + (limit.unit().isEmpty() ? "" : " " + limit.unit())
                                + ".")
                        .withHelp(limit.why())));
  }

  private static Optional<Range> figures(Value value, Limit limit) {
    if (value instanceof Value.Amount amount) {
      Quantity q = amount.quantity();
      return Optional.of(Range.of(limit.field().equals("warmth") ? q.difference() : q.base()));
    }
    if (value instanceof Value.Between between) {
      return Optional.of(between.range());
    }
    if (value instanceof Value.Share share) {
      return Optional.of(Range.of(100 * share.share()));
    }
    return value instanceof Value.Plain plain
        ? Optional.of(Range.of(plain.number()))
        : Optional.empty();
  }

  private static String told(double figure) {
    return Quantity.plain(figure);
  }

  /** The first of two temperatures lies below the second. */
  private static void order(
      BoundClause clause, Clause asked, String low, String high, List<Finding> findings) {
    if (!clause.clause().equals(asked) || !clause.bound().has(low) || !clause.bound().has(high)) {
      return;
    }
    if (clause.bound().base(low) >= clause.bound().base(high)) {
      Value second = clause.bound().find(high).orElseThrow();
      findings.add(
          Finding.error(
                  "impossible-figure",
                  second.span(),
                  "`"
                      + second.span().text()
                      + "` is not warmer than the `"
                      + clause.bound().find(low).orElseThrow().span().text()
                      + "` before it, so nothing lies between them.")
              .withHelp("The lower temperature comes first: `" + asked.example() + "`."));
    }
  }
}
