package slipday.command;

import java.lang.module.ModuleDescriptor;
import java.util.Optional;

/** The version the build wrote into the jar, or into the module of a packed runtime. */
final class Version {
  private Version() {}

  static String number() {
    ModuleDescriptor module = Main.class.getModule().getDescriptor();
    Optional<String> version =
        module == null
            ? Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
            : module.rawVersion();
    return version.orElse("(not packaged)");
  }
}
