package slipday.garden.record;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import slipday.finding.Finding;
import slipday.language.Block;
import slipday.language.BoundClause;
import slipday.language.PlanClauses;
import slipday.measure.Dimension;
import slipday.measure.Range;
import slipday.measure.Unit;
import slipday.source.Span;

/** Every trait that can be recorded, weighed or counted, and so aimed at. */
public final class KnownTraits {
  public static final String SWEETNESS = "sweetness";
  public static final String FRUIT_WEIGHT = "fruit weight";
  public static final String DAYS_TO_RIPE = "days to ripe";

  /** Told once for a plant. */
  public static final String FRUITS_PER_PLANT = "fruits per plant";

  private static final String SHORT_WEIGHT = "weight";

  private final Map<String, Kind> kinds = new TreeMap<>();

  /**
   * What a figure of a trait is.
   *
   * @param dimension empty for points and counts
   * @param unitNeeded whether a bare number says too little
   * @param scale of its points, where the plan declares it
   */
  public record Kind(Optional<Dimension> dimension, boolean unitNeeded, Optional<Range> scale) {}

  private KnownTraits() {}

  /**
   * @param declared the plan's own traits
   */
  public static KnownTraits of(List<Block> declared) {
    KnownTraits traits = new KnownTraits();
    traits.measured(SWEETNESS, Dimension.SWEETNESS, true);
    traits.measured(FRUIT_WEIGHT, Dimension.MASS, true);
    traits.measured(SHORT_WEIGHT, Dimension.MASS, true);
    traits.measured(DAYS_TO_RIPE, Dimension.TIME, false);
    traits.counted(FRUITS_PER_PLANT, Optional.empty());
    Traits.SCORES.forEach(s -> traits.counted(s, Optional.empty()));
    Traits.LENGTHS.forEach(l -> traits.measured(l, Dimension.LENGTH, true));
    declared.forEach(traits::declare);
    return traits;
  }

  private void measured(String name, Dimension dimension, boolean unitNeeded) {
    kinds.put(name, new Kind(Optional.of(dimension), unitNeeded, Optional.empty()));
  }

  private void counted(String name, Optional<Range> scale) {
    kinds.put(name, new Kind(Optional.empty(), false, scale));
  }

  private void declare(Block block) {
    if (block.head().isEmpty()) {
      return;
    }
    String name = key(block.head().get().name("name").text());
    Optional<Unit> unit =
        block.find(PlanClauses.UNIT).flatMap(c -> Unit.named(c.bound().name("unit").text()));
    if (unit.isPresent()) {
      measured(name, unit.get().dimension(), true);
    } else {
      counted(
          name, block.find(PlanClauses.SCALE).map(BoundClause::bound).map(b -> b.range("scale")));
    }
  }

  /** The name under which figures of a trait are kept: as written, but for case. */
  public static String key(String name) {
    String key = name.toLowerCase(Locale.ROOT);
    return key.equals(SHORT_WEIGHT) ? FRUIT_WEIGHT : key;
  }

  /** The same for two traits told of together, in whichever order. */
  public static String pair(String one, String other) {
    String first = key(one);
    String second = key(other);
    return first.compareTo(second) < 0 ? first + "\n" + second : second + "\n" + first;
  }

  /** What is said of a bare number for a trait that is measured. */
  public static Finding unitMissing(Span figure, String trait, Dimension dimension) {
    String number = figure.text();
    Finding finding =
        Finding.error(
                "unit-missing", figure, "`" + number + "` does not give `" + trait + "` its unit.")
            .withHelp("Write which: " + dimension.fittingUnits() + ".");
    for (String unit : dimension.usualUnits()) {
      finding = finding.writing(number + " " + unit);
    }
    return finding;
  }

  public Optional<Kind> find(String name) {
    return Optional.ofNullable(kinds.get(key(name)));
  }

  public Set<String> names() {
    return Collections.unmodifiableSet(kinds.keySet());
  }
}
