package slipday.genetics.mixed;

import java.util.Arrays;

/** Which effects each record holds, and how much of each: a sparse matrix, a row a record. */
public final class Design {
  private final int columns;
  private final int[] starts;
  private final int[] column;
  private final double[] share;

  private Design(Builder made) {
    columns = made.columns;
    starts = Arrays.copyOf(made.starts, made.rows + 1);
    column = Arrays.copyOf(made.column, made.filled());
    share = Arrays.copyOf(made.share, made.filled());
  }

  /**
   * @param columns how many effects there are
   */
  public static Builder of(int columns) {
    return new Builder(columns);
  }

  public int rows() {
    return starts.length - 1;
  }

  public int columns() {
    return columns;
  }

  int start(int row) {
    return starts[row];
  }

  int end(int row) {
    return starts[row + 1];
  }

  int column(int place) {
    return column[place];
  }

  double share(int place) {
    return share[place];
  }

  /** What a record holds of given effects. */
  double times(int row, double[] effects) {
    double sum = 0;
    for (int i = start(row); i < end(row); i++) {
      sum += share[i] * effects[column[i]];
    }
    return sum;
  }

  /** Adds what a record gives to each effect it holds. */
  void addTransposed(int row, double value, double[] to) {
    for (int i = start(row); i < end(row); i++) {
      to[column[i]] += share[i] * value;
    }
  }

  /** Gathers rows in order. */
  public static final class Builder {
    private static final int FIRST = 64;

    private final int columns;
    private int rows;
    private int[] starts = new int[FIRST];
    private int[] column = new int[FIRST];
    private double[] share = new double[FIRST];

    private Builder(int columns) {
      this.columns = columns;
    }

    private int filled() {
      return starts[rows];
    }

    /** Something of an effect, in the row that is next closed. */
    public Builder add(int effect, double of) {
      if (effect < 0 || effect >= columns || !Double.isFinite(of)) {
        throw new IllegalArgumentException(of + " of effect " + effect + " of " + columns);
      }
      int at = filled();
      if (at == column.length) {
        column = Arrays.copyOf(column, 2 * at);
        share = Arrays.copyOf(share, 2 * at);
      }
      column[at] = effect;
      share[at] = of;
      starts[rows]++;
      return this;
    }

    /** Closes a record's row. */
    public Builder row() {
      if (rows + 2 > starts.length) {
        starts = Arrays.copyOf(starts, 2 * starts.length);
      }
      starts[rows + 1] = starts[rows];
      rows++;
      return this;
    }

    public Design build() {
      // The last start is where the next row would begin; each row's own is that of the one before.
      int[] shifted = new int[rows + 1];
      System.arraycopy(starts, 0, shifted, 1, rows);
      starts = shifted;
      return new Design(this);
    }
  }
}
