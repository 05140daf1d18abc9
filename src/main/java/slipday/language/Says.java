package slipday.language;

import java.util.Optional;
import slipday.source.Span;

/**
 * Where a crop fact is from: a declared source, read or from memory; or common practice, without a
 * source.
 */
public record Says(Optional<Value.Name> source, boolean fromMemory, Span span) {}
