package slipday.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipday.caution.Caution;
import slipday.output.data.LotsData;
import slipday.output.data.LotsData.GerminationData;
import slipday.output.data.LotsData.LotData;
import slipday.output.data.ReasonData;

/** Seed in hand, for people: a table, or a label for each packet. */
public final class LotsText {
  private static final String NOTHING = "-";

  /** On a label; a packet has little room. */
  private static final int MOST_PARENTS = 3;

  private final LotsData data;
  private final boolean detailed;
  private final boolean givenAway;
  private final Ink ink;

  /**
   * @param detailed whether all that is known of each lot is told, and not only what needs care
   * @param givenAway whether the record gives seed of these lots away
   */
  public LotsText(LotsData data, boolean detailed, boolean givenAway, Ink ink) {
    this.data = data;
    this.givenAway = givenAway;
    this.detailed = detailed;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Titles.of("Seed in hand", data.season()))).append('\n');
    if (data.lots().isEmpty()) {
      return out.append("No lot is declared or saved.\n").toString();
    }
    Grid grid = new Grid("lllrrlrrrr");
    grid.row(
        "lot",
        "line",
        "generation",
        "seeds",
        "age",
        "expected",
        "plants",
        "to sow",
        "remnant",
        "grow on");
    data.lots().forEach(l -> row(l, grid));
    out.append(grid.text("  "));
    if (detailed) {
      data.lots().forEach(l -> out.append(details(l)));
      law(out);
      return out.toString();
    }
    cares(out);
    law(out);
    out.append("\nMore of a lot: ").append(Shell.command("lots", data.plan(), "LOT")).append('\n');
    return out.toString();
  }

  /** Seed that leaves the garden is a matter of the law. */
  private void law(StringBuilder out) {
    if (givenAway) {
      out.append('\n').append(ink.strong("Some of it was given away")).append('\n');
      out.append(Lines.hung("  ", Caution.LAW.words()));
    }
  }

  /** What needs care, said once with all lots it is about. */
  private void cares(StringBuilder out) {
    Map<String, List<String>> cares = new LinkedHashMap<>();
    data.lots()
        .forEach(
            l ->
                cares(l)
                    .forEach(c -> cares.computeIfAbsent(c, w -> new ArrayList<>()).add(l.name())));
    if (!cares.isEmpty()) {
      out.append('\n').append(ink.strong("Take care")).append('\n');
    }
    cares.forEach(
        (care, lots) -> out.append(Lines.hung("  ", String.join(", ", lots) + ": " + care)));
  }

  private void row(LotData l, Grid grid) {
    grid.row(
        Lines.clean(l.name()),
        Lines.clean(l.line()),
        generation(l),
        seeds(l),
        l.age().map(a -> a + " y").orElse(NOTHING),
        l.germination().map(LotsText::percents).orElse(NOTHING),
        l.plantsWanted() == 0 ? NOTHING : String.valueOf(l.plantsWanted()),
        toSow(l),
        l.remnant().map(String::valueOf).orElse(NOTHING),
        growOn(l));
  }

  /** Both that seed in doubt may be is told under the table. */
  private static String generation(LotData l) {
    return l.identity().equals("doubtful") ? "in doubt" : l.generation().orElse(NOTHING);
  }

  private static String seeds(LotData l) {
    return l.seedsLeft().map(n -> (l.atMost() ? "<= " : "") + n).orElse(NOTHING);
  }

  private static String toSow(LotData l) {
    if (l.plantsWanted() == 0) {
      return NOTHING;
    }
    return l.seedsToSow().map(String::valueOf).orElse("too many");
  }

  private String growOn(LotData l) {
    int year = data.season().first().getYear();
    return l.growOnBy().map(y -> y <= year ? "now" : "by " + y).orElse(NOTHING);
  }

  private static String percents(GerminationData g) {
    return Math.round(100 * g.usual())
        + " % ("
        + Math.round(100 * g.low())
        + " to "
        + Math.round(100 * g.high())
        + ")";
  }

  private String details(LotData l) {
    StringBuilder out = new StringBuilder();
    out.append('\n').append(ink.strong(Lines.clean(l.name()))).append('\n');
    l.cross()
        .filter(c -> !c.equals(l.line()))
        .ifPresent(c -> out.append(Lines.hung("  ", "Cross: " + c)));
    l.parents().forEach(p -> out.append(Lines.hung("  ", "Saved from " + p + ".")));
    l.isolated().ifPresent(r -> isolated(r, out));
    out.append(Lines.hung("  ", String.join(" ", l.reckoning())));
    l.facts().forEach(f -> out.append(Lines.hung("    - ", cited(f))));
    cares(l).forEach(c -> out.append(Lines.hung("  ", capital(c))));
    l.asides().forEach(a -> out.append(Lines.hung("  ", a.words())));
    return out.toString();
  }

  /** With what the distances rest on, each once. */
  private static void isolated(ReasonData reason, StringBuilder out) {
    out.append(Lines.hung("  ", "Kept from other pollen: " + reason.says() + "."));
    reason.from().stream().distinct().forEach(r -> out.append(Lines.hung("    - ", cited(r))));
  }

  private static String cited(ReasonData reason) {
    return reason.says()
        + reason.place().map(p -> " [" + p.file() + ":" + p.line() + "]").orElse("");
  }

  private static String capital(String sentence) {
    return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
  }

  private static List<String> cares(LotData l) {
    List<String> cares = new ArrayList<>();
    if (l.atMost()) {
      cares.add("some was sown without a count, so less may be left.");
    }
    if (l.plantsWanted() > 0 && l.seedsToSow().isEmpty()) {
      cares.add(
          "hardly any of it comes up: no number of seeds is sure to give the plants wanted. Grow"
              + " another lot, or sow all of it and call each seedling luck.");
    } else if (l.plantsWanted() > 0 && l.asUsual()) {
      cares.add(
          "the seeds to sow are enough if it keeps as usual, and it may come up worse: test some"
              + " first.");
    }
    if (l.remnant().filter(r -> r < 0).isPresent()) {
      cares.add("there is too little for the plants wanted.");
    }
    Optional<Integer> keep = l.keepBack();
    if (keep.isPresent() && l.remnant().filter(r -> r < keep.get()).isPresent()) {
      cares.add("the remnant is less than the " + keep.get() + " to keep back.");
    }
    if (l.identity().equals("doubtful")) {
      cares.add("what it is, is doubtful: " + l.generation().orElse("unknown") + ".");
    } else if (!l.identity().equals("known")) {
      cares.add("what it is, is " + l.identity() + ".");
    }
    l.bitterParent()
        .ifPresent(
            p ->
                cares.add(
                    "destroy it: it is of "
                        + p
                        + ", which tasted bitter. "
                        + Caution.POISON.words()));
    if (l.mayBeBitter() && l.bitterParent().isEmpty()) {
      cares.add("may bear bitter, poisonous fruit. " + Caution.TASTE_FIRST.words());
    }
    if (!l.diseases().isEmpty()) {
      cares.add("may carry " + String.join(", ", l.diseases()) + ".");
    }
    return cares;
  }

  /** A label for each packet, a blank line between two. */
  public String labels() {
    StringBuilder out = new StringBuilder();
    for (LotData l : data.lots()) {
      out.append(out.isEmpty() ? "" : "\n").append(label(l));
    }
    return out.toString();
  }

  private static String label(LotData l) {
    StringBuilder out = new StringBuilder();
    out.append(Lines.clean(l.name())).append('\n');
    String generation = l.generation().map(g -> ", " + g).orElse("");
    out.append(Lines.hung("", l.lineTitle() + " (" + l.crop() + ")" + generation));
    l.cross().filter(c -> !c.equals(l.line())).ifPresent(c -> out.append(Lines.hung("", c)));
    if (l.parents().size() > MOST_PARENTS) {
      out.append("saved from ").append(l.parents().size()).append(" fruits\n");
    } else {
      l.parents().forEach(p -> out.append(Lines.hung("", p)));
    }
    String seeds = l.seedsLeft().map(n -> Lines.count(n, "seed") + " left").orElse("not counted");
    out.append(l.harvested().map(y -> "harvested " + y + ", ").orElse("")).append(seeds);
    out.append('\n');
    l.test()
        .ifPresent(
            t ->
                out.append("germinated ")
                    .append(t.seedlings())
                    .append(" of ")
                    .append(t.seeds())
                    .append(t.year().map(y -> " in " + y).orElse(""))
                    .append('\n'));
    if (!l.identity().equals("known")) {
      out.append("identity ").append(l.identity()).append('\n');
    }
    if (l.bitterParent().isPresent()) {
      out.append(Lines.hung("", Caution.DESTROY_ON_A_LABEL.words()));
    } else if (l.mayBeBitter()) {
      out.append(
          Lines.hung("", "May bear bitter, poisonous fruit. " + Caution.TASTE_FIRST.words()));
    }
    if (!l.diseases().isEmpty()) {
      out.append(Lines.hung("", "may carry " + String.join(", ", l.diseases())));
    }
    return out.toString();
  }
}
