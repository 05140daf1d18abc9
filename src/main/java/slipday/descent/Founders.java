package slipday.descent;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slipday.descent.Ancestor.Kind;
import slipday.descent.Ancestor.Parent;
import slipday.descent.Ancestor.Role;
import slipday.garden.Garden;
import slipday.garden.Line;
import slipday.garden.Lot;
import slipday.genetics.Generation;
import slipday.genetics.Pedigree;
import slipday.genetics.PlainGeneration;
import slipday.genetics.StandIns;
import slipday.language.Bound;
import slipday.measure.Reason;
import slipday.measure.Reasoned;

/**
 * Plants of lots whose seed nobody recorded the taking of: founders of themselves, or descended
 * from stand-ins by the generation on the label.
 */
final class Founders {
  private static final double INBRED = 1;

  private final Garden garden;
  private final Births births;
  private final Pedigree.Builder pedigree;
  private final Notation notation;
  private final Assumptions assumptions;
  private final Map<Integer, Ancestor> ancestors;
  private final Map<String, Integer> inbred = new HashMap<>();
  private final Map<String, StandIns.Parents> crosses = new HashMap<>();
  private final Map<String, StandIns.Parents> parents = new HashMap<>();

  Founders(
      Garden garden,
      Births births,
      Pedigree.Builder pedigree,
      Notation notation,
      Assumptions assumptions,
      Map<Integer, Ancestor> ancestors) {
    this.garden = garden;
    this.births = births;
    this.pedigree = pedigree;
    this.notation = notation;
    this.assumptions = assumptions;
    this.ancestors = ancestors;
  }

  /** One plant of a lot. */
  int of(Lot lot, Kind kind, String name) {
    return births
        .generation(lot)
        .map(g -> of(lot, g, kind, name))
        .orElseGet(() -> founder(lot, kind, name));
  }

  private int of(Lot lot, Generation label, Kind kind, String name) {
    if (label instanceof Generation.Probable probable) {
      assumptions.probable(lot, probable.likely().print());
      return of(lot, probable.likely(), kind, name);
    }
    if (label instanceof Generation.SelfOrCross either) {
      assumptions.doubtful("`" + lot.name() + "`");
      return of(lot, either.ifCross(), kind, name);
    }
    if (label instanceof Generation.Bulk bulk && bulk.of().stream().allMatch(this::counts)) {
      return ofBulk(lot, bulk, kind, name);
    }
    if (label instanceof PlainGeneration.Inbred) {
      if (!Founding.isFullyInbred(lot)) {
        assumptions.inbred(lot);
      }
      return inbred(lot.line().name(), kind, name, Optional.of(lot));
    }
    return counts(label)
        ? descended(lot, (PlainGeneration) label, kind, name)
        : founder(lot, kind, name);
  }

  /** Whether it counts from a cross or an unselfed plant. */
  private boolean counts(Generation label) {
    return label instanceof PlainGeneration.Backcross
        || label instanceof PlainGeneration.Filial
        || (label instanceof PlainGeneration.Selfed selfed && selfed.selfings() > 0);
  }

  private int founder(Lot lot, Kind kind, String name) {
    int made =
        lot.inbred()
            .map(f -> pedigree.founder(name, f.value()))
            .orElseGet(
                () -> {
                  assumptions.unknownInbreeding(lot);
                  return pedigree.founder(name);
                });
    assumptions.founder("plants of `" + lot.name() + "`");
    notation.named(made, lot.line().name());
    ancestors.put(made, ancestor(made, kind, name, lot, "", List.of()));
    return made;
  }

  private Ancestor ancestor(
      int made, Kind kind, String name, Lot lot, String origin, List<Parent> from) {
    return new Ancestor(
        made,
        kind,
        name,
        Optional.of(lot.name()),
        Optional.of(lot.line().name()),
        births.generation(lot).map(Generation::print),
        origin,
        Optional.of(Reason.plan("lot `" + lot.name() + "`", lot.span())),
        from);
  }

