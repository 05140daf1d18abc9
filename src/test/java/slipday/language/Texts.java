package slipday.language;

import java.util.List;
import java.util.stream.Collectors;
import slipday.finding.Finding;
import slipday.finding.Outcome;
import slipday.source.Source;
import slipday.syntax.SeasonFile;
import slipday.syntax.SeasonParser;

/** From a text to what a test asks about. */
public final class Texts {
  private Texts() {}

  public static SeasonFile parse(String text) {
    return SeasonParser.parse(Source.of("test.season", text)).value();
  }

  public static Outcome<BoundFile> bind(String text) {
    return SeasonParser.parse(Source.of("test.season", text)).then(Binder::bind);
  }

  public static List<Finding> findings(String text) {
    return bind(text).findings();
  }

  /** The comments as they stand, in their order. */
  public static List<String> comments(String text) {
    return parse(text).comments().stream().map(c -> c.text()).toList();
  }

  /** What a text says, without its places: equal for two texts that mean the same. */
  public static String meaning(String text) {
    BoundFile bound = bind(text).value();
    return bound.blocks().stream().map(Texts::meaning).collect(Collectors.joining())
        + bound.entries().stream().map(Texts::meaning).collect(Collectors.joining());
  }

  private static String meaning(Block block) {
    String head = block.head().map(Texts::meaning).orElse("(mistaken)");
    return block.declaration().word()
        + " "
        + head
        + "\n"
        + block.clauses().stream().map(Texts::meaning).collect(Collectors.joining());
  }

  private static String meaning(Entry entry) {
    return entry.date() + " " + entry.clause().name() + " " + meaning(entry.bound()) + "\n";
  }

  private static String meaning(BoundClause clause) {
    String says =
        clause
            .says()
            .map(s -> " says " + s.source().map(Value.Name::text) + " " + s.fromMemory())
            .orElse("");
    return "  " + clause.clause().name() + " " + meaning(clause.bound()) + says + "\n";
  }

  private static String meaning(Bound bound) {
    StringBuilder text = new StringBuilder();
    List<String> names = bound.placeholders();
    for (int i = 0; i < names.size(); i++) {
      text.append(names.get(i)).append('=').append(meaning(bound.values().get(i))).append(' ');
    }
    return text.toString();
  }

  /** A value's record without its last part, the span. */
  private static String meaning(Value value) {
    String text = value.toString();
    return text.substring(0, text.lastIndexOf("span=")).replaceFirst(", $", "");
  }
}
