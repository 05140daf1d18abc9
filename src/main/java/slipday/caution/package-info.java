/** What can hurt someone, in the words that every finding, chore, label and page says it in. */
@NullMarked
package slipday.caution;

import org.jspecify.annotations.NullMarked;
