package slipday.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slipday.descent.Relatives;
import slipday.garden.record.Grounds;
import slipday.garden.record.Plants;
import slipday.genetics.Generation;
import slipday.genetics.mixed.BreedingModel;
import slipday.genetics.mixed.Measurement;

/**
 * The figures of one trait, ready to be valued: with what they are to be corrected for.
 *
 * <p>Corrected for are season and bed, the line, whether a fruit was marked or for the kitchen, how
 * inbred the plant is, and how many fruits it bore, each where it varies; never the plant, which is
 * what is chosen. Where fruits per plant are an aim they are chosen for and so not corrected for.
 */
final class TraitModel {
  /** So many figures beyond what has to be corrected for. */
  private static final int SPARE = 3;

  /** So many for each effect, or a correction goes that may go. Common practice, no source. */
  private static final int EACH = 4;

  private final List<Observed> observed;
  private final BreedingModel model;
  private final Set<Correction> corrected;
  private final Set<Correction> givenUp;
  private final Set<Correction> untold;

  private TraitModel(
      List<Observed> observed,
      BreedingModel model,
      Set<Correction> corrected,
      Set<Correction> givenUp,
      Set<Correction> untold) {
    this.observed = observed;
    this.model = model;
    this.corrected = corrected;
    this.givenUp = givenUp;
    this.untold = untold;
  }

  /**
   * @param observed not empty
   * @param loads how many fruits each plant bore; empty where fruits per plant are chosen for
   */
  static TraitModel of(
      List<Observed> observed, Relatives relatives, Grounds grounds, Map<Plants, Double> loads) {
    Maker maker = new Maker(observed, relatives, grounds, loads);
    Set<Correction> wanted = maker.varying();
    List<Correction> left = new ArrayList<>(wanted);
    while (true) {
      BreedingModel model = BreedingModel.of(relatives.pedigree(), maker.measurements(left));
      boolean needed = left.stream().allMatch(Correction::isNeeded);
      int spare = observed.size() - (needed ? SPARE : EACH * model.corrections());
      if (left.isEmpty() || spare >= (needed ? model.corrections() : 0)) {
        Set<Correction> corrected =
            left.isEmpty() ? EnumSet.noneOf(Correction.class) : EnumSet.copyOf(left);
        wanted.removeAll(corrected);
        if (corrected.contains(Correction.BED)) {
          corrected.remove(Correction.SEASON);
        }
        return new TraitModel(observed, model, corrected, wanted, maker.untold());
      }
      left.remove(left.size() - 1);
    }
  }

  Trait trait() {
    return observed.get(0).trait();
  }

  List<Observed> observed() {
    return observed;
  }

  BreedingModel model() {
    return model;
  }

  Set<Correction> corrected() {
    return corrected;
  }

  /** Corrections that would leave too few figures to tell anything else. */
  Set<Correction> givenUp() {
    return givenUp;
  }

  /** Corrections left out since the generations differ in them as well, and by them alone. */
  Set<Correction> untold() {
    return untold;
  }

  /** Puts figures and their circumstances together. */
  private static final class Maker {
    private final List<Observed> observed;
    private final Relatives relatives;
    private final Grounds grounds;
    private final Map<Plants, Double> loads;
    private final Set<Integer> severalBeds;

    Maker(
        List<Observed> observed, Relatives relatives, Grounds grounds, Map<Plants, Double> loads) {
      this.observed = observed;
      this.relatives = relatives;
      this.grounds = grounds;
      this.loads = loads;
      this.severalBeds =
          grounds.seasonsOfSeveralBeds(observed.stream().map(Observed::plant).toList());
    }

    Set<Correction> varying() {
      Set<Correction> varying = EnumSet.noneOf(Correction.class);
      for (Correction each : Correction.values()) {
        long kinds = measurements(List.of(each)).stream().map(m -> of(m, each)).distinct().count();
        boolean there = each != Correction.BED || !severalBeds.isEmpty();
        boolean apart =
            each == Correction.INBREEDING ? isApartFromFamilies() : !untold().contains(each);
        if (there && kinds > 1 && apart) {
          varying.add(each);
        }
      }
      return varying;
    }

