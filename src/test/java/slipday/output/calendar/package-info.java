/** Calendars read back, by the library that wrote them and by readers of others. */
@NullMarked
package slipday.output.calendar;

import org.jspecify.annotations.NullMarked;
