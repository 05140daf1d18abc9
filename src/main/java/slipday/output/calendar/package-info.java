/** The season's chores as an iCalendar file, and how a file from before is brought up to date. */
@NullMarked
package slipday.output.calendar;

import org.jspecify.annotations.NullMarked;
