package slipday.output;

import java.time.LocalDate;
import java.util.Optional;
import slipday.measure.Quantity;
import slipday.measure.Units;
import slipday.output.data.StoreData;
import slipday.output.data.StoreData.FruitData;
import slipday.output.data.StoreData.KeepingData;

/** What lies in store, for people. */
public final class StoreText {
  private static final String NOTHING = "-";
  private static final String SOFT = "soft";

  private final StoreData data;
  private final Ink ink;
  private final Units units;

  /**
   * @param units those the gardener is answered in
   */
  public StoreText(StoreData data, Ink ink, Units units) {
    this.units = units;
    this.data = data;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Titles.of("In store", data.season()))).append('\n');
    if (data.fruits().isEmpty()) {
      out.append("No fruit lies in store by the record.\n");
    } else {
      Grid grid = new Grid("lllrlllll");
      grid.row("fruit", "line", "since", "days", "last look", "weight", "best", "eat by", "where");
      data.fruits().forEach(f -> row(f, grid));
      out.append(grid.text("  "));
      out.append(
          Lines.hung(
              "  ",
              "Throw mouldy and soft fruit away whole: what shows is not all there is of it."));
    }
    if (!data.keeping().isEmpty()) {
      out.append('\n').append(ink.strong("How it keeps")).append('\n');
      data.keeping().forEach(k -> out.append(Lines.hung("  ", words(k))));
    }
    if (!data.seed().isEmpty()) {
      out.append('\n').append(ink.strong("Seed")).append('\n');
      Grid seed = new Grid("ll");
      data.seed().forEach(s -> seed.row(Lines.clean(s.lot()), Lines.clean(s.where())));
      out.append(seed.text("  "));
    }
    return out.toString();
  }

  private void row(FruitData f, Grid grid) {
    grid.row(
        Lines.clean(f.name()),
        Lines.clean(f.line()),
        f.since().toString(),
        String.valueOf(f.days()),
        f.looked().map(d -> f.state().orElse("") + " " + d).orElse("never"),
        weight(f),
        day(f.best()),
        f.bitter()
            ? "destroy: bitter"
            : f.state().filter(SOFT::equals).isPresent()
                ? "throw away"
                : f.eatBy()
                    .map(d -> d.isBefore(data.today()) ? "now (" + d + ")" : d.toString())
                    .orElse(NOTHING),
        Lines.clean(f.where().orElse(NOTHING)));
  }

  private static String day(Optional<LocalDate> day) {
    return day.map(LocalDate::toString).orElse(NOTHING);
  }

  private String weight(FruitData f) {
    return f.firstKilograms()
        .map(
            first ->
                units.mass(first)
                    + f.lastKilograms()
                        .map(
                            last ->
                                ", now "
                                    + units.mass(last)
                                    + " ("
                                    + (last > first ? "+" : "")
                                    + Math.round(100 * (last - first) / first)
                                    + " %)")
                        .orElse(""))
        .orElse(NOTHING);
  }

  private static String words(KeepingData k) {
    StringBuilder out = new StringBuilder(k.line() + ": ");
    out.append(
        k.fruits() == 0 ? "none looked at yet" : Lines.count(k.fruits(), "fruit") + " looked at");
    k.soundDays().ifPresent(d -> out.append(", sound after ").append(Lines.count(d, "day")));
    k.spoiltDays()
        .ifPresent(
            d ->
                out.append(", ")
                    .append(k.spoilt())
                    .append(" spoilt, the first after ")
                    .append(Lines.count(d, "day")));
    k.bestDays()
        .ifPresent(
            d ->
                out.append("; tasted best after ")
                    .append(Lines.count(d, "day"))
                    .append(" (flavour ")
                    .append(Math.round(100 * k.bestFlavour().orElse(0.0)))
                    .append(" of 100)"));
    k.lostAMonth()
        .ifPresent(
            share ->
                out.append("; loses ")
                    .append(Quantity.plain(Math.round(1000 * share) / 10.0))
                    .append(" % of its weight a month"));
    if (k.gained() > 0) {
      out.append("; ")
          .append(Lines.count(k.gained(), "fruit"))
          .append(" weighed more later than first, which can't be: weigh again")
          .append(k.lostAMonth().isPresent() ? " (left out)" : "");
    }
    return out.append('.').toString();
  }
}
