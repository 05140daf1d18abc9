package slipday.language;

import java.util.ArrayList;
import java.util.List;

/**
 * The dated lines of the record: a full date, a verb of this table, and what it was done to. Each
 * is one fact and complete in itself.
 */
public final class RecordClauses {
  private static final List<Clause> REGISTER = new ArrayList<>();

  private static final String PLANTS = "<planting>[ plant <count:plant>]";
  private static final String SUBJECT = "<tag>[ of <season>][ plant <count:plant>]";
  private static final String MATED =
      "<planting>[ plant <count:plant>] by <planting:father>[ plant <count:fatherplant>]"
          + ", tag <tag>";
  private static final String WHY = "(<text:why> | <phrase:why>)";
  private static final String WEIGHT = "<mass>[ less <mass:container>]";
  private static final String FIGURE =
      "<phrase:trait> (<score:figure> | <amount:figure> | <number:figure>)";
  private static final String FINDINGS =
      "{, ("
          + WEIGHT
          + " | <brix> | <count:fruits> fruits | fault <phrase:fault> | "
          + FIGURE
          + ")}";

  // --- seed into plants
  public static final Clause SOWED =
      dated(
          "sowed: <planting>[ as <name:as>][, <count:seeds> seeds]",
          "Seed of a planting was sown; in the record of an earlier year, `as` names the planting.",
          "2026-05-12 sowed tern-amber-f3, 16 seeds");
  public static final Clause EMERGED =
      dated(
          "emerged: <planting>, <count:seedlings> seedlings",
          "So many seedlings are up.",
          "2026-05-20 emerged tern-amber-f3, 14 seedlings");
  public static final Clause POTTED_ON =
      dated(
          "potted on: <planting>[, <count:plants> plants]",
          "Seedlings went into larger pots.",
          "2026-05-28 potted on tern-amber-f3, 14 plants");
  public static final Clause PLANTED_OUT =
      dated(
          "planted out: <planting>[, <count:plants> plants]",
          "So many plants went out into their bed.",
          "2026-06-05 planted out tern-amber-f3, 12 plants");
  public static final Clause MOVED =
      dated(
          "moved: " + PLANTS + ", to <bed>",
          "Plants were moved to another bed.",
          "2026-06-12 moved tern-amber-f3 plant 11, to short-north");
  public static final Clause STAKED =
      dated(
          "staked: <planting> plant <count:plant>, stake <tag>",
          "The number on a plant's stake, so that a tangled vine's tag finds its plant.",
          "2026-06-20 staked tern-amber-f3 plant 3, stake 14");
  public static final Clause DIED =
      dated(
          "died: " + PLANTS + "[, <count:plants> plants][, " + WHY + "]",
          "A plant died, or so many did, and of what.",
          "2026-07-30 died tern-amber-f3 plant 9, wilt");
  public static final Clause ROGUED =
      dated(
          "rogued: " + PLANTS + "[, <count:plants> plants], " + WHY,
          "A plant was taken out because it was not what its line should be, and why.",
          "2026-07-20 rogued tern-amber-f3 plant 7, netted fruit");
  public static final Clause OFF_TYPE =
      dated(
          "off-type seen: " + PLANTS + "[, <count:plants> plants][, " + WHY + "]",
          "A plant is not what its label says; it still stands.",
          "2026-07-18 off-type seen tern-amber-f3 plant 7, netted fruit");
  public static final Clause DISEASE_SEEN =
      dated(
          "disease seen: " + PLANTS + ", (<text:what> | <phrase:what>)",
          "A disease that seed can carry was seen on a plant, or on some; it follows their seed.",
          "2026-08-02 disease seen tern-amber-f3 plant 6, fruit blotch");

