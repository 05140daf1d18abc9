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
  /** A species and its crops by name. */
  public record SpeciesData(String name, String latin, List<String> crops) {}

  /**
   * A crop or species with every fact in force, its own first.
   *
   * @param kind {@code crop} or {@code species}
   */
  public record EntryData(
      String name, String kind, String species, String latin, List<FactData> facts) {}

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
    return new SpeciesData(
        species.name(),
        species.latin(),
        book.crops().values().stream()
            .filter(c -> c.species().name().equals(species.name()))
            .map(Crop::name)
            .toList());
  }

  /**
   * @param name of a crop, or else of a species
   * @return empty where there is neither
   */
  public static Optional<CropsData> facts(Optional<String> plan, CropBook book, String name) {
    Optional<EntryData> crop =
        Optional.ofNullable(book.crops().get(name))
            .map(c -> entry(c.name(), "crop", c.species(), c.facts()));
    return crop.or(
            () ->
                Optional.ofNullable(book.species().get(name))
                    .map(s -> entry(s.name(), "species", s, s.facts())))
        .map(e -> new CropsData(Head.of("crops"), plan, List.of(), List.of(e)));
  }

  /** The facts of every species and of every crop. */
  public static List<EntryData> all(CropBook book) {
    return Stream.concat(
            book.species().values().stream().map(s -> entry(s.name(), "species", s, s.facts())),
            book.crops().values().stream()
                .map(c -> entry(c.name(), "crop", c.species(), c.facts())))
        .toList();
  }

  private static EntryData entry(String name, String kind, Species species, Facts facts) {
    return new EntryData(
        name, kind, species.name(), species.latin(), facts.inForce().map(FactData::of).toList());
  }
}
