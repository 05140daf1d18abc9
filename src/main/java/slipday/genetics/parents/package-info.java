/** Which parents the next generation comes from, and how much of each: an exact choice. */
@NullMarked
package slipday.genetics.parents;

import org.jspecify.annotations.NullMarked;
