package slipday.season.chore;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.apache.commons.lang3.Strings;
import slipday.measure.Reason;

/**
 * One round through the garden for what is done on the same evening or morning: an evening's covers
 * are one chore with a list, however many plantings they are on. A round is known by its day, so
 * that what was ticked off on one is never taken for another's: rounds come and go, and a number of
 * the season would pass from one to the next.
 */
public final class Gathering {
  private static final int NAMED_IN_FULL = 2;

  private static final Map<ChoreKind, String> BEGIN = new EnumMap<>(ChoreKind.class);

  static {
    BEGIN.put(ChoreKind.REMOVE_ANTHERS, "Anthers off: ");
    BEGIN.put(ChoreKind.COVER, "Cover tonight: ");
    BEGIN.put(ChoreKind.POLLINATE, "Pollinate ");
    BEGIN.put(ChoreKind.CHECK_TAKE, "Check the take of ");
  }

  private Gathering() {}

  /** What the title of such a chore begins with. */
  static String begin(ChoreKind kind) {
    return BEGIN.getOrDefault(kind, "");
  }

  /** The same chores, those of one round together. */
  public static ChoreBook of(ChoreBook book) {
    Map<ChoreKind, Map<LocalDate, List<Chore>>> rounds = new EnumMap<>(ChoreKind.class);
    List<Chore> all = new ArrayList<>();
    for (Chore chore : book.chores()) {
      if (BEGIN.containsKey(chore.kind())) {
        rounds
            .computeIfAbsent(chore.kind(), k -> new TreeMap<>())
            .computeIfAbsent(chore.time().start().toLocalDate(), d -> new ArrayList<>())
            .add(chore);
      } else {
        all.add(chore);
      }
    }
    rounds
        .values()
        .forEach(days -> days.forEach((day, round) -> all.add(gathered(book.site(), day, round))));
    return new ChoreBook(
        book.season(), book.site(), book.title(), book.zone(), book.firstDay(), all);
  }

  private static Chore gathered(String site, LocalDate day, List<Chore> round) {
    ChoreKind kind = round.get(0).kind();
    Map<String, String> parts = new LinkedHashMap<>();
    round.forEach(c -> parts.put(c.subject(), Strings.CS.removeStart(c.title(), begin(kind))));
    String title =
        begin(kind)
            + (parts.size() <= NAMED_IN_FULL
                ? String.join(" and ", parts.values())
                : String.join(", ", parts.keySet()));
    ChoreTime time = round.stream().map(Chore::time).reduce(Gathering::both).orElseThrow();
    Set<String> cautions = new LinkedHashSet<>();
    round.forEach(c -> cautions.addAll(c.cautions()));
    return new Chore(
        kind,
        parts.size() == 1 ? round.get(0).subject() : site,
        "round:" + kind.id() + ":" + day,
        title,
        time,
        description(round),
        List.copyOf(cautions),
        Reason.derived(
            title + ": " + Words.when(time) + ".", round.stream().map(Chore::reason).toList()));
  }

  private static ChoreTime both(ChoreTime a, ChoreTime b) {
    if (a instanceof ChoreTime.Hours one && b instanceof ChoreTime.Hours other) {
      return new ChoreTime.Hours(earlier(one, other), later(one, other));
    }
    return a;
  }

  private static LocalDateTime earlier(ChoreTime.Hours a, ChoreTime.Hours b) {
    return a.from().isBefore(b.from()) ? a.from() : b.from();
  }

  private static LocalDateTime later(ChoreTime.Hours a, ChoreTime.Hours b) {
    return a.to().isAfter(b.to()) ? a.to() : b.to();
  }

  /** How each is done: what is said of all once, and what of some with whose it is. */
  private static List<String> description(List<Chore> round) {
    List<String> all = new ArrayList<>();
    if (round.stream().map(Chore::time).distinct().count() > 1) {
      all.add(hours(round));
    }
    int longest = round.stream().mapToInt(c -> c.description().size()).max().orElse(0);
    Set<String> told = new HashSet<>();
    for (int i = 0; i < longest; i++) {
      int at = i;
      round.stream()
          .filter(c -> c.description().size() > at)
          .map(c -> c.description().get(at))
          .filter(told::add)
          .forEach(p -> all.add(whose(p, round)));
    }
    return all;
  }

  /** {@code 05:15 to 10:55: oak-stair-2024; 06:15 to 10:55: ropewalk-2023, tern-amber-f3.} */
  private static String hours(List<Chore> round) {
    Map<ChoreTime, List<String>> names = new LinkedHashMap<>();
    round.forEach(c -> names.computeIfAbsent(c.time(), t -> new ArrayList<>()).add(c.subject()));
    return names.entrySet().stream()
        .map(e -> Words.hours(e.getKey()) + ": " + String.join(", ", e.getValue()))
        .collect(Collectors.joining("; ", "", "."));
  }

  private static String whose(String paragraph, List<Chore> round) {
    List<String> names =
        round.stream()
            .filter(c -> c.description().contains(paragraph))
            .map(Chore::subject)
            .distinct()
            .toList();
    boolean ofAll = round.stream().map(Chore::subject).distinct().count() == names.size();
    return ofAll || paragraph.contains(names.get(0))
        ? paragraph
        : String.join(", ", names) + ": " + paragraph;
  }
}
