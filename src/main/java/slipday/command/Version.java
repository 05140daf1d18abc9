package slipday.command;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version the build wrote into the jar. */
final class Version implements IVersionProvider {
  static String number() {
    return Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
        .orElse("(not packaged)");
  }

  @Override
  public String[] getVersion() {
    return new String[] {"slipday " + number()};
  }
}
