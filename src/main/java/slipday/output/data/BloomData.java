package slipday.output.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.measure.Range;
import slipday.season.Apart;
import slipday.season.Event;
import slipday.season.Exposure;
import slipday.season.Nicking;
import slipday.season.PlantingSeason;
import slipday.season.PollenSource;
import slipday.season.PollinationPlan;
import slipday.season.Season;

/** Who is in flower when, whose pollen reaches whom, and what is to be pollinated by hand. */
public record BloomData(
    Head slipday,
    String plan,
    SeasonData season,
    List<InFlower> inFlower,
    List<Reach> pollen,
    List<CrossData> crosses,
    List<ApartData> apart,
    List<HandData> byHand) {

  /**
   * One planting's flowers.
   *
   * @param flowers what is done with them
   * @param events first male and first fruiting flowers, the last set that ripens, bloom's end
   */
  public record InFlower(
      String planting,
      String crop,
      String species,
      String flowers,
      boolean seedSaved,
      boolean sureOfFlowers,
      List<EventData> events) {
    private static final List<Event> SHOWN =
        List.of(Event.FIRST_MALE, Event.FIRST_FRUITING, Event.LAST_SET, Event.BLOOM_ENDS);

    static InFlower of(PlantingSeason p) {
      return new InFlower(
          p.name(),
          p.planting().crop().name(),
          p.planting().species().name(),
          p.planting().flowers().how().words(),
          p.planting().seedSaved(),
          p.sureOfFlowers(),
          SHOWN.stream()
              .flatMap(e -> p.date(e).stream().map(d -> EventData.of(p.planting(), e, d.value())))
              .toList());
    }
  }

  /** A number of mornings: in one, five and nine years of ten there are at most so many. */
  public record MorningsData(int few, int usual, int many) {
    static MorningsData of(Exposure.Mornings m) {
      return new MorningsData(m.few(), m.usual(), m.many());
    }
  }

  /** From a low to a high figure. */
  public record RangeData(double low, double high) {
    static RangeData of(Range range) {
      return new RangeData(range.low(), range.high());
    }
  }

  /**
   * Pollen that can reach a planting's fruiting flowers.
   *
   * @param sourceKind {@code planting}, {@code neighbour} or {@code volunteer}
   * @param bitter whether the source's fruit is bitter and poisonous
   * @param degree how readily they cross, 0 to 3; 3 within a species
   * @param chance of being in flower together on some morning, 0 to 1; none where nobody knows
   * @param distance m between the beds' edges; none where it is not told
   * @param isolation m, the home and the strict distance of the receiver's species
   * @param intoSeed whether seed is kept from flowers that stand open to it
   */
  public record Reach(
      String receiver,
      String source,
      String sourceKind,
      String sourceCrop,
      boolean bitter,
      boolean sameSpecies,
      RangeData degree,
      Optional<Double> chance,
      Optional<MorningsData> mornings,
      Optional<Double> distance,
      RangeData isolation,
      boolean intoSeed) {
    static Reach of(Exposure e) {
      return new Reach(
          e.receiver().name(),
          e.source().name(),
          kind(e.source()),
          e.source().crop().name(),
          e.source().isBitter(),
          e.sameSpecies(),
          RangeData.of(e.degree()),
          e.chance(),
          e.mornings().map(MorningsData::of),
          e.distance(),
          RangeData.of(e.isolation()),
          e.intoSeed());
    }

    private static String kind(PollenSource source) {
      return source
          .outsider()
          .map(o -> o.volunteer() ? "volunteer" : "neighbour")
          .orElse("planting");
    }
  }

  /**
   * How the parents of a cross bloom together.
   *
   * @param chance of a morning on which both are ready, 0 to 1
   * @param moved days by which {@code movedPlanting} is put off for it
   */
  public record CrossData(
      String cross,
      String seedParent,
      String pollenParent,
      double chance,
      MorningsData mornings,
      int moved,
      Optional<String> movedPlanting) {
    static CrossData of(Nicking n) {
      return new CrossData(
          n.cross().name(),
          n.cross().seedParent().name(),
          n.cross().pollenParent().name(),
          n.chance(),
          MorningsData.of(n.mornings()),
          n.moved(),
          n.movedPlanting());
    }
  }

  /**
   * What became of a wish to bloom apart.
   *
   * @param chance of being in flower together all the same, 0 to 1
   * @param mornings the usual number of mornings together that remain
   * @param moved days by which {@code planting} is put off for it
   */
  public record ApartData(
      String planting, String other, boolean honoured, double chance, int mornings, int moved) {
    static ApartData of(Apart a) {
      return new ApartData(
          a.asking().name(),
          a.other().name(),
          a.honoured(),
          a.chance(),
          a.togetherMornings(),
          a.moved());
    }
  }

  /**
   * Hand pollination wanted.
   *
   * @param subject the planting or the cross
   * @param way {@code self}, {@code sib} or {@code cross}
   * @param take the share of flowers expected to take, 0 to 1
   * @param flowersLikely to have the fruits as likely as not; 9,999 where so many do not do
   * @param flowersSure to have them in 19 cases of 20; none beyond 9,999
   * @param flowersThere that open in the window and can be done, in the usual year
   * @param canCarry fruits the plants can carry
   * @param chance of the fruits with the flowers there are, 0 to 1
   * @param aMorning flowers to do on each of the {@code mornings}
   */
  public record HandData(
      String subject,
      String seedParent,
      String pollenParent,
      String way,
      boolean emasculate,
      int fruits,
      Optional<Integer> fromPlants,
      double take,
      int flowersLikely,
      Optional<Integer> flowersSure,
      int flowersThere,
      int canCarry,
      double chance,
      Optional<LocalDate> from,
      Optional<LocalDate> until,
      int mornings,
      int aMorning,
      String stop) {
    /** Whether no number of flowers makes the fruits likely. */
    public boolean hopeless() {
      return flowersLikely >= PollinationPlan.MOST_FLOWERS;
    }

    static HandData of(PollinationPlan p) {
      String way = p.cross().isPresent() ? "cross" : p.selfing() ? "self" : "sib";
      return new HandData(
          p.subject(),
          p.seedParent().name(),
          p.pollenParent().name(),
          way,
          p.emasculate(),
          p.wanted(),
          p.fromPlants(),
          p.take().value(),
          p.flowersLikely(),
          p.flowersSure(),
          p.flowersThere(),
          p.canCarry(),
          p.chance(),
          p.from(),
          p.until(),
          p.mornings(),
          p.aMorning(),
          p.stop());
    }
  }

  public static BloomData of(String plan, Season season) {
    Stream<PlantingSeason> flowering = season.plantings().stream().filter(PlantingSeason::flowers);
    return new BloomData(
        Head.of("bloom"),
        plan,
        SeasonData.of(season),
        flowering.map(InFlower::of).toList(),
        season.exposures().stream().map(Reach::of).toList(),
        season.nickings().stream().map(CrossData::of).toList(),
        season.apart().stream().map(ApartData::of).toList(),
        season.pollinations().stream().map(HandData::of).toList());
  }
}
