package slipday.nextseason;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.source.Source;

/** Lines of a plan as they stand, with the comments that belong to them. */
final class BlockText {
  private static final String HEADING = "# ---";

  private BlockText() {}

  /** A block with the comment right above it. */
  static List<String> of(Block block) {
    List<String> lines = comment(block);
    lines.addAll(body(block, clause -> List.of(line(clause))));
    return lines;
  }

  /** The gardener's comment lines right above a block; a heading belongs to none. */
  static List<String> comment(Block block) {
    Source source = block.span().source();
    List<String> lines = new ArrayList<>();
    for (int n = block.span().line() - 1; n > 0; n--) {
      String line = source.line(n).strip();
      if (!line.startsWith("#") || line.startsWith(HEADING)) {
        break;
      }
      if (!Comments.isOurs(line)) {
        lines.add(0, line);
      }
    }
    return lines;
  }

  /**
   * The block's first line and those under it.
   *
   * @param each what stands for a clause
   */
  static List<String> body(Block block, Function<BoundClause, List<String>> each) {
    List<String> lines = new ArrayList<>();
    Source source = block.span().source();
    lines.add(source.line(block.span().line()));
    lines.addAll(under(block, each));
    return lines;
  }

  /** The lines under the block's first, comments between them too. */
  static List<String> under(Block block, Function<BoundClause, List<String>> each) {
    Map<Integer, BoundClause> clauses = new HashMap<>();
    block.clauses().forEach(c -> clauses.put(c.span().line(), c));
    int last = clauses.keySet().stream().mapToInt(n -> n).max().orElse(0);
    Source source = block.span().source();
    List<String> lines = new ArrayList<>();
    for (int n = block.span().line() + 1; n <= last; n++) {
      BoundClause clause = clauses.get(n);
      if (clause != null) {
        lines.addAll(each.apply(clause));
      } else if (isComment(source.line(n).strip())) {
        lines.add(source.line(n));
      }
    }
    return lines;
  }

  private static boolean isComment(String line) {
    return line.startsWith("#") && !line.startsWith(HEADING) && !Comments.isOurs(line);
  }

  static String line(BoundClause clause) {
    return clause.span().source().line(clause.span().line());
  }
}
