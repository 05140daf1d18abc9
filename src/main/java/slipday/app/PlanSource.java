package slipday.app;

import java.nio.file.Path;
import slipday.source.Source;

/**
 * Where a plan starts.
 *
 * @param first its first text
 * @param folder the folder its includes and weather are looked for in
 */
public record PlanSource(Source first, Path folder) {}
