package slipday.genetics.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slipday.genetics.Pedigree;

class BreedingModelTest {
  /**
   * The weight on a mean of n records, heritability .25 and repeatability .35: n·h² ÷ (1 + (n −
   * 1)·r) (D. S. Falconer and T. F. C. Mackay 1996, chapter 8, from memory; worked out again).
   */
  @ParameterizedTest
  @CsvSource({"1, .2500", "2, .37037", "5, .52083"})
  void weightOnTheMeanOfSeveralFruits(int fruits, double weight) {
    Pedigree.Builder builder = Pedigree.begin(0);
    int one = builder.founder("one", 0);
    int other = builder.founder("other", 0);
    List<Measurement> measured = new ArrayList<>();
    for (int i = 0; i < fruits; i++) {
      measured.add(Measurement.of(one, 10 + i));
      measured.add(Measurement.of(other, 7 + i));
    }
    BreedingValues values =
        BreedingModel.of(builder.build(), measured).values(new Components(.25, .10, .65));
    assertThat(values.value(one) - values.value(other)).isCloseTo(3 * weight, within(5e-5));
    assertThat(values.value(Map.of(one, 1.0, other, -1.0))).isCloseTo(3 * weight, within(5e-5));
    // Reliability of a difference of two is that weight.
    assertThat(Math.pow(values.accuracy(Map.of(one, 1.0, other, -1.0)), 2))
        .isCloseTo(weight, within(5e-5));
  }

