package slipday.command;

import java.util.List;

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
