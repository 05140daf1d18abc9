package slipday.output.data;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slipday.descent.Births;
import slipday.descent.Tags;
import slipday.garden.Garden;
import slipday.garden.Lot;
import slipday.garden.Planting;
import slipday.garden.record.Bitterness;
import slipday.garden.record.Fruit;
import slipday.garden.record.FruitStory;
import slipday.garden.record.Mating;
import slipday.garden.record.Plants;
import slipday.genetics.Generation;
import slipday.measure.Reasoned;
import slipday.season.Season;
import slipday.seed.SeedLot;

/**
 * What is to be written on the labels of a garden.
 *
 * @param labels fruit by date, then free tags by planting, then packets
 */
public record LabelsData(Head slipday, String plan, SeasonData season, List<LabelData> labels) {
  /**
   * One label.
   *
   * @param kind {@code fruit} for a marked fruit, {@code free} for a tag yet to be given out,
   *     {@code packet} for a lot of seed
   * @param name the tag, or the lot's name
   * @param code what its QR code says: the tag with its check character, or the lot's name
   * @param planting where the fruit grows; empty for a packet
   * @param cross how the seed came to be, in words
   * @param date of pollination; null for a packet and for a free tag
   * @param generation of the seed, not of the plant
   * @param seeds left in the packet
   * @param harvested the season of the harvest
   * @param mayBeBitter whether every plant of the seed must be tasted before anything of it is
   *     eaten
   * @param bitter whether it comes of a plant that tasted bitter: it is to be destroyed
   * @param doubtful whether the seed may not be what its label says
   */
  public record LabelData(
      String kind,
      String name,
      String code,
      String line,
      String lineTitle,
      String planting,
      String cross,
      Optional<LocalDate> date,
      Optional<String> generation,
      Optional<Integer> seeds,
      Optional<Integer> harvested,
      boolean mayBeBitter,
      boolean bitter,
      boolean doubtful) {}

  /**
   * @param lots whose packets to label
   * @param fruit whether the season's fruit is wanted
   * @param free how many tags to give out for each planting
   */
  public static LabelsData of(
      String plan, Season season, List<SeedLot> lots, boolean fruit, int free) {
    Garden garden = season.garden();
    List<LabelData> labels = new ArrayList<>();
    if (fruit) {
      labels.addAll(fruits(garden));
    }
    if (free > 0) {
      Tags.free(garden, free, false)
          .forEach(f -> f.tags().forEach(tag -> labels.add(free(tag, f.planting()))));
    }
    lots.stream()
        .filter(l -> l.left().map(n -> n > 0).orElse(true))
        .forEach(l -> labels.add(packet(l)));
    return new LabelsData(Head.of("labels"), plan, SeasonData.of(season), labels);
  }

  /** Fruits of the season that are seed for something, as long as it is in them. */
  private static List<LabelData> fruits(Garden garden) {
    Births births = new Births(garden.record());
    Bitterness bitterness = Bitterness.of(garden.record());
    return FruitStory.all(garden.record()).stream()
        .filter(s -> s.fruit().year() == garden.season().year() && isToLabel(s.state()))
        .map(s -> fruit(s.fruit(), births, bitterness))
        .toList();
  }

  private static boolean isToLabel(FruitStory.State state) {
    return switch (state) {
      case PENDING, SET, PICKED -> true;
      case FAILED, LOST, SAVED -> false;
    };
  }

  private static LabelData fruit(Fruit fruit, Births births, Bitterness bitterness) {
    Lot mother = fruit.seedParent().stand().lot();
    return new LabelData(
        "fruit",
        fruit.tag(),
        Tags.checked(fruit.tag()).orElse(fruit.tag()),
        mother.line().name(),
        mother.line().title(),
        fruit.seedParent().stand().name(),
        mated(fruit),
        Optional.of(fruit.date()),
        births.seedOf(fruit).map(Generation::print),
        Optional.empty(),
        Optional.empty(),
        false,
        bitterness.of(fruit).isPresent(),
        births.mayBeSelf(fruit));
  }

  private static String mated(Fruit fruit) {
    String seedParent = fruit.seedParent().toString();
    Plants father = fruit.pollenParent();
    boolean within = father.stand().equals(fruit.seedParent().stand());
    return fruit.mating() == Mating.SELF
        ? seedParent + " selfed"
        : within
            ? seedParent + " sibbed" + father.plant().map(n -> " by plant " + n).orElse("")
            : seedParent + " x " + father;
  }

  private static LabelData free(String tag, Planting planting) {
    return new LabelData(
        "free",
        tag,
        Tags.checked(tag).orElse(tag),
        planting.line().name(),
        planting.line().title(),
        planting.name(),
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        false,
        false);
  }

  private static LabelData packet(SeedLot seed) {
    Lot lot = seed.lot();
    return new LabelData(
        "packet",
        lot.name(),
        lot.name(),
        lot.line().name(),
        lot.line().title(),
        "",
        seed.cross().orElseGet(() -> String.join(", ", seed.parents())),
        Optional.empty(),
        seed.generation(),
        seed.left(),
        lot.harvested().map(Reasoned::value),
        seed.mayBeBitter(),
        seed.bitterParent().isPresent(),
        lot.identity() != Lot.Identity.KNOWN);
  }
}
