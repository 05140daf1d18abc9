/** Tests of candidates and their values. */
@NullMarked
package slipday.choice;

import org.jspecify.annotations.NullMarked;
