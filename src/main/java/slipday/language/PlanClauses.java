package slipday.language;

import static slipday.language.Clause.in;
import static slipday.language.Declaration.ALLOW;
import static slipday.language.Declaration.BED;
import static slipday.language.Declaration.CROSS;
import static slipday.language.Declaration.GOAL;
import static slipday.language.Declaration.GROW;
import static slipday.language.Declaration.LINE;
import static slipday.language.Declaration.LOT;
import static slipday.language.Declaration.NEIGHBOUR;
import static slipday.language.Declaration.SITE;
import static slipday.language.Declaration.TRAIT;
import static slipday.language.Declaration.VOLUNTEER;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The clauses of a plan: the garden, its seed, and what is meant to be done. */
public final class PlanClauses {
  private static final List<Clause> REGISTER = new ArrayList<>();

  // --- site
  public static final Clause PLACE =
      once(
          in(SITE),
          "place: <latitude>, <longitude>[, <length:height>]",
          "Where the garden lies; the height above the sea is for information.",
          "place 44.21 N, 72.58 W, 310 m");
  public static final Clause TIME_ZONE =
      once(
          in(SITE),
          "time zone: <zone>",
          "The zone its clocks keep, as computers name it.",
          "time zone America/New_York");
  public static final Clause WEATHER =
      once(
          in(SITE),
          "weather: file <text:path>[, in (unit: C | F | tenths of C)]",
          "A record of daily lows and highs: a plain table, or a station's file of GHCN-Daily.",
          "weather file \"weather/tern-hollow.csv\"");
  public static final Clause COLDER =
      once(
          in(SITE),
          "colder than the station by: <warmth>",
          "How much colder the garden is than where the weather was measured; of a record only.",
          "colder than the station by 1.5 C");
  public static final Clause WARMER =
      once(
          in(SITE),
          "warmer than the station by: <warmth>",
          "How much warmer the garden is than where the weather was measured; of a record only.",
          "warmer than the station by 0.5 C");
  public static final Clause FROST_RISK =
      once(
          in(SITE),
          "frost risk: <share>",
          "The chance of frost after planting out that this gardener accepts.",
          "frost risk 1 in 10");
  public static final Clause LAST_FROST =
      once(
          in(SITE),
          "last frost: <day:usual>[, <share> after <day:late>]",
          "The garden's usual last frost of spring, and a later day with its odds; for a garden"
              + " without a record.",
          "last frost 18 May, 1 in 10 after 30 May");
  public static final Clause FIRST_FROST =
      once(
          in(SITE),
          "first frost: <day:usual>[, <share> before <day:early>]",
          "The garden's usual first frost of autumn, and an earlier day with its odds; for a garden"
              + " without a record.",
          "first frost 27 September, 1 in 10 before 14 September");
  public static final Clause SOIL_READING =
      many(
          in(SITE),
          "soil: <temperature> on <day>",
          "A soil temperature read at sowing depth in the morning; it corrects the estimate, or"
              + " stands in for it.",
          "soil 12 C on 10 May");
  public static final Clause MORNINGS =
      once(
          in(SITE),
          "mornings: <count> a week",
          "On how many mornings a week somebody can pollinate.",
          "mornings 5 a week");
  public static final Clause HANDS =
      once(
          in(SITE),
          "hands: <count>, <count:flowers> flowers each",
          "How many people pollinate, and how many flowers each does in a morning.",
          "hands 1, 12 flowers each");

  // --- bed
  public static final Clause SIZE =
      once(
          in(BED),
          "size: <length:long> x <length:wide>",
          "Length (west to east) and width (south to north) of the bed.",
          "size 12 m x 1.2 m");
  public static final Clause CORNER =
      once(
          in(BED),
          "corner: <length:east> (ew: east | west), <length:north> (ns: north | south)",
          "The bed's south-west corner, from the site's.",
          "corner 0 m east, 4 m north");
  public static final Clause VINES =
      once(
          in(BED),
          "vines: may trail <length> beyond",
          "How far vines may run out over the bed's edge.",
          "vines may trail 2 m beyond");
  public static final Clause GREW =
      many(
          in(BED),
          "grew: <crop> in <year>",
          "What stood in the bed in an earlier year.",
          "grew butternut in 2024");
  public static final Clause FROST_POCKET =
      once(
          in(BED),
          "frost pocket: <warmth> colder",
          "How much colder the bed is on a clear night than the rest of the garden.",
          "frost pocket 2 C colder");

  // --- neighbour, volunteer
  public static final Clause GROWS =
      many(
          in(NEIGHBOUR),
          "grows: <crop>{, <crop>}",
          "What the neighbour grows.",
          "grows pepo-gourd");
  public static final Clause DISTANCE =
      once(
          in(NEIGHBOUR, VOLUNTEER),
          "distance: <length>[ to the <phrase:direction>]",
          "How far away it is.",
          "distance 140 m to the east");
  public static final Clause IS_A =
      once(
          in(LINE, VOLUNTEER),
          "is a: <crop>",
          "The crop or market type it belongs to.",
          "is a muskmelon");

