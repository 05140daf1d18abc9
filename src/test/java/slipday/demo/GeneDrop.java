package slipday.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Genes dropped through a record, with nothing of Slipday's but its lines: each plant of a lot
 * comes of one of the lot's fruits, the likelier the more seed it gave, and gets one gene of each
 * parent. How often a plant has one gene twice is its inbreeding. Plants of lots that were not
 * saved on record are founders of four different genes.
 */
public final class GeneDrop {
  private static final int DROPS = 100_000;
  private static final Pattern SELFED = Pattern.compile("selfed (\\S+) plant (\\d+), tag (\\S+)");
  private static final Pattern SIBBED =
      Pattern.compile("sibbed (\\S+) plant (\\d+) by plant (\\d+), tag (\\S+)");
  private static final Pattern SAVED =
      Pattern.compile("saved (\\S+), (\\d+) seeds, into ([^ ,]+).*");

  private final Map<String, Mating> matings = new HashMap<>();
  private final Map<String, List<Fruit>> lots = new HashMap<>();
  private final Chance chance = new Chance(11);

  private record Mating(String mother, String father) {}

  private record Fruit(int seeds, Mating mating) {}

  private record Plant(int one, int other) {}

  private GeneDrop() {}

  public static GeneDrop of(Path record, int lastYear) throws IOException {
    List<String> lines = new ArrayList<>();
    try (Stream<Path> files = Files.list(record)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".season")).toList()) {
        lines.addAll(FollowingYear.lines(Files.readString(file)));
      }
    }
    GeneDrop drop = new GeneDrop();
    List<String> sorted =
        lines.stream()
            .filter(l -> Integer.parseInt(l.substring(0, 4)) <= lastYear)
            .sorted()
            .toList();
    sorted.forEach(drop::mated);
    sorted.forEach(drop::saved);
    return drop;
  }

  private void mated(String line) {
    String year = line.substring(0, 4);
    Matcher selfed = SELFED.matcher(line.substring(11));
    Matcher sibbed = SIBBED.matcher(line.substring(11));
    if (selfed.matches()) {
      String plant = selfed.group(1) + " " + selfed.group(2);
      matings.put(year + selfed.group(3), new Mating(plant, plant));
    } else if (sibbed.matches()) {
      String stand = sibbed.group(1) + " ";
      matings.put(
          year + sibbed.group(4), new Mating(stand + sibbed.group(2), stand + sibbed.group(3)));
    }
  }

  private void saved(String line) {
    Matcher saved = SAVED.matcher(line.substring(11));
    if (saved.matches()) {
      Mating mating = matings.get(line.substring(0, 4) + saved.group(1));
      if (mating != null) {
        lots.computeIfAbsent(saved.group(3), l -> new ArrayList<>())
            .add(new Fruit(Integer.parseInt(saved.group(2)), mating));
      }
    }
  }

  /** The chance that a plant of a lot has one founder's gene twice. */
  public double inbreeding(String lot) {
    int alike = 0;
    for (int i = 0; i < DROPS; i++) {
      Plant plant = plant(lot + " 0", new HashMap<>(), new int[1]);
      alike += plant.one == plant.other ? 1 : 0;
    }
    return (double) alike / DROPS;
  }

  private Plant plant(String name, Map<String, Plant> dropped, int[] genes) {
    Plant known = dropped.get(name);
    if (known == null) {
      List<Fruit> fruits = lots.get(name.substring(0, name.indexOf(' ')));
      known = fruits == null ? new Plant(genes[0]++, genes[0]++) : born(fruits, dropped, genes);
      dropped.put(name, known);
    }
    return known;
  }

  private Plant born(List<Fruit> fruits, Map<String, Plant> dropped, int[] genes) {
    double at = chance.uniform() * fruits.stream().mapToInt(Fruit::seeds).sum();
    int i = 0;
    while (i < fruits.size() - 1 && at >= fruits.get(i).seeds) {
      at -= fruits.get(i++).seeds;
    }
    Plant mother = plant(fruits.get(i).mating.mother, dropped, genes);
    Plant father = plant(fruits.get(i).mating.father, dropped, genes);
    return new Plant(gene(mother), gene(father));
  }

  private int gene(Plant of) {
    return chance.in(0.5) ? of.one : of.other;
  }
}
