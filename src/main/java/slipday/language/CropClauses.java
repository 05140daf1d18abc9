package slipday.language;

import static slipday.language.Declaration.CROP;
import static slipday.language.Declaration.LINE;
import static slipday.language.Declaration.SPECIES;
import static slipday.language.FactRegister.fact;
import static slipday.language.FactRegister.facts;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The facts of a crop. Each may end with its source: {@code , says knott}, {@code , says knott from
 * memory}, or {@code , common practice}. What a species says holds for its crops, what a crop says
 * for its lines, unless they say otherwise themselves.
 */
public final class CropClauses {
  private static final Set<Declaration> WIDE = EnumSet.of(SPECIES, CROP, LINE);
  private static final Set<Declaration> KINDS = EnumSet.of(SPECIES, CROP);

  // --- what it is, and how it crosses
  public static final Clause FAMILY =
      fact(KINDS, "family: <name>", "The family, for rotation.", "family cucurbits");
  public static final Clause LIFE_CYCLE =
      fact(
          KINDS,
          "life cycle: (cycle: annual | biennial)",
          "Whether it flowers in the year it is sown.",
          "life cycle annual");
  public static final Clause SEX =
      fact(
          WIDE,
          "sex: (sex: male and female | male and perfect | perfect | all female | apart on two"
              + " plants | sets without pollen)",
          "Which flowers a plant bears.",
          "sex male and perfect");
  public static final Clause POLLEN_BY =
      fact(
          KINDS,
          "pollen carried by: (vector: insects | wind | itself and insects | itself)",
          "What carries the pollen; by itself: within the flower.",
          "pollen carried by insects");
  public static final Clause OUTCROSSES =
      fact(
          WIDE,
          "outcrosses: <share-range>",
          "The share of seed set by other plants' pollen when left alone.",
          "outcrosses 5 to 70 %");
  public static final Clause INBREEDING =
      fact(
          KINDS,
          "inbreeding harms it: (harm: very little | little | moderately | badly)",
          "How a line suffers from selfing.",
          "inbreeding harms it little");
  public static final Clause ISOLATION =
      fact(
          WIDE,
          "isolation: <length-range>",
          "The distance from another line that crosses: the least for a home garden, and the strict"
              + " one.",
          "isolation 240 m to 800 m");
  public static final Clause POPULATION =
      fact(
          KINDS,
          "population: <count:seed> for seed, <count-range:keep> to keep the line, <count:all> for"
              + " all its diversity",
          "How many seed plants it takes.",
          "population 1 for seed, 5 to 10 to keep the line, 25 for all its diversity");
  public static final Clause CROSSES_WITH =
      facts(
          EnumSet.of(SPECIES),
          "crosses with: <species>, degree <count-range>",
          "Another species whose pollen it may take: 0 never, 1 very rarely, 2 at times, 3"
              + " readily.",
          "crosses with moschata, degree 1 to 2");
  public static final Clause KERNELS =
      fact(
          KINDS,
          "kernels: (kernels: show the pollen parent)",
          "The seed eaten this year shows whose pollen it had.",
          "kernels show the pollen parent");
  public static final Clause KERNEL_TYPE =
      fact(
          WIDE,
          "kernel type: <name>",
          "Plantings of one kernel type do not spoil each other's kernels.",
          "kernel type sugary");
  public static final Clause BITTER =
      fact(
          WIDE,
          "fruit is: (fruit: bitter and poisonous | edible)",
          "Bitter kin: its pollen makes the next generation's fruit of an edible kind a danger.",
          "fruit is bitter and poisonous");

