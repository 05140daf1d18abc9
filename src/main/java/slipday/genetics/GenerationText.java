package slipday.genetics;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import slipday.genetics.Generation.Bulk;
import slipday.genetics.Generation.Probable;
import slipday.genetics.Generation.SelfOrCross;
import slipday.genetics.PlainGeneration.Backcross;
import slipday.genetics.PlainGeneration.Filial;
import slipday.genetics.PlainGeneration.Inbred;
import slipday.genetics.PlainGeneration.OpenPollinated;
import slipday.genetics.PlainGeneration.Origin;
import slipday.genetics.PlainGeneration.Selfed;
import slipday.genetics.PlainGeneration.Unknown;

/** Reads the labels of a {@link Generation}. Capitals and small letters are the same. */
final class GenerationText {
  private static final String SIB = "(?: sib(?: (\\d{1,3}))?)?";
  private static final Pattern OPEN =
      Pattern.compile("(?:op|open[- ]pollinated) ?(\\d{1,3})?(?<sib>" + SIB + ")(, isolated)?");
  private static final Pattern COMMA = Pattern.compile("[\\s,]*,\\s*");
  private static final Pattern BLANKS = Pattern.compile("\\s+");
  private static final String BULK_OF = "bulk of ";
  private static final String BULK = " bulk";

  private GenerationText() {}

  /** Patterns that many a plan does without, made ready when one is first met. */
  private static final class Rarer {
    static final Pattern FILIAL =
        Pattern.compile(
            "f ?(\\d{1,3})(?<sib>" + SIB + ")(?:(?:,| of an?)? (segregating|four-way)(?: f1)?)?");
    static final Pattern BACKCROSS =
        Pattern.compile(
            "bc ?(\\d{1,3})(?: ?f ?(\\d{1,3}))?(?<sib>"
                + SIB
                + ")(?:, recurrent (seed|pollen) parent)?");
    static final Pattern SELFED = Pattern.compile("s ?(\\d{1,3})(?<sib>" + SIB + ")");
    static final Pattern TWO_WAYS =
        Pattern.compile("self \\((.+)\\) or cross \\((.+)\\), to be proved");
  }

  static Answer<Generation> parse(String label) {
    String text = label.strip().toLowerCase(Locale.ROOT);
    if (!isOneWord(text)) {
      text = BLANKS.matcher(COMMA.matcher(text).replaceAll(", ")).replaceAll(" ");
    }
    if (text.equals("self or cross, to be proved")) {
      return Answer.of(new SelfOrCross(new Unknown(), new Unknown()));
    }
    Matcher ways = text.startsWith("self") ? Rarer.TWO_WAYS.matcher(text) : null;
    if (ways != null && ways.matches()) {
      String cross = ways.group(2);
      return likely(ways.group(1))
          .then(self -> likely(cross).then(made -> Answer.of(new SelfOrCross(self, made))));
    }
    return likely(text);
  }

