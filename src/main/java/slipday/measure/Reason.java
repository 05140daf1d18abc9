package slipday.measure;

import java.util.List;
import java.util.Optional;
import slipday.source.Span;

/**
 * Why a value is what it is: a sentence, what it rests on, the line it comes from if there is one,
 * and the reasons beneath it. A tree, so that {@code why} can walk down to facts.
 */
public record Reason(String says, Basis basis, Optional<Span> place, List<Reason> from) {
  public Reason {
    from = List.copyOf(from);
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
}
