/** Seed in hand: what is left of each lot, how good it still is, and how much of it to sow. */
@NullMarked
package slipday.seed;

import org.jspecify.annotations.NullMarked;
