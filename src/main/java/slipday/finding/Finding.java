package slipday.finding;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slipday.measure.Reason;
import slipday.source.Span;

/**
 * One thing said about a plan.
 *
 * @param rule the id of what found it, such as {@code too-cold-soil}; never empty
 * @param message one full sentence that names the gardener's own thing in backticks
 * @param place the place it is about; empty only where there is no text to point at (a missing
 *     file)
 * @param others other places that matter, most telling first
 * @param notes the figures and the trade's reasons behind it, a sentence each
 * @param help what would mend it; empty where nothing can be said
 * @param subject what it is about in the model ({@code ropewalk-2023}), for {@code why} and {@code
 *     allow}; may be empty
 * @param allowed the gardener's reason, where an {@code allow} silences this finding
 * @param because the values it rests on, for {@code why} to follow down to their facts
 * @param mends what would mend it, the likeliest first; none where it is allowed
 */
public record Finding(
    String rule,
    Level level,
    String message,
    Optional<Label> place,
    List<Label> others,
    List<String> notes,
    String help,
    String subject,
    Optional<String> allowed,
    List<Reason> because,
    List<Mend> mends) {

  /** By file, place, rule, message: the order of every output. */
  public static final Comparator<Finding> ORDER = Finding::compare;

  public Finding {
    others = List.copyOf(others);
    notes = List.copyOf(notes);
    because = List.copyOf(because);
    mends = List.copyOf(mends);
  }

  /** What has no place comes first. */
  private static int compare(Finding a, Finding b) {
    if (a.place.isPresent() != b.place.isPresent()) {
      return a.place.isEmpty() ? -1 : 1;
    }
    int byPlace = a.place.isEmpty() ? 0 : a.place.get().span().compareTo(b.place.get().span());
    if (byPlace != 0) {
      return byPlace;
    }
    int byRule = a.rule.compareTo(b.rule);
    return byRule != 0 ? byRule : a.message.compareTo(b.message);
  }

  public static Finding error(String rule, Span span, String message) {
    return at(rule, Level.ERROR, span, message);
  }

  public static Finding warning(String rule, Span span, String message) {
    return at(rule, Level.WARNING, span, message);
  }

  public static Finding note(String rule, Span span, String message) {
    return at(rule, Level.NOTE, span, message);
  }

  public static Finding at(String rule, Level level, Span span, String message) {
    return new Finding(
        rule,
        level,
        message,
        Optional.of(new Label(span, "")),
        List.of(),
        List.of(),
        "",
        "",
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** A finding with no text to point at, such as a file that is not there. */
  public static Finding placeless(String rule, Level level, String message) {
    return new Finding(
        rule,
        level,
        message,
        Optional.empty(),
        List.of(),
        List.of(),
        "",
        "",
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** The words on the mark under the place. */
  public Finding labelled(String text) {
    return new Finding(
        rule,
        level,
        message,
        place.map(p -> new Label(p.span(), text)),
        others,
        notes,
        help,
        subject,
        allowed,
        because,
        mends);
  }

  public Finding also(Span span, String text) {
    return new Finding(
        rule,
        level,
        message,
        place,
        append(others, new Label(span, text)),
        notes,
        help,
        subject,
        allowed,
        because,
        mends);
  }

  public Finding withNote(String note) {
    return new Finding(
        rule,
        level,
        message,
        place,
        others,
        append(notes, note),
        help,
        subject,
        allowed,
        because,
        mends);
  }

  public Finding withHelp(String text) {
    return new Finding(
        rule, level, message, place, others, notes, text, subject, allowed, because, mends);
  }

  public Finding about(String thing) {
    return new Finding(
        rule, level, message, place, others, notes, help, thing, allowed, because, mends);
  }

  public Finding allowedBecause(String reason) {
    return new Finding(
        rule,
        level,
        message,
        place,
        others,
        notes,
        help,
        subject,
        Optional.of(reason),
        because,
        List.of());
  }

  /** A value this rests on, with the facts behind it. */
  public Finding because(Reason reason) {
    return new Finding(
        rule,
        level,
        message,
        place,
        others,
        notes,
        help,
        subject,
        allowed,
        append(because, reason),
        mends);
  }

  /** One more mend; dropped where it would edit what ships with the tool. */
  public Finding withMend(Mend mend) {
    return mend.isPossible()
        ? new Finding(
            rule,
            level,
            message,
            place,
            others,
            notes,
            help,
            subject,
            allowed,
            because,
            append(mends, mend))
        : this;
  }

  /** The same, of a text that is past and wants no mending. */
  public Finding withoutMends() {
    return new Finding(
        rule, level, message, place, others, notes, help, subject, allowed, because, List.of());
  }

  /** Another text in the marked place would mend it. */
  public Finding writing(String text) {
    return place.map(p -> withMend(Mend.writing(p.span(), text))).orElse(this);
  }

  /**
   * Help and mend for a marked word that nobody knows: the one that may have been meant.
   *
   * @param otherwise the help where no word is near
   */
  public Finding meant(Optional<String> near, Supplier<String> otherwise) {
    return near.map(word -> withHelp(Nearest.meant(word)).writing(word))
        .orElseGet(() -> withHelp(otherwise.get()));
  }

  /** The same with the nearest of the known words, or else what there is. */
  public Finding nearest(String word, Collection<String> known, String kind) {
    return meant(Nearest.to(word, known), () -> Nearest.listed(word, known, kind));
  }

  /** The same, naming the command that lists all of them where none is like it. */
  public Finding nearest(String word, Collection<String> known, String kind, String command) {
    return meant(Nearest.to(word, known), () -> Nearest.listed(word, known, kind, command));
  }

  private static <T> List<T> append(List<T> list, T last) {
    return java.util.stream.Stream.concat(list.stream(), java.util.stream.Stream.of(last)).toList();
  }
}
