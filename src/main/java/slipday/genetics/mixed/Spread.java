package slipday.genetics.mixed;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slipday.genetics.Pedigree;

/**
 * How much additive variance a sample of plants shows once fixed effects are taken out: tr(M·A)
 * over the degrees of freedom of M.
 *
 * <p>tr(M·A) = Σ a(i, i) − tr((X′X)⁻¹·X′·A·X), so that one product with A for each fixed effect is
 * enough.
 */
final class Spread {
  private final Pedigree pedigree;
  private final List<Measurement> first;
  private final MixedModel model;

  Spread(Pedigree pedigree, List<Measurement> first) {
    this.pedigree = pedigree;
    this.first = first;
    double[] ones = new double[first.size()];
    Arrays.fill(ones, 1);
    this.model = new MixedModel(ones, ones, new FixedEffects(first).design(), List.of());
  }

  double value() {
    int free = first.size() - model.rank();
    if (free == 0) {
      return 0;
    }
    double own = 0;
    for (Measurement each : first) {
      own += 1 + pedigree.inbreeding(each.plant());
    }
    double spread = (own - shared()) / free;
    return spread < 1e-9 ? 0 : spread;
  }

  private double shared() {
    int columns = model.fixed.columns();
    double[][] products = new double[columns][columns];
    double[][] squares = new double[columns][columns];
    boolean[] in = new boolean[columns];
    for (int a = 0; a < columns; a++) {
      in[a] = !model.isAliased(a);
      addProducts(pedigree.relationships(column(a)), products[a]);
    }
    for (int row = 0; row < first.size(); row++) {
      for (int i = model.fixed.start(row); i < model.fixed.end(row); i++) {
        for (int j = model.fixed.start(row); j < model.fixed.end(row); j++) {
          squares[model.fixed.column(i)][model.fixed.column(j)] +=
              model.fixed.share(i) * model.fixed.share(j);
        }
      }
    }
    double[][] inverse = SmallMatrix.inverse(squares, in);
    double trace = 0;
    for (int a = 0; a < columns; a++) {
      for (int b = 0; b < columns; b++) {
        trace += inverse[a][b] * products[b][a];
      }
    }
    return trace;
  }

  /** X′·v. */
  private void addProducts(double[] ofPlants, double[] to) {
    for (int row = 0; row < first.size(); row++) {
      model.fixed.addTransposed(row, ofPlants[first.get(row).plant()], to);
    }
  }

  private Map<Integer, Double> column(int column) {
    Map<Integer, Double> shares = new HashMap<>();
    for (int row = 0; row < first.size(); row++) {
      for (int i = model.fixed.start(row); i < model.fixed.end(row); i++) {
        if (model.fixed.column(i) == column) {
          shares.merge(first.get(row).plant(), model.fixed.share(i), Double::sum);
        }
      }
    }
    return shares;
  }
}
