package slipday.descent;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slipday.garden.Lot;
import slipday.garden.record.Fact;

/** What a descent rests on that nobody recorded; each kind is told once, with all it concerns. */
final class Assumptions {
  private final Set<String> founders = new LinkedHashSet<>();
  private boolean several;
  private final Map<String, Set<String>> named = new LinkedHashMap<>();

  /** A founder; lines, lots and plants of one lot that nobody says are akin. */
  void founder(String name) {
    several |= !founders.isEmpty();
    founders.add(name);
  }

  void unknownInbreeding(Lot lot) {
    add("How inbred plants of % are is not told; they are taken as not inbred at all.", lot);
  }

  void inbred(Lot lot) {
    add("Plants of % are taken as fully inbred and alike, as the label says.", lot);
  }

  void standIns(Lot lot, String label) {
    add(
        "% says "
            + label
            + " and its ancestors are not recorded: stand-ins take their place; all of its plants"
            + " are taken as of one plant of the generation before.",
        lot);
  }

  void standInsOfBulk(Lot lot, String label) {
    add(
        "% says "
            + label
            + " and its ancestors are not recorded: stand-ins take their place; its plants are of a"
            + " bulk, each taken as of a descent of its own since the cross.",
        lot);
  }

  void probable(Lot lot, String likely) {
    add("% is probably " + likely + ", and is taken as that.", lot);
  }

  void unknownInbreedingOfParents(Lot lot) {
    add(
        "How inbred the parents of the cross are that % comes from is not told; they are taken as"
            + " not inbred at all.",
        lot);
  }

  void isolated(Lot lot) {
    String why = lot.isolated().map(r -> ": " + r.says()).orElse("");
    add(
        "% is of open flowers among its own kind alone"
            + why
            + "; its pollen parent is taken as a plant of the block not used elsewhere.",
        lot);
  }

  void parentsInbred(Lot lot) {
    add("The parents of the cross that % comes from are taken as fully inbred.", lot);
  }

  void open(Lot lot) {
    add(
        "The pollen parent of % is unknown; it is taken as unrelated and another for each plant,"
            + " so inbreeding may be more than is said.",
        lot);
  }

  void doubtful(String seed) {
    add("It is not proved of % whether it is a cross or a self; it is taken as the cross.", seed);
  }

  void mixed(Lot lot) {
    add("Some plants of % proved to be selfed and some crossed; all are taken as crossed.", lot);
  }

  void bulk(Lot lot, boolean counted) {
    add(
        counted
            ? "% is of several fruits; its figures are means over them by their seed."
            : "% is of several fruits, not all counted; its figures are means, each fruit alike.",
        lot);
  }

  void failed(Fact.SetChecked set) {
    add("% failed on " + set.date() + ": there is no seed of it.", "`" + set.fruit().tag() + "`");
  }

  void unnumbered(String fruit) {
    add(
        "The record names no one plant as parent of %; it is taken as a plant not used elsewhere.",
        fruit.replace(" (pollen)", ""));
  }

  private void add(String sentence, Lot lot) {
    add(sentence, "`" + lot.name() + "`");
  }

  private void add(String sentence, String name) {
    named.computeIfAbsent(sentence, s -> new LinkedHashSet<>()).add(name);
  }

  List<String> sentences() {
    List<String> all = new ArrayList<>();
    if (several) {
      all.add("Founders are taken as not related to one another: " + listed(founders) + ".");
    }
    named.forEach((sentence, names) -> all.add(told(sentence, names)));
    return all;
  }

  /** A sentence about one speaks of several when it is told of several. */
  private static String told(String sentence, Set<String> names) {
    String of =
        names.size() > 1 && sentence.startsWith("%")
            ? sentence
                .replaceFirst("^% is ", "% are ")
                .replaceFirst("^% says ", "% say ")
                .replace(" and is ", " and are ")
                .replace(" its ", " their ")
            : sentence;
    return of.replace("%", listed(names));
  }

  private static String listed(Collection<String> names) {
    List<String> all = List.copyOf(names);
    return all.size() == 1
        ? all.get(0)
        : String.join(", ", all.subList(0, all.size() - 1)) + " and " + all.get(all.size() - 1);
  }
}
