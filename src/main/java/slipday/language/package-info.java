/** The one table of clauses: what a line may say, and what it then means. */
@NullMarked
package slipday.language;

import org.jspecify.annotations.NullMarked;