  /** All plants of an inbred line are one. */
  private int inbred(String line, Kind kind, String name, Optional<Lot> lot) {
    return inbred.computeIfAbsent(
        line,
        l -> {
          int made = pedigree.founder(name, INBRED);
          assumptions.founder("`" + line + "`");
          notation.named(made, line);
          ancestors.put(
              made,
              lot.map(of -> ancestor(made, kind, name, of, "", List.of()))
                  .orElseGet(() -> standIn(made, name, line)));
          return made;
        });
  }

  private static Ancestor standIn(int made, String name, String line) {
    return new Ancestor(
        made,
        Kind.STAND_IN,
        name,
        Optional.empty(),
        Optional.of(line),
        Optional.empty(),
        "",
        Optional.empty(),
        List.of());
  }

  private int descended(Lot lot, PlainGeneration label, Kind kind, String name) {
    StandIns.Parents cross = cross(lot, label);
    assumptions.standIns(lot, label.print());
    StandIns.Parents before =
        parents.computeIfAbsent(lot.name(), n -> StandIns.parents(pedigree, n, label, cross));
    int made = before.plant(pedigree, name);
    if (label instanceof PlainGeneration.Backcross back) {
      backcrossed(made, cross, back.backcrosses());
    } else {
      notation.crossed(made, cross.seedParent(), cross.pollenParent(), lot.name());
    }
    ancestors.put(
        made, ancestor(made, kind, name, lot, "through stand-ins from", List.copyOf(from(cross))));
    return made;
  }

  private static List<Parent> from(StandIns.Parents cross) {
    return cross.seedParent() == cross.pollenParent()
        ? List.of(new Parent(Role.BOTH, Optional.of(cross.seedParent())))
        : List.of(
            new Parent(Role.SEED_PARENT, Optional.of(cross.seedParent())),
            new Parent(Role.POLLEN_PARENT, Optional.of(cross.pollenParent())));
  }

  /** Each plant has a descent of its own since the cross, the least it can share with others. */
  private int ofBulk(Lot lot, Generation.Bulk bulk, Kind kind, String name) {
    assumptions.standInsOfBulk(lot, bulk.print());
    List<Pedigree.Fruit> fruits = new ArrayList<>();
    Set<Parent> from = new LinkedHashSet<>();
    StandIns.Parents cross = cross(lot, bulk.of().get(0));
    for (PlainGeneration part : bulk.of()) {
      StandIns.Parents own = cross(lot, part);
      StandIns.Parents before = StandIns.parents(pedigree, lot.name(), part, own);
      fruits.add(new Pedigree.Fruit(1, before.seedParent(), OptionalInt.of(before.pollenParent())));
      from.addAll(from(own));
    }
    int made = pedigree.ofBulk(name, fruits);
    notation.crossed(made, cross.seedParent(), cross.pollenParent(), lot.name());
    ancestors.put(
        made, ancestor(made, kind, name, lot, "through stand-ins from", List.copyOf(from)));
    return made;
  }

  private void backcrossed(int made, StandIns.Parents cross, int times) {
    notation.crossed(made, cross.seedParent(), cross.pollenParent(), "");
    for (int i = 0; i < times; i++) {
      notation.crossed(made, made, cross.pollenParent(), "");
    }
  }

  /** Lots of one line are of one cross; unselfed plants of S-numbers are each lot's own. */
  private StandIns.Parents cross(Lot lot, PlainGeneration label) {
    if (label instanceof PlainGeneration.Selfed) {
      return crosses.computeIfAbsent("lot " + lot.name(), k -> unselfedTwice(lot));
    }
    String line = "line " + lot.line().name();
    boolean fourWay =
        label instanceof PlainGeneration.Filial filial
            && filial.origin() == PlainGeneration.Origin.FOUR_WAY;
    if (fourWay) {
      return crosses.computeIfAbsent("four-way " + line, k -> fourWay(lot));
    }
    boolean open =
        label instanceof PlainGeneration.Filial filial
            && filial.origin() == PlainGeneration.Origin.SEGREGATING;
    return crosses.computeIfAbsent((open ? "open " : "") + line, k -> twoWay(lot, open));
  }

