/** The chores of whole plans. */
@NullMarked
package slipday.season.chore;

import org.jspecify.annotations.NullMarked;