  // --- flowers
  public static final Clause FIRST_MALE =
      dated(
          "first male flowers: " + PLANTS,
          "The first male flowers are open.",
          "2026-06-28 first male flowers tern-amber-f3");
  public static final Clause FIRST_FRUITING =
      dated(
          "first fruiting flowers: " + PLANTS,
          "The first flowers that can bear fruit, female or perfect, are open.",
          "2026-07-06 first fruiting flowers tern-amber-f3");
  public static final Clause COVERED =
      dated(
          "covered: " + PLANTS + "[, <count:flowers> flowers]",
          "Buds were covered in the evening.",
          "2026-07-07 covered tern-amber-f3 plant 3, 2 flowers");
  public static final Clause EMASCULATED =
      dated(
          "emasculated: " + PLANTS + "[, <count:flowers> flowers]",
          "The anthers were taken out of a perfect flower.",
          "2026-07-07 emasculated ropewalk-2023 plant 1");
  public static final Clause SELFED =
      dated(
          "selfed: " + PLANTS + ", tag <tag>",
          "A flower was given pollen of its own plant, and tagged.",
          "2026-07-08 selfed tern-amber-f3 plant 3, tag 3A");
  public static final Clause SIBBED =
      dated(
          "sibbed: " + PLANTS + "[ by plant <count:fatherplant>], tag <tag>",
          "A flower was given pollen of another plant of its planting, and tagged.",
          "2026-07-08 sibbed ropewalk-2023 plant 2 by plant 5, tag 2B");
  public static final Clause CROSSED =
      dated(
          "crossed: " + MATED,
          "A flower was given pollen of another planting, the seed parent named first, and tagged.",
          "2026-07-08 crossed ropewalk-2023 plant 1 by tern-amber-f3 plant 3, tag 1C");
  public static final Clause BACKCROSSED =
      dated(
          "backcrossed: " + MATED,
          "A flower was crossed with one of the parents its planting comes from, and tagged.",
          "2027-07-08 backcrossed ropewalk-amber-f1 plant 4 by ropewalk-2023 plant 2, tag 4A");
  public static final Clause TOOK =
      dated(
          "took: <tag>[ of <season>]", "A tagged fruit has set and swells.", "2026-07-15 took 3A");
  public static final Clause FAILED =
      dated(
          "failed: <tag>[ of <season>]",
          "A tagged flower or young fruit dropped.",
          "2026-07-15 failed 1C");
  public static final Clause LOST =
      dated(
          "lost: <tag>[ of <season>][, " + WHY + "]",
          "A tagged fruit that had taken is no more: eaten, rotted, broken off.",
          "2026-08-10 lost 3B, mice");

  // --- fruit
  public static final Clause PICKED =
      dated(
          "picked: "
              + SUBJECT
              + "[, (state: full slip | half slip | forced | before ripe | overripe)]"
              + FINDINGS,
          "A tagged fruit was picked, or fruit of a planting for the kitchen, and what it was like.",
          "2026-08-19 picked 3A, full slip, 1.62 kg less 0.17 kg, 12.4 brix, flavour 8 of 10");
  public static final Clause WEIGHED =
      dated(
          "weighed: " + SUBJECT + "[, <count:fruits> fruits], " + WEIGHT,
          "The weight of a fruit, or of several together; `less` takes off the container.",
          "2026-08-19 weighed tern-amber-f3 plant 2, 3 fruits, 9 lb 4 oz");
  public static final Clause SWEETNESS =
      dated(
          "sweetness: " + SUBJECT + ", <brix>",
          "The sweetness of a fruit, by refractometer.",
          "2026-08-19 sweetness 3A, 12.4 brix");
  public static final Clause SCORED =
      dated(
          "scored: " + SUBJECT + ", <phrase:trait> <score:figure>{, <phrase:trait> <score:figure>}",
          "Points for a trait, with how many there are to be had.",
          "2026-08-20 scored 3A, flavour 8 of 10, texture 4 of 5");
  public static final Clause MEASURED =
      dated(
          "measured: " + SUBJECT + ", " + FIGURE + "{, " + FIGURE + "}",
          "A size or another trait of a fruit or plant.",
          "2026-08-20 measured 3A, length 21 cm, width 17 cm");
  public static final Clause FAULT =
      dated(
          "fault: " + SUBJECT + ", <phrase:fault>{, <phrase:fault>}",
          "What is wrong with a fruit or plant.",
          "2026-08-20 fault 3A, cracked");
  public static final Clause TASTED =
      dated(
          "tasted: " + SUBJECT + ", (verdict: clean | bitter)",
          "A taste for bitterness, by touch and spit; a bitter plant is destroyed, never eaten.",
          "2026-08-18 tasted tern-amber-f3 plant 3, clean");

