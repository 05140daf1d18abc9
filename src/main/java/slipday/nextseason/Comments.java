package slipday.nextseason;

import java.util.ArrayList;
import java.util.List;

/**
 * Sentences as comments of a plan, told from the gardener's own by how they begin, so that the plan
 * after next does not take them over.
 */
public final class Comments {
  private static final String MARK = "# >";
  private static final int WIDEST = 96;

  private Comments() {}

  /** Whether a comment was written here and is not the gardener's own. */
  public static boolean isOurs(String comment) {
    return comment.startsWith(MARK);
  }

  /** Wrapped at spaces, each line a comment. */
  public static List<String> of(String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(MARK);
    for (String word : text.strip().split("\\s+", -1)) {
      if (line.length() > MARK.length() && line.length() + 1 + word.length() > WIDEST) {
        lines.add(line.toString());
        line = new StringBuilder(MARK);
      }
      line.append(' ').append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
