package slipday.output;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slipday.choice.Progress;
import slipday.choice.Trait;
import slipday.measure.Quantity;
import slipday.output.data.ProgressData;

/** A line over its generations, for people: a table for each trait, and what was gained. */
public final class ProgressText {
  private static final String NOTHING = "-";

  private final ProgressData data;
  private final Progress found;
  private final Ink ink;

  public ProgressText(ProgressData data, Progress found, Ink ink) {
    this.data = data;
    this.found = found;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Lines.clean("Progress of " + data.line()))).append('\n');
    if (found.traits().isEmpty()) {
      return out.append(
              Lines.hung(
                  "",
                  "No plant of `"
                      + data.line()
                      + "` was measured on record: number the plants, and weigh and taste what you"
                      + " pick of each."))
          .toString();
    }
    List<Progress.Trend> shown = shown();
    for (Progress.Trend trend : shown) {
      out.append('\n').append(trait(trend, data.traits().get(found.traits().indexOf(trend))));
    }
    List<String> others =
        found.traits().stream().filter(t -> !shown.contains(t)).map(t -> t.trait().name()).toList();
    if (!others.isEmpty()) {
      String names = String.join(", ", others);
      out.append('\n').append(Lines.hung("", "Measured as well, and not aimed at: " + names + "."));
    }
    if (!found.notes().isEmpty()) {
      out.append('\n').append(ink.strong("To know")).append('\n');
      found.notes().forEach(n -> out.append(Lines.hung("  ", n)));
    }
    return out.toString();
  }

  /** The traits aimed at; all of them where there is no aim. */
  private List<Progress.Trend> shown() {
    List<Progress.Trend> aimed = found.traits().stream().filter(t -> t.aim().isPresent()).toList();
    return aimed.isEmpty() ? found.traits() : aimed;
  }

  private String trait(Progress.Trend trend, ProgressData.TrendData named) {
    String aim = trend.aim().map(a -> ": " + a).orElse("");
    StringBuilder out = new StringBuilder(ink.strong(trend.trait().name() + aim));
    out.append('\n');
    Grid grid = new Grid("llrrrrlrrr");
    grid.row(
        "generation",
        "season",
        "plants",
        "fruits",
        "mean",
        "spread",
        "best",
        "F",
        "parents",
        "chosen by");
    for (int i = 0; i < trend.stands().size(); i++) {
      grid.row(row(trend.stands().get(i), named.generations().get(i).grown(), trend.trait()));
    }
    out.append(grid.text("  "));
    trend.steps().forEach(s -> out.append(Lines.hung("  ", step(s, trend.trait()))));
    trend.whole().ifPresent(s -> out.append(Lines.hung("  ", step(s, trend.trait()))));
    return out.toString();
  }

  private static String[] row(Progress.Grown g, String season, Trait trait) {
    return new String[] {
      Lines.clean(g.generation()),
      season,
      String.valueOf(g.plants()),
      String.valueOf(g.fruits()),
      trait.number(g.mean()),
      g.deviation().map(trait::number).orElse(NOTHING),
      Lines.clean(trait.number(g.bestMean()) + " " + g.best()),
      Quantity.fixed(g.inbreeding(), 2),
      g.parents() == 0 ? NOTHING : String.valueOf(g.parents()),
      g.differential().map(d -> signed(d, trait)).orElse(NOTHING)
    };
  }

  /** With a sign, but for nothing. */
  public static String signed(double figure, Trait trait) {
    String number = trait.number(figure);
    return number.startsWith("-") || isNothing(number) ? number : "+" + number;
  }

  private static boolean isNothing(String number) {
    return number.chars().allMatch(c -> c == '0' || c == '.');
  }

  private static String predicted(Progress.Gain gain, Trait trait) {
    return " By breeding values, told by the traits that go together with it as well: "
        + signed(gain.value(), trait)
        + trait.unit().map(u -> " " + u.word()).orElse("")
        + ", standard error "
        + trait.number(gain.error())
        + ".";
  }

  /** What was gained from one generation to another, or why that can't be told. */
  public static String step(Progress.Step s, Trait trait) {
    String what = s.from() + " to " + s.to() + ": ";
    if (s.gain().isEmpty()) {
      return what + s.by() + ".";
    }
    Progress.Gain gain = s.gain().get();
    String unit = trait.unit().map(u -> " " + u.word()).orElse("");
    Optional<String> realised =
        s.realised()
            .map(
                r ->
                    String.format(
                        Locale.ROOT,
                        " Of what the parents had more, that is %.2f: the realised heritability,"
                            + " standard error %.2f%s.",
                        r.value(),
                        r.error(),
                        r.value() < 0 ? "; below 0 means that none was shown" : ""));
    return what
        + signed(gain.value(), trait)
        + unit
        + ", standard error "
        + trait.number(gain.error())
        + ", "
        + s.by()
        + "."
        + s.predicted().map(p -> predicted(p, trait)).orElse("")
        + realised.orElse("");
  }
}
