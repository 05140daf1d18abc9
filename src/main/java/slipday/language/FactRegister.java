package slipday.language;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;

/** The clauses that state a fact of a crop, in the order of their table. */
final class FactRegister {
  private static final List<Clause> REGISTER = new ArrayList<>();
  private static final Set<Clause> FACTS = Collections.newSetFromMap(new IdentityHashMap<>());

  private FactRegister() {}

  /** A fact that is told once of a kind. */
  static Clause fact(Set<Declaration> where, String line, String sentence, String example) {
    return registered(Clause.once(where, line, sentence, example));
  }

  /** A fact of which there can be several. */
  static Clause facts(Set<Declaration> where, String line, String sentence, String example) {
    return registered(Clause.many(where, line, sentence, example));
  }

  private static Clause registered(Clause clause) {
    REGISTER.add(clause);
    FACTS.add(clause);
    return clause;
  }

  static List<Clause> all() {
    return List.copyOf(REGISTER);
  }

  /** Whether a clause states a fact of a crop, which may name its source. */
  static boolean isFact(Clause clause) {
    return FACTS.contains(clause);
  }
}
