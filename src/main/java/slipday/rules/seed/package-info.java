/** Rules of the seed sown and the seed kept. */
@NullMarked
package slipday.rules.seed;

import org.jspecify.annotations.NullMarked;
