package slipday.output.data;

import java.util.List;

/**
 * What became of files that were to be laid out.
 *
 * @param check whether nothing was to be changed, only said
 */
public record FormatData(Head slipday, boolean check, List<FileState> files) {
  /** It was laid out as it should be. */
  public static final String UNCHANGED = "unchanged";

  /** It was laid out anew, or with {@code check} would be. */
  public static final String CHANGED = "changed";

  /** It has mistakes and is left as it is. */
  public static final String MISTAKEN = "mistaken";

  /** It can't be read. */
  public static final String UNUSABLE = "unusable";

  /** One file and what became of it. */
  public record FileState(String file, String state) {}

  public static FormatData of(boolean check, List<FileState> files) {
    return new FormatData(Head.of("format"), check, files);
  }
}
