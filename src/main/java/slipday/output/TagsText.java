package slipday.output;

import slipday.output.data.TagsData;

/** The tags still free, for people: a line for each planting. */
public final class TagsText {
  private final TagsData data;
  private final Ink ink;

  public TagsText(TagsData data, Ink ink) {
    this.data = data;
    this.ink = ink;
  }

  public String text() {
    StringBuilder out = new StringBuilder();
    out.append(ink.strong(Titles.of("Free tags", data.season()))).append('\n');
    if (data.plantings().isEmpty()) {
      return out.append("No planting is pollinated by hand or kept for seed.\n").toString();
    }
    Grid grid = new Grid("ll");
    data.plantings().forEach(p -> grid.row(Lines.clean(p.planting()), String.join(" ", p.tags())));
    return out.append(grid.text("  ")).toString();
  }
}
