package slipday.output.calendar;

import java.time.Instant;

/**
 * @param tasks chores as tasks to tick off (VTODO) instead of events (VEVENT)
 * @param stamp when the file is written: what changes against an earlier file is stamped with it,
 *     and what ended on an earlier day is left as it was
 */
public record CalendarOptions(boolean tasks, Instant stamp) {}
