package slipday.language;

import java.util.Map;
import java.util.Optional;

/**
 * What holds where a plan leaves a clause out. The record has no such: what is not on it is not
 * known.
 */
public final class Unsaid {
  private static final String NEEDED = "It must be said.";

  private static final Map<Clause, String> HOLDS =
      Map.ofEntries(
          Map.entry(PlanClauses.PLACE, NEEDED),
          Map.entry(PlanClauses.TIME_ZONE, NEEDED),
          Map.entry(
              PlanClauses.WEATHER,
              "Dates are reckoned in calendar days, from `last frost` and `first frost`."),
          Map.entry(PlanClauses.COLDER, "The garden is as warm as the station."),
          Map.entry(PlanClauses.WARMER, "The garden is as warm as the station."),
          Map.entry(PlanClauses.FROST_RISK, "1 in 10."),
          Map.entry(
              PlanClauses.LAST_FROST,
              "The weather record tells it; without one, frost is not reckoned with, and that is"
                  + " told."),
          Map.entry(
              PlanClauses.FIRST_FROST,
              "The weather record tells it; without one, frost is not reckoned with, and that is"
                  + " told."),
          Map.entry(
              PlanClauses.SOIL_READING,
              "The soil is estimated from the air of the weather record."),
          Map.entry(PlanClauses.MORNINGS, "Every morning, 7 a week."),
          Map.entry(PlanClauses.HANDS, "One person, 10 flowers a morning."),
          Map.entry(PlanClauses.SIZE, "Nothing is said of how full the bed is."),
          Map.entry(
              PlanClauses.CORNER,
              "How far its plants are from others is not known; they are taken to be near."),
          Map.entry(PlanClauses.VINES, "Vines stay within the bed."),
          Map.entry(PlanClauses.GREW, "Nothing stood in it that matters."),
          Map.entry(PlanClauses.FROST_POCKET, "It is as warm as the rest of the garden."),
          Map.entry(PlanClauses.GROWS, NEEDED),
          Map.entry(PlanClauses.DISTANCE, "It is taken to be near."),
          Map.entry(PlanClauses.IS_A, NEEDED),
          Map.entry(PlanClauses.BEGAN, "Nothing is known of its beginning."),
          Map.entry(PlanClauses.PURPOSE, "To keep."),
          Map.entry(PlanClauses.LOOKS, "Nothing."),
          Map.entry(PlanClauses.OF, NEEDED),
          Map.entry(
              PlanClauses.GENERATION, "What its line says; where that says nothing, not known."),
          Map.entry(PlanClauses.LINE_GENERATION, "Only that of lots that say it is known."),
          Map.entry(PlanClauses.INBRED, "What its line says; where that says nothing, not known."),
          Map.entry(PlanClauses.LINE_INBRED, "Only that of lots that say it is known."),
          Map.entry(
              KindClauses.OF, "It must be said, unless the crop is declared already elsewhere."),
          Map.entry(KindClauses.ALSO_CALLED, "It goes by its own name alone."),
          Map.entry(PlanClauses.SEEDS, "How many are left is not known."),
          Map.entry(PlanClauses.HARVESTED, "Its age is not known."),
          Map.entry(PlanClauses.TESTED, "Reckoned from its age, as the crop's seed keeps."),
          Map.entry(PlanClauses.IDENTITY, "Known."),
          Map.entry(PlanClauses.EXPOSED, "None is known of."),
          Map.entry(PlanClauses.DISEASE, "None is known of."),
          Map.entry(PlanClauses.CAME_FROM, "Nothing."),
          Map.entry(PlanClauses.KEEP_BACK, "No seed is kept back."),
          Map.entry(
              PlanClauses.IN,
              "It stands nowhere: its room is not judged, and it is taken to be near all others."),
          Map.entry(
              PlanClauses.PLANTS,
              "Seed to sow is not counted; what hangs on plants is told for one."),
          Map.entry(
              PlanClauses.START,
              "As the crop is usually started, at its usual age; indoors at 21 °C."),
          Map.entry(PlanClauses.SOW_ON, "The day is worked out."),
          Map.entry(PlanClauses.PLANT_OUT_ON, "The day is worked out."),
          Map.entry(
              PlanClauses.SOW_SEEDS, "Worked out from the plants and how well the seed comes up."),
          Map.entry(PlanClauses.MULCH, "The soil is bare."),
          Map.entry(PlanClauses.COVER, "Nothing covers it."),
          Map.entry(PlanClauses.FLOWERS, "Open."),
          Map.entry(PlanClauses.POLLINATE, "Left to the bees, the wind or itself."),
          Map.entry(PlanClauses.SEED, "Not saved."),
          Map.entry(PlanClauses.BLOOM_APART, "Nothing is kept apart by dates."),
          Map.entry(PlanClauses.SEED_PARENT, NEEDED),
          Map.entry(PlanClauses.POLLEN_PARENT, NEEDED),
          Map.entry(PlanClauses.FRUITS, "No flowers are planned for it."),
          Map.entry(PlanClauses.RAISE, "The trait is not aimed at; with `matters` left off, 1."),
          Map.entry(PlanClauses.LOWER, "The trait is not aimed at; with `matters` left off, 1."),
          Map.entry(PlanClauses.KEEP_AT, "The trait is not aimed at; with `matters` left off, 1."),
          Map.entry(PlanClauses.REFUSE, "No fault refuses a parent."),
          Map.entry(
              PlanClauses.PARENTS,
              "Of a line to keep as many as its crop takes to keep a line, of others 4."),
          Map.entry(PlanClauses.SCALE, "Any points."),
          Map.entry(PlanClauses.UNIT, "A bare number."),
          Map.entry(PlanClauses.ALLOW_IN, NEEDED),
          Map.entry(PlanClauses.BECAUSE, "It must be said, or nothing is allowed."),
          Map.entry(
              GoalClauses.HERITABILITY,
              "The record is asked; where it can't tell, plants are ranked at 0.1, 0.3 and 0.5."),
          Map.entry(GoalClauses.CORRELATION, "The two are valued each by itself."),
          Map.entry(GoalClauses.ENVIRONMENTAL_CORRELATION, "0."),
          Map.entry(GoalClauses.WEIGHTS, "Per standard deviation."));

  private Unsaid() {}

  /** A sentence or two; empty for facts of crops and lines of the record. */
  public static Optional<String> of(Clause clause) {
    return Optional.ofNullable(HOLDS.get(clause));
  }
}
