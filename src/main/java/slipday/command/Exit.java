package slipday.command;

/** What the process says with its exit code. */
final class Exit {
  /** All is well. */
  static final int CLEAN = 0;

  /** There are findings of error level, or files that would be laid out anew. */
  static final int FINDINGS = 1;

  /** The command, or a file it names, can't be used. */
  static final int UNUSABLE = 2;

  private Exit() {}
}
