package slipday.output.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.measure.Reasoned;
import slipday.season.DateSpread;
import slipday.season.PlantingSeason;
import slipday.season.Season;

/**
 * The whole months that the bars of a season run over. Places on it are shares from 0 to 1, a day
 * being at its noon.
 */
record Axis(LocalDate first, LocalDate last) {
  static Axis of(Season season) {
    List<LocalDate> days = season.plantings().stream().flatMap(Axis::days).sorted().toList();
    LocalDate from = days.isEmpty() ? season.garden().season().first() : days.get(0);
    LocalDate to = days.isEmpty() ? season.garden().season().last() : days.get(days.size() - 1);
    return new Axis(
        from.withDayOfMonth(1), to.plusDays(3).withDayOfMonth(1).plusMonths(1).minusDays(1));
  }

  private static Stream<LocalDate> days(PlantingSeason p) {
    return p.dates().values().stream()
        .map(Reasoned::value)
        .flatMap(s -> Stream.of(s.early(), s.usual(), s.late()))
        .flatMap(Optional::stream);
  }

  int days() {
    return (int) ChronoUnit.DAYS.between(first, last) + 1;
  }

  boolean holds(LocalDate date) {
    return !date.isBefore(first) && !date.isAfter(last);
  }

  double at(LocalDate date) {
    return (ChronoUnit.DAYS.between(first, date) + 0.5) / days();
  }

  /** A day of a spread, or the end of the axis where it never comes to that. */
  double at(Optional<LocalDate> date) {
    return date.map(this::at).orElse(1.0);
  }

  double usual(DateSpread spread) {
    return spread.usual().or(spread::early).map(this::at).orElse(1.0);
  }

  /** The first days of its months. */
  List<LocalDate> months() {
    List<LocalDate> months = new ArrayList<>();
    for (LocalDate m = first; !m.isAfter(last); m = m.plusMonths(1)) {
      months.add(m);
    }
    return months;
  }
}
