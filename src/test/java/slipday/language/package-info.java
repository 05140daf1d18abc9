/** The table of clauses against texts: what binds, and what is said of what does not. */
@NullMarked
package slipday.language;

import org.jspecify.annotations.NullMarked;
