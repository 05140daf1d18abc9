package slipday.nextseason;

import java.util.ArrayList;
import java.util.List;

/** Sentences as comments of a plan. */
public final class Comments {
  private static final int WIDEST = 92;

  private Comments() {}

  /** Wrapped at spaces, each line a comment. */
  public static List<String> of(String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder("#");
    for (String word : text.strip().split("\\s+")) {
      if (line.length() > 1 && line.length() + 1 + word.length() > WIDEST) {
        lines.add(line.toString());
        line = new StringBuilder("#");
      }
      line.append(' ').append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
