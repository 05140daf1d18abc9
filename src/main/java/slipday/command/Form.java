package slipday.command;

import java.util.Arrays;
import java.util.function.Supplier;
import slipday.output.Json;

/** How a result is written. A command names those that fit it. */
enum Form {
  TEXT("text"),
  JSON("json"),
  CSV("csv"),
  SARIF("sarif"),
  ICS("ics"),
  MARKDOWN("markdown"),
  HTML("html");

  private final String word;

  Form(String word) {
    this.word = word;
  }

  static Form named(String word) {
    return Arrays.stream(values()).filter(f -> f.word.equals(word)).findFirst().orElseThrow();
  }

  /**
   * A result in this form, of a command that has no others.
   *
   * @param data what it is as JSON
   */
  String of(Object data, Supplier<String> csv, Supplier<String> text) {
    return switch (this) {
      case JSON -> Json.text(data);
      case CSV -> csv.get();
      case TEXT -> text.get();
      default -> throw new IllegalStateException("no result as " + this);
    };
  }

  @Override
  public String toString() {
    return word;
  }
}
