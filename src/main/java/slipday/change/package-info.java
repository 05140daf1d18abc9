/**
 * What differs between two states of a plan: its dates, pollinations, chores, findings and seed.
 */
@NullMarked
package slipday.change;

import org.jspecify.annotations.NullMarked;
