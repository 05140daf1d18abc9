/** The record: what was done and seen, resolved against the garden, and what can't be so. */
@NullMarked
package slipday.garden.record;

import org.jspecify.annotations.NullMarked;
