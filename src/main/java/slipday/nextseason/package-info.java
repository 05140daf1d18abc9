/** Next season's plan, out of this season's lots, its record and its beds. */
@NullMarked
package slipday.nextseason;

import org.jspecify.annotations.NullMarked;
