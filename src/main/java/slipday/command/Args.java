package slipday.command;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** What was asked for on the command line. */
record Args(ParseResult parsed) {
  boolean has(String option) {
    return parsed.hasMatchedOption(option);
  }

  String text(String option, String otherwise) {
    return parsed.matchedOptionValue(option, otherwise);
  }

  /** One of the words an option knows. */
  Optional<String> choice(String option) {
    OptionSpec spec = parsed.commandSpec().findOption(option);
    Optional<String> word = Optional.ofNullable(parsed.matchedOptionValue(option, (String) null));
    word.ifPresent(
        w -> {
          for (String known : spec.completionCandidates()) {
            if (known.equals(w)) {
              return;
            }
          }
          throw new CommandFailure(
              option + " knows no `" + w + "`.",
              "It knows " + String.join(", ", spec.completionCandidates()) + ".");
        });
    return word;
  }

  /** The form asked for. */
  Form form(Form otherwise) {
    return choice("--format").map(Form::named).orElse(otherwise);
  }

  /** The arguments of a place among them, by its label. */
  List<String> words(String label) {
    return parsed.matchedPositionals().stream()
        .filter(p -> p.paramLabel().equals(label))
        .findFirst()
        .map(PositionalParamSpec::<String[]>getValue)
        .map(Arrays::asList)
        .orElse(List.of());
  }
}
