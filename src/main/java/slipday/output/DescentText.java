package slipday.output;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import slipday.measure.Quantity;
import slipday.output.data.DescentData;
import slipday.output.data.DescentData.AncestorData;
import slipday.output.data.DescentData.OtherData;
import slipday.output.data.DescentData.ParentData;

/** Where a lot, fruit or plant comes from, for people: a tree, and what follows from it. */
public final class DescentText {
  private static final String PARENT = "parent";

  private final DescentData data;
  private final Ink ink;
  private final Map<Integer, AncestorData> byNumber = new HashMap<>();
  private final Set<Integer> drawn = new HashSet<>();

  public DescentText(DescentData data, Ink ink) {
    this.data = data;
    this.ink = ink;
    data.ancestors().forEach(a -> byNumber.put(a.number(), a));
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    AncestorData subject = ancestor(data.subject());
    out.append(ink.strong(Lines.clean("Descent of " + subject.name()))).append('\n');
    draw(subject, "", "", out);
    data.other()
        .ifPresent(
            o -> {
              out.append('\n').append(ink.strong(Lines.clean("and of " + o.name()))).append('\n');
              draw(ancestor(o.number()), "", "", out);
            });
    out.append('\n').append(figures().text(""));
    if (!data.assumed().isEmpty()) {
      out.append('\n').append(ink.strong("Not recorded")).append('\n');
      data.assumed().forEach(sentence -> out.append(Lines.hung("  ", sentence)));
    }
    if (!data.asides().isEmpty()) {
      out.append('\n').append(ink.strong("Noted")).append('\n');
      data.asides().forEach(a -> out.append(Lines.hung("  ", a.words())));
    }
    return out.toString();
  }

  private AncestorData ancestor(int number) {
    return Objects.requireNonNull(byNumber.get(number));
  }

  private void draw(AncestorData a, String indent, String role, StringBuilder out) {
    boolean again = !drawn.add(a.number()) && !a.parents().isEmpty();
    List<String> fruits = List.of(a.origin().split("; "));
    boolean bulk = fruits.size() > 1;
    String how = bulk ? "of " + fruits.size() + " fruits" : a.origin();
    out.append(Lines.hung(indent, role + words(a, how) + (again ? ", as above" : "")));
    if (again) {
      return;
    }
    if (bulk) {
      fruits.forEach(f -> out.append(Lines.hung(indent + "  ", f)));
    }
    for (ParentData parent : bulk ? parentsOfAll(a) : a.parents()) {
      if (parent.number().isEmpty()) {
        out.append(Lines.hung(indent + "  ", role(parent) + "unknown"));
      } else {
        draw(ancestor(parent.number().get()), indent + "  ", role(parent), out);
      }
    }
  }

  /** Of the parents of several fruits each once, whatever it was to which. */
  private static List<ParentData> parentsOfAll(AncestorData a) {
    return a.parents().stream().map(p -> new ParentData(PARENT, p.number())).distinct().toList();
  }

  private static String role(ParentData parent) {
    return switch (parent.role()) {
      case "seed-parent" -> "seed parent: ";
      case "pollen-parent" -> "pollen parent: ";
      case PARENT -> "parent: ";
      default -> "both parents: ";
    };
  }

  private static String words(AncestorData a, String how) {
    StringBuilder out = new StringBuilder(a.name());
    a.generation().ifPresent(g -> out.append(", ").append(g));
    a.lot().filter(l -> !l.equals(a.name())).ifPresent(l -> out.append(", of lot ").append(l));
    a.line()
        .filter(l -> !a.kind().equals("stand-in"))
        .ifPresent(l -> out.append(", line ").append(l));
    return how.isEmpty() ? out.toString() : out + "; " + how;
  }

  private Grid figures() {
    Grid grid = new Grid("ll");
    data.notation().ifPresent(n -> grid.row("cross", n));
    if (data.notation().isEmpty()) {
      grid.row("cross", "several, mixed");
    }
    grid.row("inbreeding", "F = " + figure(data.inbreeding()));
    grid.row(
        "heterozygosity",
        figure(data.heterozygosity()) + " expected, where the founders' base has 1");
    data.sibs().ifPresent(s -> grid.row("two of its plants", "coancestry " + figure(s)));
    data.other().ifPresent(o -> other(o, grid));
    return grid;
  }

  private static void other(OtherData o, Grid grid) {
    o.notation().ifPresent(n -> grid.row("the other's cross", n));
    grid.row("the other's inbreeding", "F = " + figure(o.inbreeding()));
    grid.row(
        "coancestry",
        figure(o.coancestry())
            + (o.cross()
                ? ", which would be the inbreeding of seed of the two"
                : "; the two are of kinds that do not cross"));
  }

  /** Four decimals, which tell eight selfings apart; F and 1 − F come to 1, halves to the even. */
  private static String figure(BigDecimal share) {
    return Quantity.plain(share.doubleValue());
  }
}
