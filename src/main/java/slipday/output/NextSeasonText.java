package slipday.output;

import slipday.output.data.NextSeasonData;
import slipday.output.data.NextSeasonData.OpenData;
import slipday.output.data.NextSeasonData.SownData;

/** What the next season's plan has in it, for people. */
public final class NextSeasonText {
  private static final String NOTHING = "-";

  private NextSeasonText() {}

  public static String of(NextSeasonData data, Ink ink) {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong("Season " + data.next() + ", out of " + Lines.clean(data.plan())));
    out.append('\n');
    Grid grid = new Grid("lllrrr");
    grid.row("sown", "in", "as", "plants", "to sow", "stay");
    data.sown().forEach(s -> row(s, grid));
    out.append(grid.text("  "));
    data.file().ifPresent(f -> out.append('\n').append("Written to ").append(f).append(".\n"));
    if (!data.toDecide().isEmpty()) {
      out.append('\n').append(ink.strong("To decide")).append('\n');
      for (OpenData open : data.toDecide()) {
        out.append(Lines.hung("  ", open.message()));
      }
      data.file()
          .ifPresent(
              f ->
                  out.append("Each is marked in it; see ")
                      .append(Shell.command("check", f, ""))
                      .append('\n'));
    }
    return out.toString();
  }

  private static void row(SownData s, Grid grid) {
    grid.row(
        Lines.clean(s.lot()),
        s.bed().map(Lines::clean).orElse(NOTHING),
        s.role().replace('-', ' '),
        s.plants() == 0 ? NOTHING : String.valueOf(s.plants()),
        String.valueOf(s.seedsToSow()),
        s.remnant().map(String::valueOf).orElse(NOTHING));
  }
}
