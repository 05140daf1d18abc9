/** Tests of mixed models. */
@NullMarked
package slipday.genetics.mixed;

import org.jspecify.annotations.NullMarked;
