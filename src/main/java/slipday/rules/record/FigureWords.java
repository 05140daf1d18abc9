package slipday.rules.record;

import java.util.List;
import slipday.garden.record.Fruit;
import slipday.measure.Units;
import slipday.rules.Words;

/** How an unlikely figure is told, and what may have been meant. */
record FigureWords(SeenFigure seen, Likely likely, Units units) {
  String says(boolean tooMuch) {
    String name = Words.tick(seen.subject().name());
    String line = Words.tick(seen.stand().lot().line().name());
    String far = tooMuch ? "far more than " : "far less than ";
    return switch (seen.sort()) {
      case WEIGHT -> weight(name, far + "fruit of " + line);
      case SWEETNESS ->
          name
              + " has "
              + seen.text()
              + ", "
              + far
              + "fruit of "
              + line
              + " has; "
              + likely.usual()
              + " brix is usual.";
      case SEEDS ->
          seen.text()
              + " seeds out of "
              + name
              + " are "
              + far
              + "a fruit of "
              + line
              + " holds; "
              + likely.usual()
              + " is usual.";
    };
  }

  private String weight(String name, String farFrom) {
    boolean several = seen.fruits() > 1;
    return (several ? seen.fruits() + " fruits of " + name + " weigh " : name + " weighs ")
        + units.mass(seen.figure())
        + (several ? " each, " : ", ")
        + farFrom
        + " does; "
        + units.masses(likely.usual())
        + " is usual.";
  }

  String help(List<String> meant) {
    boolean weight = seen.sort() == Likely.Sort.WEIGHT;
    return "Look whether a decimal point or "
        + (weight ? "a unit" : "a digit")
        + " slipped"
        + (meant.isEmpty() ? "" : ": " + Words.list(meant) + " would be likely")
        + (weight && seen.fruits() == 1 && !(seen.subject() instanceof Fruit)
            ? ", and tell how many fruits were weighed together"
            : "")
        + ". If it is right, allow it, or say under the line what is usual for it, with `"
        + seen.sort().clause()
        + "`.";
  }
}
