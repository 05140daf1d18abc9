/** Tests of the choice of parents against every choice there is. */
@NullMarked
package slipday.genetics.parents;

import org.jspecify.annotations.NullMarked;