  // --- sowing and planting out
  public static final Clause EMERGES =
      facts(
          KINDS,
          "emerges: <time> in soil of <temperature>[, <share> come up]",
          "Days from sowing to seedlings at one soil temperature.",
          "emerges 8 days in soil of 20 C, 38 % come up");
  public static final Clause EMERGES_LIKE =
      fact(
          KINDS,
          "emerges like: <species>",
          "A stand-in where no table of its own is known.",
          "emerges like cucumber");
  public static final Clause GERMINATES =
      fact(
          KINDS,
          "germinates: <temperature-range>",
          "The soil temperatures between which seed comes up at all.",
          "germinates 60 F to 100 F");
  public static final Clause SOW_AT =
      fact(
          KINDS,
          "sow in soil of: <temperature> or warmer",
          "The soil temperature at which sowing in place is worth while.",
          "sow in soil of 20 C or warmer");
  public static final Clause SET_OUT_AT =
      fact(
          KINDS,
          "set out in soil of: <temperature> or warmer",
          "The soil temperature for young plants.",
          "set out in soil of 65 F or warmer");
  public static final Clause NIGHTS =
      fact(
          KINDS,
          "nights: <temperature> or warmer",
          "The night temperature young plants want.",
          "nights 10 C or warmer");
  public static final Clause CHILLED =
      fact(
          KINDS,
          "chilled below: <temperature>",
          "Where cold without frost harms.",
          "chilled below 10 C");
  public static final Clause KILLED =
      fact(
          KINDS,
          "killed at: <temperature>",
          "The air temperature that ends its season.",
          "killed at 0 C");
  public static final Clause STARTED =
      fact(
          KINDS,
          "usually started: (where: indoors | outdoors)",
          "How it is raised where the plan does not say.",
          "usually started indoors");
  public static final Clause SEEDLING_AGE =
      fact(
          KINDS,
          "planted out at: <time-range>",
          "The age of a young plant when it goes out.",
          "planted out at 2 to 4 weeks");
  public static final Clause HARDENED =
      fact(
          KINDS,
          "hardened for: <time-range>",
          "How long it is hardened off.",
          "hardened for 7 to 10 days");
  public static final Clause CHECKED =
      fact(
          KINDS,
          "stands still for: <time-range>",
          "Days without growth after planting out.",
          "stands still for 3 to 7 days");
  public static final Clause POTTED_ON =
      fact(
          KINDS,
          "potted on at: <time-range>",
          "The age at which a seedling raised in a small cell goes into a larger pot.",
          "potted on at 3 weeks");

  // --- growth and flowering
  public static final Clause GROWTH =
      fact(
          WIDE,
          "growth: above <temperature:base>[, up to <temperature:limit>]",
          "The base and limit of its degree-days.",
          "growth above 10 C, up to 34 C");
  public static final Clause REFERENCE =
      fact(
          KINDS,
          "days counted at: <temperature>",
          "The mean temperature at which figures in days are turned into degree-days.",
          "days counted at 22 C");
  public static final Clause FIRST_FLOWERS =
      fact(
          WIDE,
          "first flowers: <heat-or-time-range:after> after (event: sowing | emergence | planting"
              + " out)[, above <temperature:base>[, up to <temperature:limit>]]",
          "When the first flower that can bear fruit opens (female or perfect).",
          "first flowers 335 to 391 C-days after planting out, above 6.8 C");
  public static final Clause MALES_EARLIER =
      fact(
          WIDE,
          "males earlier by: <time-range>",
          "How long before it the first male flower opens.",
          "males earlier by 7 to 14 days");
  public static final Clause BLOOMS =
      fact(
          WIDE, "blooms for: <time-range>", "How long it goes on flowering.", "blooms for 40 days");
  public static final Clause SHORT_DAYS =
      fact(
          WIDE,
          "flowers as: days shorten",
          "It waits for shorter days to flower; dates can't be told with confidence.",
          "flowers as days shorten");
  public static final Clause HEAT =
      fact(
          KINDS,
          "heat at flowering: <temperature:hinders> hinders, <temperature:ends> ends it",
          "The day's high at which fruit set suffers, and at which it fails.",
          "heat at flowering 32 C hinders, 35 C ends it");

  // --- pollination by hand
  public static final Clause TAKE =
      fact(
          WIDE,
          "take: <share>, as sure as <count:flowers> flowers",
          "The share of hand pollinations that set fruit, and how many trials that is worth.",
          "take 15 %, as sure as 20 flowers");
  public static final Clause TAKE_EMASCULATED =
      fact(
          WIDE,
          "take without anthers: <share>, as sure as <count:flowers> flowers",
          "The same where the flower's own anthers were removed.",
          "take without anthers 10 %, as sure as 20 flowers");
  public static final Clause FLOWERS_A_WEEK =
      fact(
          WIDE,
          "fruiting flowers: <count-range> a plant a week",
          "How many flowers that can bear fruit open on a plant.",
          "fruiting flowers 3 a plant a week");
  public static final Clause COVERED_WITH =
      fact(
          KINDS,
          "buds are: (with: taped shut | bagged)",
          "How a bud is kept from the bees the evening before.",
          "buds are bagged");
  public static final Clause CALLED =
      fact(
          KINDS,
          "flowers are called: <name:male> and <name:female>[, on each <name:bearer>]",
          "What the male and the female flowers of the kind are called, where not that, and what"
              + " is counted of the female ones.",
          "flowers are called tassels and silks, on each ear");
  public static final Clause BUD_SIGN =
      fact(
          KINDS,
          "bud sign: <text>",
          "How to tell tonight a bud that opens tomorrow.",
          "bud sign \"petals near full size, yellow at the tips, still shut\"");
  public static final Clause OPENS =
      fact(
          KINDS,
          "opens: <text>",
          "When its flowers open, shed pollen and close.",
          "opens \"at sunrise, for about six hours\"");
  public static final Clause HOW_TO_COVER =
      fact(
          KINDS,
          "covered by hand: <text>",
          "How its flowers are kept from foreign pollen, where no bud is simply bagged or taped.",
          "covered by hand \"put a bag over each ear shoot before its silks show\"");
  public static final Clause HOW_TO_POLLINATE =
      fact(
          KINDS,
          "pollinated by hand: <text>",
          "How pollen is brought over, where it is not touched to a stigma from a male flower.",
          "pollinated by hand \"pour the pollen out of the bag on the tassel over the silks\"");
  public static final Clause COVER_STAYS =
      fact(
          KINDS,
          "covered for: <time-range> after pollination",
          "How long the cover stays on a flower that was pollinated.",
          "covered for 2 to 3 days after pollination");
  public static final Clause MALES_PER_FEMALE =
      fact(
          KINDS,
          "males for a flower: <count-range>",
          "Male flowers wanted for one pollination.",
          "males for a flower 2 to 3");

