package slipday.genetics.mixed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What measurements are corrected for, as columns: the mean, each level of a factor but the first,
 * each covariate about its mean.
 */
final class FixedEffects {
  private final List<Column> columns = new ArrayList<>();
  private final Map<Column, Integer> places = new HashMap<>();
  private final Map<String, Double> means = new HashMap<>();
  private final Map<String, String> firsts = new HashMap<>();
  private final Design design;

  /**
   * One column.
   *
   * @param factor empty for the mean
   * @param level empty for a covariate
   */
  record Column(String factor, String level) {}

  /** The level of a factor that the others are told beside; empty for a covariate. */
  String first(String factor) {
    return firsts.getOrDefault(factor, "");
  }

  FixedEffects(List<Measurement> measurements) {
    add(new Column("", ""));
    SortedSet<String> factors = new TreeSet<>();
    SortedSet<String> covariates = new TreeSet<>();
    measurements.forEach(m -> factors.addAll(m.factors().keySet()));
    measurements.forEach(m -> covariates.addAll(m.covariates().keySet()));
    for (String factor : factors) {
      SortedSet<String> levels = new TreeSet<>();
      measurements.forEach(m -> levels.add(m.factors().getOrDefault(factor, "")));
      firsts.put(factor, levels.first());
      levels.stream().skip(1).forEach(level -> add(new Column(factor, level)));
    }
    for (String covariate : covariates) {
      add(new Column(covariate, ""));
      means.put(
          covariate,
          measurements.stream()
              .mapToDouble(m -> m.covariates().getOrDefault(covariate, 0.0))
              .average()
              .orElse(0));
    }
    Design.Builder rows = Design.of(columns.size());
    measurements.forEach(m -> row(m, rows));
    design = rows.build();
  }

  private void add(Column column) {
    places.put(column, columns.size());
    columns.add(column);
  }

  private void row(Measurement m, Design.Builder rows) {
    rows.add(0, 1);
    m.factors()
        .forEach(
            (factor, level) -> {
              Integer place = places.get(new Column(factor, level));
              if (place != null) {
                rows.add(place, 1);
              }
            });
    m.covariates()
        .forEach(
            (name, amount) ->
                rows.add(
                    places.getOrDefault(new Column(name, ""), 0),
                    amount - means.getOrDefault(name, 0.0)));
    rows.row();
  }

  Design design() {
    return design;
  }

  List<Column> columns() {
    return columns;
  }

  /** The columns and those of a factor more, to see what the factor adds. */
  static Design with(Design design, int[] levels, int count) {
    Design.Builder rows = Design.of(design.columns() + count);
    for (int row = 0; row < design.rows(); row++) {
      for (int i = design.start(row); i < design.end(row); i++) {
        rows.add(design.column(i), design.share(i));
      }
      rows.add(design.columns() + levels[row], 1).row();
    }
    return rows.build();
  }
}
