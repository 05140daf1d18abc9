package slipday.command;

import java.util.ArrayList;
import java.util.List;

/** How a result is written. A command names those that fit it. */
enum Form {
  TEXT("text"),
  JSON("json"),
  CSV("csv"),
  SARIF("sarif"),
  ICS("ics");

  private final String word;

  Form(String word) {
    this.word = word;
  }

  @Override
  public String toString() {
    return word;
  }

  /** Results that are no table. */
  static final class TextOrJson extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    TextOrJson() {
      super(List.of("text", "json"));
    }
  }

  /** Results that are a table. */
  static final class OrCsv extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    OrCsv() {
      super(List.of("text", "json", "csv"));
    }
  }

  /** What check finds. */
  static final class Findings extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    Findings() {
      super(List.of("text", "json", "csv", "sarif"));
    }
  }

  /** Chores. */
  static final class IcsOrJson extends ArrayList<String> {
    private static final long serialVersionUID = 1L;

    IcsOrJson() {
      super(List.of("ics", "json"));
    }
  }

  /**
   * @throws CommandFailure unless this is one of those that fit
   */
  void oneOf(Form... fitting) {
    List<Form> fit = List.of(fitting);
    if (!fit.contains(this)) {
      throw new CommandFailure(
          "There is no `" + word + "` form of this result.",
          "There are: " + String.join(", ", fit.stream().map(Form::toString).toList()) + ".");
    }
  }
}
