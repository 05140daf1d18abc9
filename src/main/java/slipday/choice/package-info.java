/** What was measured, corrected and valued: the candidates for the next generation. */
@NullMarked
package slipday.choice;

import org.jspecify.annotations.NullMarked;
