package slipday.output;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import slipday.output.data.BloomData.InFlower;
import slipday.output.data.EventData;

/** Bars of bloom over the season, in the usual year. */
final class BloomChart {
  private static final int WIDEST = 60;

  private final LocalDate first;
  private final int daysAColumn;
  private final int columns;
  private final int nameWidth;

  private BloomChart(LocalDate first, LocalDate last, int nameWidth) {
    this.first = first;
    int days = (int) ChronoUnit.DAYS.between(first, last) + 1;
    this.daysAColumn = Math.max(1, (days + WIDEST - 1) / WIDEST);
    this.columns = (days + daysAColumn - 1) / daysAColumn;
    this.nameWidth = nameWidth;
  }

  static String of(List<InFlower> plantings) {
    Optional<LocalDate> first =
        plantings.stream().flatMap(p -> begins(p).stream()).min(LocalDate::compareTo);
    Optional<LocalDate> last =
        plantings.stream().flatMap(p -> usual(p, "bloom-ends").stream()).max(LocalDate::compareTo);
    if (first.isEmpty() || last.isEmpty()) {
      return "";
    }
    int width = plantings.stream().mapToInt(p -> Lines.width(p.planting())).max().orElse(0);
    return new BloomChart(first.get(), last.get(), width).text(plantings);
  }

  private static Optional<LocalDate> begins(InFlower p) {
    return usual(p, "first-male").or(() -> usual(p, "first-fruiting"));
  }

  private static Optional<LocalDate> usual(InFlower p, String event) {
    return p.events().stream()
        .filter(e -> e.event().equals(event))
        .findFirst()
        .flatMap(EventData::usual);
  }

  private String text(List<InFlower> plantings) {
    StringBuilder out = new StringBuilder("  " + " ".repeat(nameWidth) + "  " + months() + "\n");
    for (InFlower p : plantings) {
      out.append("  ").append(Lines.padded(p.planting(), nameWidth)).append("  ");
      out.append(bar(p).stripTrailing()).append('\n');
    }
    String scale = daysAColumn == 1 ? "a day" : daysAColumn + " days";
    out.append("  m males only, # a set still ripens, - too late to ripen; a sign is ")
        .append(scale)
        .append(".\n");
    return out.toString();
  }

  /** The name of each month over the column of its first day. */
  private String months() {
    StringBuilder line = new StringBuilder();
    for (int column = 0; column < columns; column++) {
      LocalDate from = first.plusDays((long) column * daysAColumn);
      LocalDate to = from.plusDays(daysAColumn - 1L);
      boolean begins = from.getDayOfMonth() == 1 || to.getMonthValue() != from.getMonthValue();
      if (column == 0 || begins) {
        String name = Days.month(to.getMonthValue());
        if (line.length() <= column) {
          line.append(" ".repeat(column - line.length())).append(name).append(' ');
        }
      }
    }
    return line.toString().stripTrailing();
  }

  private String bar(InFlower p) {
    StringBuilder bar = new StringBuilder();
    for (int column = 0; column < columns; column++) {
      bar.append(sign(p, first.plusDays((long) column * daysAColumn)));
    }
    return bar.toString();
  }

  private static char sign(InFlower p, LocalDate day) {
    if (day.isBefore(begins(p).orElse(LocalDate.MAX))
        || day.isAfter(usual(p, "bloom-ends").orElse(LocalDate.MIN))) {
      return ' ';
    }
    if (day.isBefore(usual(p, "first-fruiting").orElse(LocalDate.MAX))) {
      return 'm';
    }
    return day.isAfter(usual(p, "last-set").orElse(LocalDate.MIN)) ? '-' : '#';
  }
}
