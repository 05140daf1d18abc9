/** From text to lines of words with exact places. The only user of the generated parser. */
@NullMarked
package slipday.syntax;

import org.jspecify.annotations.NullMarked;
