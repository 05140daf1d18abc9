package slipday.output;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slipday.climate.FrostLaw;
import slipday.output.data.EventData;
import slipday.output.data.ScheduleData;
import slipday.output.data.ScheduleData.PlantingDates;
import slipday.season.Season;

/** The season as bars of signs, in the usual year, with the risk of frost under them. */
public final class ScheduleChart {
  private static final int WIDEST = 62;
  private static final double HALF = 0.5;
  private static final double TENTH = 0.1;
  private final Season season;
  private final ScheduleData data;
  private final Ink ink;

  public ScheduleChart(Season season, ScheduleData data, Ink ink) {
    this.season = season;
    this.data = data;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Titles.of("Schedule", data.season()))).append('\n');
    List<LocalDate> days =
        data.plantings().stream()
            .flatMap(p -> p.events().stream())
            .flatMap(e -> e.usual().stream())
            .sorted()
            .toList();
    if (days.isEmpty()) {
      return out.append("\nNothing is grown in this plan.\n").toString();
    }
    DayScale scale =
        DayScale.over(days.get(0).withDayOfMonth(1), days.get(days.size() - 1).plusDays(6), WIDEST);
    int names =
        data.plantings().stream().mapToInt(p -> Lines.width(Lines.clean(p.name()))).max().orElse(0);
    names = Math.max(names, "frost".length());
    out.append('\n').append(" ".repeat(names + 2)).append(scale.months()).append('\n');
    for (PlantingDates p : data.plantings()) {
      String name = Lines.clean(p.name());
      out.append(Lines.padded(name, names)).append("  ").append(bar(p, scale)).append('\n');
    }
    String frost = frost(scale);
    if (!frost.isBlank()) {
      out.append(Lines.padded("frost", names)).append("  ").append(frost).append('\n');
    }
    return out.append('\n').append(key(scale)).toString();
  }

  private static String key(DayScale scale) {
    return Lines.hung(
            "",
            ". raised indoors, - growing, m males only, # a set still ripens, ~ flowers too late to"
                + " ripen, R ripe, S seed full (X both).")
        + Lines.hung(
            "",
            "f frost in 1 year of 10 or more, F in half of them. A sign is " + scale.each() + ".");
  }

  private static Optional<LocalDate> usual(PlantingDates p, String event) {
    return p.events().stream()
        .filter(e -> e.event().equals(event))
        .findFirst()
        .flatMap(EventData::usual);
  }

  private String bar(PlantingDates p, DayScale scale) {
    Optional<LocalDate> seed = saved(p) ? usual(p, "seed-ripe") : Optional.empty();
    StringBuilder bar = new StringBuilder();
    for (int sign = 0; sign < scale.signs(); sign++) {
      boolean ripe = scale.covers(sign, usual(p, "ripe"));
      boolean full = scale.covers(sign, seed);
      bar.append(ripe && full ? 'X' : ripe ? 'R' : full ? 'S' : growing(p, scale.day(sign), seed));
    }
    return bar.toString().stripTrailing();
  }

  private boolean saved(PlantingDates p) {
    return season.planting(p.name()).filter(s -> s.planting().seedSaved()).isPresent();
  }

  private static char growing(PlantingDates p, LocalDate day, Optional<LocalDate> seed) {
    boolean outside = isOn(usual(p, p.indoors() ? "plant-out" : "sow"), day);
    if (!outside) {
      return isOn(usual(p, "sow"), day) ? '.' : ' ';
    }
    Optional<LocalDate> fruiting = usual(p, "first-fruiting");
    boolean inBloom = usual(p, "bloom-ends").filter(d -> !day.isAfter(d)).isPresent();
    if (inBloom && isOn(usual(p, "first-male").or(() -> fruiting), day)) {
      boolean late = usual(p, "last-set").filter(d -> !day.isAfter(d)).isEmpty();
      return !isOn(fruiting, day) ? 'm' : late ? '~' : '#';
    }
    boolean after = seed.or(() -> usual(p, "ripe")).filter(d -> !day.isAfter(d)).isEmpty();
    return after && !inBloom && isOn(fruiting, day) ? ' ' : '-';
  }

  private static boolean isOn(Optional<LocalDate> from, LocalDate day) {
    return from.filter(d -> !day.isBefore(d)).isPresent();
  }

  private String frost(DayScale scale) {
    StringBuilder line = new StringBuilder();
    for (int sign = 0; sign < scale.signs(); sign++) {
      double risk = risk(scale.day(sign)).orElse(0);
      line.append(risk >= HALF ? 'F' : risk >= TENTH ? 'f' : ' ');
    }
    return line.toString().stripTrailing();
  }

  private OptionalDouble risk(LocalDate day) {
    int slot = season.climate().axis().slotOf(day);
    boolean autumn = slot >= season.climate().axis().midsummer();
    Optional<FrostLaw> law =
        autumn ? season.climate().firstAutumnFrost() : season.climate().lastSpringFrost();
    return law.map(l -> OptionalDouble.of(l.risk(slot))).orElse(OptionalDouble.empty());
  }
}
