package slipday.language;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import slipday.measure.Quantity;
import slipday.measure.Range;

/** The placeholders of one shape with what filled them, in the order they stood. */
public final class Bound {
  /** Names and values in turn: one array for both, since there can be very many of these. */
  private Object[] cells = new Object[2];

  private int size;
  private boolean mayMeasure;

  void add(String name, Value value) {
    mayMeasure |= value instanceof Value.Amount || value instanceof Value.Between;
    if (2 * size == cells.length) {
      cells = Arrays.copyOf(cells, cells.length * 2);
    }
    cells[2 * size] = name;
    cells[2 * size++ + 1] = value;
  }

  private String name(int at) {
    return (String) cells[2 * at];
  }

  private Value value(int at) {
    return (Value) cells[2 * at + 1];
  }

  /** Whether some figure in it may have a unit; told without a look at the values. */
  boolean mayMeasure() {
    return mayMeasure;
  }

  int size() {
    return size;
  }

  void shrinkTo(int smaller) {
    size = smaller;
  }

  /** The name of each value, in step with {@link #values}. */
  List<String> placeholders() {
    return IntStream.range(0, size).mapToObj(this::name).toList();
  }

  public List<Value> values() {
    return IntStream.range(0, size).mapToObj(this::value).toList();
  }

  private int indexOf(String name) {
    for (int i = 0; i < size; i++) {
      if (name(i).equals(name)) {
        return i;
      }
    }
    return -1;
  }

  public Optional<Value> find(String name) {
    int at = indexOf(name);
    return at < 0 ? Optional.empty() : Optional.of(value(at));
  }

  public boolean has(String name) {
    return indexOf(name) >= 0;
  }

  /** Every value under one name; a repeated part fills its placeholder more than once. */
  public List<Value> all(String name) {
    List<Value> found = new ArrayList<>();
    each(name, found::add);
    return found;
  }

  /** Does something with every value. */
  public void each(Consumer<Value> what) {
    for (int i = 0; i < size; i++) {
      what.accept(value(i));
    }
  }

  /** Does something with every value under one name. */
  public void each(String name, Consumer<Value> what) {
    for (int i = 0; i < size; i++) {
      if (name(i).equals(name)) {
        what.accept(value(i));
      }
    }
  }

  private <T extends Value> T need(String name, Class<T> type) {
    Value value =
        find(name)
            .orElseThrow(
                () -> new NoSuchElementException("no `" + name + "` in " + placeholders()));
    return type.cast(value);
  }

  public Value.Name name(String name) {
    return need(name, Value.Name.class);
  }

  public List<Value.Name> names(String name) {
    return all(name).stream().map(Value.Name.class::cast).toList();
  }

  public String text(String name) {
    return need(name, Value.Text.class).text();
  }

  /** What was told in quotes or without. */
  public String words(String name) {
    Value value = need(name, Value.class);
    return value instanceof Value.Text text ? text.text() : ((Value.Name) value).text();
  }

  public Quantity quantity(String name) {
    return need(name, Value.Amount.class).quantity();
  }

  /** In the base unit of the dimension. */
  public double base(String name) {
    return quantity(name).base();
  }

  /** A difference of temperatures in °C. */
  public double difference(String name) {
    return quantity(name).difference();
  }

  public double number(String name) {
    return need(name, Value.Plain.class).number();
  }

  public int count(String name) {
    return (int) Math.round(number(name));
  }

  /** In the base unit of the dimension. */
  public Range range(String name) {
    return need(name, Value.Between.class).range();
  }

  public Value.Share share(String name) {
    return need(name, Value.Share.class);
  }

  public Range shares(String name) {
    return need(name, Value.Shares.class).range();
  }

  public Value.Day day(String name) {
    return need(name, Value.Day.class);
  }

  public String choice(String name) {
    return need(name, Value.Choice.class).phrase();
  }

  public Value.SeasonName season(String name) {
    return need(name, Value.SeasonName.class);
  }
}
