package slipday.garden;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import slipday.finding.Finding;
import slipday.language.Block;
import slipday.language.Value;
import slipday.syntax.Word;
import slipday.syntax.WordKind;

/** The names of one kind of thing, and what is said when one is not known or comes twice. */
final class Names<T extends Named> {
  private final String kind;
  private final List<Finding> findings;
  private final Map<String, T> known = new LinkedHashMap<>();
  private final Set<String> spoilt = new HashSet<>();

  Names(String kind, List<Finding> findings) {
    this.kind = kind;
    this.findings = findings;
  }

  /** Keeps a thing under its name, unless another has it. */
  void add(T thing) {
    T first = known.putIfAbsent(thing.name(), thing);
    if (first != null) {
      findings.add(
          Finding.error(
                  "name-twice",
                  thing.span(),
                  "There are two " + plural() + " called `" + thing.name() + "`.")
              .labelled("declared again")
              .also(first.span(), "declared first")
              .withHelp("Give one of them another name."));
    }
  }

  void replace(T thing) {
    known.put(thing.name(), thing);
  }

  /** A thing whose own lines are mistaken: its name is known, so that users of it stay silent. */
  void addSpoilt(Block block, String name) {
    block.head().filter(h -> h.has(name)).ifPresent(h -> spoilt.add(h.name(name).text()));
  }

  /** A thing whose name is in several words, or else mistaken: it may be meant by these joined. */
  void addMisnamed(Block block) {
    String name = "";
    for (Word word : block.line().words().subList(1, block.line().words().size())) {
      if (!word.is(WordKind.WORD) && !word.is(WordKind.MIXED) && !word.is(WordKind.NUMBER)) {
        return;
      }
      name = name.isEmpty() ? word.text() : name + "-" + word.text();
      spoilt.add(name);
    }
  }

  /** A name that something mistaken would have had. */
  void addSpoilt(String name) {
    spoilt.add(name);
  }

  boolean isSpoilt(String name) {
    return spoilt.contains(name);
  }

  private String plural() {
    return kind.equals("cross") ? "crosses" : kind.equals("species") ? kind : kind + "s";
  }

  Optional<T> find(String name) {
    return Optional.ofNullable(known.get(name));
  }

  /** The thing a name means; if there is none, that is said at the place of the name. */
  Optional<T> need(Value.Name name) {
    return need(name, unknown -> unknown.nearest(name.text(), declared(), kind));
  }

  /** All names there are, those of mistaken things among them. */
  private Set<String> declared() {
    Set<String> all = new LinkedHashSet<>(known.keySet());
    all.addAll(spoilt);
    return all;
  }

  /**
   * The same with help of another sort.
   *
   * @param helped puts the help on the finding that there is no such thing
   */
  Optional<T> need(Value.Name name, UnaryOperator<Finding> helped) {
    T found = known.get(name.text());
    if (found == null && !spoilt.contains(name.text())) {
      findings.add(
          helped.apply(
              Finding.error(
                  "unknown-name", name.span(), "There is no " + kind + " `" + name.text() + "`.")));
    }
    return Optional.ofNullable(found);
  }

  List<T> all() {
    return List.copyOf(known.values());
  }

  Map<String, T> map() {
    return known;
  }
}
