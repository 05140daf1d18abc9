package slipday.language;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.lang3.StringUtils;
import slipday.measure.Dimension;
import slipday.measure.Unit;

/** The reference of the language as Markdown, written from the tables that the parser reads. */
public final class Reference {
  private static final String CLAUSE_HEAD =
      "| Begins with | Goes on with | Means | Example |\n|---|---|---|---|\n";

  private static final String CLAUSE_OF_PLAN_HEAD =
      "| Begins with | Goes on with | Means | Left out | Example |\n|---|---|---|---|---|\n";

  private Reference() {}

  /** Units, values, every declaration with its clauses, and the facts of a crop. */
  public static String text() {
    return "### Units\n\n"
        + units()
        + "\n### Values\n\n"
        + values()
        + Arrays.stream(Declaration.values())
            .map(Reference::declaration)
            .collect(Collectors.joining())
        + record()
        + facts();
  }

  private static String units() {
    return "| Measures | Written | For example |\n|---|---|---|\n"
        + Arrays.stream(Dimension.values())
            .filter(d -> !Unit.words(d).isEmpty())
            .map(Reference::units)
            .collect(Collectors.joining());
  }

  private static String units(Dimension dimension) {
    return "| "
        + dimension.withArticle()
        + " | "
        + Unit.words(dimension).stream().map(Reference::code).collect(Collectors.joining(" "))
        + " | "
        + code(example(dimension))
        + " |\n";
  }

  private static String example(Dimension dimension) {
    return switch (dimension) {
      case LENGTH -> "5 ft 6 inch";
      case AREA -> "20 sqft";
      case MASS -> "4 lb 12 oz";
      case TEMPERATURE -> "-2 C";
      case TIME -> "7 to 10 days";
      case DEGREE_DAYS -> "335 to 391 C-days";
      case SWEETNESS -> "13 brix";
      case SHARE -> "15 %";
    };
  }

  private static String values() {
    return "| In a shape | Stands for |\n|---|---|\n"
        + Arrays.stream(Kind.values())
            .map(k -> "| " + code("<" + k.word() + ">") + " | " + expected(k) + " |\n")
            .collect(Collectors.joining());
  }

  private static String expected(Kind kind) {
    boolean amounts = kind.word().endsWith("-range") && !kind.expected().contains(" to ");
    return kind.expected() + (amounts ? ", or two of them with `to` between" : "");
  }

  private static String declaration(Declaration declaration) {
    List<Clause> own =
        Clauses.under(declaration).stream().filter(c -> !CropClauses.isFact(c)).toList();
    boolean facts = Clauses.under(declaration).size() > own.size();
    return "\n### "
        + code(declaration.word())
        + "\n\n"
        + declaration.sentence()
        + "\n\nIts line: "
        + code(declaration.word() + " " + shown(declaration.head()))
        + ", as in "
        + code(declaration.example())
        + ".\n"
        + (own.isEmpty() ? "" : "\n" + CLAUSE_OF_PLAN_HEAD + rows(own))
        + (facts
            ? "\nAny [fact of a crop](#facts-of-a-crop) marked `"
                + declaration.word()
                + "` may stand under it, too.\n"
            : "");
  }

  private static String rows(List<Clause> clauses) {
    return clauses.stream().map(Reference::row).collect(Collectors.joining());
  }

  private static String row(Clause clause) {
    return "| "
        + code(clause.name())
        + " | "
        + code(shown(clause.shape()))
        + " | "
        + clause.sentence()
        + (clause.many() && !clause.isDated() ? " May come more than once." : "")
        + Unsaid.of(clause).map(holds -> " | " + holds).orElse("")
        + " | "
        + code(clause.example())
        + " |\n";
  }

  private static String record() {
    return "\n### The record\n\nEach of these lines begins with its full date.\n\n"
        + CLAUSE_HEAD
        + rows(RecordClauses.ALL);
  }

  private static String facts() {
    List<Clause> facts = Clauses.all().stream().filter(CropClauses::isFact).toList();
    return "\n### Facts of a crop\n\n"
        + "Left out, what its crop says of a line holds, and what its species says of a crop; where"
        + " none says it, nothing is made up, and what hangs on it is told as not known.\n\n"
        + "| Begins with | Goes on with | Means | Example | Under |\n|---|---|---|---|---|\n"
        + facts.stream()
            .map(f -> StringUtils.chop(row(f)) + " " + under(f) + " |\n")
            .collect(Collectors.joining());
  }

  private static String under(Clause clause) {
    return clause.where().stream().map(d -> code(d.word())).collect(Collectors.joining(" "));
  }

  /** A shape for readers: a choice without its inner name, a named value with its kind after it. */
  private static String shown(Shape shape) {
    return shape
        .notation()
        .replaceAll("\\((?:[a-z]+): ", "(")
        .replaceAll("<([a-z-]+):([a-z]+)>", "<$2: $1>")
        .strip();
  }

  /** A code span that a cell of a table can hold. */
  private static String code(String text) {
    return "`" + text.replace("|", "\\|") + "`";
  }
}
