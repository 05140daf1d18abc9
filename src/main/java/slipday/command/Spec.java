package slipday.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;

/**
 * A command: its words and what it does. {@link PlainArgs} reads what most people type by it;
 * {@link Library} makes help, completion and the sentences about mistakes of it.
 */
final class Spec {
  private final String sentence;
  private final List<String> more;
  private final List<Option> options = new ArrayList<>();
  private final List<Place> places = new ArrayList<>();
  private List<String> examples = List.of();
  private Map<String, Spec> parts = Map.of();
  private Optional<ToIntFunction<Args>> run = Optional.empty();

  /**
   * An option.
   *
   * @param names with their hyphens
   * @param label of its value; empty where it takes none
   * @param words that its value can be; empty where that is no list
   * @param many whether its value is all that stands before the next option
   */
  record Option(
      List<String> names, String label, List<String> words, String description, boolean many) {
    boolean isFlag() {
      return label.isEmpty();
    }
  }

  /**
   * A place among the arguments.
   *
   * @param index which of them, such as {@code 0} or {@code 1..*}
   * @param arity how many, such as {@code 1} or {@code 0..*}
   * @param words that can stand there; empty where that is no list
   */
  record Place(String index, String arity, String label, List<String> words, String description) {
    boolean isNeeded() {
      return !arity.startsWith("0");
    }

    boolean takesMany() {
      return arity.endsWith("*");
    }
  }

  private Spec(String sentence, List<String> more) {
    this.sentence = sentence;
    this.more = more;
  }

  /**
   * @param sentence what the command does, short enough for the list of commands
   * @param more a paragraph for its own help, line by line
   */
  static Spec of(String sentence, String... more) {
    return new Spec(sentence, Arrays.asList(more));
  }

  /** The plan a command is about, and how it is read. */
  Spec plan() {
    return words("0", "1", "PLAN", "The plan's first file; - for standard input.")
        .option(
            "--stdin-name",
            "NAME",
            "What to call standard input; its folder is where includes are looked for.")
        .flag("--include-outside", "Lets the plan include files from outside its folder.")
        .colour();
  }

  Spec colour() {
    return choice(
        "--color",
        "WHEN",
        Colour.words(),
        "auto, always or never; auto colours on a terminal only.");
  }

  /** The forms a result can have; the first is what it has if none is asked for. */
  Spec forms(String description, Form... fitting) {
    List<String> words = new ArrayList<>();
    for (Form form : fitting) {
      words.add(form.toString());
    }
    return choice("--format", "FORM", words, description);
  }

  /**
   * @param index which arguments, such as {@code 0} or {@code 1..*}
   * @param arity how many, such as {@code 1} or {@code 0..*}
   */
  Spec words(String index, String arity, String label, String description) {
    places.add(new Place(index, arity, label, List.of(), description));
    return this;
  }

  /** One argument that may be left out, out of a few words. */
  Spec word(String label, List<String> words, String description) {
    places.add(new Place("0", "0..1", label, words, description));
    return this;
  }

  Spec flag(String name, String description) {
    options.add(new Option(List.of(name), "", List.of(), description, false));
    return this;
  }

  Spec option(String name, String label, String description) {
    return option(new String[] {name}, label, description);
  }

  Spec option(String[] names, String label, String description) {
    options.add(new Option(List.of(names), label, List.of(), description, false));
    return this;
  }

  /** An option whose value is all the words up to the next option. */
  Spec phrase(String name, String label, String description) {
    options.add(new Option(List.of(name), label, List.of(), description, true));
    return this;
  }

  Spec choice(String name, String label, List<String> words, String description) {
    options.add(new Option(List.of(name), label, words, description, false));
    return this;
  }

  Spec examples(String... lines) {
    examples = Arrays.asList(lines);
    return this;
  }

  /** Commands of its own, by name, of which one is asked for. */
  Spec parts(Map<String, Spec> own) {
    parts = new LinkedHashMap<>(own);
    return this;
  }

  /**
   * @param does what the command is for, and returns the exit code
   */
  Spec runs(ToIntFunction<Args> does) {
    run = Optional.of(does);
    return this;
  }

  String sentence() {
    return sentence;
  }

  List<String> more() {
    return more;
  }

  List<Option> options() {
    return options;
  }

  List<Place> places() {
    return places;
  }

  List<String> examples() {
    return examples;
  }

  Map<String, Spec> parts() {
    return parts;
  }

  /** The option of a name. */
  Optional<Option> option(String name) {
    for (Option option : options) {
      if (option.names().contains(name)) {
        return Optional.of(option);
      }
    }
    return Optional.empty();
  }

  /** Does what the command is for; empty for one that has only commands of its own. */
  Optional<ToIntFunction<Args>> run() {
    return run;
  }
}
