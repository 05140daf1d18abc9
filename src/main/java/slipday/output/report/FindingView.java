package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import slipday.finding.Finding;
import slipday.finding.Label;
import slipday.output.report.Words.Part;

/**
 * A finding.
 *
 * @param thing its id in the book of reasons; empty where it has none
 * @param allowed the gardener's reason to let it stand; empty where it is not allowed
 * @param more how many like it are not shown, in words; may be empty
 */
record FindingView(
    String level,
    String sign,
    String rule,
    String thing,
    List<Part> message,
    List<PlaceView> places,
    List<List<Part>> notes,
    List<Part> help,
    String allowed,
    String more) {
  boolean hasNotes() {
    return !notes.isEmpty();
  }

  boolean hasHelp() {
    return !help.isEmpty();
  }

  /**
   * @param line its id on the page; empty where the text is not shown
   * @param label what it has to do with the matter; may be empty
   */
  record PlaceView(String line, String name, String label) {}

  static FindingView of(Finding f, String thing, WhyBook book) {
    List<PlaceView> places = new ArrayList<>();
    f.place().ifPresent(p -> places.add(place(p, book)));
    f.others().forEach(p -> places.add(place(p, book)));
    return new FindingView(
        f.level().word(),
        PlanText.sign(f.level()),
        f.rule(),
        thing,
        Words.parts(f.message()),
        places,
        f.notes().stream().map(Words::parts).toList(),
        Words.parts(f.help()),
        f.allowed().orElse(""),
        "");
  }

  /** The last of several of one rule on one line that are told. */
  FindingView andMore(int others) {
    String more = "And " + others + " more of this kind on the same line; the check tells each.";
    return new FindingView(level, sign, rule, thing, message, places, notes, help, allowed, more);
  }

  private static PlaceView place(Label label, WhyBook book) {
    return new PlaceView(book.line(label.span()), book.label(label.span()), label.text());
  }
}
