package slipday.output;

import slipday.output.data.SeasonData;

/** The first lines of every report. */
final class Titles {
  private Titles() {}

  static String of(String what, SeasonData season) {
    return Lines.clean(what + " " + season.label() + ", " + season.title());
  }

  /** Which model the dates are from. */
  static String model(SeasonData season) {
    if (season.weatherYears() > 0) {
      return "Walked through " + Lines.count(season.weatherYears(), "weather year") + ".\n";
    }
    return """
        In calendar days, from what the plan tells of frost: there is no weather year to walk through.
        Cold nights and heat are not counted in, and cold soil only where the site tells readings.
        Every summer is taken for a usual one: in a cool one fruit comes up to three weeks later.
        """;
  }
}
