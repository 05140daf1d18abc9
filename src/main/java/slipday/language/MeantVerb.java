package slipday.language;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.syntax.Line;
import slipday.syntax.Word;

/** What a line was meant to record that begins with no verb the record knows. */
final class MeantVerb {
  /** What gardeners say for what the record has a word of its own for. */
  private static final Map<String, List<Clause>> SAID_FOR =
      Map.ofEntries(
          Map.entry("sown", List.of(RecordClauses.SOWED)),
          Map.entry("seeded", List.of(RecordClauses.SOWED)),
          Map.entry("up", List.of(RecordClauses.EMERGED)),
          Map.entry("sprouted", List.of(RecordClauses.EMERGED)),
          Map.entry("transplanted", List.of(RecordClauses.PLANTED_OUT, RecordClauses.POTTED_ON)),
          Map.entry("flowers", List.of(RecordClauses.FIRST_MALE, RecordClauses.FIRST_FRUITING)),
          Map.entry("flowered", List.of(RecordClauses.FIRST_MALE, RecordClauses.FIRST_FRUITING)),
          Map.entry("bagged", List.of(RecordClauses.COVERED)),
          Map.entry("taped", List.of(RecordClauses.COVERED)),
          Map.entry(
              "pollinated",
              List.of(RecordClauses.SELFED, RecordClauses.SIBBED, RecordClauses.CROSSED)),
          Map.entry("set", List.of(RecordClauses.TOOK)),
          Map.entry("aborted", List.of(RecordClauses.FAILED)),
          Map.entry("eaten", List.of(RecordClauses.LOST)),
          Map.entry("harvested", List.of(RecordClauses.PICKED)),
          Map.entry("cut", List.of(RecordClauses.PICKED)),
          Map.entry("germinated", List.of(RecordClauses.EMERGED, RecordClauses.GERMINATION)));

  private MeantVerb() {}

  /**
   * The finding with a sentence or two for the line after its date, and what to write in the place
   * of the marked words.
   */
  static Finding helped(Finding unknown, Line rest, Optional<UnknownLine.Near> near) {
    if (near.isPresent()) {
      return near.get().helped(unknown);
    }
    Word first = rest.first();
    List<Clause> begun =
        RecordClauses.ALL.stream().filter(c -> first.isWord(c.words().get(0))).toList();
    List<Clause> meant = begun.isEmpty() ? saidFor(first) : begun;
    if (!meant.isEmpty()) {
      Finding finding = unknown.withHelp(meant(meant));
      for (Clause clause : begun.isEmpty() ? meant : List.<Clause>of()) {
        finding = finding.writing(clause.name());
      }
      return finding;
    }
    return IntStream.range(1, rest.words().size())
        .mapToObj(i -> rest.words().subList(i, rest.words().size()))
        .flatMap(
            words ->
                Clauses.dated(words).map(List::of).orElseGet(() -> saidFor(words.get(0))).stream())
        .findFirst()
        .map(
            c ->
                unknown.withHelp(
                    "What was done stands before what it was done to: `" + c.example() + "`."))
        .orElseGet(
            () ->
                unknown.nearest(
                    first.text(), RecordClauses.ALL.stream().map(Clause::name).toList(), "verb"));
  }

  private static List<Clause> saidFor(Word word) {
    return SAID_FOR.getOrDefault(word.text().toLowerCase(Locale.ROOT), List.of());
  }

  private static String meant(List<Clause> clauses) {
    return Nearest.meant(clauses.stream().map(Clause::name).toList())
        + " For example: `"
        + clauses.get(0).example()
        + "`.";
  }
}
