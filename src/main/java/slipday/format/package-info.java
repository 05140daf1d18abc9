/** The canonical layout of a season file. */
@NullMarked
package slipday.format;

import org.jspecify.annotations.NullMarked;
