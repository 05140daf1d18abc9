package slipday.output;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slipday.choice.Chosen;
import slipday.choice.Trait;
import slipday.measure.Quantity;
import slipday.output.data.ChooseData;
import slipday.output.data.ChooseData.ChoiceData;
import slipday.output.data.ChooseData.KinshipData;
import slipday.output.data.ChooseData.PartData;
import slipday.output.data.ChooseData.RemnantData;
import slipday.output.data.ChooseData.WhatIfData;

/** The choice of parents, for people. */
public final class ChooseText {
  private static final String NOTHING = "-";

  private final ChooseData data;
  private final Chosen chosen;
  private final Optional<Chosen> other;
  private final Ink ink;

  /**
   * @param chosen the choice that is shown
   * @param other the one beside it, if that was asked for
   */
  public ChooseText(ChooseData data, Chosen chosen, Optional<Chosen> other, Ink ink) {
    this.data = data;
    this.chosen = chosen;
    this.other = other;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(
        ink.strong(Lines.clean("Seed of " + data.line() + " " + data.grown() + " to go on")));
    out.append('\n').append(fruits(data.choice()));
    data.choice().fruits().forEach(f -> out.append(why(f)));
    section("The next generation, grown beside this one", next(chosen), out);
    section("What it costs", cost(data.choice()), out);
    section("Kinship", kinship(data.choice().kinship()), out);
    data.choice().release().ifPresent(r -> section("What selfing can still bring", release(), out));
    section("Seed to keep", remnants(data.choice()), out);
    section("To know", sentences(data.choice().notes()), out);
    data.whatIf().ifPresent(w -> section("What if: " + w.says(), whatIf(w), out));
    return out.toString();
  }

  private void section(String title, String body, StringBuilder out) {
    if (!body.isEmpty()) {
      out.append('\n').append(ink.strong(Lines.clean(title))).append('\n').append(body);
    }
  }

  private String fruits(ChoiceData choice) {
    Grid grid = new Grid("llrrrl");
    grid.row("fruit", "of", "plants", "seeds", "short", "lot");
    for (PartData f : choice.fruits()) {
      grid.row(
          Lines.clean(f.tag()),
          Lines.clean(f.parent()),
          String.valueOf(f.plants()),
          f.seeds().map(String::valueOf).orElse(NOTHING),
          f.index().map(i -> two(-i)).orElse(NOTHING),
          f.savedInto().isEmpty() ? "not saved yet" : String.join(", ", f.savedInto()));
    }
    return grid.text("  ")
        + Lines.hung(
            "  ",
            "Plants: how many of the next generation's "
                + choice.plants()
                + " are grown of it. Short: how far its seed is from all aims, "
                + chosen.candidates().counted()
                + ".");
  }

  private static String why(PartData f) {
    List<String> words = new ArrayList<>();
    if (!f.because().isEmpty()) {
      words.add("for: " + String.join(", ", f.because()));
    }
    if (!f.against().isEmpty()) {
      words.add("against: " + String.join(", ", f.against()));
    }
    return words.isEmpty() ? "" : Lines.hung("  " + f.tag() + ": ", String.join("; ", words));
  }

  private static String next(Chosen c) {
    Grid grid = new Grid("lrrrll");
    grid.row("", "now", "expected", "in 4 cases of 5", "", "goal");
    for (Chosen.Promise p : c.promises()) {
      if (p.aim().isPresent()) {
        Trait t = p.trait();
        grid.row(
            t.name(),
            t.number(p.now()),
            t.words(p.next().value()),
            t.number(p.next().low()) + " to " + t.number(p.next().high()),
            p.aimed().orElse(false) ? "meets" : "short of",
            p.aim().get());
      }
    }
    return c.promises().stream().anyMatch(p -> p.aim().isPresent()) ? grid.text("  ") : "";
  }

  private String cost(ChoiceData choice) {
    List<String> says = new ArrayList<>();
    choice
        .limits()
        .forEach(l -> says.add("Kept to: " + l.says() + "; it has " + used(l.used()) + "."));
    if (choice.index().isPresent() && choice.unlimited().isPresent()) {
      double given = choice.unlimited().get() - choice.index().get();
      says.add(
          "It is short by "
              + two(-choice.index().get())
              + "; without limits it would be by "
              + two(-choice.unlimited().get())
              + (given < 0.005 ? ", so nothing is given up." : ": " + gaps() + "."));
      says.add(
          choice.proved()
              ? "No other choice within the limits is better."
              : "The search was cut short: no other choice within the limits is short by less than "
                  + two(-choice.bound().orElse(0.0))
                  + ".");
    }
    return sentences(says);
  }

  /** What the limits cost, trait by trait. */
  private String gaps() {
    List<String> gaps = new ArrayList<>();
    for (Chosen.Promise p : chosen.promises()) {
      if (p.aim().isPresent() && p.unlimited().isPresent()) {
        String free = p.trait().words(p.unlimited().get());
        String kept = p.trait().words(p.next().value());
        if (!free.equals(kept)) {
          gaps.add(p.trait().name() + " " + free + " and not " + kept);
        }
      }
    }
    return gaps.isEmpty() ? "that is given up for them" : String.join(", ", gaps);
  }

  private static String used(double figure) {
    return Quantity.plain(Math.round(figure * 1000) / 1000.0);
  }

  private static String two(double figure) {
    String text = String.format(Locale.ROOT, "%.2f", figure);
    return text.equals("-0.00") ? "0.00" : text;
  }

