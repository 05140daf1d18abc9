package slipday.output.calendar;

import java.util.ArrayList;
import java.util.List;

/**
 * What stands in a component of a calendar file, between its BEGIN and END.
 *
 * @param own its properties
 * @param within the components in it, each with its lines from BEGIN to END
 */
record Body(List<String> own, List<List<String>> within) {
  Body {
    own = List.copyOf(own);
    within = List.copyOf(within);
  }

  /**
   * @param lines a component's content lines unfolded, from BEGIN to END
   */
  static Body of(List<String> lines) {
    List<String> own = new ArrayList<>();
    List<List<String>> within = new ArrayList<>();
    int depth = 0;
    int begun = 0;
    for (int i = 0; i < lines.size(); i++) {
      String name = ContentLines.name(lines.get(i));
      if (name.equals("BEGIN")) {
        depth++;
        begun = depth == 2 ? i : begun;
      } else if (name.equals("END")) {
        depth--;
        if (depth == 1) {
          within.add(List.copyOf(lines.subList(begun, i + 1)));
        }
      } else if (depth == 1) {
        own.add(lines.get(i));
      }
    }
    return new Body(own, within);
  }
}
