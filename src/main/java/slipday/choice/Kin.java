package slipday.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import slipday.descent.Relatives;
import slipday.garden.record.Plants;
import slipday.genetics.EffectiveSize;
import slipday.genetics.Pedigree;
import slipday.genetics.parents.Question;

/** How near of kin the fruits are that may be chosen, and what follows for the next generation. */
final class Kin {
  private final List<Chooser.Eligible> eligible;
  private final Relatives relatives;
  private final List<Map<Integer, Double>> parentsOf = new ArrayList<>();

  Kin(List<Chooser.Eligible> eligible, Relatives relatives) {
    this.eligible = eligible;
    this.relatives = relatives;
    eligible.forEach(e -> parentsOf.add(relatives.seed(e.fruit().fruit()).parents()));
  }

  /** The seed parent of each, as a number. */
  List<Integer> mothers() {
    return eligible.stream().map(e -> relatives.plant(e.plant().plant())).toList();
  }

  Question.Limit effectiveSize(double size, int parts) {
    List<Integer> plants = new ArrayList<>(parents());
    double[][] shares = new double[eligible.size()][plants.size()];
    for (int i = 0; i < shares.length; i++) {
      for (int p = 0; p < plants.size(); p++) {
        shares[i][p] = parentsOf.get(i).getOrDefault(plants.get(p), 0.0);
      }
    }
    return Question.Limit.effectiveSize(size, shares, parts);
  }

  private Set<Integer> parents() {
    Set<Integer> all = new TreeSet<>();
    parentsOf.forEach(p -> all.addAll(p.keySet()));
    return all;
  }

  Question.Limit coancestry(double cap, int parts) {
    List<Integer> plants = new ArrayList<>(parents());
    Map<Integer, Integer> places = new HashMap<>();
    double[][] kin = new double[plants.size()][plants.size()];
    for (int p = 0; p < kin.length; p++) {
      places.put(plants.get(p), p);
      for (int q = 0; q <= p; q++) {
        kin[p][q] = relatives.pedigree().coancestry(plants.get(p), plants.get(q));
        kin[q][p] = kin[p][q];
      }
    }
    int n = eligible.size();
    double[][] all = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        all[i][j] = between(parentsOf.get(i), parentsOf.get(j), kin, places);
      }
    }
    return Question.Limit.coancestry(cap, all, parts);
  }

  private static double between(
      Map<Integer, Double> one,
      Map<Integer, Double> other,
      double[][] kin,
      Map<Integer, Integer> places) {
    double sum = 0;
    for (Map.Entry<Integer, Double> a : one.entrySet()) {
      for (Map.Entry<Integer, Double> b : other.entrySet()) {
        int p = places.getOrDefault(a.getKey(), 0);
        int q = places.getOrDefault(b.getKey(), 0);
        sum += a.getValue() * b.getValue() * kin[p][q];
      }
    }
    return sum;
  }

  /** What each plant gives to the next generation, 1 in all. */
  Map<Integer, Double> shares(List<Integer> parts) {
    double all = parts.stream().mapToInt(Integer::intValue).sum();
    Map<Integer, Double> shares = new HashMap<>();
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) > 0) {
        double part = parts.get(i) / all;
        parentsOf.get(i).forEach((plant, share) -> shares.merge(plant, part * share, Double::sum));
      }
    }
    return shares;
  }

  /** Those of some candidates that seed or pollen of these fruits is of. */
  List<Candidate> among(List<Candidate> candidates) {
    Set<Integer> giving = parents();
    return candidates.stream().filter(c -> giving.contains(relatives.plant(c.plant()))).toList();
  }

  /**
   * @param pool all that may be parents
   */
  Chosen.Kinship kinship(List<Integer> parts, List<Candidate> pool) {
    Map<Integer, Double> shares = shares(parts);
    Pedigree pedigree = relatives.pedigree();
    Map<Plants, Double> mothers = new LinkedHashMap<>();
    double all = parts.stream().mapToInt(Integer::intValue).sum();
    double next = 0;
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) > 0) {
        mothers.merge(eligible.get(i).plant().plant(), parts.get(i) / all, Double::sum);
        next += parts.get(i) / all * eligible.get(i).fruit().inbreeding();
      }
    }
    List<Integer> everyone = pool.stream().map(c -> relatives.plant(c.plant())).toList();
    return new Chosen.Kinship(
        mothers.size(),
        EffectiveSize.fromShares(List.copyOf(mothers.values())),
        EffectiveSize.fromShares(List.copyOf(shares.values())),
        pedigree.meanCoancestry(shares),
        pedigree.meanCoancestry(everyone),
        pool.stream().mapToDouble(Candidate::inbreeding).average().orElse(0),
        next);
  }
}
