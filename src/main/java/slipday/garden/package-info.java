/** The model of a garden in a season, and the resolver that makes it from text. */
@NullMarked
package slipday.garden;

import org.jspecify.annotations.NullMarked;
