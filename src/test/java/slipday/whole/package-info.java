/** What holds of the whole way from a plan to everything that is shown of it. */
@NullMarked
package slipday.whole;

import org.jspecify.annotations.NullMarked;
