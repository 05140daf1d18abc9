package slipday.language;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import slipday.syntax.Word;

/** The one table of clauses. Parser, messages, format and the reference page all read it. */
public final class Clauses {
  private static final List<Clause> ALL =
      Stream.of(
              PlanClauses.ALL, GoalClauses.ALL, KindClauses.ALL, CropClauses.ALL, RecordClauses.ALL)
          .flatMap(List::stream)
          .toList();
  private static final Map<Declaration, List<Clause>> UNDER = byDeclaration();
  private static final Map<Declaration, Map<String, List<Clause>>> BY_FIRST_WORD = index();
  private static final Map<String, List<Clause>> DATED = byFirstWord(RecordClauses.ALL);

  private Clauses() {}

  public static List<Clause> all() {
    return ALL;
  }

  public static List<Clause> under(Declaration declaration) {
    return UNDER.getOrDefault(declaration, List.of());
  }

  private static Map<Declaration, List<Clause>> byDeclaration() {
    Map<Declaration, List<Clause>> under = new EnumMap<>(Declaration.class);
    for (Declaration d : Declaration.values()) {
      under.put(d, ALL.stream().filter(c -> c.where().contains(d)).toList());
    }
    return under;
  }

  private static Map<Declaration, Map<String, List<Clause>>> index() {
    Map<Declaration, Map<String, List<Clause>>> index = new EnumMap<>(Declaration.class);
    for (Declaration declaration : Declaration.values()) {
      index.put(declaration, byFirstWord(under(declaration)));
    }
    return index;
  }

  private static Map<String, List<Clause>> byFirstWord(List<Clause> clauses) {
    Map<String, List<Clause>> byWord = new HashMap<>();
    for (Clause clause : clauses) {
      byWord.computeIfAbsent(clause.words().get(0), w -> new ArrayList<>()).add(clause);
    }
    byWord
        .values()
        .forEach(list -> list.sort((a, b) -> Integer.compare(b.words().size(), a.words().size())));
    return byWord;
  }

  /** The clause a line begins with: the one of most words that fits. */
  public static Optional<Clause> of(Declaration declaration, List<Word> words) {
    return Optional.ofNullable(longest(BY_FIRST_WORD.getOrDefault(declaration, Map.of()), words));
  }

  /** The clause a line of the record begins with, its date left off. */
  public static Optional<Clause> dated(List<Word> words) {
    return Optional.ofNullable(longest(DATED, words));
  }

  private static @Nullable Clause longest(Map<String, List<Clause>> byWord, List<Word> words) {
    String first = words.get(0).text();
    List<Clause> candidates = byWord.get(first);
    if (candidates == null) {
      candidates = byWord.getOrDefault(first.toLowerCase(Locale.ROOT), List.of());
    }
    for (Clause clause : candidates) {
      if (begins(clause, words)) {
        return clause;
      }
    }
    return null;
  }

  private static boolean begins(Clause clause, List<Word> words) {
    if (clause.words().size() > words.size()) {
      return false;
    }
    for (int i = 0; i < clause.words().size(); i++) {
      if (!words.get(i).isWord(clause.words().get(i))) {
        return false;
      }
    }
    return true;
  }
}
