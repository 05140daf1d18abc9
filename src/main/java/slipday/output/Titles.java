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
        In calendar days, from the plan's own frost dates: there is no weather year to walk through.
        Cold soil, cold nights, frost pockets and covers are not counted in.
        """;
  }
}
