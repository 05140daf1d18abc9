package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.output.Days;
import slipday.output.data.SheetData;
import slipday.output.data.SheetData.EntryData;
import slipday.output.data.SheetData.PieceData;
import slipday.output.report.Template.Raw;

/** The week's page for the clipboard: black lines on white, no fills, for A4 and Letter. */
public final class SheetPage {
  private SheetPage() {}

  /** What the template is filled in with. */
  record View(
      String policy, Raw style, String title, String season, String week, List<PartView> parts) {}

  record PartView(String title, String hint, List<EntryView> entries) {}

  record EntryView(String about, List<PieceView> pieces) {}

  /**
   * @param text words as they stand, those around a box among them
   * @param box what is filled in; empty for words alone
   * @param choices to tick
   */
  record PieceView(String before, String text, String box, String after, List<String> choices) {
    boolean ticks() {
      return !choices.isEmpty();
    }
  }

  /** The page, HTML. */
  public static String html(SheetData data) {
    Raw style = new Raw(Template.read("sheet.css"));
    Days days = new Days(data.season().first(), data.season().last());
    List<PartView> parts = new ArrayList<>();
    data.parts()
        .forEach(
            p ->
                parts.add(
                    new PartView(
                        p.title(), p.hint(), p.entries().stream().map(SheetPage::entry).toList())));
    return Template.fill(
        "sheet.html",
        new View(
            Template.policy(style, Optional.empty()),
            style,
            data.season().title(),
            data.season().label(),
            days.day(data.from()) + " to " + days.day(data.to()),
            parts));
  }

  private static EntryView entry(EntryData entry) {
    return new EntryView(entry.about(), entry.pieces().stream().map(SheetPage::piece).toList());
  }

  private static PieceView piece(PieceData p) {
    return new PieceView(p.before(), p.text(), p.box(), p.after(), p.choices());
  }
}
