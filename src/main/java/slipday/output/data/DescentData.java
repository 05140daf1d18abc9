package slipday.output.data;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import slipday.descent.Ancestor;
import slipday.descent.Lineage;
import slipday.garden.record.Subject;
import slipday.genetics.Purdy;
import slipday.season.Season;

/**
 * Where a lot, fruit or plant comes from.
 *
 * @param subject the number of the one asked about among the ancestors
 * @param notation its cross as Purdy and others (1968) write it
 * @param inbreeding F, 0 to 1
 * @param heterozygosity expected, over that of the founders' base
 * @param sibs the coancestry of two of its plants or seeds; null for a plant
 * @param other the one compared with
 * @param assumed what is unknown or taken for granted, a sentence each
 * @param asides notes and photos of the subject
 * @param ancestors the subject and all before it, each once
 */
public record DescentData(
    Head slipday,
    String plan,
    SeasonData season,
    int subject,
    Optional<String> notation,
    BigDecimal inbreeding,
    BigDecimal heterozygosity,
    Optional<BigDecimal> sibs,
    Optional<OtherData> other,
    List<String> assumed,
    List<AsideData> asides,
    List<AncestorData> ancestors) {
  private static final int DECIMALS = 6;

  /**
   * The one compared with.
   *
   * @param number among the ancestors
   * @param coancestry with the subject
   * @param cross whether the two can have seed together
   */
  public record OtherData(
      int number,
      String name,
      Optional<String> notation,
      BigDecimal inbreeding,
      BigDecimal coancestry,
      boolean cross) {}

  /**
   * @param kind {@code seed}, {@code plant} or {@code stand-in}
   * @param origin how its seed came to be
   */
  public record AncestorData(
      int number,
      String kind,
      String name,
      Optional<String> lot,
      Optional<String> line,
      Optional<String> generation,
      String origin,
      Optional<ReasonData> reason,
      List<ParentData> parents) {
    static AncestorData of(Ancestor a) {
      return new AncestorData(
          a.number(),
          Ids.of(a.kind()),
          a.name(),
          a.lot(),
          a.line(),
          a.generation(),
          a.origin(),
          a.reason().map(ReasonData::of),
          a.parents().stream().map(p -> new ParentData(Ids.of(p.role()), p.number())).toList());
    }
  }

  /**
   * @param role {@code seed-parent}, {@code pollen-parent}, or {@code both} where it was selfed
   * @param number among the ancestors; null where nobody knows the plant
   */
  public record ParentData(String role, Optional<Integer> number) {}

  public static DescentData of(String plan, Season season, Subject subject, Lineage lineage) {
    return new DescentData(
        Head.of("descent"),
        plan,
        SeasonData.of(season),
        lineage.subject().number(),
        lineage.notation().map(Purdy::print),
        figure(lineage.inbreeding()),
        figure(lineage.heterozygosity()),
        lineage.sibs().map(DescentData::figure),
        lineage.other().map(DescentData::other),
        lineage.assumed(),
        AsideData.of(season.garden().record(), subject),
        lineage.ancestors().stream().map(AncestorData::of).toList());
  }

  /** Six decimals tell eight generations of selfing apart, and cousins far removed. */
  private static BigDecimal figure(double share) {
    BigDecimal rounded = BigDecimal.valueOf(share).setScale(DECIMALS, RoundingMode.HALF_EVEN);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }

  private static OtherData other(Lineage.Other o) {
    return new OtherData(
        o.ancestor().number(),
        o.ancestor().name(),
        o.notation().map(Purdy::print),
        figure(o.inbreeding()),
        figure(o.coancestry()),
        o.cross());
  }
}
