package slipday.command;

import java.util.List;
import slipday.finding.Finding;

/** The command can't be carried out: a message for the gardener, and exit code 2. */
final class CommandFailure extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String help;

  /**
   * @param message a full sentence
   * @param help what to do; may be empty
   */
  CommandFailure(String message, String help) {
    super(message);
    this.help = help;
  }

  /** A file that can't be used. */
  static CommandFailure of(List<Finding> findings) {
    Finding why = findings.get(0);
    return new CommandFailure(why.message(), why.help());
  }

  String help() {
    return help;
  }
}
