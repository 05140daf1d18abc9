package slipday.output;

import java.util.List;
import java.util.stream.Stream;
import slipday.output.data.CandidatesData;

/** A line's candidates as a table: a row for each plant and trait. */
public final class CandidatesTable {
  private CandidatesTable() {}

  public static String of(CandidatesData data) {
    return Tables.table(
        List.of(
            "plant",
            "lot",
            "generation",
            "inbreeding",
            "tags",
            "rank",
            "index",
            "refused",
            "trait",
            "unit",
            "fruits",
            "measured",
            "corrected",
            "value",
            "low",
            "high",
            "accuracy",
            "rank_for_trait"),
        data.candidates().stream().flatMap(c -> rows(data, c)));
  }

  private static Stream<List<Object>> rows(CandidatesData data, CandidatesData.CandidateData c) {
    String tags =
        String.join(
            " ",
            c.fruits().stream()
                .filter(CandidatesData.MarkedFruitData::ofLine)
                .map(CandidatesData.MarkedFruitData::tag)
                .toList());
    return c.figures().stream()
        .map(
            f ->
                List.of(
                    c.name(),
                    c.lot(),
                    c.generation(),
                    c.inbreeding(),
                    tags,
                    c.rank(),
                    c.index(),
                    c.refused(),
                    f.trait(),
                    data.traits().stream()
                        .filter(t -> t.trait().equals(f.trait()))
                        .findFirst()
                        .flatMap(CandidatesData.StudyData::unit),
                    f.fruits(),
                    f.measured(),
                    f.corrected(),
                    f.value(),
                    f.low(),
                    f.high(),
                    f.accuracy(),
                    f.rank()));
  }
}
