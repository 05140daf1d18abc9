package slipday.output.data;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slipday.garden.Crop;
import slipday.garden.CropBook;
import slipday.garden.Facts;
import slipday.garden.Species;
import slipday.garden.StatedFact;

/**
 * The crops known, or the facts of some.
 *
 * @param plan the plan whose crops are told; none for those that ship with Slipday alone
 * @param species every species with its crops; empty where facts are asked
 * @param entries the crops or species asked for
 */
public record CropsData(
    Head slipday, Optional<String> plan, List<SpeciesData> species, List<EntryData> entries) {
  /**
   * A species and its crops by name.
   *
   * @param otherNames what its crops are also called
   */
  public record SpeciesData(
      String name, String latin, List<String> crops, List<OtherNameData> otherNames) {}

  /**
   * A word for a crop besides its name.
   *
   * @param name the word
   * @param crop the crop it may mean
   * @param alone whether it means no other crop, and a plan may use it for the name
   * @param where some call it so, such as {@code North America}; empty where that is not told
   */
  public record OtherNameData(String name, String crop, boolean alone, String where) {
    static List<OtherNameData> of(Crop crop) {
      return crop.otherNames().stream()
          .map(n -> new OtherNameData(n.word(), crop.name(), n.alone(), n.where()))
          .toList();
    }
  }

  /**
   * A crop or species with every fact in force, its own first.
   *
   * @param kind {@code crop} or {@code species}
   * @param otherNames what the crop is also called
   */
  public record EntryData(
      String name,
      String kind,
      String species,
      String latin,
      List<OtherNameData> otherNames,
      List<FactData> facts) {}

  /**
   * One fact.
   *
   * @param clause the words its line begins with
   * @param words the whole fact, as its line states it
   * @param owner who states it: {@code crop muskmelon}
   * @param basis {@code published}, {@code from-memory} (published, cited from memory), {@code
   *     common-practice} or {@code plan}
   * @param source the publication; empty for common practice and for a plan's own
   */
  public record FactData(
      String clause, String words, String owner, String basis, String source, PlaceData place) {
    static FactData of(StatedFact fact) {
      return new FactData(
          fact.clause().clause().name(),
          fact.words(),
          fact.owner(),
          basis(fact),
          published(fact) ? fact.source() : "",
          PlaceData.of(fact.span(), ""));
    }

    private static boolean published(StatedFact fact) {
      return fact.clause().says().flatMap(s -> s.source()).isPresent();
    }

    private static String basis(StatedFact fact) {
      if (published(fact)) {
        return fact.fromMemory() ? "from-memory" : "published";
      }
      return fact.clause().says().isPresent() ? "common-practice" : "plan";
    }
  }

  public static CropsData list(Optional<String> plan, CropBook book) {
    return new CropsData(
        Head.of("crops"),
        plan,
        book.species().values().stream().map(s -> species(s, book)).toList(),
        List.of());
  }

  private static SpeciesData species(Species species, CropBook book) {
    List<Crop> crops =
        book.crops().values().stream()
            .filter(c -> c.species().name().equals(species.name()))
            .toList();
    return new SpeciesData(
        species.name(),
        species.latin(),
        crops.stream().map(Crop::name).toList(),
        crops.stream().flatMap(c -> OtherNameData.of(c).stream()).toList());
  }

  /**
   * @param name of a crop, or else of a species, or another word for a crop
   * @return empty where there is neither
   */
  public static Optional<CropsData> facts(Optional<String> plan, CropBook book, String name) {
    Optional<EntryData> named = Optional.ofNullable(book.crops().get(name)).map(CropsData::entry);
    return named
        .or(() -> Optional.ofNullable(book.species().get(name)).map(CropsData::entry))
        .or(() -> book.crop(name).map(CropsData::entry))
        .map(e -> new CropsData(Head.of("crops"), plan, List.of(), List.of(e)));
  }

  /** The facts of every species and of every crop. */
  public static List<EntryData> all(CropBook book) {
    return Stream.concat(
            book.species().values().stream().map(CropsData::entry),
            book.crops().values().stream().map(CropsData::entry))
        .toList();
  }

  private static EntryData entry(Species s) {
    return new EntryData(s.name(), "species", s.name(), s.latin(), List.of(), facts(s.facts()));
  }

  private static EntryData entry(Crop crop) {
    Species s = crop.species();
    return new EntryData(
        crop.name(), "crop", s.name(), s.latin(), OtherNameData.of(crop), facts(crop.facts()));
  }

  private static List<FactData> facts(Facts facts) {
    return facts.inForce().map(FactData::of).toList();
  }
}
