package slipday.language;

import static slipday.language.Declaration.CROP;

import java.util.List;
import java.util.Set;

/** What is said of a crop besides its facts: where it belongs, and what else people call it. */
public final class KindClauses {
  public static final Clause OF =
      Clause.once(Set.of(CROP), "of: <species>", "The species it belongs to.", "of melon");
  public static final Clause ALSO_CALLED =
      Clause.many(
          Set.of(CROP),
          "also called: <name:word>[, (how: in <phrase:where> | as others are)]",
          "Another word for it. One that means no other crop anywhere stands alone and is taken for"
              + " its name; of one that means another elsewhere, say where; of one for several,"
              + " `as others are`: whoever writes such a word is asked which they mean.",
          "also called cantaloupe, in North America");

  static final List<Clause> ALL = List.of(OF, ALSO_CALLED);

  private KindClauses() {}
}
