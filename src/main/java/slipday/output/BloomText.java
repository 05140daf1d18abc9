package slipday.output;

import java.util.List;
import java.util.Optional;
import slipday.caution.Caution;
import slipday.measure.Quantity;
import slipday.measure.Units;
import slipday.output.data.BloomData;
import slipday.output.data.BloomData.HandData;
import slipday.output.data.BloomData.InFlower;
import slipday.output.data.BloomData.MorningsData;
import slipday.output.data.BloomData.Reach;
import slipday.output.data.EventData;

/** Who is in flower when and who crosses whom, for people. */
public final class BloomText {
  private final Ink ink;
  private final BloomData data;
  private final Days days;
  private final Units units;

  /**
   * @param units those the gardener is answered in
   */
  public BloomText(BloomData data, Ink ink, Units units) {
    this.units = units;
    this.data = data;
    this.ink = ink;
    this.days = new Days(data.season().first(), data.season().last());
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Titles.of("Bloom", data.season()))).append('\n');
    out.append(Titles.model(data.season()));
    if (data.inFlower().isEmpty()) {
      return out.append("\nNothing flowers in this plan.\n").toString();
    }
    section("In flower, usual year", inFlower() + BloomChart.of(data.inFlower()), out);
    section("Seed in danger: kept from flowers that stand open", pollen(true), out);
    section("Pollen about, and no seed to spoil", pollen(false), out);
    section("Crosses", crosses(), out);
    section("Bloom apart", apart(), out);
    section("By hand", byHand(), out);
    next(out);
    return out.toString();
  }

  /** The bars of bloom alone. */
  public String chart() {
    String bars = BloomChart.of(data.inFlower());
    String title = ink.strong(Titles.of("Bloom", data.season())) + "\n\n";
    return title + (bars.isEmpty() ? "Nothing flowers in this plan.\n" : bars);
  }

  private void section(String title, String body, StringBuilder out) {
    if (!body.isEmpty()) {
      out.append('\n').append(ink.strong(title)).append('\n').append(body);
    }
  }

  private String inFlower() {
    Grid grid = new Grid("lrrrrl");
    grid.row("", "males", "fruiting", "set until", "ends", "flowers");
    for (InFlower p : data.inFlower()) {
      grid.row(
          p.planting(),
          usual(p, "first-male"),
          usual(p, "first-fruiting"),
          usual(p, "last-set"),
          usual(p, "bloom-ends"),
          p.flowers() + (p.seedSaved() ? "; seed saved" : "") + (p.sureOfFlowers() ? "" : " (?)"));
    }
    return grid.text("  ") + "\n";
  }

  private String usual(InFlower p, String event) {
    Optional<EventData> found =
        p.events().stream().filter(e -> e.event().equals(event)).findFirst();
    return found.map(e -> days.day(e.usual())).orElse("");
  }

  private String pollen(boolean intoSeed) {
    List<Reach> reaches = data.pollen().stream().filter(r -> r.intoSeed() == intoSeed).toList();
    if (reaches.isEmpty()) {
      return intoSeed ? "  None.\n" : "";
    }
    Grid grid = new Grid("lllrr");
    grid.row("flowers of", "pollen of", "crosses", "apart", "mornings together");
    String before = "";
    for (Reach r : reaches) {
      String crop = r.sourceKind().equals("planting") ? "" : " (" + r.sourceCrop() + ")";
      String bitter = r.bitter() ? ", BITTER" : "";
      String receiver = r.receiver().equals(before) ? "" : r.receiver();
      before = r.receiver();
      grid.row(receiver, r.source() + crop + bitter, readily(r), apart(r), together(r));
    }
    return grid.text("  ") + cautions(reaches, intoSeed);
  }

  private static String readily(Reach r) {
    if (r.sameSpecies()) {
      return "one species";
    }
    String low = Quantity.plain(r.degree().low());
    String high = Quantity.plain(r.degree().high());
    return (low.equals(high) ? low : low + " to " + high) + " of 3";
  }

  private String apart(Reach r) {
    return r.distance().map(units::wholeDistance).orElse("?");
  }

  private static String together(Reach r) {
    String chance =
        r.chance()
            .filter(c -> c < 0.995)
            .map(c -> ", " + Lines.percent(c) + " of years")
            .orElse("");
    return r.mornings().map(BloomText::figures).orElse("unknown") + chance;
  }

  private static String figures(MorningsData m) {
    return m.usual() + " (" + m.few() + " to " + m.many() + ")";
  }

  private static String mornings(MorningsData m) {
    return Lines.count(m.usual(), "morning") + " (" + m.few() + " to " + m.many() + ")";
  }

  private static String cautions(List<Reach> reaches, boolean intoSeed) {
    StringBuilder out = new StringBuilder();
    if (intoSeed && reaches.stream().anyMatch(Reach::bitter)) {
      String caution =
          "Pollen of a bitter kind leaves this year's fruit sound, and makes seed whose fruit may be"
              + " bitter and poisonous. "
              + Caution.TASTE_FIRST.words();
      out.append(Lines.hung("  ", caution));
    }
    if (reaches.stream().anyMatch(r -> !r.sameSpecies())) {
      out.append(Lines.hung("  ", "0 never crosses, 3 crosses readily."));
    }
    return out.toString();
  }

  private String crosses() {
    StringBuilder out = new StringBuilder();
    for (BloomData.CrossData c : data.crosses()) {
      String says =
          c.seedParent()
              + " by "
              + c.pollenParent()
              + ": together "
              + mornings(c.mornings())
              + ", in "
              + Lines.percent(c.chance())
              + " of years."
              + c.movedPlanting()
                  .map(m -> " " + m + " is put off " + Lines.count(c.moved(), "day") + " for it.")
                  .orElse("");
      out.append(wrapped(c.cross(), says));
    }
    return out.toString();
  }

  private static String wrapped(String name, String says) {
    return String.join("\n", Lines.wrapped("  " + name + ": ", "    ", says)) + "\n";
  }

  private String apart() {
    StringBuilder out = new StringBuilder();
    for (BloomData.ApartData a : data.apart()) {
      String moved =
          a.moved() > 0 ? " It is put off " + Lines.count(a.moved(), "day") + " for it." : "";
      String says =
          a.honoured()
              ? "apart in all but " + Lines.percent(a.chance()) + " of years." + moved
              : "not to be had: together "
                  + Lines.count(a.mornings(), "morning")
                  + " in the usual year, in "
                  + Lines.percent(a.chance())
                  + " of years.";
      out.append(wrapped(a.planting() + " from " + a.other(), says));
    }
    return out.toString();
  }

  private String byHand() {
    StringBuilder out = new StringBuilder();
    for (HandData h : data.byHand()) {
      out.append("  ").append(ink.strong(h.subject())).append(": ").append(wish(h)).append('\n');
      out.append(Lines.hung("    ", flowers(h)));
      out.append(Lines.hung("    ", when(h)));
      if (h.mornings() > 0) {
        out.append(Lines.hung("    ", h.stop()));
      }
    }
    return out.toString();
  }

  private static String wish(HandData h) {
    String from =
        h.fromPlants().map(n -> " from " + Lines.count(n, "plant") + " or more").orElse("");
    String pollen = h.way().equals("cross") ? h.seedParent() + " by " + h.pollenParent() : h.way();
    String anthers = h.emasculate() ? ", anthers off the evening before" : "";
    return pollen + ", for " + Lines.count(h.fruits(), "fruit") + from + anthers;
  }

  private static String flowers(HandData h) {
    String sure =
        h.flowersSure()
            .map(n -> n + " to be sure (19 in 20)")
            .orElse("more than 9999 to be sure (19 in 20)");
    String needed =
        h.hopeless()
            ? "No number of flowers makes them likely"
            : Lines.count(h.flowersLikely(), "flower") + " as likely as not, " + sure;
    return needed
        + ", where "
        + Lines.percent(h.take())
        + " take."
        + (h.mornings() == 0
            ? ""
            : " About "
                + h.flowersThere()
                + " can be done: chance "
                + Lines.percent(h.chance())
                + ".");
  }

  private String when(HandData h) {
    return h.from().isEmpty() || h.until().isEmpty() || h.mornings() == 0
        ? "No morning from which the fruit still ripens in the usual year."
        : days.day(h.from())
            + " to "
            + days.day(h.until())
            + ", "
            + Lines.count(h.mornings(), "morning")
            + ": "
            + Lines.count(h.aMorning(), "flower")
            + " a morning.";
  }

  private void next(StringBuilder out) {
    boolean danger = data.pollen().stream().anyMatch(Reach::intoSeed);
    out.append('\n');
    if (danger) {
      out.append(
          "`flowers cover the chosen` with `pollinate self by hand` keeps marked seed clean.\n");
    }
    out.append("The evenings and mornings: ")
        .append(Shell.command("calendar", data.plan(), "-o season.ics"))
        .append('\n');
  }
}
