package slipday.output.report;

import java.util.ArrayList;
import java.util.List;

/** Sentences with a gardener's own names between backticks, as parts. */
final class Words {
  private Words() {}

  /**
   * @param name whether it is a name or other words of the plan's
   */
  record Part(boolean name, String text) {}

  /** The same as markup. */
  static String marked(String sentence) {
    StringBuilder out = new StringBuilder();
    for (Part part : parts(sentence)) {
      String text = Template.escaped(part.text());
      out.append(part.name() ? "<code>" + text + "</code>" : text);
    }
    return out.toString();
  }

  static List<Part> parts(String sentence) {
    List<Part> parts = new ArrayList<>();
    String[] pieces = sentence.split("`", -1);
    for (int i = 0; i < pieces.length; i++) {
      boolean name = i % 2 == 1 && i < pieces.length - 1;
      if (!pieces[i].isEmpty()) {
        parts.add(new Part(name, pieces[i]));
      }
    }
    return parts;
  }
}