  private static String kinship(KinshipData k) {
    List<String> says = new ArrayList<>();
    says.add(
        Lines.count(k.seedParents(), "seed parent")
            + ", an effective size of "
            + used(k.effectiveSize())
            + "; mean coancestry "
            + used(k.coancestry())
            + ", so "
            + Lines.percent(1 - k.coancestry())
            + " of the founders' diversity goes on (all that may be parents hold "
            + Lines.percent(1 - k.coancestryOfAll())
            + " together).");
    says.add(
        "Inbreeding: F of those that may be parents is "
            + used(k.inbreedingNow())
            + " on average, the chosen seed's "
            + used(k.inbreedingNext())
            + ".");
    return sentences(says);
  }

  private String release() {
    ChooseData.ReleaseData r = data.choice().release().orElseThrow();
    List<String> says = new ArrayList<>();
    says.add(
        Lines.percent(r.shown())
            + " of what selfing can bring out already differs between these plants. Of what will"
            + " differ between plants of the next generation "
            + Lines.percent(r.within())
            + " lies within families and the rest between them"
            + advice(r.within())
            + ".");
    Grid grid = new Grid("lrrrl");
    grid.row("", "next", "at the end", "best of 100", "");
    for (Chosen.TraitRelease t : chosen.release().orElseThrow().traits()) {
      grid.row(
          t.trait().name(),
          t.trait().number(t.deviation()),
          t.trait().number(t.ceiling()),
          t.trait().words(t.best()),
          t.inReach().map(in -> in ? "the aim lies within" : "the aim lies beyond").orElse(""));
    }
    return sentences(says)
        + grid.text("  ")
        + Lines.hung(
            "  ",
            "Next, at the end: the standard deviation of breeding values within a family, in the"
                + " next generation and among all pure lines that can come of it. Each selfing sets"
                + " half as much free as the one before, and then it stops. Best of 100: how far"
                + " beyond the expected mean the best of a hundred pure lines lies, known without"
                + " error: a ceiling, not a forecast.");
  }

  private static String advice(double within) {
    if (within < 0.25) {
      return ": choose mostly between families";
    }
    return within > 0.5
        ? ": choose mostly within families"
        : ": choose the best families and the best plants in them";
  }

  private static String remnants(ChoiceData choice) {
    List<String> says = new ArrayList<>();
    for (RemnantData r : choice.remnants()) {
      String seeds = r.seeds().map(n -> ", " + Lines.count(n, "seed")).orElse("");
      String lots = r.savedInto().isEmpty() ? "" : " (" + String.join(", ", r.savedInto()) + ")";
      says.add(
          r.tag()
              + lots
              + ", of "
              + r.parent()
              + seeds
              + (r.chosen() ? ": the rest of what is sown" : ": not chosen, in case a family fails")
              + ".");
    }
    return sentences(says);
  }

  private String whatIf(WhatIfData w) {
    List<String> says = new ArrayList<>();
    if (w.came().isEmpty() && w.went().isEmpty()) {
      says.add("The same fruits are chosen.");
    } else {
      says.add(
          (w.came().isEmpty() ? "" : String.join(", ", w.came()) + " would be chosen")
              + (w.came().isEmpty() || w.went().isEmpty() ? "" : " instead of ")
              + (w.went().isEmpty() ? "" : String.join(", ", w.went()))
              + (w.came().isEmpty() ? " would not be chosen" : "")
              + ".");
    }
    ChoiceData before = data.choice();
    String kin = used(w.choice().kinship().coancestry());
    String kinNow = used(before.kinship().coancestry());
    if (w.choice().index().isPresent() && before.index().isPresent()) {
      says.add(
          "It would be short by "
              + two(-w.choice().index().get())
              + " where the choice is by "
              + two(-before.index().get())
              + (kin.equals(kinNow)
                  ? "."
                  : "; mean coancestry " + kin + " and not " + kinNow + "."));
    }
    return sentences(says) + dealt(w) + other.map(this::beside).orElse("");
  }

  /** How the plants would be dealt out, and how they are. */
  private String dealt(WhatIfData w) {
    Map<String, Integer> now = new HashMap<>();
    data.choice().fruits().forEach(f -> now.put(f.tag(), f.plants()));
    Grid grid = new Grid("llrr");
    grid.row("fruit", "of", "plants", "as chosen");
    for (PartData f : w.choice().fruits()) {
      Integer before = now.remove(f.tag());
      grid.row(
          Lines.clean(f.tag()),
          Lines.clean(f.parent()),
          String.valueOf(f.plants()),
          before == null ? NOTHING : before.toString());
    }
    for (PartData f : data.choice().fruits()) {
      if (now.containsKey(f.tag())) {
        grid.row(
            Lines.clean(f.tag()), Lines.clean(f.parent()), NOTHING, String.valueOf(f.plants()));
      }
    }
    return grid.text("  ");
  }

  /** What would be expected, and what is of the choice. */
  private String beside(Chosen then) {
    Map<String, Chosen.Promise> now = new HashMap<>();
    chosen.promises().forEach(p -> now.put(p.trait().name(), p));
    Grid grid = new Grid("lrrll");
    grid.row("", "expected", "as chosen", "", "goal");
    for (Chosen.Promise p : then.promises()) {
      Chosen.Promise before = now.get(p.trait().name());
      if (p.aim().isPresent()) {
        grid.row(
            p.trait().name(),
            p.trait().words(p.next().value()),
            before == null ? NOTHING : p.trait().words(before.next().value()),
            p.aimed().orElse(false) ? "meets" : "short of",
            p.aim().get());
      }
    }
    return then.promises().stream().anyMatch(p -> p.aim().isPresent()) ? grid.text("  ") : "";
  }

  private static String sentences(List<String> says) {
    StringBuilder out = new StringBuilder();
    says.forEach(s -> out.append(Lines.hung("  ", s)));
    return out.toString();
  }
}
