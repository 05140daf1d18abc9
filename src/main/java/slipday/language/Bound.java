package slipday.language;

import java.util.ArrayList;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Optional;
import slipday.measure.Quantity;
import slipday.measure.Range;

/** The placeholders of one shape with what filled them, in the order they stood. */
public final class Bound {
  private final List<String> names = new ArrayList<>(4);
  private final List<Value> values = new ArrayList<>(4);

  void add(String name, Value value) {
    names.add(name);
    values.add(value);
  }

  int size() {
    return names.size();
  }

  void shrinkTo(int size) {
    while (names.size() > size) {
      names.remove(names.size() - 1);
      values.remove(values.size() - 1);
    }
  }

  /** The name of each value, in step with {@link #values}. */
  List<String> placeholders() {
    return List.copyOf(names);
  }

  public List<Value> values() {
    return List.copyOf(values);
  }

  public Optional<Value> find(String name) {
    int at = names.indexOf(name);
    return at < 0 ? Optional.empty() : Optional.of(values.get(at));
  }

  public boolean has(String name) {
    return names.contains(name);
  }

  /** Every value under one name; a repeated part fills its placeholder more than once. */
  public List<Value> all(String name) {
    List<Value> found = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).equals(name)) {
        found.add(values.get(i));
      }
    }
    return found;
  }

  private <T extends Value> T need(String name, Class<T> type) {
    Value value =
        find(name).orElseThrow(() -> new NoSuchElementException("no `" + name + "` in " + names));
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
