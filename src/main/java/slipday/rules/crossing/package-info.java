/** Rules of whose pollen reaches whose flowers. */
@NullMarked
package slipday.rules.crossing;

import org.jspecify.annotations.NullMarked;
