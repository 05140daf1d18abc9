package slipday.output;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slipday.measure.Quantity;
import slipday.output.data.SegregationData;
import slipday.output.data.SegregationData.ClassData;
import slipday.output.data.SegregationData.CountedData;
import slipday.output.data.SegregationData.FurtherData;
import slipday.output.data.SegregationData.TrialData;

/** Counts against ratios, for a terminal. */
public final class SegregationText {
  private static final String CONTRADICTED = "contradicted";

  private final SegregationData data;
  private final Ink ink;

  public SegregationText(SegregationData data, Ink ink) {
    this.data = data;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    data.trait()
        .ifPresent(t -> out.append(ink.strong(Lines.clean("Segregation of " + t))).append("\n\n"));
    for (CountedData counted : data.counted()) {
      out.append(out.isEmpty() || out.toString().endsWith("\n\n") ? "" : "\n");
      out.append(one(counted));
    }
    return out.toString();
  }

  private String one(CountedData c) {
    StringBuilder out = new StringBuilder();
    if (c.of().isPresent()) {
      String lot = c.lot().filter(l -> !l.equals(c.of().get())).map(l -> ", lot " + l).orElse("");
      String title = c.of().get() + " of " + c.season().orElse("") + lot;
      out.append(ink.strong(Lines.clean(title)));
      out.append(": ").append(Lines.count(c.plants(), "plant")).append('\n');
      out.append(classes(c));
    } else {
      List<String> counts = c.classes().stream().map(k -> String.valueOf(k.plants())).toList();
      out.append(ink.strong(String.join(" : ", counts)));
      out.append(", ").append(Lines.count(c.plants(), "plant")).append('\n');
    }
    c.refused().ifPresent(why -> out.append(Lines.hung("  ", why)));
    if (!c.tried().isEmpty()) {
      out.append('\n').append(trials(c.tried()));
    }
    c.remarks().forEach(r -> out.append(Lines.hung("  ", r)));
    if (!c.further().isEmpty()) {
      out.append('\n').append(ink.strong("To part those that stand")).append('\n');
      c.further().forEach(f -> out.append(Lines.hung("  ", further(f))));
    }
    return out.toString();
  }

  private static String classes(CountedData c) {
    Grid grid = new Grid("lrl");
    for (ClassData k : c.classes()) {
      List<String> which = k.which().stream().map(String::valueOf).toList();
      grid.row(
          Lines.clean(k.name().orElse("")),
          String.valueOf(k.plants()),
          which.isEmpty()
              ? ""
              : "plant" + (which.size() > 1 ? "s " : " ") + String.join(", ", which));
    }
    return grid.text("  ");
  }

  /** Those that stand, and the best of each kind that does not. */
  private static String trials(List<TrialData> tried) {
    Grid grid = new Grid("llrrll");
    grid.row("ratio", "expected", "chi-square", "df", "chance", "");
    Set<String> told = new HashSet<>();
    for (TrialData t : tried) {
      boolean fresh = told.add(kind(t));
      if (fresh || !t.verdict().equals(CONTRADICTED)) {
        grid.row(
            t.ratio(),
            expected(t),
            decimals(t.chiSquare(), 2),
            String.valueOf(t.degreesOfFreedom()),
            chance(t),
            verdict(t) + t.genes().map(g -> "; " + t.grown().orElse("") + ": " + g).orElse(""));
      }
    }
    return grid.text("  ");
  }

  /** One ratio whichever way round. */
  private static String kind(TrialData t) {
    String[] parts = t.ratio().split(":", -1);
    Arrays.sort(parts);
    return String.join(":", parts) + t.genes().orElse("");
  }

  private static String expected(TrialData t) {
    List<String> expected = new ArrayList<>();
    t.expected().forEach(e -> expected.add(decimals(e, 1)));
    return String.join(" : ", expected);
  }

  private static String decimals(double number, int places) {
    double step = Math.pow(10, places);
    return Quantity.plain(Math.round(number * step) / step);
  }

  private static String chance(TrialData t) {
    String chance = t.probability() < 0.0001 ? "< 0.0001" : decimals(t.probability(), 4);
    return chance + (t.method().equals("exact") ? " exact" : "");
  }

  private static String verdict(TrialData t) {
    return switch (t.verdict()) {
      case CONTRADICTED -> "contradicts it";
      case "too-few" -> "too few plants to contradict it";
      case "not-judged" -> "not judged";
      default -> "does not contradict it";
    };
  }

  private static String further(FurtherData f) {
    String pair = f.one() + " from " + f.other() + ": ";
    String again =
        f.again()
            .map(n -> Lines.count(n, "plant") + " of the same cross")
            .orElse("no number of plants of the same cross");
    String backcross =
        f.backcrossed()
            .map(
                n ->
                    ", or "
                        + n
                        + " of the F1 crossed back to the recessive parent, which gives "
                        + f.backcrossOne()
                        + " or "
                        + f.backcrossOther())
            .orElse("; a backcross to the recessive parent gives both alike");
    return pair + again + backcross + ".";
  }
}
