package slipday.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import slipday.finding.Nearest;

/** What is said where a command can't be carried out. */
final class Mishaps {
  private Mishaps() {}

  /** An option or an argument that does not fit. */
  static int usage(ParameterException e, Streams streams) {
    String name = e.getCommandLine().getCommandSpec().qualifiedName();
    streams.err().print("slipday: " + sentence(e, name) + "\n");
    streams.err().print("`" + name + " --help` shows what fits.\n");
    return Exit.UNUSABLE;
  }

  private static String sentence(ParameterException e, String name) {
    if (e instanceof UnmatchedArgumentException unmatched) {
      String word = unmatched.getUnmatched().get(0);
      return unmatched(e.getCommandLine(), word, name);
    }
    if (e instanceof MissingParameterException missed) {
      String missing =
          missed.getMissing().stream()
              .map(ArgSpec::paramLabel)
              .collect(Collectors.joining(" and "));
      return "`" + name + "` wants " + missing + ".";
    }
    return String.valueOf(e.getMessage());
  }

  private static String unmatched(CommandLine line, String word, String name) {
    if (word.startsWith("-")) {
      List<String> known = new ArrayList<>();
      line.getCommandSpec().options().forEach(o -> known.addAll(List.of(o.names())));
      return "`" + name + "` has no option `" + word + "`." + suggestion(word, known);
    }
    boolean takesCommand = !line.getSubcommands().isEmpty();
    return takesCommand
        ? "There is no command `" + word + "`." + suggestion(word, line.getSubcommands().keySet())
        : "`" + name + "` does not know what to do with `" + word + "`.";
  }

  private static String suggestion(String word, Iterable<String> known) {
    List<String> all = StreamSupport.stream(known.spliterator(), false).toList();
    return Nearest.to(word, all).map(n -> " " + Nearest.meant(n)).orElse("");
  }

  static int fault(Exception e, Streams streams) {
    if (e instanceof CommandFailure failure) {
      String help = failure.help().isEmpty() ? "" : failure.help() + "\n";
      streams.err().print("slipday: " + e.getMessage() + "\n" + help);
      return Exit.UNUSABLE;
    }
    StringWriter trace = new StringWriter();
    e.printStackTrace(new PrintWriter(trace));
    streams.err().print("slipday: This is a fault of Slipday's own; please report it.\n" + trace);
    return Exit.UNUSABLE;
  }
}
