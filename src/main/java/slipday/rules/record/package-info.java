/** Rules of what the record says was done: seed kept that should not be, and what is not proved. */
@NullMarked
package slipday.rules.record;

import org.jspecify.annotations.NullMarked;