  private static boolean isOneWord(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (!Character.isLetterOrDigit(text.charAt(i))) {
        return false;
      }
    }
    return true;
  }

  private static Answer<Generation> likely(String text) {
    if (!text.endsWith(" probable")) {
      return mixed(text);
    }
    String likely = text.substring(0, text.length() - " probable".length());
    return mixed(likely.endsWith(",") ? likely.substring(0, likely.length() - 1) : likely)
        .then(found -> Answer.of(new Probable(found)));
  }

  private static Answer<Generation> mixed(String text) {
    if (text.startsWith(BULK_OF)) {
      return bulk(text.substring(BULK_OF.length()).split(" and ", -1));
    }
    return text.endsWith(BULK)
        ? bulk(text.substring(0, text.length() - BULK.length()))
        : plain(text).then(Answer::of);
  }

  private static Answer<Generation> bulk(String... parts) {
    List<PlainGeneration> all = new ArrayList<>();
    for (String part : parts) {
      Answer<PlainGeneration> found = plain(part);
      if (found instanceof Answer.Refused<PlainGeneration> no) {
        return Answer.refused(no.why());
      }
      found.value().ifPresent(all::add);
    }
    return Answer.of(new Bulk(all));
  }

  private static Answer<PlainGeneration> plain(String text) {
    if (isFilialAlone(text)) {
      return filial(number(text.substring(1)), 0, Origin.INBRED_PARENTS);
    }
    if (text.equals("unknown") || text.equals("inbred")) {
      return byName(text);
    }
    Optional<Answer<PlainGeneration>> patterned = text.startsWith("o") ? open(text) : rarer(text);
    return patterned.orElseGet(() -> byName(text));
  }

  private static Optional<Answer<PlainGeneration>> rarer(String text) {
    Matcher filial = Rarer.FILIAL.matcher(text);
    if (filial.matches()) {
      return Optional.of(filial(number(filial.group(1)), sib(filial), origin(filial.group(4))));
    }
    Matcher back = Rarer.BACKCROSS.matcher(text);
    if (back.matches()) {
      return Optional.of(backcross(back));
    }
    Matcher selfed = Rarer.SELFED.matcher(text);
    if (selfed.matches()) {
      return Optional.of(Answer.of(new Selfed(number(selfed.group(1)), sib(selfed))));
    }
    return Optional.empty();
  }

  private static Optional<Answer<PlainGeneration>> open(String text) {
    Matcher open = OPEN.matcher(text);
    if (!open.matches()) {
      return Optional.empty();
    }
    int times = open.group(1) == null ? 0 : number(open.group(1));
    return Optional.of(Answer.of(new OpenPollinated(times, open.group(4) != null, sib(open))));
  }

  private static Answer<PlainGeneration> byName(String text) {
    return switch (text) {
      case "inbred" -> Answer.of(new Inbred());
      case "unknown" -> Answer.of(new Unknown());
      case "segregating f1" -> Answer.of(new Filial(1, 0, Origin.SEGREGATING));
      case "four-way f1" -> Answer.of(new Filial(1, 0, Origin.FOUR_WAY));
      default ->
          Answer.refused(
              "`"
                  + text
                  + "` is no generation; those known are F1, F2 and so on, BC1F2, S1, OP2, inbred and"
                  + " unknown, with `sib 2` after them for sibs.");
    };
  }

  /** {@code f4} and the like: most labels there are, told without a pattern. */
  private static boolean isFilialAlone(String text) {
    if (text.length() < 2 || text.length() > 4 || text.charAt(0) != 'f') {
      return false;
    }
    for (int i = 1; i < text.length(); i++) {
      if (text.charAt(i) < '0' || text.charAt(i) > '9') {
        return false;
      }
    }
    return true;
  }

  private static Answer<PlainGeneration> filial(int number, int sib, Origin origin) {
    if (number == 0) {
      return Answer.refused("F-numbers begin with F1, the seed of a cross.");
    }
    return number == 1 && sib > 0 && origin == Origin.INBRED_PARENTS
        ? Answer.refused("Sibs of F1 plants are as good as selfed, so their seed is F2.")
        : Answer.of(new Filial(number, sib, origin));
  }

  private static Answer<PlainGeneration> backcross(Matcher back) {
    int backcrosses = number(back.group(1));
    int filial = back.group(2) == null ? 1 : number(back.group(2));
    if (backcrosses == 0 || filial == 0) {
      return Answer.refused("Backcrosses begin with BC1F1, the seed of an F1 crossed back.");
    }
    Optional<Purdy.Side> side =
        Optional.ofNullable(back.group(5))
            .map(s -> s.equals("seed") ? Purdy.Side.SEED_PARENT : Purdy.Side.POLLEN_PARENT);
    return Answer.of(new Backcross(backcrosses, filial, sib(back), side));
  }

  private static Origin origin(@Nullable String word) {
    if (word == null) {
      return Origin.INBRED_PARENTS;
    }
    return word.equals("four-way") ? Origin.FOUR_WAY : Origin.SEGREGATING;
  }

  /** {@code sib} alone is once. */
  private static int sib(Matcher label) {
    String sib = label.group("sib");
    if (sib.isEmpty()) {
      return 0;
    }
    String digits = sib.replaceAll("\\D", "");
    return digits.isEmpty() ? 1 : number(digits);
  }

  private static int number(String digits) {
    return Integer.parseInt(digits);
  }
}
