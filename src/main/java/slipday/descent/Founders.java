package slipday.descent;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    Optional<Generation> label = births.generation(lot);
    if (label.isPresent() && label.get() instanceof PlainGeneration.Inbred) {
      assumptions.inbred(lot);
      return inbred(lot.line().name(), kind, name, Optional.of(lot));
    }
    return label
        .filter(Founders::countsFromACross)
        .map(g -> descended(lot, (PlainGeneration) g, kind, name))
        .orElseGet(() -> founder(lot, kind, name));
  }

  private static boolean countsFromACross(Generation label) {
    return label instanceof PlainGeneration.Backcross
        || (label instanceof PlainGeneration.Filial filial
            && filial.origin() == PlainGeneration.Origin.INBRED_PARENTS)
        || (label instanceof PlainGeneration.Selfed selfed && selfed.selfings() > 0);
  }

  private int founder(Lot lot, Kind kind, String name) {
    int made = pedigree.founder(name);
    assumptions.unknownInbreeding(lot);
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
    StandIns.Parents cross = crosses.computeIfAbsent(crossKey(lot, label), k -> cross(lot, label));
    assumptions.standIns(lot, label.print());
    StandIns.Parents before =
        parents.computeIfAbsent(lot.name(), n -> StandIns.parents(pedigree, n, label, cross));
    int made = before.plant(pedigree, name);
    if (label instanceof PlainGeneration.Backcross back) {
      backcrossed(made, cross, back.backcrosses());
    } else {
      notation.crossed(made, cross.seedParent(), cross.pollenParent(), lot.name());
    }
    boolean selfed = cross.seedParent() == cross.pollenParent();
    List<Parent> from =
        selfed
            ? List.of(new Parent(Role.BOTH, Optional.of(cross.seedParent())))
            : List.of(
                new Parent(Role.SEED_PARENT, Optional.of(cross.seedParent())),
                new Parent(Role.POLLEN_PARENT, Optional.of(cross.pollenParent())));
    ancestors.put(made, ancestor(made, kind, name, lot, "through stand-ins from", from));
    return made;
  }

  private void backcrossed(int made, StandIns.Parents cross, int times) {
    notation.crossed(made, cross.seedParent(), cross.pollenParent(), "");
    for (int i = 0; i < times; i++) {
      notation.crossed(made, made, cross.pollenParent(), "");
    }
  }

  /** Lots of one line are of one cross; unselfed plants of S-numbers are each lot's own. */
  private static String crossKey(Lot lot, PlainGeneration label) {
    return label instanceof PlainGeneration.Selfed
        ? "lot " + lot.name()
        : "line " + lot.line().name();
  }

  private StandIns.Parents cross(Lot lot, PlainGeneration label) {
    if (label instanceof PlainGeneration.Selfed) {
      int plant = unselfed(lot);
      return new StandIns.Parents(plant, plant);
    }
    assumptions.parentsInbred(lot);
    return new StandIns.Parents(
        standIn(parent(lot.line(), "mother", "seed parent")),
        standIn(parent(lot.line(), "father", "pollen parent")));
  }

  private int standIn(String line) {
    return garden.lots().stream()
        .filter(
            l ->
                l.line().name().equals(line)
                    && births
                        .generation(l)
                        .filter(g -> g instanceof PlainGeneration.Inbred)
                        .isPresent())
        .findFirst()
        .map(l -> inbred(line, Kind.STAND_IN, line, Optional.of(l)))
        .orElseGet(() -> inbred(line, Kind.STAND_IN, line + " (stand-in)", Optional.empty()));
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
