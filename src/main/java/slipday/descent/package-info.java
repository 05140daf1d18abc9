/** Where a plant, a fruit's seed or a lot comes from, and how inbred that makes it. */
@NullMarked
package slipday.descent;

import org.jspecify.annotations.NullMarked;
