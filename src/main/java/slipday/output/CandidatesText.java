package slipday.output;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.choice.Candidate;
import slipday.choice.Candidates;
import slipday.choice.Correction;
import slipday.choice.Predicted;
import slipday.choice.Trait;
import slipday.garden.record.Mating;
import slipday.measure.Ordinals;
import slipday.measure.Quantity;
import slipday.output.data.AsideData;
import slipday.output.data.CandidatesData;

/**
 * A line's candidates, for people: a table, then each plant in words, then how they were valued.
 */
public final class CandidatesText {
  private static final String NOTHING = "-";

  private final CandidatesData data;
  private final Candidates found;
  private final Ink ink;

  public CandidatesText(CandidatesData data, Candidates found, Ink ink) {
    this.data = data;
    this.found = found;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    String title = "Candidates of " + data.line() + " " + data.grown();
    out.append(ink.strong(Lines.clean(title))).append('\n');
    if (found.candidates().isEmpty()) {
      out.append(
          Lines.hung(
              "",
              "No plant of `"
                  + data.line()
                  + "` has a fruit marked or measured on record: number the plants, tag the flowers"
                  + " you pollinate, and weigh what you pick."));
    } else {
      out.append(table());
      for (int i = 0; i < found.candidates().size(); i++) {
        out.append(plant(found.candidates().get(i), data.candidates().get(i).asides()));
      }
      out.append('\n').append(ink.strong("How they were valued")).append('\n');
      shown().forEach(t -> out.append(study(t)));
      out.append(others());
    }
    if (!found.notes().isEmpty()) {
      out.append('\n').append(ink.strong("To know")).append('\n');
      found.notes().forEach(n -> out.append(Lines.hung("  ", n)));
    }
    return out.toString();
  }

  /** The traits aimed at; all of them where there is no aim. */
  private List<Candidates.Study> shown() {
    List<Candidates.Study> aimed =
        found.traits().stream().filter(t -> t.aim().isPresent()).toList();
    return aimed.isEmpty() ? found.traits() : aimed;
  }

  private String others() {
    List<String> names =
        found.traits().stream()
            .filter(t -> !shown().contains(t))
            .map(t -> t.trait().name())
            .toList();
    return names.isEmpty()
        ? ""
        : Lines.hung("  ", "Measured as well, and not aimed at: " + String.join(", ", names) + ".");
  }

  private String table() {
    List<Candidates.Study> traits = shown();
    Grid grid = new Grid("rll" + "r".repeat(traits.size()) + "r");
    List<String> head = new ArrayList<>(List.of("", "plant", "seed in"));
    traits.forEach(t -> head.add(t.trait().name()));
    head.add("short");
    grid.row(head.toArray(new String[0]));
    for (Candidate c : found.candidates()) {
      List<String> cells = new ArrayList<>();
      cells.add(c.rank().map(String::valueOf).orElse(c.refused().isPresent() ? "no" : NOTHING));
      cells.add(Lines.clean(c.name()));
      cells.add(seed(c));
      traits.forEach(t -> cells.add(cell(c, t)));
      cells.add(c.index().map(CandidatesText::index).orElse(NOTHING));
      grid.row(cells.toArray(new String[0]));
    }
    return grid.text("  ")
        + Lines.hung(
            "  ",
            "A plant's mean, corrected, and after > what its offspring promise. Short: how far that"
                + " is from all aims, "
                + found.counted()
                + ".");
  }

  private static String seed(Candidate c) {
    List<String> tags =
        c.fruits().stream()
            .filter(Candidate.SeedFruit::mayGoOn)
            .map(f -> Lines.clean(f.fruit().tag()))
            .toList();
    return tags.isEmpty() ? NOTHING : String.join(" ", tags);
  }

  private static String cell(Candidate c, Candidates.Study study) {
    Candidate.Figure figure = figure(c, study);
    String mean = figure.corrected().map(study.trait()::number).orElse(NOTHING);
    return mean + figure.predicted().map(p -> " > " + study.trait().number(p.value())).orElse("");
  }

  private static Candidate.Figure figure(Candidate c, Candidates.Study study) {
    return c.figures().stream()
        .filter(f -> f.trait().equals(study.trait()))
        .findFirst()
        .orElseThrow();
  }

  private static String index(double index) {
    return Quantity.fixed(-index, 2);
  }

