package slipday.output;

import java.util.Locale;
import slipday.output.data.TodayData.ClosedData;
import slipday.output.data.TodayData.HoursData;
import slipday.output.data.TodayData.SeedLeftData;
import slipday.output.data.TodayData.TonightData;

/** Hours, steps and chores in the fewest words. */
final class TodayWords {
  private static final double NEXT_TO_NOTHING = 0.05;

  private TodayWords() {}

  private static String hour(String time) {
    return time.substring(time.indexOf('T') + 1);
  }

  static String hours(HoursData hours) {
    return hour(hours.from()) + " to " + hour(hours.to());
  }

  static String doing(String kind) {
    return switch (kind) {
      case "test-germination" -> "test germination";
      case "harden-off" -> "harden off";
      case "lift-cover" -> "take the cover off";
      case "watch-flowers" -> "watch for first flowers";
      case "thin" -> "take off unmarked young fruit";
      case "stop" -> "stop pollinating if enough have set";
      case "look-at-fruit" -> "look at the fruit";
      case "check-take" -> "check the take";
      case "remove-anthers" -> "anthers off";
      default -> kind.replace('-', ' ').toLowerCase(Locale.ROOT);
    };
  }

  static String step(String event) {
    return switch (event) {
      case "sow" -> "sow";
      case "emerged" -> "up";
      case "pot-on" -> "pot on";
      case "plant-out" -> "plant out";
      default -> "first flowers";
    };
  }

  static String left(SeedLeftData s) {
    return s.toDry() && s.toCount() ? "dry and count" : s.toDry() ? "dry" : "count";
  }

  static String pollen(TonightData p) {
    return switch (p.way()) {
      case "self" -> " of the same plant";
      case "sib" -> " of other plants of it";
      default -> " of " + p.pollenParent();
    };
  }

  /** {@code 8 wanted, 2 set, 3 waiting (take 16 %): 6 still wanted.} */
  static String wanted(TonightData p) {
    return p.wanted()
        + " wanted"
        + p.fromPlants().map(n -> " from " + Lines.count(n, "plant")).orElse("")
        + ", "
        + p.set()
        + " set"
        + (p.waiting() > 0 ? ", " + p.waiting() + " waiting" : "")
        + " (take "
        + Lines.percent(p.take())
        + "): "
        + (int) Math.ceil(p.stillWanted() - NEXT_TO_NOTHING)
        + (p.stillWanted() < NEXT_TO_NOTHING
            ? " still wanted; more to be sure."
            : " still wanted.");
  }

  /** {@code 1 of 4 set, 2 waiting. Keep …}. */
  static String closed(ClosedData c) {
    return c.set()
        + " of "
        + c.wanted()
        + " set"
        + (c.waiting() > 0 ? ", " + c.waiting() + " waiting" : "")
        + ". Keep some of the seed it grew from for another year.";
  }
}