  // --- line
  public static final Clause BEGAN =
      once(
          in(LINE),
          "began: <year>[, (how: open-pollinated | from a bought hybrid"
              + " | from <name:mother> by an unnamed <crop:unnamed>"
              + " | from <name:mother>[ by <name:father>])]",
          "When and out of what the line began.",
          "began 2023, from ropewalk by an unnamed charentais");
  public static final Clause PURPOSE =
      once(
          in(LINE),
          "purpose: (purpose: to fix | to keep | on trial)",
          "Whether the line is being fixed, kept true, or only tried.",
          "purpose to fix");
  public static final Clause LOOKS =
      once(
          in(LINE),
          "looks: <text>",
          "What a plant and fruit true to the line look like.",
          "looks \"flat-round, sutured, no net, deep orange flesh\"");
  public static final Clause LINE_GENERATION =
      once(
          in(LINE),
          "generation: <generation>",
          "The generation of all its seed whose lot says none of its own.",
          "generation inbred");
  public static final Clause LINE_INBRED =
      once(
          in(LINE),
          "inbred: (how: fully | not at all | unknown | <share>)",
          "How inbred its plants are, where no ancestor is recorded and the lot says nothing: an old"
              + " open-pollinated kind hardly, a parent of a hybrid fully.",
          "inbred not at all");

  // --- lot
  public static final Clause OF =
      once(in(LOT), "of: <line>", "The line it is seed of.", "of tern-amber");
  public static final Clause GENERATION =
      once(
          in(LOT),
          "generation: <generation>",
          "The generation of the seed itself, not of the plant it was taken from: the fruit of a"
              + " selfed F2 plant holds F3 seed.",
          "generation F3");
  public static final Clause INBRED =
      once(
          in(LOT),
          "inbred: (how: fully | not at all | unknown | <share>)",
          "How inbred its plants are, where no ancestor is recorded: the parents of a hybrid fully,"
              + " an old open-pollinated kind hardly.",
          "inbred fully");
  public static final Clause SEEDS =
      once(in(LOT), "seeds: <count>", "How many seeds are in hand.", "seeds 140");
  public static final Clause HARVESTED =
      once(in(LOT), "harvested: <year>", "The year the seed was taken.", "harvested 2025");
  public static final Clause TESTED =
      once(
          in(LOT),
          "tested: <counts>[ in <year>]",
          "A germination test: seedlings out of seeds.",
          "tested 44 of 50 in 2026");
  public static final Clause IDENTITY =
      once(
          in(LOT),
          "identity: (identity: known | doubtful | unknown)",
          "Whether the seed is what its label says; `unknown` for seed of unknown father or name.",
          "identity unknown");
  public static final Clause EXPOSED =
      many(
          in(LOT),
          "exposed to: <crop>",
          "A bitter gourd or wild kin whose pollen could have reached the mother plants.",
          "exposed to pepo-gourd");
  public static final Clause DISEASE =
      many(
          in(LOT),
          "disease: (<text:what> | <phrase:what>)",
          "A disease that seed can carry, seen on the plants it is from; it follows their seed.",
          "disease fruit blotch");
  public static final Clause CAME_FROM =
      once(in(LOT), "came from: <text>", "Where the seed came from.", "came from \"a seed swap\"");
  public static final Clause KEEP_BACK =
      once(
          in(LOT),
          "keep back: <count> seeds",
          "Seeds not to be sown, kept as a remnant.",
          "keep back 20 seeds");

