package slipday.measure;

import java.util.function.Function;

/** A value with its reason. */
public record Reasoned<T>(T value, Reason reason) {
  public <R> Reasoned<R> map(Function<? super T, ? extends R> f) {
    return new Reasoned<>(f.apply(value), reason);
  }
}
