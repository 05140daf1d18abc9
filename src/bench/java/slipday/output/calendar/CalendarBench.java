package slipday.output.calendar;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import slipday.measure.Reason;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreBook;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.ChoreTime;
import slipday.source.Source;

/**
 * A calendar of 10,000 events: written anew, brought up to date where nothing and where every event
 * has changed, and beside them the library's bare writing of events it already holds.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CalendarBench {
  private static final int EVENTS = 10_000;
  private static final CalendarOptions OPTIONS =
      new CalendarOptions(false, Instant.parse("2026-02-01T00:00:00Z"));

  private ChoreBook book = book(0);
  private ChoreBook dayLater = book(1);
  private Optional<Source> earlier = Optional.empty();
  private Calendar held = new Calendar();

  @Setup
  public void write() throws IOException, ParserException {
    String text = anew().orElseThrow();
    earlier = Optional.of(Source.of("season.ics", text));
    held = new CalendarBuilder().build(new StringReader(text));
  }

  @Benchmark
  public Optional<String> anew() {
    return CalendarWriter.write(book, Optional.empty(), OPTIONS).value();
  }

  @Benchmark
  public Optional<String> nothingChanged() {
    return CalendarWriter.write(book, earlier, OPTIONS).value();
  }

  @Benchmark
  public Optional<String> everythingADayLater() {
    return CalendarWriter.write(dayLater, earlier, OPTIONS).value();
  }

  @Benchmark
  public String bareWriting() throws IOException {
    StringWriter out = new StringWriter();
    new CalendarOutputter(false).output(held, out);
    return out.toString();
  }

  private static ChoreBook book(int daysLater) {
    List<Chore> chores = new ArrayList<>();
    for (int i = 0; i < EVENTS; i++) {
      chores.add(chore(i, LocalDate.of(2026, 5, 1).plusDays(daysLater + i % 120)));
    }
    return new ChoreBook(
        "2026",
        "quince-end",
        "Quince End",
        ZoneId.of("America/New_York"),
        LocalDate.of(2026, 1, 1),
        chores);
  }

  private static Chore chore(int i, LocalDate day) {
    LocalDateTime dusk = day.atTime(20, 35);
    ChoreKind kind = i % 2 == 0 ? ChoreKind.COVER : ChoreKind.CHECK_TAKE;
    ChoreTime time =
        i % 2 == 0 ? new ChoreTime.Hours(dusk, dusk.plusMinutes(35)) : ChoreTime.on(day);
    return new Chore(
        kind,
        "planting-" + i,
        "planting-" + i + ":" + kind.id(),
        "Cover tonight: 3 flowers for planting-" + i,
        time,
        List.of(
            "Bag 3 perfect flowers that open tomorrow, and 6 to 9 males of the same plants.",
            "Tomorrow's bud: small and green-yellow, hardly coloured; it has loosened at its tip.",
            "The bag must keep out the smallest bee and be tied round the stalk."),
        List.of(),
        Reason.byDefault("made for measuring"));
  }
}