  // --- grow
  public static final Clause IN =
      once(in(GROW), "in: <bed>", "The bed it stands in.", "in long-south");
  public static final Clause PLANTS =
      once(
          in(GROW),
          "plants: <count>[, <length:apart> apart]",
          "How many plants stand in the end, and how far apart in the row.",
          "plants 12, 60 cm apart");
  public static final Clause START =
      once(
          in(GROW),
          "start: (where: indoors | outdoors)[, at <temperature>][, <time:age> before planting"
              + " out]",
          "Whether seed is started indoors and planted out, or sown in place.",
          "start indoors, 3 weeks before planting out");
  public static final Clause SOW_ON =
      once(in(GROW), "sow on: <day>", "A sowing day the gardener has fixed.", "sow on 8 May");
  public static final Clause PLANT_OUT_ON =
      once(
          in(GROW),
          "plant out on: <day>",
          "A planting-out day the gardener has fixed.",
          "plant out on 1 June");
  public static final Clause SOW_SEEDS =
      once(in(GROW), "sow seeds: <count>", "How many seeds will be sown.", "sow seeds 20");
  public static final Clause MULCH =
      once(
          in(GROW),
          "mulch: <phrase:what>, soil <warmth> (way: warmer | cooler)",
          "A mulch, and how much it warms or cools the soil.",
          "mulch black plastic, soil 3 C warmer");
  public static final Clause COVER =
      once(
          in(GROW),
          "cover: <phrase:what>, <time> from (from: planting out | sowing), air <warmth> warmer[,"
              + " guards to <temperature>]",
          "A tunnel or fleece: for how long, how much it warms, and down to which frost it guards."
              + " What is sown in place is under it from its sowing, whichever is written; what is"
              + " raised indoors, from planting out.",
          "cover tunnel, 4 weeks from planting out, air 2 C warmer, guards to -2 C");
  public static final Clause FLOWERS =
      once(
          in(GROW),
          "flowers: (how: open | cover the chosen | caged with <planting>{ and <planting>} | caged"
              + " | males removed | females removed | all removed)",
          "What is done with the flowers: left to the bees, the chosen covered, caged, or removed."
              + " Plantings of one cage cross with each other; it is enough that one names the"
              + " other.",
          "flowers cover the chosen");
  public static final Clause POLLINATE =
      once(
          in(GROW),
          "pollinate: (how: self | sib) by hand, for <count:fruits> fruits[ from <count:plants>"
              + " plants or more]",
          "Hand pollination within the planting, and how many fruits are wanted.",
          "pollinate self by hand, for 8 fruits from 5 plants or more");
  public static final Clause SEED =
      once(in(GROW), "seed: (kept: saved | not saved)", "Whether seed is kept.", "seed saved");
  public static final Clause BLOOM_APART =
      many(
          in(GROW),
          "bloom apart from: <planting>",
          "Another planting this one should not be in flower with.",
          "bloom apart from late-corn");

  // --- cross
  public static final Clause SEED_PARENT =
      once(
          in(CROSS),
          "seed parent: <planting>",
          "The planting that bears the fruit.",
          "seed parent ropewalk-2023");
  public static final Clause POLLEN_PARENT =
      once(
          in(CROSS),
          "pollen parent: <planting>",
          "The planting that gives the pollen.",
          "pollen parent tern-amber-f3");
  public static final Clause FRUITS =
      once(in(CROSS), "fruits: <count>", "How many fruits of the cross are wanted.", "fruits 2");

  // --- goal
  public static final Clause RAISE =
      many(
          in(GOAL),
          "raise: <phrase:trait> to (<amount> | <number>)[, matters <number:weight>]",
          "A trait to raise, how far, and what being short of that matters beside the others.",
          "raise sweetness to 13 brix, matters 5");
  public static final Clause LOWER =
      many(
          in(GOAL),
          "lower: <phrase:trait> to (<amount> | <number>)[, matters <number:weight>]",
          "A trait to lower, how far, and what being above that matters.",
          "lower days to ripe to 36 days, matters 3");
  public static final Clause KEEP_AT =
      many(
          in(GOAL),
          "keep: <phrase:trait> at (<amount> | <number>)[ to (<amount:high> | <number:high>)][ or"
              + " more][, matters <number:weight>]",
          "A trait to hold where it is; within the range no figure is better than another.",
          "keep fruit weight at 1.2 kg to 1.8 kg, matters 2");
  public static final Clause REFUSE =
      many(
          in(GOAL),
          "refuse: <phrase:fault>[ in more than (<share> | <count>)[ of its] fruits]",
          "A fault no parent may have: one faulty fruit refuses its plant, unless a share or a"
              + " count of its fruits is told that may be faulty.",
          "refuse cracked in more than 1 in 3 fruits");
  public static final Clause PARENTS =
      once(
          in(GOAL),
          "parents: <count> or more",
          "The fewest plants the next generation comes from.",
          "parents 4 or more");

  // --- trait
  public static final Clause SCALE =
      once(
          in(TRAIT),
          "scale: <number-range:scale>",
          "The points it is given, from least to most.",
          "scale 0 to 5");
  public static final Clause UNIT =
      once(in(TRAIT), "unit: <name:unit>", "The unit it is measured in.", "unit cm");

  // --- allow
  public static final Clause ALLOW_IN =
      once(
          in(ALLOW),
          "in: <name>{ and <name>}",
          "The bed, planting, lot, cross or site the finding is about.",
          "in long-south");
  public static final Clause BECAUSE =
      once(
          in(ALLOW),
          "because: <text>",
          "Why it is accepted.",
          "because \"the only bed with water\"");

  static final List<Clause> ALL = List.copyOf(REGISTER);

  private PlanClauses() {}

  private static Clause once(Set<Declaration> where, String line, String says, String example) {
    return registered(Clause.once(where, line, says, example));
  }

  private static Clause many(Set<Declaration> where, String line, String says, String example) {
    return registered(Clause.many(where, line, says, example));
  }

  private static Clause registered(Clause clause) {
    REGISTER.add(clause);
    return clause;
  }
}
