package slipday.app;

import java.nio.file.Path;
import slipday.source.Source;

/**
 * Where a plan starts.
 *
 * @param first its first text
 * @param folder the folder its includes and weather are looked for in
 */
public record PlanSource(Source first, Path folder) {
  /**
   * A path that is told from the folder of one of the plan's files, as told from the plan's folder.
   */
  String seenFromPlan(Source file, String path) {
    String whole = file.folder() + path;
    return whole.startsWith(first.folder()) ? whole.substring(first.folder().length()) : path;
  }
}
