package slipday.genetics.mixed;

import java.util.List;
import org.ejml.data.DMatrixSparseCSC;

/**
 * Where each effect stands among the equations. First independent effects, then related ones from
 * the youngest to the oldest, last the fixed ones: so a plant is eliminated before its parents, and
 * a pedigree of selfings fills no new place.
 */
final class Layout {
  private static final int LEFT_OUT = -1;

  private final MixedModel model;
  private final int[] starts;
  private final int[] fixedPlaces;
  private int size;

  /**
   * @param taken which random effects are in
   */
  Layout(MixedModel model, boolean[] taken) {
    this.model = model;
    List<MixedModel.Random> random = model.random;
    starts = new int[random.size()];
    java.util.Arrays.fill(starts, LEFT_OUT);
    for (boolean independent : new boolean[] {true, false}) {
      for (int k = 0; k < starts.length; k++) {
        if (taken[k] && random.get(k).covariance().isDiagonal() == independent) {
          starts[k] = size;
          size += random.get(k).covariance().size();
        }
      }
    }
    fixedPlaces = new int[model.fixed.columns()];
    for (int j = 0; j < fixedPlaces.length; j++) {
      fixedPlaces[j] = model.aliased[j] ? LEFT_OUT : size++;
    }
  }

  int size() {
    return size;
  }

  boolean isIn(int effect) {
    return starts[effect] != LEFT_OUT;
  }

  int place(int effect, int level) {
    int levels = model.random.get(effect).covariance().size();
    return starts[effect] + levels - 1 - level;
  }

  /** Below 0 for an effect that is left out. */
  int fixedPlace(int column) {
    return fixedPlaces[column];
  }

  /**
   * The equations times the remainder's variance.
   *
   * @param ratios the remainder's variance over that of each random effect
   */
  DMatrixSparseCSC equations(double[] ratios) {
    SparseSum sum = new SparseSum(size);
    for (int row = 0; row < model.size(); row++) {
      Held held = held(row);
      for (int i = 0; i < held.count; i++) {
        for (int j = i; j < held.count; j++) {
          // Two shares of one effect in a record meet twice, as do two effects in both halves.
          double factor = i != j && held.places[i] == held.places[j] ? 2 : 1;
          sum.add(
              held.places[i],
              held.places[j],
              factor * model.weights[row] * held.shares[i] * held.shares[j]);
        }
      }
    }
    for (int k = 0; k < starts.length; k++) {
      if (isIn(k)) {
        Covariance covariance = model.random.get(k).covariance();
        for (int e = 0; e < covariance.entries(); e++) {
          sum.add(
              place(k, covariance.row(e)),
              place(k, covariance.column(e)),
              ratios[k] * covariance.value(e));
        }
      }
    }
    return sum.upper();
  }

  /** All effects of a record. */
  private static final class Held {
    private final int[] places;
    private final double[] shares;
    private int count;

    Held(int most) {
      places = new int[most];
      shares = new double[most];
    }

    void add(int place, double share) {
      places[count] = place;
      shares[count++] = share;
    }
  }

  private Held held(int row) {
    int most = model.fixed.end(row) - model.fixed.start(row);
    for (MixedModel.Random each : model.random) {
      most += each.design().end(row) - each.design().start(row);
    }
    Held held = new Held(most);
    for (int k = 0; k < starts.length; k++) {
      Design design = model.random.get(k).design();
      for (int i = design.start(row); isIn(k) && i < design.end(row); i++) {
        held.add(place(k, design.column(i)), design.share(i));
      }
    }
    for (int i = model.fixed.start(row); i < model.fixed.end(row); i++) {
      int place = fixedPlaces[model.fixed.column(i)];
      if (place >= 0) {
        held.add(place, model.fixed.share(i));
      }
    }
    return held;
  }

  /** [X Z]′·W·y for any y. */
  double[] right(double[] y) {
    double[] right = new double[size];
    for (int row = 0; row < y.length; row++) {
      Held held = held(row);
      for (int i = 0; i < held.count; i++) {
        right[held.places[i]] += model.weights[row] * held.shares[i] * y[row];
      }
    }
    return right;
  }

  /** y − [X Z]·effects. */
  double[] remainder(double[] y, double[] effects) {
    double[] left = y.clone();
    for (int row = 0; row < y.length; row++) {
      Held held = held(row);
      for (int i = 0; i < held.count; i++) {
        left[row] -= held.shares[i] * effects[held.places[i]];
      }
    }
    return left;
  }
}
