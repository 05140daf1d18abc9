package slipday.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was asked for on the command line.
 *
 * @param options what was given, by each of its names; the value of a flag is empty
 * @param words the arguments of each place among them, by its label
 */
record Args(Spec spec, Map<String, String> options, Map<String, List<String>> words) {
  boolean has(String option) {
    return options.containsKey(option);
  }

  String text(String option, String otherwise) {
    return options.getOrDefault(option, otherwise);
  }

  /** One of the words an option knows. */
  Optional<String> choice(String option) {
    String word = options.get(option);
    if (word == null) {
      return Optional.empty();
    }
    List<String> known = spec.option(option).orElseThrow().words();
    if (!known.contains(word)) {
      throw new CommandFailure(
          option + " knows no `" + word + "`.", "It knows " + String.join(", ", known) + ".");
    }
    return Optional.of(word);
  }

  /** The form asked for. */
  Form form(Form otherwise) {
    Optional<String> form = choice("--format");
    return form.isPresent() ? Form.named(form.get()) : otherwise;
  }

  /** The arguments of a place among them, by its label. */
  List<String> words(String label) {
    return words.getOrDefault(label, List.of());
  }
}
