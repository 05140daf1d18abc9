/** Checks of our files by readers that others wrote. */
@NullMarked
package slipday.outside;

import org.jspecify.annotations.NullMarked;
