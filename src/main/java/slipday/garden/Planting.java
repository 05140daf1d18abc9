package slipday.garden;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.measure.Range;
import slipday.measure.Reasoned;
import slipday.source.Span;

/** A lot set in a bed this season: what is meant to be done. */
public record Planting(
    String name,
    Lot lot,
    Optional<Bed> bed,
    Optional<Reasoned<Integer>> plants,
    Optional<Reasoned<Double>> apart,
    Optional<Start> start,
    Optional<Reasoned<LocalDate>> sowOn,
    Optional<Reasoned<LocalDate>> plantOutOn,
    Optional<Reasoned<Integer>> seedsToSow,
    Optional<Reasoned<Double>> soilWarmer,
    Optional<Reasoned<Cover>> cover,
    FlowerCare flowers,
    Optional<Reasoned<HandPollination>> pollination,
    boolean seedSaved,
    List<Reasoned<String>> bloomApart,
    Places places)
    implements Named {
  private static final Range PETALS_LAST = new Range(2, 3);

  /**
   * @param indoors started indoors and planted out, or sown in place
   * @param temperature °C where it is raised, if told
   * @param age days from sowing to planting out, if told
   */
  public record Start(boolean indoors, Optional<Double> temperature, Optional<Double> age) {}

  /**
   * A tunnel or fleece.
   *
   * @param days from planting out, or from sowing in place
   * @param saidFromSowing whether the plan says the latter
   * @param warmer °C the air under it is warmer
   * @param guardsTo °C outside down to which plants under it are safe, if told
   */
  public record Cover(
      String what, double days, boolean saidFromSowing, double warmer, Optional<Double> guardsTo) {}

  /** Hand pollination within the planting. */
  public record HandPollination(boolean self, int fruits, Optional<Integer> fromPlants) {}

  @Override
  public Span span() {
    return places.block().span();
  }

  public Line line() {
    return lot.line();
  }

  public Crop crop() {
    return lot.line().crop();
  }

  public Species species() {
    return lot.line().crop().species();
  }

  /** As the trade calls them: "male flowers", or tassels. */
  public String maleFlowers() {
    return facts().get(CropFacts.CALLED).map(names -> names.value().male()).orElse("male flowers");
  }

  /** The flowers that bear the fruit: "female flowers", "perfect flowers", or silks. */
  public String fruitingFlowers() {
    return facts()
        .get(CropFacts.CALLED)
        .map(names -> names.value().female())
        .orElseGet(() -> line().sex().fruitingFlower() + " flowers");
  }

  /** What is counted of the flowers that bear the fruit, one of it: "female flower", or ear. */
  public String fruitingFlower() {
    return facts()
        .get(CropFacts.CALLED)
        .map(names -> names.value().bearer())
        .orElseGet(() -> line().sex().fruitingFlower() + " flower");
  }

  /** Male flowers in few words: "males", or tassels. */
  public String males() {
    return facts().get(CropFacts.CALLED).map(names -> names.value().male()).orElse("males");
  }

  /**
   * How long the cover stays on a flower that was pollinated: until its petals have withered, after
   * two or three days, where the kind does not say otherwise (common practice, no source).
   */
  public Range coverStays() {
    return facts().valueOr(CropFacts.COVER_STAYS, PETALS_LAST);
  }

  public Facts facts() {
    return lot.line().facts();
  }
}
