/** What is to be done in the garden, when and how: the chores that follow from a season. */
@NullMarked
package slipday.season.chore;

import org.jspecify.annotations.NullMarked;
