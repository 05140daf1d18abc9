package slipday.season;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slipday.measure.Reason;

/**
 * When to plant out (or, for what is sown in place, when to sow).
 *
 * @param date the day the season is reckoned with: the gardener's own where one is fixed
 * @param fixed whether the gardener fixed it
 * @param recorded whether the record fixed it: the day itself, or the sowing it follows from
 * @param earliest the first day on which frost risk, soil and nights are met; empty if none is
 * @param earlyBound what keeps it from being earlier
 * @param latest the last day from which fruit (or seed, where kept) still ripens often enough
 * @param lateBound what keeps it from being later
 * @param possible whether some day meets every condition
 * @param mends what would make an impossible season possible, a sentence each
 * @param chances at the chosen date: the chance (0 to 1) that each condition is met over the years
 * @param chanceReasons what each of the chances was counted from
 */
public record DateChoice(
    LocalDate date,
    boolean fixed,
    boolean recorded,
    Optional<LocalDate> earliest,
    Condition earlyBound,
    Optional<LocalDate> latest,
    Condition lateBound,
    boolean possible,
    List<String> mends,
    Map<Condition, Double> chances,
    Map<Condition, Reason> chanceReasons,
    Reason reason) {}
