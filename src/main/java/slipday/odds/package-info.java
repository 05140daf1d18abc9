/** How many to grow, sow, pollinate and keep, and counts against ratios, with the reckoning. */
@NullMarked
package slipday.odds;

import org.jspecify.annotations.NullMarked;
