package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import slipday.output.data.SheetData.EntryData;
import slipday.output.data.SheetData.PieceData;

/** Puts together one line of the record with boxes in it; it begins with the box for its date. */
final class SheetLine {
  static final String DATE = "date";
  static final String PLANT = "plant";
  static final String COUNT = "count";
  static final String WEIGHT = "weight";
  static final String FIGURE = "figure";
  static final String WORDS = "words";

  private final List<PieceData> pieces = new ArrayList<>();

  SheetLine() {
    box(DATE);
  }

  SheetLine text(String text) {
    pieces.add(new PieceData(text, "", List.of(), "", ""));
    return this;
  }

  SheetLine box(String what) {
    return box(what, "", "");
  }

  /** A box with what is written around it where it was filled in. */
  SheetLine box(String what, String before, String after) {
    pieces.add(new PieceData("", what, List.of(), before, after));
    return this;
  }

  SheetLine choice(String... words) {
    pieces.add(new PieceData("", "", List.of(words), "", ""));
    return this;
  }

  SheetLine choice(String before, List<String> words) {
    pieces.add(new PieceData("", "", words, before, ""));
    return this;
  }

  EntryData about(String about) {
    return new EntryData(about, pieces);
  }
}
