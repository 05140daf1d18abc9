package slipday.genetics.mixed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import slipday.genetics.Pedigree;

/** Selfed and crossed plants, two traits of their fruits, some weighed together, some lacking. */
final class TwoTraits {
  final Pedigree pedigree;
  final List<JointModel.Part> parts = new ArrayList<>();
  final JointModel.Correlations correlations;
  final List<Integer> lackingFirst = new ArrayList<>();

  TwoTraits(Random random, double[][] genetic, double[][] environmental) {
    correlations = new JointModel.Correlations(genetic, environmental);
    Pedigree.Builder builder = Pedigree.begin(0);
    for (int i = 0; i < 30; i++) {
      if (i < 4) {
        builder.founder("p" + i, i % 2);
      } else {
        int mother = random.nextInt(i);
        builder.offspring("p" + i, mother, random.nextInt(2) == 0 ? mother : random.nextInt(i));
      }
    }
    pedigree = builder.build();
    List<List<Measurement>> measured = List.of(new ArrayList<>(), new ArrayList<>());
    List<List<Object>> units = List.of(new ArrayList<>(), new ArrayList<>());
    for (int plant = 2; plant < 30; plant++) {
      boolean lacks = plant % 3 == 0;
      if (lacks) {
        lackingFirst.add(plant);
      }
      for (int fruit = 0; fruit < 1 + plant % 3; fruit++) {
        for (int t = lacks ? 1 : 0; t < 2; t++) {
          double weight = 1 + (plant + fruit * t) % 3;
          Map<String, String> season = Map.of("season", "s" + plant % 2);
          measured
              .get(t)
              .add(new Measurement(plant, 5 + random.nextGaussian(), weight, season, Map.of()));
          units.get(t).add(plant * 10 + fruit);
        }
      }
    }
    Components[] components = {new Components(.8, .3, 1.2), new Components(2, .5, .7)};
    for (int t = 0; t < 2; t++) {
      parts.add(
          new JointModel.Part(
              BreedingModel.of(pedigree, measured.get(t)), components[t], units.get(t)));
    }
  }

  List<BreedingValues> values() {
    return JointModel.values(parts, correlations).value().orElseThrow();
  }

  Path writeRecords(Path folder) throws IOException {
    List<String> lines = new ArrayList<>(List.of("trait,plant,fruit,value,weight,season"));
    for (int t = 0; t < 2; t++) {
      List<Measurement> measured = parts.get(t).model().measurements();
      for (int i = 0; i < measured.size(); i++) {
        Measurement m = measured.get(i);
        lines.add(
            (t + 1)
                + ","
                + (m.plant() + 1)
                + ","
                + parts.get(t).units().get(i)
                + ","
                + m.value()
                + ","
                + m.weight()
                + ","
                + m.factors().get("season"));
      }
    }
    return Files.write(folder.resolve("records.csv"), lines);
  }

  Path writeKinship(Path folder) throws IOException {
    double[][] kin = new double[pedigree.size()][pedigree.size()];
    for (int i = 0; i < kin.length; i++) {
      for (int j = 0; j < kin.length; j++) {
        kin[i][j] = 2 * pedigree.coancestry(i, j);
      }
    }
    return Files.write(
        folder.resolve("kinship.csv"), Arrays.stream(kin).map(TwoTraits::line).toList());
  }

  Path writeTraits(Path folder) throws IOException {
    List<String> lines = new ArrayList<>();
    for (int t = 0; t < 2; t++) {
      Components c = parts.get(t).components();
      lines.add(
          line(new double[] {c.additive(), c.permanent(), c.residual()})
              + ","
              + line(correlations.genetic[t])
              + ","
              + line(correlations.environmental[t]));
    }
    return Files.write(folder.resolve("traits.csv"), lines);
  }

  private static String line(double[] cells) {
    return Arrays.stream(cells).mapToObj(Double::toString).collect(Collectors.joining(","));
  }
}
