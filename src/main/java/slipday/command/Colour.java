package slipday.command;

import java.util.List;
import slipday.output.Ink;

/** Whether to colour. */
final class Colour {
  private static final String AUTO = "auto";
  private static final String ALWAYS = "always";
  private static final String NEVER = "never";

  private Colour() {}

  static List<String> words() {
    return List.of(AUTO, ALWAYS, NEVER);
  }

  /** On a terminal only, unless asked for; NO_COLOR and a dumb terminal mean none. */
  static Ink ink(Args args, Streams streams) {
    String when = args.choice("--color").orElse(AUTO);
    return Ink.of(when.equals(ALWAYS) || (when.equals(AUTO) && fits(streams)));
  }

  private static boolean fits(Streams streams) {
    return streams.env().getOrDefault("NO_COLOR", "").isEmpty()
        && !"dumb".equals(streams.env().get("TERM"))
        && streams.onTerminal().getAsBoolean();
  }
}