  // --- seed
  public static final Clause SAVED =
      dated(
          "saved: "
              + SUBJECT
              + "[, <count:seeds> seeds], into <lot>[, of <line>][, generation <generation>]",
          "Seed was taken into a lot of its own; several fruits may go into one lot.",
          "2026-08-22 saved 3A, 310 seeds, into tern-amber-f4-3A");
  public static final Clause DRIED =
      dated("dried: <lot>", "The seed of a lot is dry.", "2026-09-05 dried tern-amber-f4-3A");
  public static final Clause COUNTED =
      dated(
          "counted: <lot>, <count:seeds> seeds",
          "So many seeds of a lot are in hand.",
          "2026-11-02 counted tern-amber-f4-3A, 296 seeds");
  public static final Clause GERMINATION =
      dated(
          "tested: <lot>, <counts>[ seeds]",
          "A germination test: seedlings out of seeds.",
          "2026-02-10 tested tern-amber-f3, 44 of 50 seeds");
  public static final Clause GIVEN_AWAY =
      dated(
          "given away: <lot>, <count:seeds> seeds[, to (<text:to> | <phrase:to>)]",
          "Seeds of a lot that went to somebody else.",
          "2026-11-20 given away tern-amber-f4-3A, 20 seeds, to a neighbour");
  public static final Clause GROWN_OUT =
      dated(
          "grown out: <lot>, (verdict: true to name | a cross | a self | mixed)",
          "What plants of a doubtful lot proved to be.",
          "2027-08-01 grown out ropewalk-amber-f1, a cross");
  public static final Clause LIFTED =
      dated(
          "lifted: <lot>, (note: bitter risk | disease), " + WHY,
          "A note that followed the seed of a lot holds no more, for it and what comes of it.",
          "2027-10-02 lifted ropewalk-2025, disease, \"grown out clean two years\"");

  // --- after, and whatever else
  public static final Clause STORED =
      dated(
          "stored: <tag>[ of <season>], (<text:where> | <phrase:where>)",
          "Where a fruit or the seed of a lot lies.",
          "2026-10-02 stored 2B, \"cellar, top shelf\"");
  public static final Clause LOOKED_AT =
      dated(
          "looked at: <tag>[ of <season>], (state: sound | soft | rotten | shrivelled)" + FINDINGS,
          "How a stored fruit keeps.",
          "2027-01-15 looked at 2B of 2026, sound, 1.31 kg");
  public static final Clause DROPPED =
      dated(
          "dropped: <line>, " + WHY,
          "A line was given up, and why.",
          "2026-11-01 dropped heron-gold, never ripe here");
  public static final Clause NOTE =
      dated(
          "note: [" + SUBJECT + ", ]<text>",
          "Anything worth remembering, of a fruit, planting, lot, line or bed, or of the day.",
          "2026-08-19 note 3A, \"ground colour turned two days before it slipped\"");
  public static final Clause PHOTO =
      dated(
          "photo: [" + SUBJECT + ", ]file <text:path>",
          "A picture's file.",
          "2026-08-19 photo 3A, file \"photos/3A.jpg\"");

  static final List<Clause> ALL = List.copyOf(REGISTER);

  private RecordClauses() {}

  private static Clause dated(String line, String sentence, String example) {
    Clause clause = Clause.dated(line, sentence, example);
    REGISTER.add(clause);
    return clause;
  }
}