  private StandIns.Parents unselfedTwice(Lot lot) {
    int plant = unselfed(lot);
    return new StandIns.Parents(plant, plant);
  }

  private StandIns.Parents twoWay(Lot lot, boolean open) {
    return new StandIns.Parents(
        standIn(lot, parent(lot.line(), "mother", "seed parent"), open),
        standIn(lot, parent(lot.line(), "father", "pollen parent"), open));
  }

  private StandIns.Parents fourWay(Lot lot) {
    String line = lot.line().name();
    return new StandIns.Parents(
        ofTwo(lot, line + " first F1", line + " first seed parent", line + " first pollen parent"),
        ofTwo(
            lot,
            line + " second F1",
            line + " second seed parent",
            line + " second pollen parent"));
  }

  private int ofTwo(Lot lot, String f1, String seedParent, String pollenParent) {
    StandIns.Parents of =
        new StandIns.Parents(standIn(lot, seedParent, false), standIn(lot, pollenParent, false));
    int made = of.plant(pedigree, f1 + " (stand-in)");
    notation.crossed(made, of.seedParent(), of.pollenParent(), f1);
    Ancestor bare = standIn(made, f1 + " (stand-in)", lot.line().name());
    ancestors.put(
        made,
        new Ancestor(
            made,
            bare.kind(),
            bare.name(),
            bare.lot(),
            bare.line(),
            Optional.of("F1"),
            "crossed from",
            bare.reason(),
            from(of)));
    return made;
  }

  /**
   * A parent nobody recorded.
   *
   * @param open whether it may segregate
   */
  private int standIn(Lot lot, String line, boolean open) {
    Optional<Double> stated =
        garden.lines().stream()
            .filter(l -> l.name().equals(line))
            .findFirst()
            .flatMap(Line::inbred)
            .map(Reasoned::value);
    if (stated.filter(f -> f < INBRED).isPresent() || (open && stated.isEmpty())) {
      return notInbred(lot, line, stated);
    }
    if (stated.isEmpty()) {
      assumptions.parentsInbred(lot);
    }
    return garden.lots().stream()
        .filter(l -> l.line().name().equals(line))
        .filter(
            l -> births.generation(l).filter(PlainGeneration.Inbred.class::isInstance).isPresent())
        .findFirst()
        .map(l -> inbred(line, Kind.STAND_IN, line, Optional.of(l)))
        .orElseGet(() -> inbred(line, Kind.STAND_IN, line + " (stand-in)", Optional.empty()));
  }

  private int notInbred(Lot lot, String line, Optional<Double> stated) {
    String name = line + " (stand-in)";
    int made = stated.map(f -> pedigree.founder(name, f)).orElseGet(() -> pedigree.founder(name));
    if (stated.isEmpty()) {
      assumptions.unknownInbreedingOfParents(lot);
    }
    assumptions.founder("a plant of `" + line + "`");
    notation.named(made, line);
    ancestors.put(made, standIn(made, name, line));
    return made;
  }

  private int unselfed(Lot lot) {
    String name = lot.name() + " S0 (stand-in)";
    int made = pedigree.founder(name);
    assumptions.unknownInbreeding(lot);
    assumptions.founder("`" + name + "`");
    notation.named(made, lot.line().name());
    ancestors.put(made, standIn(made, name, lot.line().name()));
    return made;
  }

  /** A parent that the line names, or a name for one nobody named. */
  private static String parent(Line line, String which, String otherwise) {
    Optional<Bound> began = line.began().map(c -> c.bound());
    Optional<String> named = began.filter(b -> b.has(which)).map(b -> b.name(which).text());
    boolean unnamed = which.equals("father") && began.filter(b -> b.has("unnamed")).isPresent();
    return unnamed
        ? "unnamed " + began.orElseThrow().name("unnamed").text()
        : named.orElse(line.name() + " " + otherwise);
  }
}
