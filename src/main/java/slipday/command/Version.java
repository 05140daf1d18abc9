package slipday.command;

import java.util.Optional;

/** The version the build wrote into the jar. */
final class Version {
  private Version() {}

  static String number() {
    return Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
        .orElse("(not packaged)");
  }
}
