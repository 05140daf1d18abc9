/** Tests of the rules, their pages and their cases. */
@NullMarked
package slipday.rules;

import org.jspecify.annotations.NullMarked;
