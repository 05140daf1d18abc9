/** Rules of hand pollination and crosses. */
@NullMarked
package slipday.rules.pollination;

import org.jspecify.annotations.NullMarked;
