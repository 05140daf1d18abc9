package slipday.genetics;

import java.util.ArrayList;
import java.util.List;

/**
 * Ancestors for plants of a lot whose label tells a generation and no more: the parents of a cross,
 * and the selfings, backcrosses and sib matings down to the plants. They stand in for plants nobody
 * recorded, and their names say so.
 */
public final class StandIns {
  private StandIns() {}

  /** The parents of plants; one plant twice where it was selfed. */
  public record Parents(int seedParent, int pollenParent) {
    /** A plant of them. */
    public int plant(Pedigree.Builder pedigree, String name) {
      return pedigree.offspring(name, seedParent, pollenParent);
    }
  }

  /**
   * Adds plants of one lot of a cross of two fully inbred parents.
   *
   * @param lot a name for them
   * @param filial the lot's F-number, 1 or more
   * @param plants how many of the lot, 1 or more
   * @param ofOnePlant whether all seed of the lot is of one selfed plant; else each plant has a
   *     line of its own since the F1, the least that plants of a bulk can have in common
   * @return the plants of the lot
   */
  public static List<Integer> add(
      Pedigree.Builder pedigree, String lot, int filial, int plants, boolean ofOnePlant) {
    if (filial < 1 || plants < 1) {
      throw new IllegalArgumentException(plants + " plants of F" + filial);
    }
    Parents cross =
        new Parents(
            pedigree.founder(standIn(lot, "seed parent"), 1),
            pedigree.founder(standIn(lot, "pollen parent"), 1));
    Chain chain = new Chain(pedigree, lot);
    List<Integer> all = new ArrayList<>();
    Parents parents = chain.selfed(cross, "F", filial - 1);
    for (int i = 1; i <= plants; i++) {
      all.add(parents.plant(pedigree, lot + " plant " + i));
      if (!ofOnePlant && i < plants) {
        parents = chain.selfed(cross, "F", filial - 1);
      }
    }
    return all;
  }

  /**
   * Adds what stands between a cross and the plants of a lot. Asked once for all plants of a lot,
   * these are of one plant; asked for each of them, each has a line of its own since the cross.
   *
   * @param cross the parents of the F1 or, for S-numbers, the unselfed plant twice; a backcross is
   *     taken to go to the pollen parent each time
   * @return the parents of the lot's plants; those of the cross where the label counts from none
   */
  public static Parents parents(
      Pedigree.Builder pedigree, String lot, PlainGeneration label, Parents cross) {
    Chain chain = new Chain(pedigree, lot);
    if (label instanceof PlainGeneration.Filial filial) {
      return chain.sibbed(chain.selfed(cross, "F", filial.number() - 1), filial.sib());
    }
    if (label instanceof PlainGeneration.Backcross back) {
      Parents made = cross;
      for (int i = 1; i <= back.backcrosses(); i++) {
        String what = i == 1 ? "F1" : "BC" + (i - 1) + "F1";
        made = new Parents(made.plant(pedigree, standIn(lot, what)), cross.pollenParent);
      }
      String prefix = "BC" + back.backcrosses() + "F";
      return chain.sibbed(chain.selfed(made, prefix, back.filial() - 1), back.sib());
    }
    if (label instanceof PlainGeneration.Selfed selfed) {
      return chain.sibbed(chain.selfed(cross, "S", selfed.selfings() - 1), selfed.sib());
    }
    return cross;
  }

  /** Matings of one lot's stand-ins, one after the other. */
  private record Chain(Pedigree.Builder pedigree, String lot) {
    Parents selfed(Parents from, String prefix, int times) {
      Parents parents = from;
      for (int i = 0; i < times; i++) {
        int plant = parents.plant(pedigree, standIn(lot, prefix + (1 + i)));
        parents = new Parents(plant, plant);
      }
      return parents;
    }

    Parents sibbed(Parents from, int times) {
      Parents parents = from;
      for (int i = 0; i < times; i++) {
        parents =
            new Parents(
                parents.plant(pedigree, standIn(lot, "sib")),
                parents.plant(pedigree, standIn(lot, "sib")));
      }
      return parents;
    }
  }

  private static String standIn(String lot, String what) {
    return lot + " " + what + " (stand-in)";
  }
}
