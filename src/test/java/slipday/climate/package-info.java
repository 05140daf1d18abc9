/** Weather, frost, heat sums, soil and sun, against figures published elsewhere. */
@NullMarked
package slipday.climate;

import org.jspecify.annotations.NullMarked;
