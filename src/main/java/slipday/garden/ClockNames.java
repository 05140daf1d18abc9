package slipday.garden;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Zones by what people call their clocks. Such a name stands for half the year only, and often for
 * more than one country: so it is never taken for a zone, but leads to the most likely one. Common
 * practice, no source.
 */
final class ClockNames {
  private static final Map<String, String> ZONES =
      Map.ofEntries(
          Map.entry("EST", "America/New_York"),
          Map.entry("EDT", "America/New_York"),
          Map.entry("ET", "America/New_York"),
          Map.entry("CST", "America/Chicago"),
          Map.entry("CDT", "America/Chicago"),
          Map.entry("CT", "America/Chicago"),
          Map.entry("MST", "America/Denver"),
          Map.entry("MDT", "America/Denver"),
          Map.entry("MT", "America/Denver"),
          Map.entry("PST", "America/Los_Angeles"),
          Map.entry("PDT", "America/Los_Angeles"),
          Map.entry("PT", "America/Los_Angeles"),
          Map.entry("AKST", "America/Anchorage"),
          Map.entry("HST", "Pacific/Honolulu"),
          Map.entry("AST", "America/Halifax"),
          Map.entry("BST", "Europe/London"),
          Map.entry("CEST", "Europe/Berlin"),
          Map.entry("MEZ", "Europe/Berlin"),
          Map.entry("MESZ", "Europe/Berlin"),
          Map.entry("EEST", "Europe/Athens"),
          Map.entry("MSK", "Europe/Moscow"),
          Map.entry("IST", "Asia/Kolkata"),
          Map.entry("JST", "Asia/Tokyo"),
          Map.entry("AEST", "Australia/Sydney"),
          Map.entry("AEDT", "Australia/Sydney"),
          Map.entry("ACST", "Australia/Adelaide"),
          Map.entry("AWST", "Australia/Perth"),
          Map.entry("NZST", "Pacific/Auckland"),
          Map.entry("NZDT", "Pacific/Auckland"),
          Map.entry("SAST", "Africa/Johannesburg"),
          Map.entry("BRT", "America/Sao_Paulo"),
          Map.entry("ART", "America/Argentina/Buenos_Aires"));

  private ClockNames() {}

  /** The zone most likely meant; empty for what is no name of a clock. */
  static Optional<String> zone(String clock) {
    return Optional.ofNullable(ZONES.get(clock.toUpperCase(Locale.ROOT)));
  }
}
