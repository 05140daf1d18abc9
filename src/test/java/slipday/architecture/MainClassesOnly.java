package slipday.architecture;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;

/** The classes of src/main: neither tests, nor benchmarks, nor package-info. */
public final class MainClassesOnly implements ImportOption {
  @Override
  public boolean includes(Location location) {
    return location.contains("/target/classes/") && !location.contains("package-info");
  }
}
