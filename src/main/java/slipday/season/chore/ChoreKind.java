package slipday.season.chore;

import java.time.Duration;
import java.util.Locale;

/** The kinds of chores, in the order of the year. */
public enum ChoreKind {
  TEST_GERMINATION(Group.SEED, Duration.ofHours(8)),
  SOW(Group.SOWING, Duration.ofHours(-6)),
  POT_ON(Group.SOWING, Duration.ofHours(8)),
  HARDEN_OFF(Group.SOWING, Duration.ofHours(8)),
  PLANT_OUT(Group.SOWING, Duration.ofHours(-6)),
  LIFT_COVER(Group.SOWING, Duration.ofHours(8)),
  WATCH_FLOWERS(Group.POLLINATION, Duration.ofHours(8)),
  REMOVE_ANTHERS(Group.POLLINATION, Duration.ofMinutes(-30)),
  COVER(Group.POLLINATION, Duration.ofMinutes(-30)),
  POLLINATE(Group.POLLINATION, Duration.ofMinutes(-15)),
  UNCOVER(Group.POLLINATION, Duration.ofHours(8)),
  THIN(Group.POLLINATION, Duration.ofHours(8)),
  CHECK_TAKE(Group.POLLINATION, Duration.ofHours(8)),
  STOP(Group.POLLINATION, Duration.ofHours(8)),
  LOOK_AT_FRUIT(Group.FRUIT, Duration.ofHours(8)),
  TAKE_SEED(Group.SEED, Duration.ofHours(8));

  private final Group group;
  private final Duration alarm;

  ChoreKind(Group group, Duration alarm) {
    this.group = group;
    this.alarm = alarm;
  }

  public Group group() {
    return group;
  }

  /**
   * When to be reminded, from the chore's start (midnight for whole days); negative is before. What
   * needs things made ready is told the evening before.
   */
  public Duration alarm() {
    return alarm;
  }

  /** As keys and data formats write it: {@code take-seed}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** What part of the year's work a chore belongs to. */
  public enum Group {
    SOWING("sowing and planting"),
    POLLINATION("pollination"),
    FRUIT("fruit"),
    SEED("seed");

    private final String words;

    Group(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
