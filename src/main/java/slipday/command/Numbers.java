package slipday.command;

import java.util.Optional;
import slipday.odds.Rate;
import slipday.odds.RateReader;

/** Numbers given on the command line. */
final class Numbers {
  private static final String DIGITS = "\\d{1,9}";

  private Numbers() {}

  /** Ends the command with what is wrong; for places where a value is due. */
  @SuppressWarnings("TypeParameterUnusedInFormals") // It never returns, so it fits every place.
  static <T> T fail(String message, String help) {
    throw new CommandFailure(message, help);
  }

  static Optional<Integer> whole(String text, int least, int most) {
    if (!text.matches(DIGITS)) {
      return Optional.empty();
    }
    int number = Integer.parseInt(text);
    return number < least || number > most ? Optional.empty() : Optional.of(number);
  }

  /** The whole number of an option. */
  static int whole(Args args, String option, int least, int most, int otherwise) {
    if (!args.has(option)) {
      return otherwise;
    }
    String text = args.text(option, "");
    return whole(text, least, most)
        .orElseGet(
            () ->
                fail(
                    option
                        + " takes a whole number from "
                        + least
                        + " to "
                        + most
                        + ", and not `"
                        + text
                        + "`.",
                    ""));
  }

  /** The share of an option, above none and below all. */
  static double share(Args args, String option, double otherwise) {
    return args.has(option) ? certain(args.text(option, ""), option) : otherwise;
  }

  /** A share above none and below all. */
  static double certain(String text, String what) {
    Optional<Double> share =
        RateReader.read(text)
            .value()
            .filter(Rate.Certain.class::isInstance)
            .map(Rate::middle)
            .filter(s -> s < 1);
    return share.orElseGet(
        () ->
            fail(
                what + " is to be a share between none and all, and not `" + text + "`.",
                "For example 95 %, or 19 in 20."));
  }
}
