package slipday.climate;

import java.util.Optional;

/** One way a weather file is laid out. */
interface WeatherLayout {
  /** As `climate` and a reason name it. */
  String describe();

  /** Reads every line from an index on; what is wrong goes to the findings. */
  void read(WeatherLines lines, DayValues values, RowFindings findings);

  /** Tells a second station in one file, once; its rows are left out. */
  final class OneStation {
    private Optional<String> station = Optional.empty();
    private boolean told;

    boolean accepts(String text, int start, int end, RowFindings findings) {
      if (station.isEmpty()) {
        station = Optional.of(text.substring(start, end));
        return true;
      }
      String first = station.get();
      if (first.length() == end - start && text.startsWith(first, start)) {
        return true;
      }
      if (!told) {
        told = true;
        findings.error(
            "weather-stations",
            start,
            end,
            "The file holds more than one station: "
                + RowFindings.quoted(first)
                + " and "
                + RowFindings.quoted(text.substring(start, end))
                + ".",
            "Keep the lines of one station; those of the first are read.");
      }
      return false;
    }
  }
}
