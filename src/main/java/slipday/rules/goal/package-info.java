/** Rules of what a line is bred for. */
@NullMarked
package slipday.rules.goal;

import org.jspecify.annotations.NullMarked;
