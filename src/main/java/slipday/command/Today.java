package slipday.command;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** The one clock; where runs must repeat to the byte, SOURCE_DATE_EPOCH says when it is. */
final class Today {
  /** Where a day begins first. */
  private static final ZoneOffset EARLIEST = ZoneOffset.ofHours(14);

  private static final String DATE = "--date";

  private Today() {}

  static Instant now(Streams streams) {
    return isFixed(streams)
        ? Instant.ofEpochSecond(Long.parseLong(streams.env().get("SOURCE_DATE_EPOCH")))
        : Instant.now();
  }

  private static boolean isFixed(Streams streams) {
    String epoch = streams.env().getOrDefault("SOURCE_DATE_EPOCH", "");
    return !epoch.isEmpty() && epoch.matches("\\d{1,12}");
  }

  /**
   * The day {@code --date} says, or else today, where this machine is.
   *
   * @throws CommandFailure if that is no date
   */
  static LocalDate date(Args args, Streams streams) {
    return date(args, streams, DATE);
  }

  /**
   * The day an option says, or else today, where this machine is.
   *
   * @throws CommandFailure if that is no date
   */
  static LocalDate date(Args args, Streams streams, String option) {
    return args.has(option)
        ? asked(args, option)
        : LocalDate.ofInstant(
            now(streams), isFixed(streams) ? ZoneOffset.UTC : ZoneId.systemDefault());
  }

  /**
   * The last day that can have been: what is dated later is in the future. The day {@code --date}
   * says, or else the day it is where days begin first, since the garden may lie there.
   *
   * @throws CommandFailure if that is no date
   */
  static LocalDate latest(Args args, Streams streams) {
    return args.has(DATE) ? asked(args, DATE) : latest(streams);
  }

  /**
   * The same, but never before the real one: made for a day gone by, a page leaves out what came
   * later, and finds no fault with it.
   *
   * @throws CommandFailure if the option says no date
   */
  static LocalDate latest(Args args, Streams streams, String option) {
    LocalDate now = latest(streams);
    LocalDate day = date(args, streams, option);
    return day.isAfter(now) ? day : now;
  }

  static LocalDate latest(Streams streams) {
    return LocalDate.ofInstant(now(streams), EARLIEST);
  }

  private static LocalDate asked(Args args, String option) {
    String date = args.text(option, "");
    try {
      return LocalDate.parse(date);
    } catch (DateTimeException e) {
      throw new CommandFailure(
          option + " takes a day such as 2026-07-15, and not `" + date + "`.",
          "Write year, month and day.");
    }
  }
}