  /** A fruit of weight n is the mean of n fruits. */
  @Test
  void severalWeighedTogetherCountAsTheirMean() {
    Pedigree.Builder builder = Pedigree.begin(0);
    int one = builder.founder("one", 0);
    int other = builder.founder("other", 0);
    Pedigree pedigree = builder.build();
    List<Measurement> singly = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      singly.add(Measurement.of(one, 4 + i));
    }
    singly.add(Measurement.of(other, 9));
    List<Measurement> together =
        List.of(new Measurement(one, 5, 3, Map.of(), Map.of()), Measurement.of(other, 9));
    Components components = new Components(2, 1, 4);
    BreedingValues apart = BreedingModel.of(pedigree, singly).values(components);
    BreedingValues joined = BreedingModel.of(pedigree, together).values(components);
    assertThat(joined.value(one)).isCloseTo(apart.value(one), within(1e-9));
    assertThat(joined.errorVariance(one)).isCloseTo(apart.errorVariance(one), within(1e-9));
  }

  /**
   * Additive variance among plants from a cross of inbred founders: half the base's among F2, and
   * 1.5 times that among F3 (D. S. Falconer and T. F. C. Mackay 1996, from memory).
   */
  @Test
  void spreadOfGenerations() {
    Pedigree.Builder builder = Pedigree.begin(0);
    int f1 = builder.offspring("F1", builder.founder("P1", 1), builder.founder("P2", 1));
    List<Measurement> f2 = new ArrayList<>();
    List<Measurement> f3 = new ArrayList<>();
    List<Measurement> both = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      int plant = builder.selfed("F2", f1);
      f2.add(Measurement.of(plant, i));
      f3.add(Measurement.of(builder.selfed("F3", plant), i));
    }
    f2.forEach(m -> both.add(new Measurement(m.plant(), 1, 1, Map.of("season", "1"), Map.of())));
    f3.forEach(m -> both.add(new Measurement(m.plant(), 1, 1, Map.of("season", "2"), Map.of())));
    Pedigree pedigree = builder.build();
    assertThat(BreedingModel.of(pedigree, f2).spread()).isCloseTo(.5, within(1e-9));
    assertThat(BreedingModel.of(pedigree, f3).spread()).isCloseTo(.75, within(1e-9));
    assertThat(BreedingModel.of(pedigree, both).spread()).isCloseTo(.625, within(1e-9));
    List<Measurement> same = List.of(Measurement.of(f1, 1), Measurement.of(f1, 2));
    assertThat(BreedingModel.of(pedigree, same).spread()).isZero();
    assertThat(BreedingModel.of(pedigree, same).assumed(.3).refusal().orElseThrow())
        .contains("one genotype");
  }

  /** What was stated for F2 plant means holds again for F2 plant means. */
  @ParameterizedTest
  @CsvSource({"1, .3", "3, .3", "5, .55"})
  void statedHeritabilityComesBack(int fruits, double heritability) {
    Simulated garden = new Simulated(new Random(8), 6, 6, 4, 2, 4, 3);
    BreedingModel model = garden.model();
    Heritability known = model.stated(heritability, fruits, .5).value().orElseThrow();
    assertThat(known.components().heritability(.5, fruits)).isCloseTo(heritability, within(1e-9));
    assertThat(known.fits()).isTrue();
    double all =
        known.spread() * known.components().additive()
            + known.components().permanent()
            + known.components().residual();
    double repeatability = model.repeatability().value().orElseThrow().value();
    assertThat(known.repeatability()).isCloseTo(repeatability, within(1e-6));
    assertThat(model.assumed(.3).value().orElseThrow().ofFruit()).isCloseTo(.3, within(1e-9));
    assertThat(all).isPositive();
  }

  @Test
  void aHeritabilityAboveWhatFruitsOfAPlantShareIsSaid() {
    Simulated garden = new Simulated(new Random(8), 6, 6, 4, .1, .1, 9);
    Heritability known = garden.model().assumed(.9).value().orElseThrow();
    assertThat(known.fits()).isFalse();
    assertThat(known.components().permanent()).isZero();
    assertThat(known.ofFruit()).isCloseTo(.9, within(1e-9));
  }

  @Test
  void remlIsRefusedWhereTheDataCannotBearIt() {
    Simulated one = new Simulated(new Random(1), 1, 8, 3, 2, 1, 3);
    assertThat(one.model().estimate().refusal().orElseThrow()).contains("one family");
    Simulated single = new Simulated(new Random(1), 6, 6, 1, 2, 1, 3);
    assertThat(single.model().estimate().refusal().orElseThrow()).contains("two figures");
    long tooUnsure =
        IntStream.range(0, 20)
            .mapToObj(seed -> new Simulated(new Random(seed), 5, 2, 2, 4, 1, 3).model().estimate())
            .filter(answer -> answer.refusal().filter(why -> why.contains("0.3")).isPresent())
            .count();
    assertThat(tooUnsure).isGreaterThan(5);
    Simulated few = new Simulated(new Random(1), 4, 9, 5, 2, 1, 3);
    assertThat(few.model().estimate().refusal().orElseThrow()).contains("4 families");

    Pedigree.Builder builder = Pedigree.begin(0);
    List<Measurement> unknown = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      int plant = builder.founder("f", 0);
      unknown.add(Measurement.of(plant, i));
      unknown.add(Measurement.of(plant, i * i));
    }
    assertThat(BreedingModel.of(builder.build(), unknown).estimate().refusal().orElseThrow())
        .contains("parents");

    List<Measurement> apart = new ArrayList<>();
    Simulated garden = new Simulated(new Random(1), 4, 6, 3, 2, 1, 3);
    for (int i = 0; i < garden.measured.size(); i++) {
      Measurement m = garden.measured.get(i);
      String bed = "bed " + i / (6 * 3);
      apart.add(new Measurement(m.plant(), m.value(), 1, Map.of("bed", bed), Map.of()));
    }
    assertThat(BreedingModel.of(garden.pedigree, apart).estimate().refusal().orElseThrow())
        .contains("side by side");
  }

  @Test
  void remlFindsWhatTheGardenWasMadeWith() {
    Simulated garden = new Simulated(new Random(4), 60, 8, 4, 6, 2, 8);
    Heritability found = garden.model().estimate().value().orElseThrow();
    double truth = found.spread() * 6 / (found.spread() * 6 + 2 + 8);
    double error = found.error().orElseThrow();
    assertThat(error).isBetween(.01, .2);
    assertThat(found.ofFruit()).isCloseTo(truth, within(2.5 * error));
    assertThat(found.atBoundary()).isFalse();
  }

  /** Truths fall into the interval of 4 in 5 so often, and reliability is what it says. */
  @Test
  void intervalsHoldTheTruthAtTheirRate() {
    int within = 0;
    int all = 0;
    double product = 0;
    double squarePredicted = 0;
    double told = 0;
    for (int seed = 0; seed < 60; seed++) {
      Simulated garden = new Simulated(new Random(seed), 5, 6, 2, 6, 2, 8);
      BreedingValues values = garden.model().values(new Components(6, 2, 8));
      for (int i = 1; i < garden.plants.size(); i++) {
        Map<Integer, Double> beside =
            Map.of(garden.plants.get(i), 1.0, garden.plants.get(i - 1), -1.0);
        double truth = garden.value.get(garden.plants.get(i));
        truth -= garden.value.get(garden.plants.get(i - 1));
        double predicted = values.value(beside);
        double deviation = Math.sqrt(values.errorVariance(beside));
        within += Math.abs(truth - predicted) < 1.2816 * deviation ? 1 : 0;
        all++;
        product += truth * predicted;
        squarePredicted += predicted * predicted;
        double whole = 6 * garden.pedigree.relationship(beside, beside);
        told += Math.pow(values.accuracy(beside), 2) * whole;
      }
    }
    assertThat((double) within / all).isCloseTo(.80, within(.025));
    assertThat(product / squarePredicted).isCloseTo(1, within(.08));
    assertThat(squarePredicted / told).isCloseTo(1, within(.08));
  }

  @Test
  void correctionsAreTold() {
    Pedigree.Builder builder = Pedigree.begin(0);
    List<Measurement> measured = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      int plant = builder.founder("p", 0);
      double season = i % 2;
      Map<String, String> factors = Map.of("bed", "b" + i % 2, "season", "" + i % 2);
      measured.add(new Measurement(plant, 10 + 3 * season, 1, factors, Map.of()));
    }
    BreedingValues values =
        BreedingModel.of(builder.build(), measured).values(new Components(1, 1, 1));
    assertThat(values.corrections())
        .extracting(c -> c.factor() + " " + c.level() + " " + c.told())
        .containsExactly("bed b1 true", "season 1 false");
    assertThat(values.corrections().get(0).estimate()).isCloseTo(3, within(1e-9));
    assertThat(values.mean()).isCloseTo(11.5, within(1e-9));
    assertThat(values.corrected(1)).isCloseTo(11.5, within(1e-9));
    assertThat(values.errorCovariance(Map.of(0, 1.0), Map.of(0, 1.0)))
        .isCloseTo(values.errorVariance(0), within(1e-9));
  }

  /** Families of F3 plants, each of one F2 plant, all of one cross of inbred founders. */
  private static final class Simulated {
    final List<Measurement> measured = new ArrayList<>();
    final List<Integer> plants = new ArrayList<>();
    final Map<Integer, Double> value = new java.util.HashMap<>();
    final Pedigree pedigree;

    Simulated(
        Random random,
        int families,
        int each,
        int fruits,
        double additive,
        double permanent,
        double residual) {
      Pedigree.Builder builder = Pedigree.begin(0);
      int f1 = builder.offspring("F1", builder.founder("P1", 1), builder.founder("P2", 1));
      for (int family = 0; family < families; family++) {
        int f2 = builder.selfed("F2", f1);
        double ofFamily = Math.sqrt(additive / 2) * random.nextGaussian();
        for (int i = 0; i < each; i++) {
          int plant = builder.selfed("F3", f2);
          double own = ofFamily + Math.sqrt(additive / 4) * random.nextGaussian();
          value.put(plant, own);
          plants.add(plant);
          double place = Math.sqrt(permanent) * random.nextGaussian();
          for (int fruit = 0; fruit < fruits; fruit++) {
            double luck = Math.sqrt(residual) * random.nextGaussian();
            measured.add(Measurement.of(plant, 20 + own + place + luck));
          }
        }
      }
      pedigree = builder.build();
    }

    BreedingModel model() {
      return BreedingModel.of(pedigree, measured);
    }
  }
}
