/** The mathematics of chance and inheritance: no dates, no text. */
@NullMarked
package slipday.genetics;

import org.jspecify.annotations.NullMarked;
