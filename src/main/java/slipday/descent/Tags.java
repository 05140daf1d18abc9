package slipday.descent;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slipday.garden.Garden;
import slipday.garden.Planting;
import slipday.garden.record.Fruit;
import slipday.genetics.CheckCharacter;

/**
 * The tags still free this season: a number and a letter, such as {@code 3A}. A planting goes on
 * with the number it used last, or gets one that none has used, so that no tag is given out twice.
 */
public final class Tags {
  private static final int LETTERS = 26;
  private static final Pattern TAG = Pattern.compile("(\\d{1,6})([A-Z])([0-9A-Z])?");

  private final int season;
  private final List<Fruit> fruits;
  private final Set<String> used = new HashSet<>();
  private final Set<Integer> numbers = new HashSet<>();

  private Tags(Garden garden) {
    season = garden.season().year();
    fruits = garden.record().every(Fruit.class).filter(f -> f.year() == season).toList();
    fruits.forEach(f -> used.add(bare(f.tag())));
    fruits.forEach(f -> number(f.tag()).ifPresent(numbers::add));
  }

  /**
   * A planting's next tags.
   *
   * @param tags free, in the order to be used
   */
  public record Free(Planting planting, List<String> tags) {
    public Free {
      tags = List.copyOf(tags);
    }
  }

  /**
   * For every planting that seed is saved of, or that is pollinated by hand.
   *
   * @param howMany for each
   * @param withCheck whether each ends with a check character of ISO/IEC 7064, mod 37,36
   */
  public static List<Free> free(Garden garden, int howMany, boolean withCheck) {
    return free(garden, p -> howMany, withCheck);
  }

  /** The same with as many for each as are wanted of it. */
  public static List<Free> free(Garden garden, ToIntFunction<Planting> howMany, boolean withCheck) {
    Tags tags = new Tags(garden);
    return garden.plantings().stream()
        .filter(p -> p.seedSaved() || isPollinated(p, garden))
        .map(p -> new Free(p, tags.next(p, howMany.applyAsInt(p), withCheck)))
        .toList();
  }

  private static boolean isPollinated(Planting planting, Garden garden) {
    return planting.pollination().isPresent()
        || garden.crosses().stream().anyMatch(c -> c.seedParent().equals(planting));
  }

  private List<String> next(Planting planting, int howMany, boolean withCheck) {
    int number = last(planting).orElseGet(this::newNumber);
    List<String> tags = new ArrayList<>();
    int letter = 0;
    while (tags.size() < howMany) {
      if (letter == LETTERS) {
        letter = 0;
        number = newNumber();
      }
      String tag = number + String.valueOf((char) ('A' + letter));
      letter++;
      if (used.add(tag)) {
        tags.add(withCheck ? tag + CheckCharacter.MOD_37_36.of(tag).orElseThrow() : tag);
      }
    }
    return tags;
  }

  private int newNumber() {
    int number = 1;
    while (!numbers.add(number)) {
      number++;
    }
    return number;
  }

  private Optional<Integer> last(Planting planting) {
    return fruits.stream()
        .filter(f -> f.seedParent().stand().name().equals(planting.name()))
        .flatMap(f -> number(f.tag()).stream())
        .reduce((earlier, later) -> later);
  }

  private static Optional<Integer> number(String tag) {
    Matcher parts = TAG.matcher(bare(tag));
    return parts.matches() ? Optional.of(Integer.parseInt(parts.group(1))) : Optional.empty();
  }

  /**
   * A tag with its check character by ISO/IEC 7064, mod 37,36, in capitals; empty where the tag has
   * other characters than letters and digits.
   */
  public static Optional<String> checked(String tag) {
    String bare = bare(tag);
    return CheckCharacter.MOD_37_36.of(bare).map(check -> bare + check);
  }

  /** Without its check character, if it has one. */
  private static String bare(String tag) {
    String text = tag.toUpperCase(Locale.ROOT);
    Matcher parts = TAG.matcher(text);
    boolean checked =
        parts.matches() && parts.group(3) != null && CheckCharacter.MOD_37_36.holds(text);
    return checked ? text.substring(0, text.length() - 1) : text;
  }
}
