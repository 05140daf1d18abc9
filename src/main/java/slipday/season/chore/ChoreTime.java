package slipday.season.chore;

import java.time.LocalDate;
import java.time.LocalDateTime;

/** When a chore is to be done: on whole days, or between two hours by the garden's clock. */
public sealed interface ChoreTime {
  /** When it begins; midnight for whole days. */
  LocalDateTime start();

  /** The last day on which it is done. */
  LocalDate lastDay();

  static ChoreTime on(LocalDate day) {
    return new Days(day, day);
  }

  /** From a day to another, both included. */
  record Days(LocalDate first, LocalDate last) implements ChoreTime {
    public Days {
      if (last.isBefore(first)) {
        throw new IllegalArgumentException(first + " to " + last + " runs backwards");
      }
    }

    @Override
    public LocalDateTime start() {
      return first.atStartOfDay();
    }

    @Override
    public LocalDate lastDay() {
      return last;
    }
  }

  /** Between two hours by the clock of the site's zone. */
  record Hours(LocalDateTime from, LocalDateTime to) implements ChoreTime {
    public Hours {
      if (!from.isBefore(to)) {
        throw new IllegalArgumentException(from + " to " + to + " takes no time");
      }
    }

    @Override
    public LocalDateTime start() {
      return from;
    }

    @Override
    public LocalDate lastDay() {
      return to.toLocalDate();
    }
  }
}
