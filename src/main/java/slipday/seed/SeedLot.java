package slipday.seed;

import java.util.List;
import java.util.Optional;
import slipday.garden.Lot;
import slipday.garden.record.Asides;
import slipday.garden.record.Bitterness;

/**
 * A lot as it lies in the seed box.
 *
 * @param generation its label, or what follows from the record
 * @param parents the plants its seed was saved from, a line each; none where nobody recorded it
 * @param cross by the notation of Purdy and others (1968)
 * @param inbreeding F of its plants, 0 to 1
 * @param assumed what of its descent is unknown or taken for granted, a sentence each
 * @param left seeds, after all that was sown, tested and given away; empty where never counted
 * @param atMost whether some was taken without being counted, so that less may be left
 * @param age whole seasons since harvest
 * @param wanted plants this season's plantings want of it, or as many as were asked for; 0 for none
 * @param toSow seeds to be sure of them in 19 of 20 cases, of plantings not yet sown
 * @param remnant what is left after that; negative where it is too few
 * @param mayBeBitter whether its fruit may be bitter and poisonous
 * @param bitterParent what tasted bitter of those that it comes of, so that it is to be destroyed
 * @param asides notes and photos of it, its plants and the fruits it came of
 */
public record SeedLot(
    Lot lot,
    Optional<String> generation,
    List<String> parents,
    Optional<String> cross,
    double inbreeding,
    List<String> assumed,
    Optional<Integer> left,
    boolean atMost,
    Optional<Integer> age,
    Outlook outlook,
    int wanted,
    int toSow,
    Optional<Integer> remnant,
    boolean mayBeBitter,
    Optional<Bitterness.Told> bitterParent,
    List<Asides.Aside> asides) {
  public SeedLot {
    parents = List.copyOf(parents);
    assumed = List.copyOf(assumed);
    asides = List.copyOf(asides);
  }
}
