package slipday.command;

/** How a result is written. A command names those that fit it. */
enum Form {
  TEXT("text"),
  JSON("json"),
  CSV("csv"),
  SARIF("sarif");

  private final String word;

  Form(String word) {
    this.word = word;
  }

  @Override
  public String toString() {
    return word;
  }
}
