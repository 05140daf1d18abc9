/** Tests of the mathematics of chance and inheritance against published tables. */
@NullMarked
package slipday.genetics;

import org.jspecify.annotations.NullMarked;
