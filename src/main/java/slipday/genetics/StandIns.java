package slipday.genetics;

import java.util.ArrayList;
import java.util.List;

/**
 * Ancestors for plants of a lot that says F4 and no more: two fully inbred parents, their F1, and
 * selfings down to the plants. They stand in for plants nobody recorded, and their names say so.
 */
public final class StandIns {
  private StandIns() {}

  /**
   * Adds plants of one lot with their ancestors.
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
    int seedParent = pedigree.founder(standIn(lot, "seed parent"), 1);
    int pollenParent = pedigree.founder(standIn(lot, "pollen parent"), 1);
    List<Integer> all = new ArrayList<>();
    if (filial == 1) {
      for (int i = 1; i <= plants; i++) {
        all.add(pedigree.offspring(plant(lot, i), seedParent, pollenParent));
      }
      return all;
    }
    int first = pedigree.offspring(standIn(lot, "F1"), seedParent, pollenParent);
    int mother = selfedTo(pedigree, lot, first, filial);
    for (int i = 1; i <= plants; i++) {
      all.add(pedigree.selfed(plant(lot, i), mother));
      if (!ofOnePlant && i < plants) {
        mother = selfedTo(pedigree, lot, first, filial);
      }
    }
    return all;
  }

  /** The plant, a selfing before the lot, that comes of an F1 plant. */
  private static int selfedTo(Pedigree.Builder pedigree, String lot, int first, int filial) {
    int mother = first;
    for (int number = 2; number < filial; number++) {
      mother = pedigree.selfed(standIn(lot, "F" + number), mother);
    }
    return mother;
  }

  private static String standIn(String lot, String what) {
    return lot + " " + what + " (stand-in)";
  }

  private static String plant(String lot, int number) {
    return lot + " plant " + number;
  }
}