    /** What varies, and yet in no generation of a line: that can't be told from the generations. */
    Set<Correction> untold() {
      Set<Correction> untold = EnumSet.noneOf(Correction.class);
      for (Correction each : List.of(Correction.MARKED, Correction.LOAD)) {
        List<Measurement> all = measurements(List.of(each));
        Map<String, Set<String>> within = new HashMap<>();
        Set<String> among = new HashSet<>();
        for (int i = 0; i < all.size(); i++) {
          Plants plant = observed.get(i).plant();
          String generation =
              plant.stand().lot().line().name()
                  + " "
                  + relatives.generation(plant).map(Generation::print).orElse("unknown");
          String level = of(all.get(i), each);
          within.computeIfAbsent(generation, g -> new HashSet<>()).add(level);
          among.add(level);
        }
        if (among.size() > 1 && within.values().stream().allMatch(w -> w.size() == 1)) {
          untold.add(each);
        }
      }
      return untold;
    }

    /** Whether in some line families are more than degrees of inbreeding, so that both show. */
    private boolean isApartFromFamilies() {
      Map<String, Set<Object>> families = new HashMap<>();
      Map<String, Set<Object>> degrees = new HashMap<>();
      for (Observed each : observed) {
        int plant = relatives.plant(each.plant());
        String line = each.plant().stand().lot().line().name();
        Map<Integer, Double> parents = relatives.pedigree().parents(plant);
        double inbreeding = relatives.pedigree().inbreeding(plant);
        families.computeIfAbsent(line, l -> new HashSet<>()).add(parents);
        degrees.computeIfAbsent(line, l -> new HashSet<>()).add(Math.round(inbreeding * 1e6));
      }
      return degrees.entrySet().stream()
          .anyMatch(
              d ->
                  d.getValue().size() > 1
                      && families.getOrDefault(d.getKey(), Set.of()).size() > d.getValue().size());
    }

    private static String of(Measurement m, Correction correction) {
      String name = correction.words();
      return m.factors().getOrDefault(name, "") + m.covariates().getOrDefault(name, 0.0);
    }

    List<Measurement> measurements(Collection<Correction> corrections) {
      List<Measurement> all = new ArrayList<>();
      for (Observed each : observed) {
        Map<String, String> factors = new HashMap<>();
        Map<String, Double> covariates = new HashMap<>();
        for (Correction correction : corrections) {
          if (correction == Correction.SEASON && corrections.contains(Correction.BED)) {
            continue;
          }
          put(correction, each, factors, covariates);
        }
        all.add(
            new Measurement(
                relatives.plant(each.plant()), each.value(), each.fruits(), factors, covariates));
      }
      return all;
    }

    private void put(
        Correction correction,
        Observed each,
        Map<String, String> factors,
        Map<String, Double> covariates) {
      Plants plant = each.plant();
      int year = plant.stand().year();
      String name = correction.words();
      switch (correction) {
        case SEASON -> factors.put(name, Integer.toString(year));
        case LINE -> factors.put(name, plant.stand().lot().line().name());
        case BED -> {
          String where =
              severalBeds.contains(year) ? grounds.bed(plant).orElse("elsewhere") + " in " : "";
          factors.put(name, where + year);
        }
        case MARKED -> {
          if (!each.trait().isOfPlant()) {
            factors.put(name, each.fruit().isPresent() ? "marked" : "kitchen");
          }
        }
        case INBREEDING ->
            covariates.put(name, relatives.pedigree().inbreeding(relatives.plant(plant)));
        default -> {
          if (!each.trait().isOfPlant()) {
            covariates.put(name, loads.getOrDefault(plant, meanLoad()));
          }
        }
      }
    }

    /** For a plant whose fruits nobody counted; 0 where none are to be corrected for. */
    private double meanLoad() {
      return loads.values().stream().collect(Collectors.averagingDouble(Double::doubleValue));
    }
  }
}
