/** Quantities with units, ranges, shares, and values that carry their reasons. */
@NullMarked
package slipday.measure;

import org.jspecify.annotations.NullMarked;
