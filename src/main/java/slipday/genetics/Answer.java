package slipday.genetics;

import java.util.Optional;
import java.util.function.Function;

/** A value, or the reason why there is none: one full sentence in a gardener's words. */
public sealed interface Answer<T> {

  /** There is a value. */
  record Given<T>(T known) implements Answer<T> {}

  /** There is none, and why. */
  record Refused<T>(String why) implements Answer<T> {}

  static <T> Answer<T> of(T value) {
    return new Given<>(value);
  }

  static <T> Answer<T> refused(String why) {
    return new Refused<>(why);
  }

  /** One of two ways on, whichever this is. */
  default <R> R match(
      Function<? super T, ? extends R> given, Function<? super String, ? extends R> refused) {
    if (this instanceof Given<T> there) {
      return given.apply(there.known());
    }
    return refused.apply(((Refused<T>) this).why());
  }

  /** The value, if there is one. */
  default Optional<T> value() {
    return match(Optional::of, why -> Optional.empty());
  }

  /** Why there is none, if so. */
  default Optional<String> refusal() {
    return match(value -> Optional.empty(), Optional::of);
  }

  /** What follows from the value; a refusal stays one. */
  default <R> Answer<R> then(Function<? super T, Answer<R>> next) {
    return match(next, Answer::refused);
  }
}
