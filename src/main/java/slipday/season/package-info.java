/**
 * A planting through the weather years: its dates, its bloom, who crosses whom, and hand
 * pollination.
 */
@NullMarked
package slipday.season;

import org.jspecify.annotations.NullMarked;
