/** The rules a plan is judged by: one class a rule, the catalogue, the checker and allowances. */
@NullMarked
package slipday.rules;

import org.jspecify.annotations.NullMarked;
