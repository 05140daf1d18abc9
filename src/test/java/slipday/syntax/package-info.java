/** That lines are what the grammar says. */
@NullMarked
package slipday.syntax;

import org.jspecify.annotations.NullMarked;
