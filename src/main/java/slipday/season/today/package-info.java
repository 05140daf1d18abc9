/** What there is to do in the garden on one day: what the season asks, less what is recorded. */
@NullMarked
package slipday.season.today;

import org.jspecify.annotations.NullMarked;
