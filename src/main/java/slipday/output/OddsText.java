package slipday.output;

import java.util.List;
import org.apache.commons.lang3.ArrayUtils;
import slipday.odds.Rate;
import slipday.output.data.OddsData;
import slipday.output.data.OddsData.DemandData;
import slipday.output.data.OddsData.FixedData;

/** How many, for a terminal: the answer, other demands, the reckoning, the sources. */
public final class OddsText {
  private final OddsData data;
  private final Ink ink;

  public OddsText(OddsData data, Ink ink) {
    this.data = data;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder(Lines.hung("", data.says()));
    if (!data.demands().isEmpty()) {
      out.append('\n').append(demands());
    }
    if (!data.generations().isEmpty()) {
      out.append('\n').append(generations());
    }
    section("Reckoning", data.reckoning(), out);
    section("Next", data.next(), out);
    section("Sources", data.sources(), out);
    return out.toString();
  }

  private String demands() {
    Grid grid = new Grid("lrl");
    grid.row("", data.unit(), "");
    for (DemandData d : data.demands()) {
      grid.row(d.demand(), d.number().map(String::valueOf).orElse("too many"), d.remark());
    }
    return grid.text("  ");
  }

  private String generations() {
    boolean together = data.generations().stream().anyMatch(f -> f.plants() != f.genes());
    Grid grid = new Grid(together ? "lrr" : "lr");
    grid.row(together ? heading("plants fixed at all") : heading());
    for (FixedData f : data.generations()) {
      String name = "F" + f.generation();
      String genes = percent(f.genes());
      grid.row(
          together ? new String[] {name, genes, percent(f.plants())} : new String[] {name, genes});
    }
    return grid.text("  ");
  }

  private static String[] heading(String... more) {
    return ArrayUtils.insert(0, more, "", "genes fixed");
  }

  private static String percent(double share) {
    return Rate.percent(share);
  }

  private void section(String title, List<String> sentences, StringBuilder out) {
    if (!sentences.isEmpty()) {
      out.append('\n').append(ink.strong(title)).append('\n');
      sentences.forEach(s -> out.append(Lines.hung("  ", s)));
    }
  }
}
