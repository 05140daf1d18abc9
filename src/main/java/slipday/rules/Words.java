package slipday.rules;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import slipday.measure.Reason;

/** How rules put figures and names into words. */
public final class Words {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

  private Words() {}

  /** A name as it stands in the plan, in backticks. */
  public static String tick(String name) {
    return "`" + name + "`";
  }

  /** {@code 14 May 2026}. */
  public static String day(LocalDate date) {
    return DAY.format(date);
  }

  /** A share in whole percent, never rounded to none or all: {@code 37 %}. */
  public static String percent(double share) {
    double percent = Math.rint(share * 1e8) / 1e6;
    if (percent > 0 && percent < 1) {
      return "less than 1 %";
    }
    if (percent < 100 && percent > 99) {
      return "more than 99 %";
    }
    return Math.round(percent) + " %";
  }

  /** {@code 1 plant}, {@code 3 plants}. */
  public static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }

  /** {@code `a`, `b` and `c`}. */
  public static String list(List<String> names) {
    List<String> ticked = names.stream().map(Words::tick).toList();
    if (ticked.size() < 2) {
      return String.join("", ticked);
    }
    int last = ticked.size() - 1;
    return ticked.subList(0, last).stream().collect(Collectors.joining(", "))
        + " and "
        + ticked.get(last);
  }

  /** A reason as a note: a capital, a stop, and the line of the plan it stands in. */
  public static String note(Reason reason) {
    String place =
        reason
            .place()
            .filter(p -> !p.source().isBuiltIn())
            .map(p -> " (" + p.lineLabel() + ")")
            .orElse("");
    return sentence(withoutStop(reason.says().strip()) + place);
  }

  private static String withoutStop(String text) {
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  /** With a capital and a stop; nothing stays nothing but the stop. */
  public static String sentence(String text) {
    // By hand, as are digits: most runs need no more of the library that has it ready made.
    StringBuilder sentence = new StringBuilder(text.length() + 1);
    if (!text.isEmpty()) {
      int first = text.codePointAt(0);
      sentence.appendCodePoint(Character.toTitleCase(first));
      sentence.append(text, Character.charCount(first), text.length());
    }
    return text.endsWith(".") ? sentence.toString() : sentence.append('.').toString();
  }
}
