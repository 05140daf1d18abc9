package slipday.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;

/** Every command by its name, made only when it is asked for. */
final class Commands {
  private static final Map<String, Function<Streams, Callable<Integer>>> BY_NAME = byName();

  private Commands() {}

  private static Map<String, Function<Streams, Callable<Integer>>> byName() {
    Map<String, Function<Streams, Callable<Integer>>> commands = new LinkedHashMap<>();
    commands.put("check", CheckCommand::new);
    commands.put("schedule", ScheduleCommand::new);
    commands.put("bloom", BloomCommand::new);
    commands.put("calendar", CalendarCommand::new);
    commands.put("why", WhyCommand::new);
    commands.put("climate", ClimateCommand::new);
    commands.put("crops", CropsCommand::new);
    commands.put("format", FormatCommand::new);
    commands.put("completion", CompletionCommand::new);
    return commands;
  }

  static Optional<Callable<Integer>> named(String name, Streams streams) {
    return Optional.ofNullable(BY_NAME.get(name)).map(make -> make.apply(streams));
  }

  static Map<String, Callable<Integer>> all(Streams streams) {
    Map<String, Callable<Integer>> all = new LinkedHashMap<>();
    BY_NAME.forEach((name, make) -> all.put(name, make.apply(streams)));
    return all;
  }
}
