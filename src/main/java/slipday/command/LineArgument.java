package slipday.command;

import java.util.List;
import slipday.finding.Nearest;
import slipday.garden.Garden;
import slipday.garden.Line;

/** The line a command is about. */
final class LineArgument {
  static final String LABEL = "LINE";

  private LineArgument() {}

  /**
   * The line that is named.
   *
   * @throws CommandFailure if there is none of that name
   */
  static Line of(Args args, Garden garden, String plan) {
    String name = args.words(LABEL).get(0);
    List<String> known = garden.lines().stream().map(Line::name).toList();
    return garden.lines().stream()
        .filter(l -> l.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new CommandFailure(
                    "There is no line `" + name + "` in `" + plan + "`.",
                    Nearest.help(
                        name, known, () -> "Its lines are: " + String.join(", ", known) + ".")));
  }
}
