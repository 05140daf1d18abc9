package slipday.command;

import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slipday.app.Checked;
import slipday.garden.Garden;
import slipday.output.Json;
import slipday.output.Lines;
import slipday.output.Tables;
import slipday.output.data.LabelsData;
import slipday.output.report.LabelPage;
import slipday.output.report.LabelSheet;
import slipday.season.Season;
import slipday.seed.SeedBox;
import slipday.seed.SeedLot;

final class LabelsCommand {
  private static final String FRUIT = "fruit";
  private static final String SEED = "seed";
  private static final String FREE = "free";
  private static final List<String> PLAIN = List.of("a4-cut", "letter-cut");
  private static final Pattern SIZE =
      Pattern.compile("(\\d{1,3}(?:\\.\\d{1,2})?)\\s?x\\s?(\\d{1,3}(?:\\.\\d{1,2})?)");

  private final Args args;
  private final Streams streams;

  private LabelsCommand(Args args, Streams streams) {
    this.args = args;
    this.streams = streams;
  }

  static Spec spec(Streams streams) {
    return Spec.of(
            "Makes labels: tags for fruit, packets for seed, with QR codes.",
            "Of every marked fruit whose seed is not yet taken, and of every lot there is",
            "seed left of: tag or lot, line, cross, date, and the generation of the seed.",
            "The QR code (ISO/IEC 18004) says the tag with its check character, or the lot.")
        .plan()
        .option(PageOutput.OPTION, "FILE", PageOutput.SAYS)
        .choice(
            "--only",
            "WHAT",
            List.of(FRUIT, SEED, FREE),
            "fruit, seed or free: tags to be given out.")
        .option("--free", "N", "So many tags yet to be given out for each planting too.")
        .choice(
            "--sheet",
            "SHEET",
            Stream.concat(LabelSheet.READY.stream().map(LabelSheet::id), PLAIN.stream()).toList(),
            "a4-21 (63.5 x 38.1 mm), a4-65 (38.1 x 21.2 mm), letter-30 (66.7 x 25.4 mm), or "
                + "plain paper to cut: a4-cut, letter-cut. a4-21 if none is named.")
        .option("--size", "WxH", "The size of labels to cut, in mm; 60x30 if none is named.")
        .option("--used", "N", "Labels already gone from the first sheet.")
        .forms("html, json or csv.", Form.HTML, Form.JSON, Form.CSV)
        .examples(
            "slipday labels plan.season -o labels.html",
            "slipday labels plan.season --only free --free 8 -o tags.html",
            "slipday labels plan.season --only seed --sheet letter-30 --used 4 -o seed.html",
            "slipday labels plan.season --sheet a4-cut --size 50x25 -o labels.html")
        .runs(args -> new LabelsCommand(args, streams).run());
  }

  private int run() {
    Form form = args.form(Form.HTML);
    LabelSheet sheet = sheet();
    int used = Numbers.whole(args, "--used", 0, sheet.labels() - 1, 0);
    int usual = args.choice("--only").filter(FREE::equals).isPresent() ? 6 : 0;
    int free = Numbers.whole(args, "--free", 1, 999, usual);
    PlanInput plan = new PlanInput(args, streams);
    Checked checked = plan.read();
    if (checked.season().isEmpty()) {
      return plan.tellErrors(checked);
    }
    Season season = checked.season().get();
    Garden garden = season.garden();
    List<SeedLot> lots =
        wants(SEED) ? SeedBox.lots(garden, OptionalInt.empty()) : List.<SeedLot>of();
    LabelsData data = LabelsData.of(plan.name(), season, lots, wants(FRUIT), free);
    new PageOutput(args, streams, plan)
        .write(
            switch (form) {
              case JSON -> Json.text(data);
              case CSV -> Tables.of(data);
              default -> LabelPage.html(data, sheet, used);
            });
    if (form == Form.HTML) {
      tellTooLong(LabelPage.tooLong(data, sheet));
    }
    return plan.tellErrors(checked);
  }

  private void tellTooLong(List<String> names) {
    if (!names.isEmpty()) {
      streams
          .err()
          .print(
              "Name and caution may not have room on the "
                  + (names.size() == 1 ? "label" : "labels")
                  + " of `"
                  + Lines.clean(String.join("`, `", names))
                  + "`: take larger labels, or write on them by hand what is cut off.\n");
    }
  }

  /** Fruit and seed, unless only one of them is asked for. */
  private boolean wants(String what) {
    return args.choice("--only").map(what::equals).orElse(true);
  }

  private LabelSheet sheet() {
    String id = args.choice("--sheet").orElse(args.has("--size") ? PLAIN.get(0) : "a4-21");
    if (LabelSheet.named(id).isPresent() && args.has("--size")) {
      throw new CommandFailure(
          "Labels of `" + id + "` have a size already.",
          "Leave --size off, or cut: --sheet a4-cut.");
    }
    return LabelSheet.named(id).orElseGet(() -> cut(id));
  }

  private LabelSheet cut(String id) {
    String size = args.text("--size", "60x30");
    Matcher sides = SIZE.matcher(size);
    if (!sides.matches()) {
      throw new CommandFailure(
          "--size takes width and height in mm, and not `" + size + "`.",
          "For example --size 60x30.");
    }
    double width = Double.parseDouble(sides.group(1));
    double height = Double.parseDouble(sides.group(2));
    String least =
        "A label is at least "
            + (int) LabelSheet.LEAST_WIDTH
            + " x "
            + (int) LabelSheet.LEAST_HEIGHT
            + " mm, and fits on the page.";
    if (width < LabelSheet.LEAST_WIDTH || height < LabelSheet.LEAST_HEIGHT) {
      throw new CommandFailure("Nothing can be read on a label of " + size + " mm.", least);
    }
    return LabelSheet.plain(id.startsWith("letter"), width, height)
        .orElseThrow(
            () -> new CommandFailure("No label of " + size + " mm fits on the page.", least));
  }
}
