package slipday.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import slipday.garden.Planting;
import slipday.garden.record.FruitStory;
import slipday.measure.Reasoned;

/**
 * A flower pollinated by hand this season and tagged, with what is to be expected of it.
 *
 * @param ripens what it is waited for: ripe to eat, or full of seed where that comes later
 * @param expected when that is, reckoned from its own pollination
 */
public record MarkedFruit(
    FruitStory story, Planting planting, Event ripens, Reasoned<DateSpread> expected) {
  public String tag() {
    return story.fruit().tag();
  }

  public LocalDate pollinated() {
    return story.fruit().date();
  }

  /** Days from its pollination to a day. */
  public int age(LocalDate date) {
    return (int) ChronoUnit.DAYS.between(pollinated(), date);
  }

  /** Whether it hangs, by the record: neither picked nor lost. */
  public boolean hangs() {
    return switch (story.state()) {
      case PENDING, SET -> true;
      default -> false;
    };
  }
}
