package slipday.garden;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import slipday.finding.Finding;
import slipday.finding.Nearest;
import slipday.measure.Listed;

/**
 * What people call crops besides their names. A word that means one crop alone is taken for its
 * name; of one that means several, here or there, it is asked which, since a wrong guess would
 * bring wrong figures without anybody noticing. A crop's own name comes before any other word, and
 * what a plan calls a crop before what the crop files do.
 */
final class CropWords {
  private static final int MOST_LISTED = 8;
  private static final String LISTS_ALL = " `slipday crops` lists them all.";

  private final Map<String, Crop> crops;
  private final Map<String, List<Claim>> claims = new LinkedHashMap<>();

  /** That a crop is called by a word. */
  private record Claim(Crop crop, OtherName name) {
    boolean ofPlan() {
      return !name.span().source().isBuiltIn();
    }

    String told() {
      String where = name.where().isEmpty() ? "" : " (in " + name.where() + ")";
      return "`" + crop.name() + "`" + where;
    }
  }

  CropWords(Map<String, Crop> crops) {
    this.crops = crops;
    for (Crop crop : crops.values()) {
      for (OtherName name : crop.otherNames()) {
        claims.computeIfAbsent(name.word(), w -> new ArrayList<>()).add(new Claim(crop, name));
      }
    }
  }

  /** The crop that a word alone means. */
  Optional<Crop> alone(String word) {
    for (Claim claim : inForce(word)) {
      if (claim.name.alone()) {
        return Optional.of(claim.crop);
      }
    }
    return Optional.empty();
  }

  private List<Claim> inForce(String word) {
    List<Claim> all = claims.getOrDefault(word, List.of());
    List<Claim> ofPlan = all.stream().filter(Claim::ofPlan).toList();
    return ofPlan.isEmpty() ? all : ofPlan;
  }

  /** Words that are said of two crops, though one is said of it alone; and names of others. */
  void check(List<Finding> findings) {
    claims.forEach((word, all) -> check(word, inForce(word), findings));
  }

  private void check(String word, List<Claim> all, List<Finding> findings) {
    Crop named = crops.get(word);
    Claim first = all.get(0);
    if (named != null) {
      if (first.ofPlan() || named.span().source().isBuiltIn()) {
        findings.add(
            Finding.error(
                    "name-twice",
                    first.name.span(),
                    "`" + word + "` is the name of a crop already.")
                .labelled("called so, too")
                .also(named.span(), "the crop of that name")
                .withHelp("Leave the line out, or give the crop another word."));
      }
      return;
    }
    for (Claim other : all) {
      boolean differs = !other.crop.name().equals(first.crop.name());
      if (differs && (first.name.alone() || other.name.alone())) {
        findings.add(
            Finding.error(
                    "name-twice",
                    other.name.span(),
                    "Two crops are called `" + word + "`, and one of them alone.")
                .labelled("`" + other.crop.name() + "` is called so")
                .also(first.name.span(), "`" + first.crop.name() + "` is called so")
                .withHelp(
                    "Leave one of them out, or say of each where it is called so:"
                        + " `also called "
                        + word
                        + ", in SOMEWHERE`."));
        return;
      }
    }
  }

  /** Help for a name that no crop has. */
  Finding helped(Finding unknown, String name) {
    Hint hint = hint(name, List.of());
    Finding helped = unknown.withHelp(hint.help);
    for (String word : hint.meant) {
      helped = helped.writing(word);
    }
    return helped;
  }

  /**
   * What to tell of a name.
   *
   * @param meant the names that could stand in its place
   */
  record Hint(String help, List<String> meant) {
    static Hint of(String word) {
      return new Hint(Nearest.meant(word), List.of(word));
    }
  }

  /**
   * @param others names besides those of crops that would do
   */
  Hint hint(String name, Collection<String> others) {
    List<String> ofSpecies = new ArrayList<>();
    for (Crop crop : crops.values()) {
      if (crop.species().name().equalsIgnoreCase(name)) {
        ofSpecies.add("`" + crop.name() + "`");
      }
    }
    if (!ofSpecies.isEmpty()) {
      return new Hint(
          "`" + name + "` is a species; its crops are " + String.join(", ", ofSpecies) + ".",
          List.of());
    }
    Collection<String> named = new TreeSet<>(crops.keySet());
    named.addAll(others);
    Collection<String> known = new TreeSet<>(claims.keySet());
    known.addAll(named);
    Optional<String> near = Nearest.to(name, known);
    if (near.isEmpty()) {
      near = beginning(name, known);
    }
    if (near.isPresent()) {
      boolean asked = !named.contains(near.get()) && alone(near.get()).isEmpty();
      return asked ? which(near.get()) : Hint.of(near.get());
    }
    String listed = Nearest.listed(name, named, "crop", "slipday crops");
    return new Hint(ending(name).map(e -> e + LISTS_ALL).orElse(listed), List.of());
  }

  private Hint which(String word) {
    List<Claim> may = inForce(word);
    List<String> told = may.stream().limit(MOST_LISTED).map(Claim::told).toList();
    String more = may.size() > MOST_LISTED ? ", or " + (may.size() - MOST_LISTED) + " more" : "";
    String asks = may.size() == 1 ? ": if it is, write that." : ": write which.";
    return new Hint(
        "`" + word + "` may be " + Listed.either(told) + more + asks,
        may.stream().map(c -> c.crop.name()).toList());
  }

  /**
   * The known word that a name begins with, joined to what kind of thing it is: {@code butternut}
   * of {@code butternut-squash}.
   */
  private static Optional<String> beginning(String name, Collection<String> known) {
    for (int end = name.lastIndexOf('-'); end > 0; end = name.lastIndexOf('-', end - 1)) {
      String before = name.substring(0, end).toLowerCase(Locale.ROOT);
      if (known.contains(before)) {
        return Optional.of(before);
      }
    }
    return Optional.empty();
  }

  /**
   * The crop or species that a name ends with, told with its Latin name: a cherry-tomato is one, a
   * sea-kale is none.
   */
  private Optional<String> ending(String name) {
    for (int at = name.indexOf('-') + 1; at > 0; at = name.indexOf('-', at) + 1) {
      String last = name.substring(at).toLowerCase(Locale.ROOT);
      Crop crop = crops.get(last);
      if (crop != null) {
        return Optional.of(
            "If it is a kind of `" + last + "` (" + crop.species().latin() + "), write that.");
      }
      List<String> its = new ArrayList<>();
      String latin = "";
      for (Crop each : crops.values()) {
        if (each.species().name().equals(last)) {
          latin = each.species().latin();
          its.add("`" + each.name() + "`");
        }
      }
      if (!its.isEmpty()) {
        String some = Listed.either(its.size() > MOST_LISTED ? its.subList(0, MOST_LISTED) : its);
        return Optional.of("If it is of " + latin + ", write which: " + some + ".");
      }
    }
    return Optional.empty();
  }
}
