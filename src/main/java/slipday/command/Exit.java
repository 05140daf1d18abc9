package slipday.command;

import java.util.Map;

/** What the process says with its exit code. */
final class Exit {
  /** All is well. */
  static final int CLEAN = 0;

  /** There are findings of error level, or files that would be laid out anew. */
  static final int FINDINGS = 1;

  /** The command, or a file it names, can't be used. */
  static final int UNUSABLE = 2;

  /** What each says, for help. */
  static final Map<String, String> MEANINGS =
      Map.of(
          "0", "all is well",
          "1", "there are findings of error level",
          "2", "the command, or a file it names, can't be used");

  private Exit() {}
}
