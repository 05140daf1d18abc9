package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.caution.Caution;
import slipday.output.Lines;
import slipday.output.data.LabelsData;
import slipday.output.data.LabelsData.LabelData;
import slipday.output.report.Template.Raw;

/** Labels on sheets, ready to print. */
public final class LabelPage {
  private LabelPage() {}

  /** What the template is filled in with. */
  record View(
      String policy,
      Raw style,
      String title,
      String season,
      String about,
      boolean cut,
      List<SheetView> sheets) {}

  record SheetView(List<LabelView> labels) {}

  /**
   * @param kind for the style; {@code used} for a place left blank
   * @param fit how small its words have to be for all of them to have room
   * @param check the check character; empty where there is none
   * @param caution what may hurt someone; empty where nothing does
   * @param title of the line, as much of it as has room
   * @param lines what stands on it, most telling first
   * @param fields what is to be filled in by hand
   */
  record LabelView(
      String kind,
      String fit,
      String name,
      String check,
      String caution,
      String title,
      List<String> lines,
      List<String> fields,
      Raw code) {}

  /**
   * The page, HTML.
   *
   * @param used labels already gone from the first sheet
   */
  public static String html(LabelsData data, LabelSheet sheet, int used) {
    Raw style = new Raw(Template.read("labels.css") + sheet.style());
    String about =
        Lines.count(data.labels().size(), "label")
            + " of "
            + Svg.number(sheet.width())
            + " × "
            + Svg.number(sheet.height())
            + " mm, "
            + sheet.labels()
            + " on a sheet.";
    return Template.fill(
        "labels.html",
        new View(
            Template.policy(style, Optional.empty()),
            style,
            data.season().title(),
            data.season().label(),
            about,
            sheet.cut(),
            sheets(data.labels(), sheet, used)));
  }

  private static List<SheetView> sheets(List<LabelData> labels, LabelSheet sheet, int used) {
    List<LabelView> all = new ArrayList<>();
    for (int i = 0; i < used; i++) {
      all.add(new LabelView("used", "", "", "", "", "", List.of(), List.of(), new Raw("")));
    }
    labels.forEach(label -> all.add(view(label, sheet)));
    List<SheetView> sheets = new ArrayList<>();
    for (int from = 0; from < all.size(); from += sheet.labels()) {
      sheets.add(new SheetView(all.subList(from, Math.min(all.size(), from + sheet.labels()))));
    }
    return sheets;
  }

  /** The labels whose name and caution may not have room on such a sheet, by what they say. */
  public static List<String> tooLong(LabelsData data, LabelSheet sheet) {
    return data.labels().stream()
        .filter(label -> !LabelFit.of(sheet, content(label)).whole())
        .map(LabelData::name)
        .toList();
  }

  private static LabelView view(LabelData label, LabelSheet sheet) {
    LabelFit.Content content = content(label);
    LabelFit fit = LabelFit.of(sheet, content);
    return new LabelView(
        label.kind(),
        fit.size(),
        label.name(),
        content.name().substring(label.name().length()),
        content.caution(),
        fit.title(),
        fit.lines(),
        content.fields(),
        new Raw(QrCode.of(label.code()).toString()));
  }

  private static LabelFit.Content content(LabelData label) {
    boolean packet = label.kind().equals("packet");
    boolean free = label.kind().equals("free");
    return new LabelFit.Content(
        label.name() + check(label),
        packet,
        caution(label),
        label.lineTitle(),
        lines(label, packet, free),
        free ? List.of("plant", "by", "date") : List.of());
  }

  private static String caution(LabelData label) {
    return label.bitter()
        ? Caution.DESTROY_ON_A_LABEL.words()
        : label.mayBeBitter() ? Caution.ON_A_LABEL.words() : "";
  }

  private static String check(LabelData label) {
    boolean checked =
        label.code().length() == label.name().length() + 1
            && label.code().regionMatches(true, 0, label.name(), 0, label.name().length());
    return checked ? label.code().substring(label.name().length()) : "";
  }

  private static List<String> lines(LabelData label, boolean packet, boolean free) {
    List<String> lines = new ArrayList<>();
    if (packet && label.doubtful()) {
      lines.add("identity in doubt");
    }
    label.generation().ifPresent(g -> lines.add("seed " + g + (label.doubtful() ? " ?" : "")));
    if (!label.cross().isEmpty() && !label.cross().equals(label.line())) {
      lines.add(label.cross());
    }
    label.date().ifPresent(d -> lines.add("pollinated " + d));
    List<String> harvest = new ArrayList<>();
    label.harvested().ifPresent(y -> harvest.add("harvested " + y));
    label.seeds().ifPresent(n -> harvest.add(Lines.count(n, "seed")));
    if (!harvest.isEmpty()) {
      lines.add(String.join(", ", harvest));
    }
    if (free) {
      lines.add(label.planting());
    }
    return lines;
  }
}
