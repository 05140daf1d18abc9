package slipday.rules.record;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import slipday.finding.Level;
import slipday.garden.CropFacts;
import slipday.garden.Planting;
import slipday.garden.record.Fact;
import slipday.garden.record.Fruit;
import slipday.garden.record.Plants;
import slipday.measure.Reasoned;
import slipday.rules.Reporter;
import slipday.rules.Rule;
import slipday.rules.Words;
import slipday.season.Season;

/** Something is recorded of a day on which it can hardly have been. */
public final class UnlikelyDay implements Rule {
  /** Of the fewest days that something takes, half is not enough. */
  private static final double HALF = 0.5;

  /** A take shows after about a week; on the next day nobody sees it. */
  private static final int TAKE_UNSEEN = 2;

  /** Warm autumns apart, nothing tender flowers so long after the frost. */
  private static final double NEARLY_ALL = 0.9;

  private static final int AFTER_FROST = 21;

  /** Kinds that this much cold does not kill flower on. */
  private static final double TENDER = -3;

  @Override
  public String id() {
    return "unlikely-day";
  }

  @Override
  public Level level() {
    return Level.WARNING;
  }

  @Override
  public void check(Season season, Reporter reporter) {
    if (!season.garden().record().isEmpty()) {
      new Judge(season, reporter).run();
    }
  }

  /** Judges the record of one season. */
  private static final class Judge {
    private final Season season;
    private final Reporter reporter;
    private final FirstSteps steps;

    Judge(Season season, Reporter reporter) {
      this.season = season;
      this.reporter = reporter;
      this.steps = new FirstSteps(season.garden().record());
    }

    void run() {
      season.garden().record().facts().forEach(this::judge);
    }

    private void judge(Fact fact) {
      if (fact instanceof Fact.Emerged e) {
        e.stand().planting().ifPresent(p -> emerged(e, p));
      } else if (fact instanceof Fact.SetChecked set && set.took()) {
        set.fruit().seedParent().stand().planting().ifPresent(p -> took(set, p));
      } else if (fact instanceof Fact.FirstFlowers f) {
        f.plants().stand().planting().ifPresent(p -> flowers(f, f.plants(), f.male(), p));
      } else if (fact instanceof Fruit f) {
        f.seedParent().stand().planting().ifPresent(p -> flowers(f, f.seedParent(), false, p));
      }
    }

    private void emerged(Fact.Emerged fact, Planting planting) {
      Fact from = steps.sown(fact.stand());
      if (from != null) {
        planting.facts().all(CropFacts.EMERGES).stream()
            .min(Comparator.comparingDouble(r -> r.value().days()))
            .filter(r -> isTooSoon(from, fact, r.value().days()))
            .ifPresent(
                r ->
                    found(
                            fact,
                            planting,
                            "was up " + after(from, fact) + " its sowing",
                            r.value().days())
                        .also(from.span(), "sown here")
                        .fact(r.reason())
                        .help("Look for a slip in one of the two dates."));
      }
    }

    private void took(Fact.SetChecked fact, Planting planting) {
      Fruit fruit = fact.fruit();
      if (ChronoUnit.DAYS.between(fruit.date(), fact.date()) < TAKE_UNSEEN) {
        report(
                fact,
                planting,
                Words.tick(fruit.tag())
                    + " took "
                    + after(fruit, fact)
                    + " its pollination; a take shows after about a week.")
            .also(fruit.span(), "pollinated here")
            .help("Mend the day, or look again in a week and write what you see then.");
      }
    }

    private void flowers(Fact fact, Plants plants, boolean male, Planting planting) {
      afterFrost(fact, planting);
      Optional<Reasoned<CropFacts.FirstFlowers>> usual =
          planting.facts().get(CropFacts.FIRST_FLOWERS);
      if (!male && usual.isPresent()) {
        Fact from = steps.before(usual.get().value(), plants.stand());
        double fewest = FirstSteps.fewest(usual.get().value(), planting);
        if (from != null && isTooSoon(from, fact, fewest)) {
          found(
                  fact,
                  planting,
                  "flowered " + after(from, fact) + " its " + FirstSteps.done(from),
                  fewest)
              .also(from.span(), FirstSteps.done(from))
              .fact(usual.get().reason())
              .help("Look for a slip in the month or the day of one of the two.");
        }
      }
    }

    private void afterFrost(Fact fact, Planting planting) {
      boolean tender = planting.facts().valueOr(CropFacts.KILLED_AT, TENDER - 1) >= TENDER;
      Optional<LocalDate> frozen =
          season
              .climate()
              .firstAutumnFrost()
              .map(law -> (int) Math.round(law.quantile(NEARLY_ALL)) + AFTER_FROST)
              .map(season.climate().axis()::dateOf);
      if (tender
          && season.garden().season().contains(fact.date())
          && frozen.filter(fact.date()::isAfter).isPresent()) {
        report(
                fact,
                planting,
                Words.tick(planting.name())
                    + " is in flower on "
                    + Words.day(fact.date())
                    + " by the record, three weeks and more after the frost that ends it in 9 of 10"
                    + " years.")
            .help("Look for a slip in the month.");
      }
    }

    private static boolean isTooSoon(Fact from, Fact fact, double fewest) {
      return ChronoUnit.DAYS.between(from.date(), fact.date()) < HALF * fewest;
    }

    private static String after(Fact from, Fact fact) {
      int days = (int) ChronoUnit.DAYS.between(from.date(), fact.date());
      return days == 0 ? "on the day of" : Words.count(days, "day", "days") + " after";
    }

    private Reporter.Report found(Fact fact, Planting planting, String did, double fewest) {
      return report(
          fact,
          planting,
          Words.tick(planting.name())
              + " "
              + did
              + "; its kind takes "
              + Math.round(fewest)
              + " days or more.");
    }

    private Reporter.Report report(Fact fact, Planting planting, String says) {
      Reporter.Report report =
          reporter.report(planting, fact.span(), says).concerns(planting.lot());
      planting.bed().ifPresent(report::concerns);
      return report;
    }
  }
}
