package slipday.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;

/** Every command by its name, made only when it is asked for. */
final class Commands {
  private static final Map<String, Function<Streams, CommandSpec>> BY_NAME = byName();

  private Commands() {}

  private static Map<String, Function<Streams, CommandSpec>> byName() {
    Map<String, Function<Streams, CommandSpec>> commands = new LinkedHashMap<>();
    commands.put("check", CheckCommand::spec);
    commands.put("schedule", ScheduleCommand::spec);
    commands.put("bloom", BloomCommand::spec);
    commands.put("calendar", CalendarCommand::spec);
    commands.put("report", ReportCommand::spec);
    commands.put("today", TodayCommand::spec);
    commands.put("why", WhyCommand::spec);
    commands.put("explain", ExplainCommand::spec);
    commands.put("descent", DescentCommand::spec);
    commands.put("record", RecordCommand::spec);
    commands.put("lots", LotsCommand::spec);
    commands.put("tags", TagsCommand::spec);
    commands.put("odds", OddsCommand::spec);
    commands.put("segregation", SegregationCommand::spec);
    commands.put("climate", ClimateCommand::spec);
    commands.put("crops", CropsCommand::spec);
    commands.put("format", FormatCommand::spec);
    commands.put("changes", ChangesCommand::spec);
    commands.put("completion", CompletionCommand::spec);
    commands.put("manual", ManualCommand::spec);
    return commands;
  }

  static Optional<CommandSpec> named(String name, Streams streams) {
    return Optional.ofNullable(BY_NAME.get(name)).map(make -> make.apply(streams));
  }

  static Map<String, CommandSpec> all(Streams streams) {
    Map<String, CommandSpec> all = new LinkedHashMap<>();
    BY_NAME.forEach((name, make) -> all.put(name, make.apply(streams)));
    return all;
  }
}
