package slipday.finding;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** What a stage made, and what it has to say. Exceptions are for faults of the program. */
public record Outcome<T>(T value, List<Finding> findings) {
  public Outcome {
    findings = List.copyOf(findings);
  }

  public static <T> Outcome<T> of(T value) {
    return new Outcome<>(value, List.of());
  }

  public <R> Outcome<R> then(Function<? super T, Outcome<R>> stage) {
    Outcome<R> next = stage.apply(value);
    return new Outcome<>(
        next.value, Stream.concat(findings.stream(), next.findings.stream()).toList());
  }

  public boolean hasErrors() {
    return findings.stream().anyMatch(f -> f.level() == Level.ERROR);
  }
}
