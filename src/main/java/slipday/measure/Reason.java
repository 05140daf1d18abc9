package slipday.measure;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import slipday.source.Placed;
import slipday.source.Span;

/**
 * Why a value is what it is: a sentence, what it rests on, the line it comes from if there is one,
 * and the reasons beneath it. A tree, so that {@code why} can walk down to facts.
 *
 * <p>Every value has a reason and few are ever asked for it: a sentence that quotes a line is put
 * together when it is first read.
 */
public final class Reason {
  /** None where the sentence is there from the beginning. */
  private final @Nullable Supplier<String> wording;

  private @Nullable String says;
  private final Basis basis;
  private final @Nullable Placed place;
  private final List<Reason> from;

  public Reason(String says, Basis basis, Optional<Span> place, List<Reason> from) {
    this.wording = null;
    this.says = says;
    this.basis = basis;
    this.place = place.orElse(null);
    this.from = List.copyOf(from);
  }

  private Reason(Supplier<String> wording, Basis basis, Placed place) {
    this.wording = wording;
    this.basis = basis;
    this.place = place;
    this.from = List.of();
  }

  /**
   * @param wording gives the same sentence each time
   */
  public static Reason worded(Supplier<String> wording, Basis basis, Span place) {
    return new Reason(wording, basis, place);
  }

  /** What a line of the plan says. */
  public static Reason quoting(Placed place) {
    return new Reason(() -> place.span().plainText(), Basis.PLAN, place);
  }

  public static Reason plan(String says, Span place) {
    return new Reason(says, Basis.PLAN, Optional.of(place), List.of());
  }

  public static Reason fact(String says, Span place) {
    return new Reason(says, Basis.CROP_FACT, Optional.of(place), List.of());
  }

  public static Reason weather(String says) {
    return new Reason(says, Basis.WEATHER, Optional.empty(), List.of());
  }

  /**
   * @param says the method and the publication it is from
   */
  public static Reason method(String says) {
    return new Reason(says, Basis.METHOD, Optional.empty(), List.of());
  }

  public static Reason byDefault(String says) {
    return new Reason(says, Basis.DEFAULT, Optional.empty(), List.of());
  }

  public static Reason derived(String says, List<Reason> from) {
    return new Reason(says, Basis.DERIVED, Optional.empty(), from);
  }

  public static Reason derived(String says, Reason... from) {
    return derived(says, List.of(from));
  }

  public String says() {
    String text = says;
    if (text == null) {
      text = Objects.requireNonNull(wording).get();
      says = text;
    }
    return text;
  }

  public Basis basis() {
    return basis;
  }

  public Optional<Span> place() {
    return Optional.ofNullable(place).map(Placed::span);
  }

  public List<Reason> from() {
    return from;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Reason reason
        && basis == reason.basis
        && place().equals(reason.place())
        && says().equals(reason.says())
        && from.equals(reason.from);
  }

  @Override
  public int hashCode() {
    return Objects.hash(basis, place(), says());
  }

  @Override
  public String toString() {
    return says();
  }
}
