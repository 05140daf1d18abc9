package slipday.command;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** What the process says with its exit code. */
final class Exit {
  /** All is well. */
  static final int CLEAN = 0;

  /** There are findings of error level, or files that would be laid out anew. */
  static final int FINDINGS = 1;

  /** The command, or a file it names, can't be used. */
  static final int UNUSABLE = 2;

  /** What each says, for help, in their order. */
  static final SortedMap<String, String> MEANINGS =
      Collections.unmodifiableSortedMap(
          new TreeMap<>(
              Map.of(
                  "0", "all is well",
                  "1", "there are findings of error level",
                  "2", "the command, or a file it names, can't be used")));

  private Exit() {}
}
