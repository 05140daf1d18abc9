package slipday.output;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.output.data.BloomData.InFlower;
import slipday.output.data.EventData;

/** Bars of bloom over the season, in the usual year. */
final class BloomChart {
  private static final int WIDEST = 60;

  private final DayScale scale;
  private final int nameWidth;

  private BloomChart(DayScale scale, int nameWidth) {
    this.scale = scale;
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
    return new BloomChart(DayScale.over(first.get(), last.get(), WIDEST), width).text(plantings);
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
    StringBuilder out =
        new StringBuilder("  " + " ".repeat(nameWidth) + "  " + scale.months() + "\n");
    for (InFlower p : plantings) {
      out.append("  ").append(Lines.padded(p.planting(), nameWidth)).append("  ");
      out.append(bar(p).stripTrailing()).append('\n');
    }
    out.append("  m males only, # a set still ripens, - too late to ripen; a sign is ")
        .append(scale.each())
        .append(".\n");
    return out.toString();
  }

  private String bar(InFlower p) {
    StringBuilder bar = new StringBuilder();
    for (int column = 0; column < scale.signs(); column++) {
      bar.append(sign(p, scale.day(column)));
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
