package slipday.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A command line as most people type it, read without the library, which takes as long to make
 * itself ready as a plan takes to be checked: options in full, each once, short ones with their
 * value as a word of its own, and as many arguments as are wanted. Anything else is left to the
 * library, which says what is wrong with it.
 */
final class PlainArgs {
  private final Spec spec;
  private final Map<String, String> options = new HashMap<>();
  private final List<String> words = new ArrayList<>();

  private PlainArgs(Spec spec) {
    this.spec = spec;
  }

  /** What is asked for; nothing if it takes the library to tell. */
  static Optional<Args> read(Spec spec, List<String> typed) {
    PlainArgs args = new PlainArgs(spec);
    return args.take(typed)
        ? args.placed().map(words -> new Args(spec, args.options, words))
        : Optional.empty();
  }

  private boolean take(List<String> typed) {
    Iterator<String> rest = typed.iterator();
    while (rest.hasNext()) {
      String word = rest.next();
      if (isPlain(word)) {
        words.add(word);
      } else if (!takeOption(word, rest)) {
        return false;
      }
    }
    return true;
  }

  private boolean takeOption(String word, Iterator<String> rest) {
    int equals = word.indexOf('=');
    String name = equals < 0 ? word : word.substring(0, equals);
    Optional<Spec.Option> option = spec.option(name);
    boolean plain = name.startsWith("--") || word.length() == 2;
    if (!plain || option.isEmpty() || option.get().many() || options.containsKey(name)) {
      return false;
    }
    String value = equals < 0 ? "" : word.substring(equals + 1);
    if (option.get().isFlag()) {
      return equals < 0 && put(option.get(), "");
    }
    if (equals < 0 && rest.hasNext()) {
      value = rest.next();
    }
    return isPlain(value) && put(option.get(), value);
  }

  private boolean put(Spec.Option option, String value) {
    option.names().forEach(name -> options.put(name, value));
    return true;
  }

  /** The library sees more than a word in one that is quoted, empty, or names a file with at. */
  private static boolean isPlain(String word) {
    return word.equals("-")
        || (!word.isEmpty() && "-@\"'".indexOf(word.charAt(0)) < 0 && word.indexOf('$') < 0);
  }

  /** One argument at most for each place in turn, and for a last one that takes many the rest. */
  private Optional<Map<String, List<String>>> placed() {
    Map<String, List<String>> placed = new HashMap<>();
    int next = 0;
    for (int i = 0; i < spec.places().size(); i++) {
      Spec.Place place = spec.places().get(i);
      boolean many = place.takesMany() || place.index().endsWith("*");
      if (many ? i + 1 < spec.places().size() : !place.index().equals(Integer.toString(i))) {
        return Optional.empty();
      }
      int end = many ? words.size() : Math.min(words.size(), next + 1);
      if (end > next) {
        placed.put(place.label(), List.copyOf(words.subList(next, end)));
      } else if (place.isNeeded()) {
        return Optional.empty();
      }
      next = end;
    }
    return next == words.size() ? Optional.of(placed) : Optional.empty();
  }
}
