/** Tests of the outputs. */
@NullMarked
package slipday.output;

import org.jspecify.annotations.NullMarked;
