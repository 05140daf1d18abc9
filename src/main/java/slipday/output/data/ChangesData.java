package slipday.output.data;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import slipday.change.Changes;
import slipday.measure.Reason;
import slipday.season.DateSpread;

/**
 * What a change of plan or record changes in the season.
 *
 * @param before the plan as it was, as it is called in results
 * @param after the plan as it is
 * @param compared false where mistakes in one of the two keep its season from being reckoned: then
 *     only what came or went is told
 * @param recorded lines of the record that came or went, by their day
 * @param gone findings that are there no more
 */
public record ChangesData(
    Head slipday,
    String before,
    String after,
    boolean compared,
    List<ThingData> things,
    List<MovedData> dates,
    List<FigureData> figures,
    List<PairData> pairs,
    List<ChoresData> chores,
    List<GenerationData> generations,
    List<RecordedData> recorded,
    List<FindingData> came,
    List<FindingData> gone) {

  /**
   * A planting, cross or lot.
   *
   * @param kind {@code planting}, {@code cross} or {@code lot}
   * @param came true if it is new, false if it is there no more
   */
  public record ThingData(String kind, String name, boolean came) {}

  /** On or before these in one, five and nine years of ten. */
  public record SpreadData(
      Optional<LocalDate> early, Optional<LocalDate> usual, Optional<LocalDate> late) {
    static SpreadData of(DateSpread spread) {
      return new SpreadData(spread.early(), spread.usual(), spread.late());
    }
  }

  /** A fact under a date, and where it stands. */
  public record CauseData(String says, Optional<PlaceData> place) {
    static CauseData of(Reason reason) {
      return new CauseData(reason.says(), reason.place().map(s -> PlaceData.of(s, "")));
    }
  }

  /**
   * A date that moved.
   *
   * @param days by which its usual day moved, later positive
   * @param was facts under it before that are not under it now
   * @param is facts under it now that were not under it before
   */
  public record MovedData(
      String planting,
      String event,
      String words,
      Optional<SpreadData> before,
      Optional<SpreadData> after,
      Optional<Integer> days,
      List<CauseData> was,
      List<CauseData> is) {
    static MovedData of(Changes.Moved m) {
      return new MovedData(
          m.planting(),
          m.event().id(),
          m.event().words(),
          m.before().map(SpreadData::of),
          m.after().map(SpreadData::of),
          m.days(),
          m.was().stream().map(CauseData::of).toList(),
          m.is().stream().map(CauseData::of).toList());
    }
  }

  /**
   * A count that changed.
   *
   * @param subject the planting, cross or lot
   * @param count what is counted
   */
  public record FigureData(
      String subject, String count, Optional<Integer> before, Optional<Integer> after) {}

  /**
   * Pollen that reaches flowers whose seed is kept.
   *
   * @param reached whether it did before
   * @param reaches whether it does now
   * @param before chance of being in flower together, 0 to 1
   */
  public record PairData(
      String receiver,
      String source,
      boolean reached,
      boolean reaches,
      Optional<Double> before,
      Optional<Double> after) {}

  /**
   * A line of the record.
   *
   * @param says the whole line
   * @param came true if it is new, false if it is there no more
   */
  public record RecordedData(String says, boolean came, PlaceData place) {
    static RecordedData of(Changes.Recorded r) {
      return new RecordedData(r.says(), r.came(), PlaceData.of(r.span(), ""));
    }
  }

  /** From a first day to a last. */
  public record DaysData(LocalDate first, LocalDate last) {
    static Optional<DaysData> of(Optional<LocalDate> first, Optional<LocalDate> last) {
      return first.flatMap(f -> last.map(l -> new DaysData(f, l)));
    }
  }

  /**
   * Chores of one kind about one subject.
   *
   * @param chore their kind
   * @param moved how many are on another day
   */
  public record ChoresData(
      String chore,
      String subject,
      int added,
      int withdrawn,
      int moved,
      Optional<DaysData> before,
      Optional<DaysData> after) {
    static ChoresData of(Changes.Chores c) {
      return new ChoresData(
          c.kind().id(),
          c.subject(),
          c.added(),
          c.withdrawn(),
          c.moved(),
          DaysData.of(c.first(), c.last()),
          DaysData.of(c.newFirst(), c.newLast()));
    }
  }

  /** A lot's generation. */
  public record GenerationData(String lot, Optional<String> before, Optional<String> after) {}

  public static ChangesData of(Changes c) {
    return new ChangesData(
        Head.of("changes"),
        c.before().name(),
        c.after().name(),
        c.before().season().isPresent() && c.after().season().isPresent(),
        c.things().stream().map(t -> new ThingData(t.kind().words(), t.name(), t.came())).toList(),
        c.dates().stream().map(MovedData::of).toList(),
        c.figures().stream()
            .map(f -> new FigureData(f.subject(), f.count().words(), f.before(), f.after()))
            .toList(),
        c.pairs().stream()
            .map(
                p ->
                    new PairData(
                        p.receiver(), p.source(), p.reached(), p.reaches(), p.before(), p.after()))
            .toList(),
        c.chores().stream().map(ChoresData::of).toList(),
        c.generations().stream()
            .map(g -> new GenerationData(g.lot(), g.before(), g.after()))
            .toList(),
        c.recorded().stream().map(RecordedData::of).toList(),
        c.came().stream().map(FindingData::of).toList(),
        c.gone().stream().map(f -> FindingData.of(f.withoutMends())).toList());
  }
}
