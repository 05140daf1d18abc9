package slipday.odds;

import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import slipday.genetics.Answer;
import slipday.genetics.SeedLife;
import slipday.measure.Quantity;

/** How many times longer seed lives in one storage than in another. */
public final class Storing {
  private static final String HARRINGTON =
      "J. F. Harrington 1972, in T. T. Kozlowski (editor), Seed Biology, volume 3 (from memory).";
  private static final String PLACE =
      "(\\d{1,2}(?:\\.\\d{1,2})?) ?% at (-?\\d{1,3}(?:\\.\\d{1,2})?) ?([CF])";
  private static final Pattern ASKED = Pattern.compile(PLACE + "(?:,| then|, then) " + PLACE);

  private Storing() {}

  /**
   * @param moisture of the seed, percent
   * @param told the temperature as it was written
   */
  private record Place(double moisture, double celsius, String told) {
    static Place of(Matcher m, int group) {
      double degrees = Double.parseDouble(m.group(group + 1));
      boolean fahrenheit = m.group(group + 2).equals("F");
      return new Place(
          Double.parseDouble(m.group(group)),
          fahrenheit ? (degrees - 32) * 5 / 9 : degrees,
          m.group(group + 1) + " " + m.group(group + 2));
    }

    String words() {
      return Quantity.plain(moisture) + " % of moisture and " + told;
    }
  }

  /** Reads {@code 10 % at 20 C, 8 % at 10 C}: the moisture of seed and the warmth, and then. */
  public static Answer<Reckoning> read(String asked) {
    Matcher m = ASKED.matcher(asked.strip());
    return m.matches()
        ? reckon(Place.of(m, 1), Place.of(m, 4))
        : Answer.refused(
            "`" + asked.strip() + "` does not tell how moist and how warm seed lies, and then.");
  }

  private static Answer<Reckoning> reckon(Place first, Place second) {
    return times(first, second).match(t -> Answer.of(reckoning(first, second, t)), Answer::refused);
  }

  private static Answer<Double> times(Place first, Place second) {
    return SeedLife.timesLonger(first.moisture, first.celsius, second.moisture, second.celsius);
  }

  private static OptionalInt whole(double times) {
    return times < 1 ? OptionalInt.empty() : OptionalInt.of((int) Math.round(times));
  }

  /** {@code 16 times as long}, {@code 1/16 as long}. */
  private static String as(double times) {
    double factor = Math.max(times, 1 / times);
    String rounded = Quantity.plain(factor >= 10 ? Math.rint(factor) : Math.rint(factor * 10) / 10);
    return times < 1 ? "1/" + rounded + " as long" : rounded + " times as long";
  }

  /** Where the whole holds, so do its parts. */
  private static String alone(Place first, Place second) {
    return as(times(first, second).value().orElseThrow());
  }

  private static Reckoning reckoning(Place first, Place second, double times) {
    OptionalInt humidity =
        IntStream.rangeClosed(0, 99).filter(h -> SeedLife.coolAndDry(second.celsius, h)).max();
    return new Reckoning(
        "store",
        whole(times),
        "times",
        "Seed at " + second.words() + " lives about " + as(times) + " as at " + first.words() + ".",
        0,
        List.of(),
        List.of(),
        List.of(
            "A rule of thumb: twice as long for each percent of moisture less, from 14 to 5 %, and"
                + " twice for each 5 C less, from 50 to 0 C.",
            "By moisture alone "
                + alone(first, new Place(second.moisture, first.celsius, ""))
                + ", by warmth alone "
                + alone(first, new Place(first.moisture, second.celsius, ""))
                + ".",
            humidity.isPresent()
                ? "At "
                    + second.told
                    + " the air may hold up to "
                    + humidity.getAsInt()
                    + " % of humidity: degrees F and percent of humidity together stay under 100."
                : "At " + second.told + " no air is dry enough: degrees F alone reach 100."),
        List.of(HARRINGTON),
        List.of(
            "Dry seed before it is cooled, and let a closed jar come to the room's warmth before it"
                + " is opened.",
            "It is no substitute for a test: `tested LOT, 44 of 50 seeds`."));
  }
}
