package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slipday.choice.Progress;
import slipday.garden.Garden;

/**
 * Lines over their generations.
 *
 * @param lines those of which two generations or more were measured
 * @param single what there is to say of the others; empty where there are none
 */
record GenerationsSection(List<GenerationsView> lines, List<Words.Part> single) {
  boolean isThere() {
    return isDrawn() || hasSingle();
  }

  boolean isDrawn() {
    return !lines.isEmpty();
  }

  boolean hasSingle() {
    return !single.isEmpty();
  }

  static GenerationsSection of(Garden garden, Breeding breeding, WhyBook book) {
    List<GenerationsView> lines = new ArrayList<>();
    List<String> single = new ArrayList<>();
    for (Breeding.OfLine of : breeding.lines().values()) {
      Progress progress = of.progress();
      List<Progress.Trend> aimed =
          progress.traits().stream().filter(t -> t.aim().isPresent()).toList();
      if (aimed.stream().anyMatch(t -> t.stands().size() > 1)) {
        lines.add(
            GenerationsView.of(progress, aimed, garden.season(), "ge" + lines.size() + "-", book));
      } else if (!aimed.isEmpty()) {
        single.add("`" + progress.line().name() + "`");
      }
    }
    return new GenerationsSection(List.copyOf(lines), Words.parts(single(single)));
  }

  private static String single(List<String> names) {
    return names.isEmpty()
        ? ""
        : "One generation only was measured of "
            + names.stream().collect(Collectors.joining(", "))
            + ": keep some of the seed, and grow a few plants of it beside the next, so that gain"
            + " and weather can be told apart.";
  }
}
