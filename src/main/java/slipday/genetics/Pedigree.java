package slipday.genetics;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Who descends from whom, with exact inbreeding and coancestry.
 *
 * <p>An individual is a number, counted from 0 in the order of adding; parents come before their
 * offspring. A plant may be both its seed's parents (selfing). Founders are not related to each
 * other. A relationship here is twice a coancestry, so that of a plant with itself is 1 + F.
 *
 * <p>The relationships are A = T·D·T′, T the shares that pass from ancestors and D what each
 * plant's own draw of genes adds (C. R. Henderson 1976, Biometrics 32:69; R. L. Quaas 1976,
 * Biometrics 32:949; T. H. E. Meuwissen and Z. Luo 1992, Genetics Selection Evolution 24:305; for a
 * parent of several C. R. Henderson 1988, Journal of Animal Science 66:2049; all from memory). With
 * D taken from the parents' own relationships, selfing needs no rule of its own.
 *
 * <p>The cost is one walk through the ancestors for each pair of parents that isn't a selfing; a
 * walk is shared by all seed of the pair. Where the walks get long, a table of each generation
 * takes their place.
 */
public final class Pedigree {
  /** No parent known: an unrelated plant of inbreeding 0. */
  static final int UNKNOWN = -1;

  private final List<String> names;
  private final boolean[] assumed;
  private final Descent descent;

  private Pedigree(List<String> names, boolean[] assumed, Descent descent) {
    this.names = List.copyOf(names);
    this.assumed = assumed;
    this.descent = descent;
  }

  /**
   * One fruit of a bulk.
   *
   * @param seeds its weight in the bulk, above 0
   * @param seedParent an individual
   * @param pollenParent an individual; empty where it is unknown
   */
  public record Fruit(double seeds, int seedParent, OptionalInt pollenParent) {
    public Fruit {
      if (!(seeds > 0) || Double.isInfinite(seeds)) {
        throw new IllegalArgumentException(seeds + " seeds");
      }
    }

    public static Fruit selfed(double seeds, int plant) {
      return new Fruit(seeds, plant, OptionalInt.of(plant));
    }
  }

  /**
   * Begins a pedigree.
   *
   * @param assumedInbreeding what is taken for founders whose inbreeding nobody knows, 0 to 1
   */
  public static Builder begin(double assumedInbreeding) {
    return new Builder(assumedInbreeding);
  }

  public int size() {
    return names.size();
  }

  public String name(int individual) {
    return names.get(individual);
  }

  /** The founders whose inbreeding was not stated but assumed: results rest on it. */
  public List<String> assumedFounders() {
    List<String> founders = new ArrayList<>();
    for (int i = 0; i < assumed.length; i++) {
      if (assumed[i]) {
        founders.add(names.get(i));
      }
    }
    return founders;
  }

  /** F: the chance that the two genes of a plant at a place are copies of one. 0 to 1. */
  public double inbreeding(int individual) {
    return descent.inbreeding(individual);
  }

  /**
   * The chance that a gene drawn from each is a copy of one: the inbreeding of their seed. Of a
   * plant with itself, (1 + F) ÷ 2: the inbreeding of its selfed seed.
   */
  public double coancestry(int one, int other) {
    return descent.relationship(Map.of(one, 1.0), Map.of(other, 1.0)) / 2;
  }

  /**
   * The mean coancestry of all pairs of a set, each plant with itself included; a plant named twice
   * counts twice.
   */
  public double meanCoancestry(List<Integer> set) {
    Map<Integer, Double> shares = new HashMap<>();
    set.forEach(individual -> shares.merge(individual, 1.0, Double::sum));
    return meanCoancestry(shares);
  }

  /**
   * The mean coancestry of parents used unequally: Σ c·c′·θ.
   *
   * @param contributions what each gives, in any unit, 0 or more, not all 0
   */
  public double meanCoancestry(Map<Integer, Double> contributions) {
    double sum = contributions.values().stream().mapToDouble(Double::doubleValue).sum();
    if (!(sum > 0) || contributions.values().stream().anyMatch(share -> share < 0)) {
      throw new IllegalArgumentException("contributions of " + contributions);
    }
    Map<Integer, Double> shares = new HashMap<>();
    contributions.forEach((individual, share) -> shares.put(individual, share / sum));
    return descent.relationship(shares, shares) / 2;
  }

