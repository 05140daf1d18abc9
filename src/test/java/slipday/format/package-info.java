/** The canonical layout: what it looks like, and what it must not touch. */
@NullMarked
package slipday.format;

import org.jspecify.annotations.NullMarked;
