package slipday.command;

import java.util.Arrays;

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

  @Override
  public String toString() {
    return word;
  }
}
