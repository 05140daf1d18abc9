package slipday.output.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.record.FruitStory;
import slipday.output.report.Template.Raw;

/**
 * Who may be a parent of the next generation, line by line.
 *
 * @param lines those with a goal and with something measured that it aims at
 * @param others what there is to say of lines that are not drawn, a sentence each
 */
record CandidatesSection(List<CandidatesView> lines, List<List<Words.Part>> others) {
  /** Lines without a goal that are named. */
  private static final int MOST_NAMED = 12;

  /** What a plant can be on a drawing. */
  record Sign(String kind, Raw sign, String words) {}

  boolean isThere() {
    return isDrawn() || !others.isEmpty();
  }

  boolean isDrawn() {
    return !lines.isEmpty();
  }

  List<Sign> signs() {
    return Arrays.stream(Mark.Kind.values())
        .map(k -> new Sign(k.id(), k.sign(), k.words()))
        .toList();
  }

  static CandidatesSection of(Garden garden, Breeding breeding, WhyBook book) {
    List<CandidatesView> lines = new ArrayList<>();
    List<List<Words.Part>> others = new ArrayList<>();
    for (Line line : garden.lines()) {
      breeding
          .of(line.name())
          .ifPresent(
              b -> {
                if (b.candidates().traits().stream().anyMatch(t -> t.aim().isPresent())) {
                  String season = garden.season().label(b.candidates().year());
                  lines.add(CandidatesView.of(b, season, "cp" + lines.size() + "-", book));
                } else if (!b.candidates().candidates().isEmpty()) {
                  others.add(Words.parts(unmeasured(line)));
                }
              });
    }
    goalless(garden, breeding).ifPresent(says -> others.add(Words.parts(says)));
    return new CandidatesSection(List.copyOf(lines), List.copyOf(others));
  }

  private static String unmeasured(Line line) {
    return "Plants of `"
        + line.name()
        + "` have marked fruit, and nothing that its goal aims at is measured yet: weigh, taste and"
        + " write it down as the fruit is picked.";
  }

  /** Lines with marked fruit of this season of which nobody said what is wanted. */
  private static Optional<String> goalless(Garden garden, Breeding breeding) {
    Set<String> marked = new LinkedHashSet<>();
    for (FruitStory story : FruitStory.all(garden.record())) {
      Line line = story.fruit().seedParent().stand().lot().line();
      boolean now = story.fruit().year() == garden.season().year();
      if (now && story.counts() && breeding.of(line.name()).isEmpty()) {
        marked.add("`" + line.name() + "`");
      }
    }
    if (marked.isEmpty()) {
      return Optional.empty();
    }
    int told = marked.size() <= MOST_NAMED + 1 ? marked.size() : MOST_NAMED;
    String names = marked.stream().limit(told).collect(Collectors.joining(", "));
    String more = marked.size() > told ? " and " + (marked.size() - told) + " more" : "";
    return Optional.of(
        "The plan sets no goal for "
            + names
            + more
            + ", so nothing of it is drawn. Write what you want into the plan, as `goal "
            + marked.iterator().next().replace("`", "")
            + "` and under it `raise sweetness to 13 brix` or whatever matters to you; `slipday"
            + " candidates` compares the plants without one.");
  }
}