  private String plant(Candidate c, List<AsideData> noted) {
    StringBuilder out = new StringBuilder("\n");
    String rank =
        c.rank()
            .map(r -> ", " + Ordinals.of(r))
            .orElse(c.refused().isPresent() ? ", no parent" : "");
    String generation = c.generation().map(g -> ", " + g).orElse("");
    out.append(ink.strong(Lines.clean(c.name() + rank + generation))).append('\n');
    c.refused().ifPresent(r -> out.append(Lines.hung("  refused: ", r)));
    if (!c.speaksFor().isEmpty()) {
      out.append(Lines.hung("  for: ", String.join(", ", c.speaksFor())));
    }
    if (!c.speaksAgainst().isEmpty()) {
      out.append(Lines.hung("  against: ", String.join(", ", c.speaksAgainst())));
    }
    boolean ofRefused = c.fruits().stream().anyMatch(f -> f.refused().isPresent());
    if (c.rank().isPresent() || (c.refused().isEmpty() && (c.index().isEmpty() || ofRefused))) {
      for (Candidates.Study study : shown()) {
        Candidate.Figure figure = figure(c, study);
        figure.predicted().ifPresent(p -> out.append(Lines.hung("  ", promise(figure, p))));
      }
      List<Trait> aimed = shown().stream().map(Candidates.Study::trait).toList();
      c.fruits().forEach(f -> out.append(Lines.hung("  ", fruit(f, aimed))));
    }
    noted.forEach(a -> out.append(Lines.hung("  noted: ", a.words())));
    return out.toString();
  }

  /** A plant's figure and what it promises, in one line. */
  public static String promise(Candidate.Figure figure, Predicted p) {
    Trait trait = figure.trait();
    String counted =
        trait.equals(Trait.FRUITS) ? "" : " in " + Lines.count(figure.fruits(), "fruit");
    String raw = figure.raw().map(r -> trait.words(r) + counted).orElse("not measured");
    return String.format(
        Locale.ROOT,
        "%s: %s; promises %s (%s to %s in 4 cases of 5), accuracy %.2f",
        trait.name(),
        raw,
        trait.words(p.value()),
        trait.number(p.low()),
        trait.number(p.high()),
        p.accuracy());
  }

  /**
   * A marked fruit and its seed, in one line.
   *
   * @param traits whose figures are told
   */
  public static String fruit(Candidate.SeedFruit f, List<Trait> traits) {
    StringBuilder out = new StringBuilder(f.fruit().tag());
    out.append(": ").append(f.fruit().mating().words());
    if (f.fruit().mating() != Mating.SELF) {
      out.append(" by ").append(f.fruit().pollenParent());
    }
    f.generation().ifPresent(g -> out.append(", holds ").append(g));
    f.seeds().ifPresent(n -> out.append(", ").append(Lines.count(n, "seed")));
    for (Candidate.Measured m : f.measured()) {
      if (traits.contains(m.trait())) {
        out.append(", ").append(m.trait().words(m.value()));
        out.append(m.trait().scale().isPresent() ? " for " + m.trait().name() : "");
      }
    }
    f.refused().ifPresent(r -> out.append("; refused: ").append(r));
    if (!f.speaksAgainst().isEmpty()) {
      out.append("; ").append(String.join(", ", f.speaksAgainst()));
    }
    return out.toString();
  }

  private static String study(Candidates.Study s) {
    return Lines.hung("  " + s.trait().name() + ": ", String.join(" ", says(s)));
  }

  /** How a trait was valued, a sentence each. */
  public static List<String> says(Candidates.Study s) {
    List<String> says = new ArrayList<>();
    s.aim().ifPresent(a -> says.add("Goal: " + a + "."));
    if (!s.corrected().isEmpty()) {
      says.add("Corrected for " + corrected(s) + ".");
    }
    says.addAll(s.says());
    s.repeatability()
        .ifPresent(
            r ->
                says.add(
                    "Of all differences "
                        + Lines.percent(r.value())
                        + " are between plants, the rest between fruits of one."));
    s.onParent()
        .ifPresent(
            r ->
                says.add(
                    String.format(
                        Locale.ROOT,
                        "A plain check: %d selfed plants on their parents have a slope of %.2f,"
                            + " standard error %.2f.",
                        r.points(),
                        r.slope(),
                        r.error())));
    return says;
  }

  private static String corrected(Candidates.Study s) {
    List<String> parts = new ArrayList<>();
    for (Correction correction : s.corrected().stream().sorted().toList()) {
      Optional<String> effects =
          s.effects().stream()
              .filter(e -> e.of().equals(correction.words()) && correction != Correction.LINE)
              .map(e -> effect(e, s.trait()))
              .reduce((one, next) -> one + ", " + next);
      parts.add(correction.words() + effects.map(e -> " (" + e + ")").orElse(""));
    }
    return String.join(", ", parts);
  }

  private static String effect(Candidates.Effect e, Trait trait) {
    boolean inbreeding = e.of().equals(Correction.INBREEDING.words());
    double told = inbreeding ? e.estimate() / 10 : e.estimate();
    String amount = (told < 0 ? "" : "+") + trait.number(told);
    if (e.level().isEmpty()) {
      return amount + (inbreeding ? " for each tenth of F" : " each");
    }
    return e.level() + " " + amount + (e.beside().isEmpty() ? "" : " beside " + e.beside());
  }
}
