package slipday.output.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.choice.Candidates;
import slipday.choice.Chooser;
import slipday.choice.Chosen;
import slipday.choice.Wish;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.SeasonYear;
import slipday.genetics.Answer;

/**
 * Who may be a parent of the next generation, line by line.
 *
 * @param lines those with a goal and with something measured that it aims at
 * @param others what there is to say of lines that are not drawn, a sentence each
 */
record CandidatesSection(List<CandidatesView> lines, List<List<Words.Part>> others) {
  boolean isThere() {
    return !lines.isEmpty();
  }

  static CandidatesSection of(Garden garden, WhyBook book) {
    List<CandidatesView> lines = new ArrayList<>();
    List<List<Words.Part>> others = new ArrayList<>();
    SeasonYear own = garden.season();
    for (Line line : garden.lines()) {
      boolean aims = garden.goals().stream().anyMatch(g -> g.line().name().equals(line.name()));
      if (!aims) {
        continue;
      }
      Answer<Chosen> answer = Chooser.choose(garden, line, Wish.none());
      Optional<Chosen> chosen = answer.value();
      Candidates found =
          chosen.map(Chosen::candidates).orElseGet(() -> Candidates.of(garden, line));
      boolean measured = found.traits().stream().anyMatch(t -> t.aim().isPresent());
      if (measured) {
        String none = answer.refusal().orElse("");
        String season = new SeasonYear(found.year(), own.acrossNewYear(), own.span()).label();
        String prefix = "cp" + lines.size() + "-";
        lines.add(CandidatesView.of(found, season, chosen, none, prefix, book));
      } else if (!found.candidates().isEmpty()) {
        others.add(
            Words.parts(
                "Plants of `"
                    + line.name()
                    + "` have marked fruit, and nothing that its goal aims at is measured yet:"
                    + " weigh, taste and write it down as the fruit is picked."));
      }
    }
    return new CandidatesSection(List.copyOf(lines), List.copyOf(others));
  }
}