  // --- fruit
  public static final Clause FRUITS_PER_PLANT =
      fact(
          WIDE,
          "fruits a plant: <count-range>",
          "What one plant can carry.",
          "fruits a plant 2 to 4");
  public static final Clause RIPE =
      fact(
          WIDE,
          "ripe: <heat-or-time-range> after pollination",
          "From pollination to the eating stage.",
          "ripe 35 to 45 days after pollination");
  public static final Clause SEED_RIPE =
      fact(
          WIDE,
          "seed ripe: <time-range> after pollination",
          "From pollination to full seed, where that is later than the eating stage.",
          "seed ripe 50 to 60 days after pollination");
  public static final Clause SEED_REST =
      fact(
          KINDS,
          "seed rests in the fruit: <time-range>",
          "How long the picked fruit is kept before its seed is taken.",
          "seed rests in the fruit 4 to 8 weeks");
  public static final Clause SEED_TAKEN =
      fact(
          KINDS,
          "seed is taken: <text:how>",
          "How the seed is got out and cleaned.",
          "seed is taken \"rinsed from the pulp and dried\"");
  public static final Clause SLIPS =
      fact(
          WIDE,
          "slip: (slip: full | half | none)",
          "The stage of slip at which it is ripe; none for types that never slip.",
          "slip full");
  public static final Clause SIGN =
      facts(
          WIDE,
          "sign: <text>",
          "A sign of ripeness of its type.",
          "sign \"ground colour turns from green to straw\"");
  public static final Clause ONCE_CUT =
      fact(
          KINDS,
          "once cut: <text>",
          "How cut fruit is kept so that nobody falls ill.",
          "once cut \"eaten at once, or kept at 5 °C or colder within two hours\"");
  public static final Clause WEIGHT =
      fact(
          WIDE,
          "fruit weight: <mass-range>",
          "The usual weight of a ripe fruit.",
          "fruit weight 1 kg to 1.8 kg");
  public static final Clause SUGAR =
      fact(
          WIDE,
          "soluble solids: <brix-range>",
          "Sweetness of a good ripe fruit.",
          "soluble solids 9 to 14 brix");

  // --- bed
  public static final Clause SPACING =
      fact(
          WIDE,
          "spacing: <length-range:row> in the row, <length-range:rows> between rows",
          "How far apart plants stand.",
          "spacing 18 inch to 24 inch in the row, 5 ft to 6 ft between rows");
  public static final Clause AREA =
      fact(
          WIDE,
          "area: <area> a plant",
          "The ground a plant covers, trailing and all.",
          "area 20 sqft a plant");
  public static final Clause ROTATION =
      fact(
          KINDS,
          "rotation: <count-range> years",
          "Years before the family comes back to a bed.",
          "rotation 2 to 3 years");

  // --- seed
  public static final Clause SEED_KEEPS =
      fact(
          KINDS,
          "seed keeps: <count-range> (years | year)",
          "How long seed keeps in good storage.",
          "seed keeps 5 years");
  public static final Clause LEAST_GERMINATION =
      fact(
          KINDS,
          "least germination: <share>",
          "The germination below which seed is not sold as good.",
          "least germination 75 %");
  public static final Clause SEEDS_PER_FRUIT =
      fact(
          WIDE,
          "seeds a fruit: <count-range>",
          "Seeds in a full fruit.",
          "seeds a fruit 400 to 600");
  public static final Clause SEEDS_PER_GRAM =
      fact(KINDS, "seeds a gram: <number-range>", "Seeds to a gram.", "seeds a gram 35 to 46");

  static final List<Clause> ALL = FactRegister.all();

  private CropClauses() {}

  /** Whether a clause states a fact of a crop, which may name its source. */
  public static boolean isFact(Clause clause) {
    return FactRegister.isFact(clause);
  }
}
