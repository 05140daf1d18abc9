package slipday.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Every command by its name, made only when it is asked for. */
final class Commands {
  /** In the order of the help. */
  private static final List<String> NAMES =
      List.of(
          "check",
          "schedule",
          "bloom",
          "calendar",
          "report",
          "today",
          "sheet",
          "why",
          "explain",
          "descent",
          "record",
          "lots",
          "store",
          "tags",
          "labels",
          "odds",
          "segregation",
          "candidates",
          "choose",
          "progress",
          "next-season",
          "climate",
          "crops",
          "format",
          "changes",
          "language-server",
          "completion",
          "manual");

  private Commands() {}

  static Optional<Spec> named(String name, Streams streams) {
    return NAMES.contains(name) ? Optional.of(make(name, streams)) : Optional.empty();
  }

  private static Spec make(String name, Streams streams) {
    return switch (name) {
      case "check" -> CheckCommand.spec(streams);
      case "schedule" -> ScheduleCommand.spec(streams);
      case "bloom" -> BloomCommand.spec(streams);
      case "calendar" -> CalendarCommand.spec(streams);
      case "report" -> ReportCommand.spec(streams);
      case "today" -> TodayCommand.spec(streams);
      case "sheet" -> SheetCommand.spec(streams);
      case "why" -> WhyCommand.spec(streams);
      case "explain" -> ExplainCommand.spec(streams);
      case "descent" -> DescentCommand.spec(streams);
      case "record" -> RecordCommand.spec(streams);
      case "lots" -> LotsCommand.spec(streams);
      case "store" -> StoreCommand.spec(streams);
      case "tags" -> TagsCommand.spec(streams);
      case "labels" -> LabelsCommand.spec(streams);
      case "odds" -> OddsCommand.spec(streams);
      case "candidates" -> CandidatesCommand.spec(streams);
      case "choose" -> ChooseCommand.spec(streams);
      case "progress" -> ProgressCommand.spec(streams);
      case "segregation" -> SegregationCommand.spec(streams);
      case "next-season" -> NextSeasonCommand.spec(streams);
      case "climate" -> ClimateCommand.spec(streams);
      case "crops" -> CropsCommand.spec(streams);
      case "format" -> FormatCommand.spec(streams);
      case "changes" -> ChangesCommand.spec(streams);
      case "language-server" -> LanguageServerCommand.spec(streams);
      case "completion" -> CompletionCommand.spec(streams);
      case "manual" -> ManualCommand.spec(streams);
      default -> throw new IllegalStateException("no command " + name);
    };
  }

  static Map<String, Spec> all(Streams streams) {
    Map<String, Spec> all = new LinkedHashMap<>();
    NAMES.forEach(name -> all.put(name, make(name, streams)));
    return all;
  }
}