  /**
   * The covariance of two sums of breeding values over the additive variance of a base that is not
   * inbred: x′·A·y.
   *
   * @param one how much of each individual; less than 0 for a difference
   */
  public double relationship(Map<Integer, Double> one, Map<Integer, Double> other) {
    return descent.relationship(one, other);
  }

  /**
   * The same with each individual by itself: A·x.
   *
   * @param shares how much of each individual
   */
  public double[] relationships(Map<Integer, Double> shares) {
    return descent.times(shares);
  }

  /** Whom an individual's genes are from, with the share of each; nothing for a founder. */
  public Map<Integer, Double> parents(int individual) {
    Map<Integer, Double> parents = new TreeMap<>();
    descent.shares(individual).forEach(share -> parents.put(share.parent(), share.of()));
    return parents;
  }

  /**
   * Expected heterozygosity of the offspring of a set mated at random, over that of the founders'
   * base: 1 − mean coancestry. The diversity that the set keeps.
   */
  public double diversityKept(List<Integer> set) {
    return 1 - meanCoancestry(set);
  }

  /** Expected heterozygosity of a plant over that of the founders' base: 1 − F. */
  public double heterozygosity(int individual) {
    return 1 - inbreeding(individual);
  }

  /**
   * The inverse of the relationships, plants of one genotype as one; refused where the genotype of
   * a plant is settled by several others.
   */
  public Answer<RelationshipInverse> inverse() {
    return RelationshipInverse.of(this);
  }

  /** The inverse among the plants whose genotype is not settled by others: there always is one. */
  public RelationshipInverse reducedInverse() {
    return RelationshipInverse.reduced(this);
  }

  Descent descent() {
    return descent;
  }

  /** Gathers individuals in order; each method gives the new one's number. */
  public static final class Builder {
    private final List<String> names = new ArrayList<>();
    private final PedigreeRows rows = new PedigreeRows();
    private final List<Integer> assumed = new ArrayList<>();
    private final double assumedInbreeding;

    private Builder(double assumedInbreeding) {
      mustBeInbreeding(assumedInbreeding);
      this.assumedInbreeding = assumedInbreeding;
    }

    /** A founder of known inbreeding: 1 for a parent of a bought hybrid. */
    public int founder(String name, double inbreeding) {
      mustBeInbreeding(inbreeding);
      rows.founder(inbreeding);
      return named(name);
    }

    /** A founder whose inbreeding nobody knows. */
    public int founder(String name) {
      assumed.add(names.size());
      return founder(name, assumedInbreeding);
    }

    /** Seed of a plant's own pollen. */
    public int selfed(String name, int plant) {
      return offspring(name, plant, plant);
    }

    /** Seed of two plants, or of one and itself. */
    public int offspring(String name, int seedParent, int pollenParent) {
      mustBeThere(seedParent);
      mustBeThere(pollenParent);
      rows.offspring(seedParent, pollenParent);
      return named(name);
    }

    /** Seed of a plant and of pollen from a plant unknown, which is taken as unrelated. */
    public int offspring(String name, int seedParent) {
      mustBeThere(seedParent);
      rows.offspring(seedParent, UNKNOWN);
      return named(name);
    }

    /**
     * A plant out of a bulk of several fruits: its inbreeding and its coancestry with others are
     * the means over the fruits, weighted by their seed. Another plant of the bulk is added anew.
     */
    public int ofBulk(String name, List<Fruit> fruits) {
      if (fruits.isEmpty()) {
        throw new IllegalArgumentException("a bulk of nothing");
      }
      for (Fruit fruit : fruits) {
        mustBeThere(fruit.seedParent());
        fruit.pollenParent().ifPresent(this::mustBeThere);
      }
      rows.bulk(fruits);
      return named(name);
    }

    /** The pedigree, with the inbreeding of all worked out. */
    public Pedigree build() {
      return build(Descent.Way.WHICHEVER_IS_QUICKER);
    }

    Pedigree build(Descent.Way way) {
      boolean[] taken = new boolean[names.size()];
      assumed.forEach(founder -> taken[founder] = true);
      return new Pedigree(names, taken, Descent.of(rows, way));
    }

    private int named(String name) {
      names.add(name);
      return names.size() - 1;
    }

    private void mustBeThere(int individual) {
      if (individual < 0 || individual >= names.size()) {
        throw new IllegalArgumentException("no individual " + individual);
      }
    }

    private static void mustBeInbreeding(double inbreeding) {
      if (!(inbreeding >= 0 && inbreeding <= 1)) {
        throw new IllegalArgumentException("an inbreeding of " + inbreeding);
      }
    }
  }
}
