package slipday.odds;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipday.genetics.Answer;
import slipday.measure.Quantity;

/**
 * Reads a rate as it is asked: {@code 1 in 16}, {@code 1/16}, {@code 85 %}, {@code 0.85}; {@code 44
 * of 50}; or a ratio with the part that is wanted first, {@code 1:3}.
 */
public final class RateReader {
  private static final String NUMBER = "(\\d{1,7}(?:\\.\\d{1,9})?)";
  private static final Pattern ONE_IN = Pattern.compile(NUMBER + "\\s*(?:in|/)\\s*" + NUMBER);
  private static final Pattern COUNTS = Pattern.compile("(\\d{1,7})\\s*of\\s*(\\d{1,7})");
  private static final Pattern PERCENT = Pattern.compile(NUMBER + "\\s*%");
  private static final Pattern PLAIN = Pattern.compile("(0?\\.\\d{1,9})");
  private static final Pattern RATIO = Pattern.compile("\\d{1,7}(?:\\s*:\\s*\\d{1,7})+");

  private RateReader() {}

  /** The rate, or why it is none. */
  public static Answer<Rate> read(String text) {
    String asked = text.strip().replaceAll("\\s+", " ");
    Matcher counts = COUNTS.matcher(asked);
    if (counts.matches()) {
      return counted(Integer.parseInt(counts.group(1)), Integer.parseInt(counts.group(2)), asked);
    }
    Matcher oneIn = ONE_IN.matcher(asked);
    if (oneIn.matches()) {
      return share(number(oneIn, 1), number(oneIn, 2), asked);
    }
    Matcher percent = PERCENT.matcher(asked);
    if (percent.matches()) {
      return share(number(percent, 1), 100, asked);
    }
    Matcher plain = PLAIN.matcher(asked);
    if (plain.matches()) {
      return share(number(plain, 1), 1, asked);
    }
    if (RATIO.matcher(asked).matches()) {
      double all = 0;
      for (String part : asked.split(":", -1)) {
        all += Double.parseDouble(part.strip());
      }
      return share(Double.parseDouble(asked.substring(0, asked.indexOf(':'))), all, asked);
    }
    return Answer.refused(
        "`"
            + asked
            + "` is not a share such as 1 in 16, 85 %, 44 of 50 or 1:3, of 7 digits at most.");
  }

  private static double number(Matcher matcher, int group) {
    return Double.parseDouble(matcher.group(group));
  }

  private static Answer<Rate> share(double part, double of, String asked) {
    if (part == 0 || of == 0) {
      return Answer.refused("`" + asked + "` never comes out.");
    }
    if (part > of) {
      return Answer.refused("`" + asked + "` is more than all.");
    }
    String figure = Quantity.plain(part / of);
    boolean told = asked.equals(figure) || asked.endsWith("%") || figure.equals("0");
    String words = told ? asked.replaceAll("\\s*%", " %") : asked + " (" + figure + ")";
    return Answer.of(new Rate.Certain(part / of, words));
  }

  private static Answer<Rate> counted(int hits, int of, String asked) {
    if (of == 0) {
      return Answer.refused("`" + asked + "` counts nothing.");
    }
    return hits > of
        ? Answer.refused("`" + asked + "` is more than all.")
        : Answer.of(new Rate.Counted(hits, of));
  }
}
