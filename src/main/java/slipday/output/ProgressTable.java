package slipday.output;

import java.util.List;
import slipday.output.data.ProgressData;

/** A line over its generations as a table: a row for each trait, generation and season. */
public final class ProgressTable {
  private ProgressTable() {}

  public static String of(ProgressData data) {
    return Tables.table(
        List.of(
            "trait",
            "unit",
            "generation",
            "season",
            "plants",
            "fruits",
            "mean",
            "deviation",
            "best",
            "best_mean",
            "inbreeding",
            "parents",
            "differential"),
        data.traits().stream()
            .flatMap(
                t ->
                    t.generations().stream()
                        .map(
                            g ->
                                List.of(
                                    t.trait(),
                                    t.unit(),
                                    g.generation(),
                                    g.grown(),
                                    g.plants(),
                                    g.fruits(),
                                    g.mean(),
                                    g.deviation(),
                                    g.best(),
                                    g.bestMean(),
                                    g.inbreeding(),
                                    g.parents(),
                                    g.differential()))));
  }
}
