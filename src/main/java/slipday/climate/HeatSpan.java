package slipday.climate;

/**
 * From which event to which a heat sum runs. Each span is a type of its own, so that sums of
 * different spans can't be added or compared: the compiler refuses.
 */
public sealed interface HeatSpan {
  String start();

  String end();

  /** From seed in the soil to seedlings out of it. */
  record SowingToEmergence() implements HeatSpan {
    @Override
    public String start() {
      return "sowing";
    }

    @Override
    public String end() {
      return "emergence";
    }
  }

  /** From emergence to the first flower. */
  record EmergenceToFlower() implements HeatSpan {
    @Override
    public String start() {
      return "emergence";
    }

    @Override
    public String end() {
      return "first flower";
    }
  }

  /** From a flower's pollination to its ripe fruit. */
  record PollinationToRipe() implements HeatSpan {
    @Override
    public String start() {
      return "pollination";
    }

    @Override
    public String end() {
      return "ripe fruit";
    }
  }

  /** From one day of the year to another, for a site. */
  record DayToDay(String start, String end) implements HeatSpan {}
}
