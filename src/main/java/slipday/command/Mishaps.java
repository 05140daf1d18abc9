package slipday.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** What is said where a command can't be carried out. */
final class Mishaps {
  private Mishaps() {}

  /** An option or an argument that does not fit. */
  static int usage(ParameterException e, Streams streams) {
    String name = e.getCommandLine().getCommandSpec().qualifiedName();
    StringWriter text = new StringWriter();
    PrintWriter writer = new PrintWriter(text);
    writer.print("slipday: " + e.getMessage() + "\n");
    CommandLine.UnmatchedArgumentException.printSuggestions(e, writer);
    writer.print("`" + name + " --help` shows what fits.\n");
    writer.flush();
    streams.err().print(text.toString());
    return Exit.UNUSABLE;
  }

  static int fault(Exception e, Streams streams) {
    if (e instanceof CommandFailure) {
      CommandFailure failure = (CommandFailure) e;
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
