package slipday.season;

import java.util.Locale;

/** What happens to a planting, in the order it happens. */
public enum Event {
  SOW("sow"),
  EMERGED("up"),
  POT_ON("pot on"),
  HARDEN("harden off"),
  PLANT_OUT("plant out"),
  FIRST_MALE("first male flowers"),
  /** The first flower that can bear fruit, female or perfect. */
  FIRST_FRUITING("first fruiting flowers"),
  /** The last day on which a pollinated flower still ripens (its seed too, where seed is kept). */
  LAST_SET("last set that ripens"),
  BLOOM_ENDS("bloom ends"),
  /** The first fruit pollinated is ripe to eat. */
  RIPE("ripe"),
  /** The first fruit pollinated holds full seed. */
  SEED_RIPE("seed ripe");

  private final String words;

  Event(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }

  /** As the command line and the data formats write it: {@code first-male}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
