package slipday.rules.record;

import java.util.List;
import java.util.Locale;
import slipday.finding.Level;
import slipday.garden.record.Fruit;
import slipday.garden.record.GardenRecord;
import slipday.genetics.CheckCharacter;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Among tags that end with a check character, one does not hold. */
public final class TagCheckWrong implements Rule {
  /** A single tag may hold by chance. */
  private static final int FEWEST = 2;

  private static final int MOST_FIGURES = 6;

  @Override
  public String id() {
    return "tag-check-wrong";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    GardenRecord record = season.garden().record();
    List<Fruit> like =
        record
            .every(Fruit.class)
            .filter(f -> f.year() == record.season())
            .filter(f -> isChecked(tag(f)))
            .toList();
    List<Fruit> wrong = like.stream().filter(f -> !CheckCharacter.MOD_37_36.holds(tag(f))).toList();
    int hold = like.size() - wrong.size();
    if (hold >= FEWEST && hold > wrong.size()) {
      wrong.forEach(f -> found(f, reporter));
    }
  }

  /** One to six figures, a letter, and a letter or a figure to check them. */
  private static boolean isChecked(String tag) {
    int letter = tag.length() - 2;
    if (letter < 1 || letter > MOST_FIGURES || !isLetter(tag.charAt(letter))) {
      return false;
    }
    char last = tag.charAt(letter + 1);
    for (int i = 0; i < letter; i++) {
      if (!isFigure(tag.charAt(i))) {
        return false;
      }
    }
    return isFigure(last) || isLetter(last);
  }

  private static boolean isFigure(char c) {
    return c >= '0' && c <= '9';
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z';
  }

  private static String tag(Fruit fruit) {
    return fruit.tag().toUpperCase(Locale.ROOT);
  }

  private static void found(Fruit fruit, Reporter reporter) {
    String bare = tag(fruit).substring(0, tag(fruit).length() - 1);
    String right = bare + CheckCharacter.MOD_37_36.of(bare).orElseThrow();
    OfFruit.report(
            fruit,
            "The last character of the tag "
                + Words.tick(fruit.tag())
                + " does not fit the rest, as that of the other tags does.",
            reporter)
        .note("Check characters are those of ISO/IEC 7064, mod 37,36.")
        .help(
            "Look at the tag on the fruit: "
                + Words.tick(right)
                + " would be right if only its last character is misread.");
  }
}
