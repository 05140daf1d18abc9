package slipday.command;

import slipday.output.Ink;

/** Whether to colour. */
enum Colour {
  AUTO("auto"),
  ALWAYS("always"),
  NEVER("never");

  private final String word;

  Colour(String word) {
    this.word = word;
  }

  @Override
  public String toString() {
    return word;
  }

  /** On a terminal only, unless asked for; NO_COLOR and a dumb terminal mean none. */
  Ink ink(Streams streams) {
    return Ink.of(
        switch (this) {
          case ALWAYS -> true;
          case NEVER -> false;
          case AUTO ->
              streams.env().getOrDefault("NO_COLOR", "").isEmpty()
                  && !"dumb".equals(streams.env().get("TERM"))
                  && streams.onTerminal().getAsBoolean();
        });
  }
}
