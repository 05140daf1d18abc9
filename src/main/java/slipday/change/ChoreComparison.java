package slipday.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slipday.season.Season;
import slipday.season.chore.Chore;
import slipday.season.chore.ChoreKind;
import slipday.season.chore.Chores;

/** Chores of two seasons, told apart by their keys and put together by kind and subject. */
final class ChoreComparison {
  private record Group(ChoreKind kind, String subject) {}

  private ChoreComparison() {}

  static List<Changes.Chores> of(Season before, Season after) {
    Map<Group, List<Chore>> was = grouped(before);
    Map<Group, List<Chore>> is = grouped(after);
    Set<Group> groups = new LinkedHashSet<>(is.keySet());
    groups.addAll(was.keySet());
    List<Changes.Chores> changes = new ArrayList<>();
    for (Group group : groups) {
      compared(group, was.getOrDefault(group, List.of()), is.getOrDefault(group, List.of()))
          .ifPresent(changes::add);
    }
    return changes;
  }

  private static Map<Group, List<Chore>> grouped(Season season) {
    Map<Group, List<Chore>> groups = new LinkedHashMap<>();
    for (Chore chore : Chores.of(season).chores()) {
      Group group = new Group(chore.kind(), chore.subject());
      groups.computeIfAbsent(group, g -> new ArrayList<>()).add(chore);
    }
    return groups;
  }

  private static Optional<Changes.Chores> compared(Group group, List<Chore> was, List<Chore> is) {
    Map<String, Chore> old = new LinkedHashMap<>();
    was.forEach(c -> old.put(c.key(), c));
    int kept = 0;
    int moved = 0;
    for (Chore chore : is) {
      Chore same = old.get(chore.key());
      if (same != null) {
        kept++;
        moved += day(same).equals(day(chore)) ? 0 : 1;
      }
    }
    int added = is.size() - kept;
    int withdrawn = was.size() - kept;
    if (added == 0 && withdrawn == 0 && moved == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Changes.Chores(
            group.kind,
            group.subject,
            was.size(),
            is.size(),
            added,
            withdrawn,
            moved,
            first(was),
            last(was),
            first(is),
            last(is)));
  }

  private static LocalDate day(Chore chore) {
    return chore.time().start().toLocalDate();
  }

  private static Optional<LocalDate> first(List<Chore> chores) {
    return chores.stream().map(ChoreComparison::day).min(LocalDate::compareTo);
  }

  private static Optional<LocalDate> last(List<Chore> chores) {
    return chores.stream().map(c -> c.time().lastDay()).max(LocalDate::compareTo);
  }
}
