/** Texts and places in them. */
@NullMarked
package slipday.source;

import org.jspecify.annotations.NullMarked;
